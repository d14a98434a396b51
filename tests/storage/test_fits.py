"""The sums of a quarter's compared runs are those that the domain makes run by run, and fits come back whole."""

from dataclasses import replace
from datetime import date, timedelta
from math import log
from typing import Any

import pytest

from bot.domain.drill import SetUp
from bot.domain.fairness.cells import Cell, TimedRun, cells_of
from bot.domain.fairness.fit import Band
from bot.domain.fairness.ranking import QuarterBoard
from bot.domain.places import Board, Figure, Row
from bot.domain.quarter import quarter_days, weeks_into
from bot.domain.run import Count
from bot.fitting import fit_here
from bot.library.seconds import load_seconds
from bot.services.ports.fitting import FittedQuarter
from bot.services.ports.run_records import Run
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, KWABENA, LIO, MONDAY, NOOR, a_drill, a_result, a_run

QUARTER = "2026-Q4"
OTHER_ROOM = "!lock:tern.example"


class Quarter:
    """Runs put down on two set-ups, each in a message of its own."""

    def __init__(self, work: UnitOfWork) -> None:
        self.work = work
        self.runs: list[Run] = []

    async def lay(self) -> "Quarter":
        """Publish both."""
        first = await self.work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        second = await self.work.drills.publish(KITCHEN_ROOM, a_drill(set_up=SetUp(plates=14)), None, MONDAY)
        self.spec_id, self.set_ups = first.spec_id, (first.set_up_id, second.set_up_id)
        return self

    async def run(self, cook: str = NOOR, net_s: float = 180, *, days: int = 0, set_up: int = 0, **changes: Any) -> Run:
        """A run so many days after Monday, the 23rd of November."""
        number = len(self.runs) + 1
        when = MONDAY + timedelta(days=days, minutes=number)
        run = a_run(
            self.set_ups[set_up],
            self.spec_id,
            user_id=cook,
            event_id=f"${number}",
            arrived=number,
            ran_at=when,
            kitchen_day=when.date(),
            result=a_result(net_s=net_s),
        )
        self.runs.append(await self.work.runs.save(replace(run, **changes)))
        return self.runs[-1]

    async def cells(self, *rooms: str, since: date = date.min) -> list[Cell]:
        """What the storage makes of the quarter."""
        found = await self.work.fits.gather(rooms or [KITCHEN_ROOM], QUARTER, since.toordinal())
        return [row.cell for row in found]

    async def mark(self) -> str:
        """What tells that nothing has changed."""
        return await self.work.fits.mark_of_runs([KITCHEN_ROOM], QUARTER)


def made_by_the_domain(runs: list[Run]) -> list[Cell]:
    """The cells of these runs, made run by run in the order in which they were run."""
    timed = [
        TimedRun(
            run.user_id,
            run.set_up_id,
            log((run.result.net_s or 0) / run.result.standard_s),
            weeks_into(QUARTER, run.kitchen_day),
        )
        for run in sorted(runs, key=lambda run: run.ran_at)
    ]
    return sorted(cells_of(timed))


async def test_the_sums_are_those_made_run_by_run(storage: SqlStorage) -> None:
    """One GROUP BY gives what the domain makes of the same runs, in the order in which they were run (recomputed)."""
    async with storage.begin() as work:
        quarter = await Quarter(work).lay()
        for nth, cook in enumerate([NOOR, LIO, NOOR, KWABENA, NOOR, LIO, NOOR, KWABENA]):
            await quarter.run(cook, 150 + 7 * nth, days=-3 * nth, set_up=nth % 3 % 2)
        found = await quarter.cells()
        expected = made_by_the_domain(quarter.runs)
        assert [cell[:3] for cell in found] == [cell[:3] for cell in expected]
        assert [cell[3:] for cell in found] == [pytest.approx(cell[3:], abs=1e-12) for cell in expected]


