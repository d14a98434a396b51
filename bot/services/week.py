"""What a posting's boards are made of, gathered from what is kept: its runs, and what each cook's earlier runs say."""

from collections.abc import Sequence
from datetime import date, timedelta

from bot.domain.boards import Entry, Week
from bot.domain.expected import Earlier, Expected, Formerly, expect
from bot.domain.kitchen_day import week_of
from bot.domain.noise import noises
from bot.domain.places import Board
from bot.services.ports.records import ClosedBoard, LiveDrill, Run
from bot.services.ports.world import UnitOfWork

WEEKS_BACK = 26
"""How far back a cook's earlier runs are looked at: half a year (common practice, no source)."""


async def week_of_posting(work: UnitOfWork, live: LiveDrill, runs: Sequence[Run]) -> Week:
    """The week of this posting with these runs on its board; later weeks change nothing of it."""
    first, last = _monday(live.week) - timedelta(weeks=WEEKS_BACK), _monday(live.week) + timedelta(days=6)
    cooks = dict.fromkeys(run.user_id for run in runs)
    kept = {cook: _whole(await work.runs.in_days(live.room_id, cook, first, last)) for cook in cooks}
    on_it = {cook: [run for run in theirs if run.set_up_id == live.set_up_id] for cook, theirs in kept.items()}
    closed = await work.drills.closed_boards(live.room_id, "own", week_of(first), live.week)
    standard_s = {run.user_id: run.result.standard_s for run in runs}
    expected = {cook: _expected(cook, live, standard_s[cook], kept[cook], closed) for cook in cooks}
    members = await work.kitchens.members(live.room_id)
    return Week(
        entries=[_entry(run) for run in runs],
        noise=noises(
            {cook: [net_s for run in theirs if (net_s := run.result.net_s)] for cook, theirs in on_it.items()}
        ),
        expected={cook: found for cook, found in expected.items() if found},
        off=frozenset(member.user_id for member in members if not member.on_boards),
    )


def _entry(run: Run) -> Entry:
    """The run as the boards see it."""
    count = run.result.count
    return Entry(
        user_id=run.user_id,
        net_s=run.result.net_s,
        accepted=count.accepted,
        attempted=count.attempted,
        rebuilt=count.rebuilt,
        witnessed=bool(run.witnesses),
        kind=run.result.kind,
    )


def _whole(runs: Sequence[Run]) -> list[Run]:
    """Those of one cook in which every plate was attempted, within the day's safe number; settling in or not."""
    return [run for run in runs if run.result.kind in ("counted", "settling") and not (run.over_limit or run.partner)]


def _expected(
    cook: str, live: LiveDrill, standard_s: float, kept: Sequence[Run], closed: Sequence[ClosedBoard]
) -> Expected | None:
    earlier = [Earlier(run.set_up_id, run.result.net_s, run.result.standard_s) for run in kept if run.week < live.week]
    formerly = [
        Formerly(_weeks_between(board.week, live.week), board.set_up_id, then)
        for board in closed
        if (then := _expected_then(board.board, cook))
    ]
    return expect(earlier, formerly, live.set_up_id, standard_s)


def _expected_then(board: Board, cook: str) -> Expected | None:
    row = board.row_of(cook)
    return row.figure.expected if row else None


def _weeks_between(earlier: str, later: str) -> int:
    return (_monday(later) - _monday(earlier)).days // 7


def _monday(week: str) -> date:
    """The Monday of a local ISO week such as ``2026-W48``."""
    year, number = week.split("-W")
    return date.fromisocalendar(int(year), int(number), 1)
