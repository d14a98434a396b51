"""A result sent for a mate, or of a pair, waits for the other's own yes: nobody puts a time on another's name."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.replies.results import result_line
from bot.replies.sums import figures_of_result
from bot.services.meant import Meant, meant_by
from bot.services.people import mate_named
from bot.services.ports.drill_records import LiveDrill, PublishedDrill
from bot.services.ports.run_records import Run
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.standing import tell_changes

MATE_ANSWERS_WITHIN = timedelta(hours=12)
PAIR = 2


async def runner_of(said: Said, sent: Sent) -> str:
    """Whose run a line is: the sender's, or the mate's that it names; a pair's is sent by one of the two."""
    if sent.partner and sent.mate:
        raise UserError("pair-by-one-of-two")
    return (await mate_named(said, sent.mate)).user_id if sent.mate else said.user_id


async def partner_of(said: Said, sent: Sent, meant: Meant) -> str | None:
    """With whom the sender ran; a UserError where the drill is laid out for two and nobody is named."""
    if not sent.partner:
        if meant.drill.set_up.cooks > 1:
            raise UserError("pair-with-whom", drill=meant.drill.label)
        return None
    partner = (await mate_named(said, sent.partner)).user_id
    if partner == said.user_id:
        raise UserError("pair-with-self")
    return partner


async def laid_for(said: Said, sent: Sent, meant: Meant) -> Meant:
    """The drill as meant, of a pair run in its set-up for two, which the first pair makes."""
    drill = meant.drill
    if not sent.partner or drill.set_up.cooks == PAIR:
        return meant
    if drill.set_up.plates < PAIR:
        raise UserError("pair-one-plate", drill=drill.label)
    name = said.phrases("pair-drill", name=drill.wording.name)
    wording = replace(drill.wording, name=name, target_s=None)
    made = replace(drill, letter="", set_up=replace(drill.set_up, cooks=PAIR), wording=wording)
    # No chef published it: posting "the newest" passes it over, as it does the course.
    published = await said.work.drills.publish(said.kitchen.room_id, made, None, said.now, seeded=True)
    posted = [live for live in await said.work.drills.live_in(said.kitchen.room_id) if _is_of(live, published)]
    return meant_by(published, posted[0] if posted else None)


def _is_of(live: LiveDrill, published: PublishedDrill) -> bool:
    return live.set_up_id == published.set_up_id


def who_agrees(run: Run) -> str:
    """Who has to say yes to a run that another sent: the partner of a pair, else its runner."""
    return run.partner or run.user_id


async def hold_for_mate(said: Said, run: Run, meant: Meant) -> None:
    """Keep the run as pending and ask the mate, whose ``yes`` makes it theirs."""
    mate = await said.work.kitchens.member(said.kitchen.room_id, who_agrees(run))
    if mate is None or mate.consent != "in":
        raise UserError("mate-not-joined", name=plain_name(mate.name if mate else ""))
    await said.work.runs.save(replace(run, status="pending"))
    asked = await said.work.questions.open(mate.user_id, said.now)
    if said.event_id not in [question.about for question in asked]:
        await said.ask("mate", MATE_ANSWERS_WITHIN, about=said.event_id, whom=mate.user_id)
    await said.answer(said.phrases("waiting-for-mate", name=plain_name(mate.name)), meant.live)


async def take_on(said: Said, event_id: str) -> None:
    """The mate said yes: what waits under this message is kept under their name, or a pair's under both."""
    waiting = await _waiting(said.work, event_id, said.user_id)
    for run in waiting:
        await said.work.runs.save(replace(run, status="kept"))
    pairs = [run for run in waiting if run.partner]
    for run in pairs:
        await _tell_pair(said, run)
    if not pairs:
        await said.answer(said.phrases("kept-for-mate", name=said.name))
    await tell_changes(said.house, said.work, said.speaker, waiting)


async def _tell_pair(said: Said, run: Run) -> None:
    """Answer with the pair's result, which nobody has been told before."""
    runner = await said.work.kitchens.member(said.kitchen.room_id, run.user_id)
    line = result_line(said.phrases, run.result)
    name = plain_name(runner.name if runner else "")
    text = said.phrases("kept-for-pair", runner=name, partner=said.name, line=line)
    await said.answer(text, figures=figures_of_result(run.result))


async def decline(said: Said, event_id: str) -> None:
    """The mate said no: what waits under this message is void."""
    await let_go(said.work, event_id, said.user_id)
    await said.answer(said.phrases("not-kept"))


async def let_go(work: UnitOfWork, event_id: str, mate: str) -> None:
    """What waited under this message for this mate's yes is void: the mate said no, or nothing for too long."""
    for run in await _waiting(work, event_id, mate):
        await work.runs.save(replace(run, status="void"))


async def _waiting(work: UnitOfWork, event_id: str, mate: str) -> list[Run]:
    return [run for run in await work.runs.of_event(event_id) if run.status == "pending" and who_agrees(run) == mate]
