"""What the kitchen's runs say of cooks and drills across specs: the stored fit, and what it stands on."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.grounds import Ground, ground_of, may_compare
from bot.domain.identity import set_up_fingerprint, spec_fingerprint
from bot.domain.kitchen_day import kitchen_day, week_of
from bot.domain.quarter import quarter_of
from bot.domain.techniques import Seconds
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.fitting import Gathered
from bot.services.ports.records import Kitchen
from bot.services.ports.world import UnitOfWork


async def fit_of(work: UnitOfWork, room_id: str, quarter: str) -> Fit | None:
    """The last stored fit of a kitchen's quarter (``quarter_of(week)``); None while its runs are too few for one."""
    fitted = await work.fits.get(room_id, quarter)
    return fitted.fit if fitted else None


def quarter_at(kitchen: Kitchen, when: datetime) -> str:
    """The kitchen's quarter at this moment, by the ISO week of its own day."""
    return quarter_of(week_of(kitchen_day(when, kitchen.zone, kitchen.day_turn)))


@dataclass(frozen=True)
class Compared:
    """The compared runs of a quarter as sums, with the drill of each set-up.

    Set-ups written alike in several kitchens are one: ``same`` gives the one that each stored set-up is taken for.
    """

    gathered: Sequence[Gathered]
    drills: Mapping[int, PublishedDrill]
    same: Mapping[int, int]

    @property
    def cells(self) -> tuple[Cell, ...]:
        """The sums of each cook on each set-up, over all rooms."""
        cells: dict[tuple[str, int], Cell] = {}
        for cell in (row.cell for row in self.gathered):
            found = cells.get((cell.cook, cell.set_up))
            cells[cell.cook, cell.set_up] = _together(found, cell) if found else cell
        return tuple(cells.values())

    @property
    def spec_of(self) -> dict[int, int]:
        """The spec of each set-up."""
        return {set_up: published.spec_id for set_up, published in self.drills.items()}

    def ground(self, set_up: int | None = None) -> Ground:
        """What there is of one set-up, or of all."""
        return ground_of(self.cells, self.spec_of, set_up)

    def known(self, rows: Iterable[Gathered]) -> list[Gathered]:
        """Those of these sums whose set-ups are compared, under the set-ups that they are taken for."""
        return [
            row._replace(cell=row.cell._replace(set_up=self.same[row.cell.set_up]))
            for row in rows
            if row.cell.set_up in self.same
        ]


async def compared_runs(work: UnitOfWork, seconds: Seconds, rooms: Sequence[str], quarter: str) -> Compared:
    """Gather the quarter's runs, those left out that may not stand beside others."""
    gathered = await work.fits.gather(rooms, quarter)
    drills: dict[int, PublishedDrill] = {}
    for set_up in sorted({row.cell.set_up for row in gathered}):
        published = await work.drills.get(set_up)
        if published and may_compare(published.drill.spec, published.drill.set_up, seconds):
            drills[set_up] = published
    same = _written_alike(drills)
    found = Compared(
        (),
        {published.set_up_id: published for published in same.values()},
        {set_up: published.set_up_id for set_up, published in same.items()},
    )
    return replace(found, gathered=found.known(gathered))


def _together(one: Cell, other: Cell) -> Cell:
    """The sums of one cook on one set-up from two rooms."""
    return Cell._make((*one[:2], *(a + b for a, b in zip(one[2:], other[2:], strict=True))))


def _written_alike(drills: Mapping[int, PublishedDrill]) -> dict[int, PublishedDrill]:
    """Each set-up by the first one with its fingerprint, its spec by the first spec written alike."""
    set_ups: dict[str, PublishedDrill] = {}
    specs: dict[str, int] = {}
    found = {}
    for set_up, published in drills.items():
        spec, laid = published.drill.spec, published.drill.set_up
        spec_id = specs.setdefault(spec_fingerprint(spec), published.spec_id)
        found[set_up] = set_ups.setdefault(set_up_fingerprint(spec, laid), replace(published, spec_id=spec_id))
    return found
