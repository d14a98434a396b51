"""What the mixed model needs of the counted runs: sums for each cook on each set-up, never the single runs."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import log
from typing import NamedTuple

NEEDED_RUNS = 15
NEEDED_COOKS = 4
NEEDED_LINKS = 3


@dataclass(frozen=True)
class TimedRun:
    """A counted run with a time.

    ``log_ratio`` is ln(net seconds / computed standard seconds of the set-up), ``week`` the weeks since the quarter
    began, with fractions.
    """

    cook: str
    set_up: int
    log_ratio: float
    week: float


class Cell(NamedTuple):
    """The sufficient statistics of one cook's counted runs on one set-up within a quarter.

    Sums over the runs, and sums of products, of y = ln(net / computed standard), t = weeks since the quarter began,
    and p = practice = ln of the cook's own run number in the quarter (first run 0, second 0.69, tenth 2.30), counted
    over all set-ups. All without a unit but t, in weeks.
    """

    cook: str
    set_up: int
    runs: int = 0
    sum_y: float = 0.0
    sum_yy: float = 0.0
    sum_t: float = 0.0
    sum_tt: float = 0.0
    sum_ty: float = 0.0
    sum_p: float = 0.0
    sum_pp: float = 0.0
    sum_py: float = 0.0
    sum_tp: float = 0.0

    def plus(self, log_ratio: float, week: float, nth: int) -> "Cell":
        """With one more run, the cook's ``nth`` of the quarter (from 1) on any set-up."""
        y, t, p = log_ratio, week, log(nth)
        return Cell(
            self.cook,
            self.set_up,
            self.runs + 1,
            self.sum_y + y,
            self.sum_yy + y * y,
            self.sum_t + t,
            self.sum_tt + t * t,
            self.sum_ty + t * y,
            self.sum_p + p,
            self.sum_pp + p * p,
            self.sum_py + p * y,
            self.sum_tp + t * p,
        )


def cells_of(runs: Iterable[TimedRun]) -> tuple[Cell, ...]:
    """A quarter's counted runs, given in the order in which they were run, gathered into cells."""
    cells: dict[tuple[str, int], Cell] = {}
    so_far: dict[str, int] = {}
    for run in runs:
        so_far[run.cook] = so_far.get(run.cook, 0) + 1
        cell = cells.get((run.cook, run.set_up), Cell(run.cook, run.set_up))
        cells[run.cook, run.set_up] = cell.plus(run.log_ratio, run.week, so_far[run.cook])
    return tuple(cells.values())


@dataclass(frozen=True)
class Groups:
    """The number of the connected group of each cook and of each set-up; across groups nothing is comparable."""

    cooks: Mapping[str, int]
    set_ups: Mapping[int, int]


def groups(cells: Iterable[Cell]) -> Groups:
    """Who is connected with whom through set-ups run by both, directly or by way of others (union-find).

    Source: R. E. Tarjan, J. ACM 22 (1975), 215-225; connectedness of a two-way layout: Searle, Linear Models, 1971.
    """
    parent: dict[str | int, str | int] = {}
    for cell in cells:
        parent[_root(parent, cell.cook)] = _root(parent, cell.set_up)
    numbers: dict[str | int, int] = {}
    found = {node: numbers.setdefault(_root(parent, node), len(numbers)) for node in tuple(parent)}
    return Groups(
        {node: number for node, number in found.items() if isinstance(node, str)},
        {node: number for node, number in found.items() if isinstance(node, int)},
    )


def _root(parent: dict[str | int, str | int], node: str | int) -> str | int:
    """The root of the node's tree; every second node on the way is hung one higher."""
    parent.setdefault(node, node)
    while parent[node] != node:
        parent[node] = node = parent[parent[node]]
    return node