async def test_only_compared_runs_are_gathered(storage: SqlStorage) -> None:
    """Left out: short, settling in, with no time, of two, beyond the day's limit, taken off, of another quarter."""
    first, last = quarter_days(QUARTER)
    async with storage.begin() as work:
        quarter = await Quarter(work).lay()
        await quarter.run(result=a_result(kind="short"))
        await quarter.run(result=a_result(kind="settling"))
        await quarter.run(result=a_result(net_s=None, pace_s=None, levelled_s=None))
        await quarter.run(partner=LIO)
        await quarter.run(over_limit=True)
        await quarter.run(status="scrapped")
        await quarter.run(kitchen_day=first - timedelta(days=1))
        await quarter.run(kitchen_day=last + timedelta(days=1))
        await quarter.run(room_id=OTHER_ROOM)
        assert await quarter.cells() == []
        await quarter.run(kitchen_day=first)
        await quarter.run(kitchen_day=last)
        assert [cell.runs for cell in await quarter.cells()] == [2]
        assert [cell.runs for cell in await quarter.cells(since=last)] == [1]
        assert [cell.runs for cell in await quarter.cells(KITCHEN_ROOM, OTHER_ROOM)] == [1, 2]


async def test_the_mark_changes_with_the_compared_runs_alone(storage: SqlStorage) -> None:
    """With a new, an edited and a voided one; not with a short one."""
    async with storage.begin() as work:
        quarter = await Quarter(work).lay()
        marks = [await quarter.mark()]
        run = await quarter.run()
        marks.append(await quarter.mark())
        await work.runs.save(replace(run, result=a_result(net_s=181.0)))
        marks.append(await quarter.mark())
        await quarter.run(result=a_result(kind="short"))
        assert await quarter.mark() == marks[-1]
        await work.runs.save(replace(run, status="void"))
        assert await quarter.mark() == marks[0]
        assert len(set(marks)) == 3


async def test_plates_are_counted_of_witnessed_runs_alone(storage: SqlStorage) -> None:
    """Two raised hands on a message are one witnessed run; a rebuilt plate was not right first time."""
    async with storage.begin() as work:
        quarter = await Quarter(work).lay()
        for rebuilt in (1, 0):
            await quarter.run(result=a_result(count=Count(8, 7, redo=1, rebuilt=rebuilt)))
        await work.runs.raise_hand("$1", LIO, "$hand1")
        await work.runs.raise_hand("$1", KWABENA, "$hand2")
        (row,) = await work.fits.gather([KITCHEN_ROOM], QUARTER)
        assert (row.room_id, row.cell.runs, row.witnessed, row.clean, row.attempted) == (KITCHEN_ROOM, 2, 1, 6, 8)


async def test_a_fitted_quarter_comes_back_whole(storage: SqlStorage) -> None:
    """The fit to the last bit, the cells, the seconds and the board as it closed; a later one takes its place."""
    cells = made_by_the_domain(
        [
            a_run(set_up, 1, user_id=cook, ran_at=MONDAY + timedelta(hours=nth), result=a_result(net_s=150.0 + 9 * nth))
            for nth, (cook, set_up) in enumerate(
                (cook, set_up) for cook in (NOOR, LIO, KWABENA) for set_up in (1, 2, 2)
            )
        ]
    )
    row = Row(1, Figure(NOOR, 1.7, 3))
    fitted = FittedQuarter(
        whose=KITCHEN_ROOM,
        quarter=QUARTER,
        mark="9 1.5 7",
        fitted_at=MONDAY,
        fit=fit_here(cells),
        cells=tuple(cells),
        ready=(1, 2),
        seconds=load_seconds(),
        closed_at=MONDAY,
        board=QuarterBoard(Board((row,), 1), {NOOR: Band(1.7, 1.6, 1.8)}, {LIO: "judged"}, divided=True),
    )
    assert fitted.fit
    async with storage.begin() as work:
        assert await work.fits.mark(KITCHEN_ROOM, QUARTER) is None
        await work.fits.save(replace(fitted, closed_at=None, board=None, fit=None))
        assert await work.fits.mark(KITCHEN_ROOM, QUARTER) == ("9 1.5 7", False)
        await work.fits.save(fitted)
        assert await work.fits.mark(KITCHEN_ROOM, QUARTER) == ("9 1.5 7", True)
        assert await work.fits.get(KITCHEN_ROOM, QUARTER) == fitted
        assert await work.fits.get(KITCHEN_ROOM, "2026-Q3") is None
