"""Refits follow the runs, hold nobody up, outlive a worker that fails, and end with the quarter."""

from collections.abc import AsyncIterator, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from bot.app.house import build_house
from bot.domain.drill import SetUp
from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.errors import OperatorError
from bot.fitting import fit_here
from bot.library.seconds import load_seconds
from bot.services.ports.fitting import FitFailed
from bot.services.ports.world import Storage
from bot.services.refits import Refits
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, MONDAY, FixedClock, a_drill, a_kitchen, a_result, a_run

QUARTER = "2026-Q4"
NEW_YEAR = datetime(2027, 1, 4, 5, tzinfo=UTC)
"""When the quarter ends in London: the turn of its fifty-third week."""
COOKS = ("noor", "kwabena", "lio", "petra")


class Fitting:
    """Fits here, counting; fails while it is told to, and meanwhile looks whether the storage can be used."""

    def __init__(self, storage: Storage) -> None:
        self._storage = storage
        self.fits = 0
        self.broken = False

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """A fit, while the room goes on speaking with the storage."""
        self.fits += 1
        async with self._storage.begin() as work:
            assert await work.kitchens.get(KITCHEN_ROOM)
        if self.broken:
            raise FitFailed("the worker ended")
        return fit_here(cells)


class Kitchen:
    """A kitchen with runs, its refits, and the faults told."""

    def __init__(self, storage: SqlStorage, clock: FixedClock) -> None:
        self.storage = storage
        self.fitting = Fitting(storage)
        self.faults: list[str] = []
        house = build_house(clock=clock, bot_id="@platepace:tern.example")
        self.refits = Refits(storage, house, self.fitting, self._report)
        self._runs = 0

    async def _report(self, fault: OperatorError) -> None:
        self.faults.append(str(fault))

    async def open(self, runs: int) -> None:
        """Open it and let each cook run on each of two specs so many times."""
        async with self.storage.begin() as work:
            await work.kitchens.save(a_kitchen())
            one = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
            spec = replace(a_drill().spec, accept="no drip")
            other = await work.drills.publish(KITCHEN_ROOM, a_drill(spec=spec, set_up=SetUp(plates=9)), None, MONDAY)
        self.drills = [(one.set_up_id, one.spec_id), (other.set_up_id, other.spec_id)]
        for nth in range(runs):
            for number, cook in enumerate(COOKS):
                for drill in range(2):
                    await self.run(cook, drill, 160 + 12 * number + 5 * drill + nth)

    async def run(self, cook: str, drill: int, net_s: float) -> None:
        """One witnessed run more."""
        self._runs += 1
        event_id = f"$run{self._runs}"
        async with self.storage.begin() as work:
            run = a_run(
                *self.drills[drill],
                user_id=f"@{cook}:tern.example",
                event_id=event_id,
                arrived=self._runs,
                ran_at=MONDAY + timedelta(minutes=self._runs),
                result=a_result(net_s=net_s),
            )
            await work.runs.save(run)
            await work.runs.raise_hand(event_id, "@bastian:tern.example", f"$hand{self._runs}")

    async def stored(self) -> tuple[int, bool] | None:
        """How many runs are in the stored fit, and whether it is closed."""
        async with self.storage.begin() as work:
            fitted = await work.fits.get(KITCHEN_ROOM, QUARTER)
        return (
            (sum(cook.runs for cook in fitted.fit.cooks), fitted.closed_at is not None)
            if fitted and fitted.fit
            else None
        )


@pytest.fixture
async def kitchen(clock: FixedClock) -> AsyncIterator[Kitchen]:
    """Sixteen runs of four cooks on two specs."""
    storage = SqlStorage("sqlite://", clock)
    await storage.migrate()
    kitchen = Kitchen(storage, clock)
    await kitchen.open(2)
    yield kitchen
    await storage.close()


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


async def test_a_fit_is_made_anew_when_runs_have_changed_and_only_then(kitchen: Kitchen) -> None:
    """One look fits, the next finds nothing to do, a run more is fitted; the storage is free meanwhile."""
    await kitchen.refits.look()
    await kitchen.refits.look()
    assert (kitchen.fitting.fits, await kitchen.stored()) == (1, (16, False))
    await kitchen.run("noor", 0, 159)
    await kitchen.refits.look()
    assert (kitchen.fitting.fits, await kitchen.stored()) == (2, (17, False))


async def test_a_worker_that_fails_is_told_of_and_tried_again(kitchen: Kitchen) -> None:
    """The stored fit stands meanwhile; every look tells the same sentence, which Faults tells once a day."""
    await kitchen.refits.look()
    kitchen.fitting.broken = True
    await kitchen.run("noor", 0, 159)
    await kitchen.refits.look()
    await kitchen.refits.look()
    assert len(kitchen.faults) == 2
    assert set(kitchen.faults) == {"The fit of a quarter failed and is tried again: the worker ended."}
    assert await kitchen.stored() == (16, False)
    kitchen.fitting.broken = False
    await kitchen.refits.look()
    assert await kitchen.stored() == (17, False)


async def test_a_quarter_closes_with_its_last_fit_and_its_board(kitchen: Kitchen, clock: FixedClock) -> None:
    """Not a minute before the kitchen's Monday turns, with the seconds used; a later change of runs changes nothing."""
    clock.set(NEW_YEAR - timedelta(minutes=1))
    await kitchen.refits.look()
    assert await kitchen.stored() == (16, False)
    clock.set(NEW_YEAR)
    await kitchen.refits.look()
    async with kitchen.storage.begin() as work:
        closed = await work.fits.get(KITCHEN_ROOM, QUARTER)
    assert closed
    assert closed.board
    assert [row.figure.user_id for row in closed.board.board.public] == ["@noor:tern.example", "@kwabena:tern.example"]
    assert closed.seconds == load_seconds()
    await kitchen.run("petra", 0, 60)
    await kitchen.refits.look()
    async with kitchen.storage.begin() as work:
        assert await work.fits.get(KITCHEN_ROOM, QUARTER) == closed


async def test_a_quarter_stays_open_while_its_last_fit_fails(kitchen: Kitchen, clock: FixedClock) -> None:
    """It closes as soon as there is one of all its runs."""
    kitchen.fitting.broken = True
    clock.set(NEW_YEAR + timedelta(days=1))
    await kitchen.refits.look()
    assert await kitchen.stored() is None
    kitchen.fitting.broken = False
    await kitchen.refits.look()
    assert await kitchen.stored() == (16, True)
