"""The fit of a quarter: what makes it, what it is made of, and what keeps it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import NamedTuple, Protocol

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.ranking import QuarterBoard
from bot.domain.techniques import Seconds


class FitFailed(Exception):  # noqa: N818 - it says what happened, as SendRefused does
    """No fit came back: the worker ended, took too long or could not fit."""


class Fitter(Protocol):
    """Makes fits, in a process of its own or in this one."""

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """The fit of these cells; None where they cannot be fitted. A FitFailed where the fitter itself failed."""


class Gathered(NamedTuple):
    """A cook's compared runs on a set-up in one room: their sums, how many were witnessed, and the plates of those."""

    room_id: str
    cell: Cell
    witnessed: int
    clean: int
    attempted: int


@dataclass(frozen=True, kw_only=True)
class FittedQuarter:
    """The fit that a quarter's numbers are given by, and what it was made from.

    ``whose`` is the kitchen's room, or ``group:`` and the name of a group. ``mark`` tells whether its runs have
    changed since. ``ready`` are the set-ups whose difficulty may be spoken of; for the others the computed standard
    stands. ``seconds`` are the standard seconds used. Once ``closed_at`` is set nothing of it changes again;
    ``board`` is then the board as it closed, None where the computed standard stood.
    """

    whose: str
    quarter: str
    mark: str
    fitted_at: datetime
    fit: Fit | None
    cells: tuple[Cell, ...]
    ready: tuple[int, ...]
    seconds: Seconds
    closed_at: datetime | None = None
    board: QuarterBoard | None = None


class Fits(Protocol):
    """Fitted quarters, and the sums of runs that fits are made from."""

    async def save(self, fitted: FittedQuarter) -> None:
        """Store, new or in the place of the one before."""

    async def get(self, whose: str, quarter: str) -> FittedQuarter | None:
        """The last one stored."""

    async def mark(self, whose: str, quarter: str) -> tuple[str, bool] | None:
        """What runs the stored one was made from, and whether it is closed; None where there is none."""

    async def mark_of_runs(self, rooms: Sequence[str], quarter: str) -> str:
        """What changes whenever the compared runs of these rooms in the quarter do."""

    async def gather(self, rooms: Sequence[str], quarter: str, since_day: int = 0) -> list[Gathered]:
        """The sums of the quarter's compared runs, from a day on (a proleptic ordinal) where one is given.

        Compared are kept, counted runs of one cook with a time, none beyond the day's limit.
        """
