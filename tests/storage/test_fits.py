"""The sums of a quarter's compared runs are those that the domain makes run by run, and fits come back whole."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.domain.drill import SetUp
from bot.domain.fairness.cells import TimedRun, cells_of
from bot.domain.fairness.fit import CookEffect, Fit, PairEffect, SetUpEffect
from bot.domain.quarter import weeks_into
from bot.library.seconds import load_seconds
from bot.services.ports.fitting import FittedQuarter
from bot.services.ports.records import Run
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, KWABENA, LIO, MONDAY, NOOR, a_drill, a_result, a_run

QUARTER = "2026-Q4"
FIT = Fit(
    level=0.1,
    level_se=0.04,
    trend=-0.002,
    learning=-0.07,
    sd_cook=0.18,
    sd_set_up=0.1,
    sd_pair=0.05,
    sd_noise=0.06,
    criterion=-12.5,
    mid_week=6.5,
    cooks=(CookEffect(NOOR, 9, 0, -0.1, 0.03, 1.2), CookEffect(LIO, 8, 0, 0.1, 0.03, 1.1)),
    set_ups=(SetUpEffect(1, 17, 0, 0.08, 0.04),),
    pairs=(PairEffect(NOOR, 1, 0.01),),
    pace_covariances=(0.001, 0.0002, 0.001),
    set_up_covariances=(0.0016,),
)


class Quarter:
    """Runs put down in one kitchen, on two set-ups, each in a message of its own."""

    def __init__(self, work: UnitOfWork) -> None:
        self.work = work
        self.runs: list[Run] = []

    async def lay(self) -> "Quarter":
        """Publish both."""
        first = await self.work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        second = await self.work.drills.publish(KITCHEN_ROOM, a_drill(set_up=SetUp(plates=14)), None, MONDAY)
        self.spec_id, self.set_ups = first.spec_id, (first.set_up_id, second.set_up_id)
        return self

    async def run(self, cook: str, net_s: float, *, days: int = 0, set_up: int = 0, **changes: object) -> Run:
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
        self.runs.append(await self.work.runs.save(replace(run, **changes)))  # type: ignore[arg-type] # any field
        return self.runs[-1]

    async def gathered(self) -> list[object]:
        """What the storage makes of the quarter."""
        return [row.cell for row in await self.work.fits.gather([KITCHEN_ROOM], QUARTER)]


async def test_the_sums_are_those_made_run_by_run(storage: SqlStorage) -> None:
    """One GROUP BY gives the cells that the domain makes of the same runs in order (recomputed by the domain)."""
    async with storage.begin() as work:
        quarter = await Quarter(work).lay()
        for nth, cook in enumerate([NOOR, LIO, NOOR, KWABENA, NOOR, LIO, NOOR, KWABENA]):
            await quarter.run(cook, 150 + 7 * nth, days=-3 * nth, set_up=nth % 3 % 2)
        timed = [
            TimedRun(run.user_id, run.set_up_id, _log_ratio(run), weeks_into(QUARTER, run.kitchen_day))
            for run in sorted(quarter.runs, key=lambda run: run.ran_at)
        ]
        expected = sorted(cells_of(timed), key=lambda cell: (cell.cook, cell.set_up))
        found = await quarter.gathered()
        assert [cell[:3] for cell in found] == [cell[:3] for cell in expected]  # type: ignore[index] # cells
        for cell, same in zip(found, expected, strict=True):
            assert cell[3:] == pytest.approx(same[3:], abs=1e-12)  # type: ignore[index] # as above


def _log_ratio(run: Run) -> float:
    from math import log

    assert run.result.net_s
    return log(run.result.net_s / run.result.standard_s)
