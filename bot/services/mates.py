"""A result sent for a mate waits for the mate's own yes: nobody puts a time on another's name."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.services.meant import Meant
from bot.services.people import mate_named
from bot.services.ports.records import Question, Run
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.standing import tell_changes

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
    asked = await said.work.questions.open(run.user_id, said.now)
    if said.event_id not in [question.about for question in asked]:
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
    waiting = await _waiting(said.work, event_id, said.user_id)
    for run in waiting:
        await said.work.runs.save(replace(run, status="kept"))
    await said.answer(said.phrases("kept-for-mate", name=said.name))
    await tell_changes(said.house, said.work, said.speaker, waiting)


async def decline(said: Said, event_id: str) -> None:
    """The mate said no: what waits under this message is void."""
    await let_go(said.work, event_id, said.user_id)
    await said.answer(said.phrases("not-kept"))


async def let_go(work: UnitOfWork, event_id: str, mate: str) -> None:
    """What waited under this message for this mate's yes is void: the mate said no, or nothing for too long."""
    for run in await _waiting(work, event_id, mate):
        await work.runs.save(replace(run, status="void"))


async def _waiting(work: UnitOfWork, event_id: str, mate: str) -> list[Run]:
    return [run for run in await work.runs.of_event(event_id) if run.status == "pending" and run.user_id == mate]
