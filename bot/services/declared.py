"""A run declared before it begins: it takes one of the week's five from then on, whatever becomes of it."""

from dataclasses import replace

from bot.domain.kitchen_day import kitchen_day, week_of
from bot.domain.run import Count, work_out
from bot.domain.standard_time import standard_s
from bot.errors import UserError
from bot.services.meant import Meant, drill_meant
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.run_records import Run
from bot.services.said import Said
from bot.services.working_out import board_for


async def declare(said: Said, label: str) -> None:
    """Keep, until its result comes, a stopped run of no plates on the open board of the drill meant."""
    if said.member.consent != "in":
        raise UserError("declare-when-joined")
    meant = await drill_meant(said, label)
    board = await board_for(said, meant, said.sent_at)
    if board is None:
        raise UserError("declare-no-board", drill=meant.drill.label)
    if await _declared(said, said.user_id, meant.set_up_id):
        raise UserError("declared-already")
    await said.work.runs.save(_empty_run(said, meant, board))
    await said.answer(said.phrases("declared", drill=meant.drill.wording.name), board)


def is_declared(run: Run) -> bool:
    """Whether it stands for a run that has been declared and not sent: no plates in no time, on a board."""
    return run.live_id is not None and (run.result.clock_s, run.result.count.attempted) == (0, 0)


async def in_place_of_declared(said: Said, run: Run) -> Run:
    """The run, in the place of the one that its cook declared; a stopped one then takes a place on that board too."""
    declared = await _declared(said, run.user_id, run.set_up_id)
    if declared is None or run.sent_by:
        return run
    await said.work.runs.save(replace(declared, status="void"))
    return replace(run, live_id=declared.live_id) if run.result.kind in ("stopped", "short") else run


async def _declared(said: Said, user_id: str, set_up_id: int) -> Run | None:
    """What the person has declared on an open board of this set-up and not run yet."""
    for run in await said.work.runs.unbuilt(user_id, set_up_id):
        live = await said.work.drills.live(run.live_id) if run.live_id and is_declared(run) else None
        if live and live.closed_at is None:
            return run
    return None


def _empty_run(said: Said, meant: Meant, board: LiveDrill) -> Run:
    spec, set_up, seconds = meant.drill.spec, meant.drill.set_up, said.house.seconds
    day = kitchen_day(said.sent_at, said.kitchen.zone, said.kitchen.day_turn)
    nothing = Count(set_up.plates, accepted=0, left=set_up.plates)
    result = work_out(0, nothing, spec, set_up, seconds, "stopped")
    return Run(
        room_id=said.kitchen.room_id,
        user_id=said.user_id,
        event_id=said.event_id,
        line=0,
        arrived=said.arrived,
        set_up_id=meant.set_up_id,
        spec_id=meant.spec_id,
        live_id=board.id,
        sent_at=said.sent_at,
        ran_at=said.sent_at,
        kitchen_day=day,
        week=week_of(day),
        result=replace(result, standard_s=standard_s(spec, set_up, seconds)),
    )
