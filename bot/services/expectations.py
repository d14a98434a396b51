"""What each cook of a posting is expected to take: from the fit as the week began, and from runs of earlier weeks."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from math import exp

from bot.domain.boards import RUNS_THAT_COUNT
from bot.domain.expected import Earlier, Expected, Fitted, Formerly, expect
from bot.domain.fairness.fit import CookEffect, Fit
from bot.domain.kitchen_day import week_of
from bot.domain.quarter import quarter_of, weeks_into
from bot.services.fairness import fit_of
from bot.services.ports.drill_records import ClosedBoard, LiveDrill
from bot.services.ports.run_records import Ran, Run
from bot.services.ports.world import UnitOfWork

WEEKS_BACK = 26
"""How far back a cook's earlier runs are looked at: half a year (common practice, no source)."""

NO_SET_UP = 0
"""No set-up has this id, so that no fit knows it."""


def days_looked_at(live: LiveDrill) -> tuple[date, date]:
    """The first kitchen day whose runs tell something of this posting, and the last of its own week."""
    return monday(live.week) - timedelta(weeks=WEEKS_BACK), monday(live.week) + timedelta(days=6)


async def keep_fitted(work: UnitOfWork, live: LiveDrill) -> None:
    """Keep what the fit says of every cook as a posting begins, if there is a fit.

    So the runs of its own week do not move what they are compared with.
    """
    quarter = quarter_of(live.week)
    fit = await fit_of(work, live.room_id, quarter)
    if fit is not None:
        week = weeks_into(quarter, monday(live.week))
        await work.drills.keep_fitted(live.id, fitted_of(fit, live.set_up_id, week))


async def expectations(
    work: UnitOfWork, live: LiveDrill, runs: Sequence[Run], kept: Mapping[str, Sequence[Ran]]
) -> dict[str, Expected]:
    """What the cooks of these runs are expected to take, given all that is ``kept`` of each; some have nothing."""
    fitted = await work.drills.fitted(live.id)
    first, _ = days_looked_at(live)
    closed = await work.drills.closed_boards(live.room_id, "own", week_of(first), live.week)
    found = {}
    for cook, theirs in kept.items():
        sent = [run for run in runs if run.user_id == cook][:RUNS_THAT_COUNT]
        whole = [run for run in sent if run.result.kind == "counted"]
        if not whole:
            continue
        earlier = [Earlier(ran.set_up_id, ran.net_s, ran.standard_s) for ran in theirs if ran.week < live.week]
        by_fit = fitted[cook].at_middle_of(len(sent)) if cook in fitted else None
        formerly = _formerly(cook, live, closed)
        found[cook] = expect(earlier, formerly, live.set_up_id, whole[0].result.standard_s, by_fit)
    return {cook: expected for cook, expected in found.items() if expected}


def monday(week: str) -> date:
    """The Monday of a local ISO week such as ``2026-W48``."""
    year, number = week.split("-W")
    return date.fromisocalendar(int(year), int(number), 1)


def fitted_of(fit: Fit, set_up_id: int, week: float) -> dict[str, Fitted]:
    """What a fit says of every cook's next run on a set-up, so many weeks after the quarter began."""
    return {cook.cook: _fitted(fit, cook, set_up_id, week) for cook in fit.cooks}


def _fitted(fit: Fit, cook: CookEffect, set_up_id: int, week: float) -> Fitted:
    usual, on_it = fit.expected(cook.cook, NO_SET_UP, week), fit.expected(cook.cook, set_up_id, week)
    knows_it = fit.difficulty(set_up_id) is not None
    return Fitted(exp(usual or 0.0), exp(on_it or 0.0) if knows_it else None, cook.runs, fit.learning)


def _formerly(cook: str, live: LiveDrill, closed: Sequence[ClosedBoard]) -> list[Formerly]:
    """What was expected of the cook in the weeks closed before."""
    rows = [(then, then.board.row_of(cook)) for then in closed]
    return [
        Formerly((monday(live.week) - monday(then.week)).days // 7, then.set_up_id, row.figure.expected)
        for then, row in rows
        if row and row.figure.expected
    ]
