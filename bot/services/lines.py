"""One line of a submission on its way through the services, and the question that a doubtful one opens."""

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from datetime import timedelta

from bot.domain.run import Sent
from bot.errors import UserError
from bot.services.ports.run_records import Held, QuestionKind
from bot.services.said import Said

LAPSES_AFTER = timedelta(hours=12)

ASKS: dict[str, QuestionKind] = {
    "how-many-good": "count",
    "one-left": "left",
    "under-a-third": "sure",
    "steps-none-here": "steps",
    "steps-other-number": "steps",
    "steps-off-clock": "steps",
    "same-again": "again",
}
"""Which sentences are questions with a one-word answer, and of what kind."""

IN_PRIVATE = {"under-a-third"}
"""Doubts that the room does not see."""


@dataclass(frozen=True)
class Line:
    """A line as sent and as read: ``read`` is a UserError where it could not be read.

    ``number`` is its place in the message, from 0; ``settled`` are the doubts already answered.
    """

    number: int
    read: Sent | UserError
    settled: frozenset[QuestionKind] = field(default=frozenset())


async def ask_about(said: Said, line: Line, problem: UserError, *, among: int) -> None:
    """Say what is wrong with a line and what to send; where one word would answer, hold the line for it."""
    say = said.own_phrases if problem.key in IN_PRIVATE else said.phrases
    text = say.reply_to(problem)
    if among > 1:
        text = say("which-line", number=line.number + 1, problem=text)
    kind = ASKS.get(problem.key)
    if kind and isinstance(line.read, Sent):
        await hold(said, [replace(line, read=_if_yes(line.read, problem))], kind, LAPSES_AFTER)
    if problem.key in IN_PRIVATE:
        await said.tell(text)
    else:
        await said.answer(text)


def _if_yes(sent: Sent, problem: UserError) -> Sent:
    """What the line means if the answer is yes."""
    return replace(sent, left=int(problem.values["left"])) if problem.key == "one-left" else sent


async def hold(said: Said, lines: Iterable[Line], kind: QuestionKind, lapses_after: timedelta) -> None:
    """Open a question with the person whose answer completes these lines."""
    await said.ask(kind, lapses_after, held=as_held(said, lines))


def as_held(said: Said, lines: Iterable[Line]) -> tuple[Held, ...]:
    """The lines that could be read, as a question keeps them."""
    return tuple(
        Held(
            event_id=said.event_id,
            line=line.number,
            sent=line.read,
            sent_at=said.sent_at,
            arrived=said.arrived,
            room_id=said.room_id,
            thread=said.thread,
            settled=line.settled,
            picture=said.picture,
        )
        for line in lines
        if isinstance(line.read, Sent)
    )


def as_said_then(said: Said, held: Held) -> Said:
    """The message that a held line stood in, answered now: same event, place and time as when it was sent."""
    return replace(
        said,
        event_id=held.event_id,
        sent_at=held.sent_at,
        arrived=held.arrived,
        room_id=held.room_id,
        private=held.room_id != said.kitchen.room_id,
        thread=held.thread,
        picture=held.picture,
        reply_to=None,
    )
