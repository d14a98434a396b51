"""What was sent can be mended: an edit is read again, a deletion voids, ``scrap`` takes off and ``undo`` puts back."""

from collections.abc import Sequence
from dataclasses import replace
from zoneinfo import ZoneInfo

from bot.errors import UserError
from bot.replies.results import result_line
from bot.services.house import House
from bot.services.lines import Line, ask_about
from bot.services.meant import Meant, meant_by
from bot.services.ports.events import Redaction
from bot.services.ports.records import Run, RunStatus
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.standing import standing_of, tell_changes
from bot.services.submit import take_lines
from bot.services.witnesses import lower_hand
from bot.services.working_out import work_out_line


async def reread(said: Said, lines: Sequence[Line]) -> None:
    """A message was edited: its runs are worked out again; if it had none, its lines are taken as if new.

    A line that cannot be read leaves its run as it was and is asked about. A line edited away voids its run, and one
    edited back gives it back.
    """
    runs = {run.line: run for run in await said.work.runs.of_event(said.event_id)}
    if not runs:
        await take_lines(said, lines)
        return
    if not lines:
        raise UserError("edit-unreadable")
    if any((run.sent_by or run.user_id) != said.user_id for run in runs.values()):
        return
    before = await standing_of(said.house, said.work, list(runs.values()))
    new_lines = []
    for line in lines:
        if line.number in runs:
            await _mend(said, line, runs[line.number], among=len(lines))
        else:
            new_lines.append(line)
    for number in runs.keys() - {line.number for line in lines}:
        await said.work.runs.save(replace(runs[number], status="void"))
    await tell_changes(
        said.house, said.work, said.speaker, before, await standing_of(said.house, said.work, list(runs.values()))
    )
    if new_lines:
        await take_lines(said, new_lines)


async def _mend(said: Said, line: Line, run: Run, *, among: int) -> None:
    try:
        if isinstance(line.read, UserError):
            raise line.read
        meant = await _drill_of(said, run)
        fresh = await work_out_line(said, line.number, line.read, meant, run.user_id)
    except UserError as problem:
        await ask_about(said, line, problem, among=among)
        return
    mended = replace(
        fresh,
        id=run.id,
        arrived=run.arrived,
        sent_at=run.sent_at,
        live_id=run.live_id if fresh.result.kind == "counted" and run.live_id else fresh.live_id,
        over_limit=run.over_limit,
        status="kept" if run.status == "void" else run.status,
        sent_by=run.sent_by,
        witnesses=run.witnesses,
    )
    if mended == run:
        return
    await said.work.runs.save(mended)
    text = said.phrases("corrected", line=result_line(said.phrases, mended.result))
    await (said.tell(text) if mended.result.kind == "stopped" else said.answer(text, meant.live))


async def _drill_of(said: Said, run: Run) -> Meant:
    published = await said.work.drills.get(run.set_up_id)
    if published is None:
        raise UserError("no-drill-yet")
    return meant_by(published, await said.work.drills.live(run.live_id) if run.live_id else None)


async def take_back(house: House, work: UnitOfWork, speaker: Speaker, event: Redaction) -> None:
    """A message or reaction was deleted: its runs are void, its hand is down, its draft and questions are gone."""
    if await lower_hand(house, work, speaker, event.target):
        return
    runs = [run for run in await work.runs.of_event(event.target) if run.status in ("kept", "pending", "scrapped")]
    before = await standing_of(house, work, runs)
    for run in runs:
        await work.runs.save(replace(run, status="void"))
    await tell_changes(house, work, speaker, before, await standing_of(house, work, runs))
    await work.questions.close_about(event.target)
    draft = await work.drills.draft_of_event(event.target)
    if draft:
        await work.drills.drop_draft(draft.id)


async def scrap(said: Said) -> None:
    """Take the person's last run off."""
    run = await said.work.runs.last(said.kitchen.room_id, said.user_id)
    if run is None:
        raise UserError("nothing-to-scrap")
    await _set_status(said, run, "scrapped")
    await said.answer(said.phrases("scrapped", at=_local_time(said, run)))


async def undo(said: Said) -> None:
    """Put the person's last scrapped run back."""
    run = await said.work.runs.last(said.kitchen.room_id, said.user_id, ("scrapped",))
    if run is None:
        raise UserError("nothing-to-undo")
    await _set_status(said, run, "kept")
    await said.answer(said.phrases("undone", at=_local_time(said, run)))


async def _set_status(said: Said, run: Run, status: RunStatus) -> None:
    before = await standing_of(said.house, said.work, [run])
    await said.work.runs.save(replace(run, status=status))
    await tell_changes(said.house, said.work, said.speaker, before, await standing_of(said.house, said.work, [run]))


def _local_time(said: Said, run: Run) -> str:
    return f"{run.sent_at.astimezone(ZoneInfo(said.kitchen.zone)):%H:%M}"
