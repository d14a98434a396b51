"""What was sent can be mended: an edit is read again, a deletion voids, ``scrap`` takes off and ``undo`` puts back."""

from collections.abc import Sequence
from dataclasses import replace
from zoneinfo import ZoneInfo

from bot.domain.drill import Drill
from bot.errors import UserError
from bot.replies.results import result_line
from bot.services.declared import is_declared
from bot.services.doubts import doubt_clock
from bot.services.house import House
from bot.services.lines import LAPSES_AFTER, Line, ask_about, hold
from bot.services.mates import hold_for_mate, partner_of, runner_of
from bot.services.meant import Meant, meant_by
from bot.services.ports.events import Redaction
from bot.services.ports.run_records import Run, RunStatus
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.standing import tell_changes
from bot.services.submit import take_lines
from bot.services.verdicts import forget_photo, lower_hand, settled
from bot.services.working_out import work_out_line


async def reread(said: Said, lines: Sequence[Line]) -> None:
    """A message was edited: its runs are worked out again; if it had none, its lines are taken as if new.

    A line that cannot be read leaves its run as it was and is asked about. A line edited away voids its run, and one
    edited back gives it back.
    """
    runs = {run.line: run for run in await said.work.runs.of_event(said.event_id)}
    if any((run.sent_by or run.user_id) != said.user_id for run in runs.values()):
        return
    if runs and not lines:
        raise UserError("edit-unreadable")
    for line in lines:
        if line.number in runs:
            await _mend(said, line, runs[line.number], among=len(lines))
    for number in runs.keys() - {line.number for line in lines}:
        await said.work.runs.save(replace(runs[number], status="void"))
    await tell_changes(said.house, said.work, said.speaker, list(runs.values()))
    new_lines = [line for line in lines if line.number not in runs]
    if new_lines:
        await take_lines(said, new_lines)


async def take_settled(said: Said, line: Line) -> None:
    """What was asked about a line has been answered: it is taken, or if it is of an edit, its run is mended."""
    runs = [run for run in await said.work.runs.of_event(said.event_id) if run.line == line.number]
    for run in runs:
        await _mend(said, line, run, among=1)
    await tell_changes(said.house, said.work, said.speaker, runs)
    if not runs:
        await take_lines(said, [line])


async def _mend(said: Said, line: Line, run: Run, *, among: int) -> None:
    """Work a run out again as of when it was sent; where the line leaves a doubt, ask and let the run stand.

    One sent for a mate, or of a pair, waits for the other's yes again.
    """
    try:
        if isinstance(line.read, UserError):
            raise line.read
        meant = await drill_of(said, run)
        whose = (await runner_of(said, line.read), await partner_of(said, line.read, meant))
        if not is_named(line.read.drill, meant.drill) or whose != (run.user_id, run.partner):
            raise UserError("edit-moves-run")
        fresh = await work_out_line(replace(said, sent_at=run.sent_at), line.number, line.read, meant, *whose)
        doubt_clock(line, fresh, meant.drill)
    except UserError as problem:
        await ask_about(said, line, problem, among=among)
        return
    mended = await settled(said.house, said.work, in_place_of(run, fresh))
    if mended == run:
        return
    if mended.sent_by or mended.partner:
        await hold_for_mate(said, mended, meant)
        return
    await said.work.runs.save(mended)
    aside = mended.result.kind == "stopped"
    say = said.own_phrases if aside else said.phrases
    text = say("corrected", line=result_line(say, mended.result))
    await (said.tell(text) if aside else said.answer(text, meant.live))


def in_place_of(run: Run, fresh: Run) -> Run:
    """The run as worked out again, with what an edit does not touch: settling in, over the limit, and its board."""
    whole = ("counted", "settling")
    if run.result.kind in whole and fresh.result.kind in whole:
        fresh = replace(fresh, result=replace(fresh.result, kind=run.result.kind))
    counted = fresh.result.kind == "counted"
    return replace(
        fresh,
        id=run.id,
        arrived=run.arrived,
        live_id=(run.live_id or fresh.live_id) if counted and not run.over_limit else None,
        over_limit=run.over_limit,
        status="kept" if run.status == "void" and not (run.sent_by or run.partner) else run.status,
        sent_by=run.sent_by,
        photo=run.photo,
        chat_timed=run.chat_timed,
        witnesses=run.witnesses,
    )


def is_named(label: str, drill: Drill) -> bool:
    """Whether a line that names this drill, or none, may be meant."""
    return label.upper() in ("", str(drill.number), f"{drill.number}{drill.letter}")


async def drill_of(said: Said, run: Run) -> Meant:
    """The drill that a run was of, with the posting whose board it counts for."""
    published = await said.work.drills.get(run.set_up_id)
    if published is None:
        raise UserError("no-drill-yet")
    return meant_by(published, await said.work.drills.live(run.live_id) if run.live_id else None)


async def take_back(house: House, work: UnitOfWork, speaker: Speaker, event: Redaction) -> None:
    """A message or reaction was deleted: its runs are void, its hand is down, its draft and questions are gone."""
    if await lower_hand(house, work, speaker, event.target):
        return
    await forget_photo(work, event.target)
    runs = [run for run in await work.runs.of_event(event.target) if run.status in ("kept", "pending", "scrapped")]
    for run in runs:
        await work.runs.save(replace(run, status="void"))
    await tell_changes(house, work, speaker, runs)
    await work.questions.close_about(event.target)
    draft = await work.drills.draft_of_event(event.target)
    if draft:
        await work.drills.drop_draft(draft.id)


async def scrap(said: Said) -> None:
    """Take the person's last run off; `undo`, which the answer offers, is then understood bare."""
    run = await said.work.runs.last(said.kitchen.room_id, said.user_id)
    if run is None:
        raise UserError("nothing-to-scrap")
    if is_declared(run):
        raise UserError("declared-already")
    await _set_status(said, run, "scrapped")
    await hold(said, [], "undo", LAPSES_AFTER)
    await said.answer(said.phrases("scrapped", at=local_time(said, run)))


async def undo(said: Said) -> None:
    """Put the person's last scrapped run back."""
    run = await said.work.runs.last(said.kitchen.room_id, said.user_id, ("scrapped",))
    if run is None:
        raise UserError("nothing-to-undo")
    await _set_status(said, run, "kept")
    for offer in (await said.asked("undo"))[:1]:
        await said.work.questions.close(offer.id)
    await said.answer(said.phrases("undone", at=local_time(said, run)))


async def _set_status(said: Said, run: Run, status: RunStatus) -> None:
    await said.work.runs.save(replace(run, status=status))
    await tell_changes(said.house, said.work, said.speaker, [run])


def local_time(said: Said, run: Run) -> str:
    """When a run was sent, by the kitchen's clock."""
    return f"{run.sent_at.astimezone(ZoneInfo(said.kitchen.zone)):%H:%M}"
