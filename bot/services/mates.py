"""A result sent for a mate waits for the mate's own yes: nobody puts a time on another's name."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.services.meant import Meant
from bot.services.people import mate_named
from bot.services.ports.records import Question, Run
from bot.services.said import Said

MATE_ANSWERS_WITHIN = timedelta(hours=12)


async def runner_of(said: Said, sent: Sent) -> str:
    """Whose run a line is: the sender's, or the mate's that it names."""
    if sent.partner:
        raise UserError("no-pairs-yet")
    return (await mate_named(said, sent.mate)).user_id if sent.mate else said.user_id


async def hold_for_mate(said: Said, run: Run, meant: Meant) -> None:
    """Keep the run as pending and ask the mate, whose ``yes`` makes it theirs."""
    mate = await said.work.kitchens.member(said.kitchen.room_id, run.user_id)
    if mate is None or mate.consent != "in":
        raise UserError("mate-not-joined", name=plain_name(mate.name if mate else ""))
    await said.work.runs.save(replace(run, status="pending"))
    await said.work.questions.ask(
        Question(
            user_id=run.user_id,
            room_id=said.kitchen.room_id,
            kind="mate",
            asked_at=said.now,
            lapses_at=said.now + MATE_ANSWERS_WITHIN,
            about=said.event_id,
        )
    )
    await said.answer(said.phrases("waiting-for-mate", name=plain_name(mate.name)), meant.live)


async def take_on(said: Said, event_id: str) -> None:
    """The mate said yes: what waits under this message is kept under their name."""
    for run in await said.work.runs.of_event(event_id):
        if run.status == "pending" and run.user_id == said.user_id:
            await said.work.runs.save(replace(run, status="kept"))
    await said.answer(said.phrases("kept-for-mate", name=said.name))


async def decline(said: Said, event_id: str) -> None:
    """The mate said no: what waits under this message is void."""
    for run in await said.work.runs.of_event(event_id):
        if run.status == "pending" and run.user_id == said.user_id:
            await said.work.runs.save(replace(run, status="void"))
    await said.answer(said.phrases("not-for-mate"))
