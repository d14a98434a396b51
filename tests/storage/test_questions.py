"""Open questions are found until answered or lapsed, and then leave no trace."""

from datetime import timedelta

from sqlalchemy import select

from bot.domain.run import Sent
from bot.services.ports.run_records import Held, QuestionKind
from bot.storage.storage import SqlStorage
from bot.storage.tables import questions
from tests.fakes import KITCHEN_ROOM, LIO, MONDAY, NOOR, a_question
from tests.storage.conftest import Raw


def a_line(event_id: str, line: int = 0) -> Held:
    """A line that waits for its count."""
    sent = Sent(clock_s=485, reasons=("rim", "flat"), splits_s=(41, 33))
    settled: frozenset[QuestionKind] = frozenset({"sure", "again"})
    return Held(
        event_id=event_id, line=line, sent=sent, sent_at=MONDAY, arrived=7, room_id=KITCHEN_ROOM, settled=settled
    )


async def test_the_newest_question_comes_first_until_it_lapses(storage: SqlStorage) -> None:
    """What was asked comes back whole; somebody else's and lapsed ones do not."""
    async with storage.begin() as work:
        older = await work.questions.ask(a_question(kind="join", lapses_at=MONDAY + timedelta(hours=48)))
        newer = await work.questions.ask(a_question(held=(a_line("$1"), a_line("$1", 1)), about="$1"))
        await work.questions.ask(a_question(user_id=LIO))
        assert await work.questions.open(NOOR, MONDAY) == [newer, older]
        assert await work.questions.open(NOOR, MONDAY + timedelta(hours=12)) == [older]
        await work.questions.close(newer.id)
        assert await work.questions.open(NOOR, MONDAY) == [older]


async def test_lapsed_questions_are_erased_and_named(storage: SqlStorage, raw: Raw) -> None:
    """Those whose time has come are given back once, the oldest first, and are gone from the table."""
    async with storage.begin() as work:
        first = await work.questions.ask(a_question(held=(a_line("$1"),)))
        second = await work.questions.ask(a_question(user_id=LIO))
        kept = await work.questions.ask(a_question(kind="join", lapses_at=MONDAY + timedelta(hours=48)))
        assert await work.questions.lapse(MONDAY + timedelta(hours=12)) == [first, second]
        assert await work.questions.lapse(MONDAY + timedelta(hours=12)) == []
    assert [row["id"] for row in await raw(select(questions.c.id))] == [kept.id]


async def test_a_deleted_message_takes_what_was_asked_about_it(storage: SqlStorage) -> None:
    """Questions about it and lines held of it go; lines of other messages wait on."""
    async with storage.begin() as work:
        await work.questions.ask(a_question(kind="mate", about="$gone"))
        await work.questions.ask(a_question(held=(a_line("$gone"),)))
        mixed = await work.questions.ask(a_question(kind="join", held=(a_line("$gone"), a_line("$stays"))))
        other = await work.questions.ask(a_question(kind="identity", about="4"))
        await work.questions.close_about("$gone")
        left = await work.questions.open(NOOR, MONDAY)
    assert [(question.id, question.held) for question in left] == [(other.id, ()), (mixed.id, (a_line("$stays"),))]
