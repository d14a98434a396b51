"""Verdicts of judges who saw the photo or walked the row: kept, settled, and told where they change a result."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.domain.judging import OPEN_FOR, By, OwnCount, Verdict, as_judged, may_judge, own_count, settle
from bot.domain.run import work_out
from bot.errors import UserError
from bot.replies.results import result_line
from bot.services.house import House
from bot.services.languages import room_phrases
from bot.services.ports.records import Role
from bot.services.ports.run_records import Run
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.standing import tell_changes, whose
from bot.services.witnesses import is_namesake

JUDGES: tuple[Role, ...] = ("judge", "sous", "chef")


@dataclass(frozen=True)
class Words:
    """A judge's words: so many good plates, or None for ``agree``."""

    good: int | None


async def is_judge(said: Said) -> bool:
    """Whether the person judges in this kitchen: by role, or by directing it."""
    return said.member.role in JUDGES or await said.is_chef()


async def keep_photo(said: Said) -> None:
    """Keep which message shows the run that is answered, where its own cooks send it; the picture itself never."""
    runs = await said.work.runs.of_event(said.reply_to or "")
    for run in runs:
        if run.status in ("kept", "pending") and said.user_id in (run.user_id, run.partner, run.sent_by):
            await said.work.runs.save(replace(run, photo=said.event_id))


async def forget_photo(work: UnitOfWork, event_id: str) -> None:
    """The picture was deleted: no run refers to it any more."""
    for run in await work.runs.of_photo(event_id):
        await work.runs.save(replace(run, photo=None))


async def take_verdict(said: Said, words: Words) -> bool:
    """Take the words as a judge's verdict on the run that is answered; False where they are talk.

    What is wrong with a verdict is told to the judge alone.
    """
    runs = [run for run in await said.work.runs.of_event(said.reply_to or "") if run.status == "kept"]
    if not runs or not await is_judge(said):
        return False
    try:
        await judge(said, runs, words)
    except UserError as problem:
        await said.tell(said.own_phrases.reply_to(problem))
    else:
        await said.noted()
    return True


async def reread(said: Said, words: Words | None) -> bool:
    """A verdict's message was edited: its words are taken anew; False if it was no verdict."""
    runs = await said.work.runs.witnessed_by(said.event_id)
    if not runs or any(run.status != "kept" for run in runs):
        return False
    try:
        if words is None:
            raise UserError("verdict-how")
        await judge(said, runs, words)
    except UserError as problem:
        await said.tell(said.own_phrases.reply_to(problem))
    return True


async def judge(said: Said, runs: Sequence[Run], words: Words) -> Run:
    """Keep the person's verdict on the one run of a message and let it settle; the run as it then stands."""
    if len(runs) != 1:
        raise UserError("verdict-several")
    (run,) = runs
    await _refuse(said, run)
    claimed = run.claimed or run.result.count
    good = claimed.accepted if words.good is None else words.good
    if good > claimed.attempted:
        raise UserError("verdict-too-many", attempted=claimed.attempted)
    by: By = "photo" if run.photo else "witness"
    await said.work.runs.pass_verdict(run.event_id, Verdict(said.user_id, by, good, said.sent_at), said.event_id)
    await resettle(said.house, said.work, said.speaker, runs)
    return await said.work.runs.get(run.id) or run


async def _refuse(said: Said, run: Run) -> None:
    """Raise what keeps this person from judging this run."""
    if not may_judge(said.user_id, run.user_id, run.partner):
        raise UserError("verdict-own")
    if await is_namesake(said.work, run, said.user_id):
        raise UserError("hand-same-name")
    if run.result.kind == "stopped":
        raise UserError("verdict-stopped")
    if said.sent_at > run.sent_at + OPEN_FOR:
        raise UserError("verdict-closed")


async def lower_hand(house: House, work: UnitOfWork, speaker: Speaker, reaction_id: str) -> bool:
    """Take back the hand or the verdict that this event was; False if it was neither."""
    witnessed = await work.runs.witnessed_by(reaction_id)
    if not witnessed:
        return False
    await work.runs.lower_hand(reaction_id)
    await resettle(house, work, speaker, witnessed)
    return True


async def resettle(house: House, work: UnitOfWork, speaker: Speaker, earlier: Sequence[Run]) -> None:
    """Work runs out anew by the verdicts that now stand, and tell what is different from how they stood earlier."""
    for run in earlier:
        fresh = await settled(house, work, run)
        if fresh != run:
            await work.runs.save(fresh)
            await _tell_result(house, work, speaker, fresh)
    await tell_changes(house, work, speaker, earlier)


async def settled(house: House, work: UnitOfWork, run: Run) -> Run:
    """The run as its judges leave it; of a message of several runs nothing but the sender's counts stands."""
    published = await work.drills.get(run.set_up_id)
    alone = len(await work.runs.of_event(run.event_id)) == 1
    if published is None or not alone:
        return run
    claimed = run.claimed or run.result.count
    verdicts = await work.runs.verdicts(run.event_id)
    stands = settle(run.user_id, claimed.accepted, run.sent_at, verdicts, run.partner)
    if stands.good == run.result.count.accepted:
        return run
    drill, result = published.drill, run.result
    count = as_judged(claimed, stands.good)
    fresh = work_out(result.clock_s, count, drill.spec, drill.set_up, house.seconds, result.kind)
    return replace(run, result=fresh, claimed=None if count == claimed else claimed)


async def own_count_of(said: Said) -> OwnCount | None:
    """The person's own count against the judges', over all runs on which a judge said a number."""
    runs = await said.work.runs.with_verdict(said.kitchen.room_id, said.user_id)
    return own_count([((run.claimed or run.result.count).accepted, run.result.count.accepted) for run in runs])


async def _tell_result(house: House, work: UnitOfWork, speaker: Speaker, run: Run) -> None:
    """Say in the drill's thread how the run reads by its judges, with the small mark of a correction."""
    live = await work.drills.live(run.live_id) if run.live_id else await work.drills.last_live(run.room_id)
    count = run.result.count
    say = await room_phrases(house, work, run.room_id)
    text = say(
        "judged",
        name=await whose(say, work, run.user_id, run),
        good=count.accepted,
        attempted=count.attempted,
        line=result_line(say, run.result),
    )
    await speaker.notice(run.room_id, text, thread=live.root if live else None)
