"""Fits made anew when runs have changed, away from the room, and frozen with their board when a quarter closes."""

import logging
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, replace

from bot.domain.fairness.cells import NEEDED_COOKS, NEEDED_RUNS
from bot.domain.fairness.grounds import ready
from bot.domain.quarter import quarter_before, quarter_closes
from bot.errors import OperatorError
from bot.services.fairness import Compared, compared_runs, quarter_at
from bot.services.house import House
from bot.services.ports.fitting import FitFailed, FittedQuarter, Fitter
from bot.services.ports.records import Kitchen
from bot.services.ports.world import Storage, UnitOfWork
from bot.services.quarter import rank_kitchen

log = logging.getLogger(__name__)

Report = Callable[[OperatorError], Awaitable[None]]
"""Tells the operator of a fault."""


@dataclass(frozen=True)
class Owner:
    """Whose fit it is: a kitchen's or a group's; ``kitchen`` is the one whose calendar decides."""

    whose: str
    rooms: tuple[str, ...]
    kitchen: Kitchen


class Refits:
    """Told by a ticker to look; no transaction is open while a fit is made, so nobody waits for one."""

    def __init__(self, storage: Storage, house: House, fitter: Fitter, report: Report) -> None:
        self._storage = storage
        self._house = house
        self._fitter = fitter
        self._report = report

    async def look(self) -> None:
        """Fit what has changed in the running quarter of every kitchen and group, and close the one before."""
        for owner in await self._owners():
            now = quarter_at(owner.kitchen, self._house.clock())
            for quarter in (quarter_before(now), now):
                try:
                    await self._look_at(owner, quarter)
                except FitFailed as fault:
                    await self._report(OperatorError(f"The fit of a quarter failed and is tried again: {fault}."))
                except Exception:
                    log.exception("the fit of %s, %s failed", owner.whose, quarter)

    async def _owners(self) -> list[Owner]:
        async with self._storage.begin() as work:
            kitchens = {kitchen.room_id: kitchen for kitchen in await work.kitchens.all()}
        owners = [Owner(room_id, (room_id,), kitchen) for room_id, kitchen in kitchens.items()]
        for group in self._house.groups:
            rooms = tuple(room for room in group.rooms if room in kitchens)
            if len(rooms) > 1:
                owners.append(Owner(group.key, rooms, kitchens[rooms[0]]))
        return owners

    async def _look_at(self, owner: Owner, quarter: str) -> None:
        kitchen = owner.kitchen
        over = self._house.clock() >= quarter_closes(quarter, kitchen.zone, kitchen.day_turn)
        async with self._storage.begin() as work:
            known = await work.fits.mark(owner.whose, quarter)
            mark = await work.fits.mark_of_runs(owner.rooms, quarter)
            if known and (known[1] or (known[0] == mark and not over)):
                return
            compared = await compared_runs(work, self._house.seconds, owner.rooms, quarter)
        if not known and not compared.gathered:
            return
        fitted = await self._fit(owner, quarter, mark, compared)
        async with self._storage.begin() as work:
            if over and mark == await work.fits.mark_of_runs(owner.rooms, quarter):
                fitted = await self._closed(work, fitted, compared)
            await work.fits.save(fitted)

    async def _fit(self, owner: Owner, quarter: str, mark: str, compared: Compared) -> FittedQuarter:
        ground, cells = compared.ground(), compared.cells
        enough = ground.runs >= NEEDED_RUNS and ground.cooks >= NEEDED_COOKS
        return FittedQuarter(
            whose=owner.whose,
            quarter=quarter,
            mark=mark,
            fitted_at=self._house.clock(),
            fit=await self._fitter.fit(cells) if enough else None,
            cells=cells,
            ready=tuple(sorted(ready(cells, compared.spec_of))),
            seconds=self._house.seconds,
        )

    async def _closed(self, work: UnitOfWork, fitted: FittedQuarter, compared: Compared) -> FittedQuarter:
        """The same, closed for good, with its board as it stands."""
        of_kitchen = await work.kitchens.get(fitted.whose)
        board = await rank_kitchen(work, self._house.seconds, fitted, compared) if of_kitchen else None
        return replace(fitted, closed_at=self._house.clock(), board=board)
