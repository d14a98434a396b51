"""Results that are asked about before they are kept: too fast, steps that do not make the clock, the same again."""

from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.splits import add_up, has_splits
from bot.errors import UserError
from bot.services.lines import Line
from bot.services.ports.run_records import Run
from bot.services.said import Said

LEAST_SHARE_OF_STANDARD = 1 / 3
SAME_AGAIN_WITHIN = timedelta(hours=1)


async def raise_doubts(said: Said, line: Line, run: Run, drill: Drill) -> None:
    """Raise the UserError that asks, unless the person has settled that doubt already."""
    doubt_clock(line, run, drill)
    if "again" in line.settled:
        return
    last = await said.work.runs.last(said.kitchen.room_id, run.user_id)
    if last and _is_the_same(run, last):
        at = last.sent_at.astimezone(ZoneInfo(said.kitchen.zone))
        raise UserError("same-again", at=f"{at:%H:%M}")


def doubt_clock(line: Line, run: Run, drill: Drill) -> None:
    """Raise the UserError that asks about a clock too fast to be true, unless it was said to be right, and of steps."""
    result = run.result
    if "sure" not in line.settled and result.clock_s < LEAST_SHARE_OF_STANDARD * result.standard_s:
        raise UserError("under-a-third", clock=clock_text(result.clock_s))
    if run.splits_s and result.kind != "stopped":
        _doubt_splits(run, drill)


def _doubt_splits(run: Run, drill: Drill) -> None:
    """Of a stopped run nobody asks: its steps are never looked at."""
    if not has_splits(drill.set_up):
        raise UserError("steps-none-here", drill=drill.label)
    if len(run.splits_s) != len(drill.spec.steps):
        raise UserError("steps-other-number", drill=drill.label, steps=len(drill.spec.steps), read=len(run.splits_s))
    if not add_up(run.splits_s, run.result.clock_s):
        clock, made = clock_text(run.result.clock_s), clock_text(sum(run.splits_s))
        raise UserError("steps-off-clock", clock=clock, made=made)


def _is_the_same(run: Run, last: Run) -> bool:
    """The same numbers of the same drill in another message, sent soon after and not said to be of another time."""
    return (
        run.event_id != last.event_id
        and run.set_up_id == last.set_up_id
        and (run.result.clock_s, run.result.count) == (last.result.clock_s, last.result.count)
        and run.sent_at - last.sent_at <= SAME_AGAIN_WITHIN
        and not (_dated(run) and _dated(last) and run.ran_at != last.ran_at)
    )


def _dated(run: Run) -> bool:
    """Whether it was said when it was run."""
    return run.ran_at != run.sent_at
