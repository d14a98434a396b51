"""The week's boards: who stands where on speed, steadiness and clean plates, and how much of it is shown to all."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby
from math import inf, isinf, sqrt
from statistics import NormalDist, median

from bot.domain.bests import whole_s
from bot.domain.run import Kind

RUNS_THAT_COUNT = 5
FEWEST_STEADY_RUNS = 3
FEWEST_COOKS = 3
MOST_SHOWN = 3
ONE_SIDED_95 = NormalDist().inv_cdf(0.95)


@dataclass(frozen=True)
class Entry:
    """One run of the week as the boards see it; ``net_s`` is None where there is no time."""

    user_id: str
    net_s: float | None
    accepted: int
    attempted: int
    rebuilt: int = 0
    witnessed: bool = False
    kind: Kind = "counted"


@dataclass(frozen=True)
class Figure:
    """What a cook has on one board: whole seconds or a share, from so many ``tries``; the plates behind a share."""

    user_id: str
    value: float
    tries: int
    clean: int = 0
    attempted: int = 0


@dataclass(frozen=True)
class Row:
    """A cook's place on a board; places are shared by those whom nothing tells apart."""

    place: int
    figure: Figure


Better = Callable[[Figure, Figure], bool]
"""Whether the first is distinguishably better than the second."""


def lower(one: Figure, other: Figure) -> bool:
    """Whether the first value is lower: the better one of two times."""
    return one.value < other.value


def higher(one: Figure, other: Figure) -> bool:
    """Whether the first value is higher: the better one of two shares."""
    return one.value > other.value


def rank_fast(entries: Iterable[Entry], better: Better = lower) -> tuple[Row, ...]:
    """By the best witnessed net of the week's first five runs, which are all counted as tries."""
    return _rank([_fastest(cook, runs) for cook, runs in _first_runs(entries)], better)


def rank_steady(entries: Iterable[Entry], better: Better = lower) -> tuple[Row, ...]:
    """By the median net of the witnessed among the first five runs, three or more; a run with no time is the slowest.

    A cook whose median has no time has no place.
    """
    return _rank([_steadiest(cook, runs) for cook, runs in _first_runs(entries)], better)


def rank_clean(entries: Iterable[Entry], better: Better = higher) -> tuple[Row, ...]:
    """By the share of plates right first time in the witnessed among the first five runs, few plates trusted less.

    The value is the lower end of Wilson's interval, one-sided 95 %.
    """
    return _rank([_cleanest(cook, runs) for cook, runs in _first_runs(entries)], better)


def public(rows: Sequence[Row], ran: int) -> tuple[Row, ...]:
    """The rows that everybody may see where ``ran`` cooks ran: the first half of them, three at most, and their ties.

    Nothing below three cooks. Where ties would show every row, only the shared first.
    """
    most = min(ran // 2, MOST_SHOWN)
    if ran < FEWEST_COOKS or not rows:
        return ()
    last_place = rows[:most][-1].place
    shown = tuple(row for row in rows if row.place <= last_place)
    if len(shown) > most and len(shown) == len(rows):
        return tuple(row for row in rows if row.place == rows[0].place)
    return shown


def wilson(successes: int, trials: int, z: float) -> tuple[float, float]:
    """Wilson's score interval for a share, ``z`` standard errors to each side (E. B. Wilson, JASA 22, 1927)."""
    share, squared = successes / trials, z * z
    middle = share + squared / (2 * trials)
    reach = z * sqrt(share * (1 - share) / trials + squared / (4 * trials * trials))
    low, high = ((middle + side * reach) / (1 + squared / trials) for side in (-1, 1))
    return low if successes else 0.0, high if successes < trials else 1.0


def _first_runs(entries: Iterable[Entry]) -> list[tuple[str, list[Entry]]]:
    """Every cook's first five runs, in the order in which they came."""
    by_cook = groupby(sorted(entries, key=lambda entry: entry.user_id), key=lambda entry: entry.user_id)
    return [(cook, list(runs)[:RUNS_THAT_COUNT]) for cook, runs in by_cook]


def _good_for_boards(runs: Iterable[Entry]) -> list[Entry]:
    return [run for run in runs if run.witnessed and run.kind == "counted"]


def _fastest(cook: str, runs: Sequence[Entry]) -> Figure | None:
    nets_s = [run.net_s for run in _good_for_boards(runs) if run.net_s is not None]
    return Figure(cook, whole_s(min(nets_s)), len(runs)) if nets_s else None


def _steadiest(cook: str, runs: Sequence[Entry]) -> Figure | None:
    nets_s = [inf if run.net_s is None else run.net_s for run in _good_for_boards(runs)]
    if len(nets_s) < FEWEST_STEADY_RUNS or isinf(middle := median(nets_s)):
        return None
    return Figure(cook, whole_s(middle), len(nets_s))


def _cleanest(cook: str, runs: Sequence[Entry]) -> Figure | None:
    judged = _good_for_boards(runs)
    clean, attempted = sum(run.accepted - run.rebuilt for run in judged), sum(run.attempted for run in judged)
    if not attempted:
        return None
    return Figure(cook, wilson(clean, attempted, ONE_SIDED_95)[0], len(judged), clean, attempted)


def _rank(figures: Sequence[Figure | None], better: Better) -> tuple[Row, ...]:
    """Places of those who have a figure: one more than the cooks distinguishably better."""
    placed = [figure for figure in figures if figure]
    rows = (Row(1 + sum(better(other, figure) for other in placed), figure) for figure in placed)
    return tuple(sorted(rows, key=lambda row: (row.place, row.figure.user_id)))
