"""The week's boards of what was run: who stands where on speed, steadiness and clean plates."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from math import hypot, inf, isinf, log, pi, sqrt
from statistics import median

from bot.domain.bests import whole_s
from bot.domain.expected import Expected
from bot.domain.places import TOO_CLOSE, Board, Figure, board
from bot.domain.run import Kind
from bot.domain.shares import ONE_SIDED_95, difference, wilson

RUNS_THAT_COUNT = 5
FEWEST_STEADY_RUNS = 3

MEDIAN_SPREAD = sqrt(pi / 2)
"""Standard error of a median over that of a mean, of many normal values: 1.2533."""


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
class Week:
    """What a posting's boards are made of.

    ``entries`` are its runs, every cook's in the order in which they came; ``noise`` is each cook's own, of log net;
    ``expected`` what each is expected to take, those left out who have nothing to compare with; ``off`` are those who
    are off public boards. Of those who were forgotten after the boards were frozen there are no runs: ``forgotten`` is
    what they had on each board, by its name, and ``forgotten_plates`` their clean plates.
    """

    entries: Sequence[Entry]
    noise: Mapping[str, float]
    expected: Mapping[str, Expected] = field(default_factory=dict)
    off: frozenset[str] = frozenset()
    forgotten: Mapping[str, Sequence[Figure]] = field(default_factory=dict)
    forgotten_plates: int = 0


def rank_fast(week: Week) -> Board:
    """By the best witnessed net of the week's first five runs, which are all counted as tries."""
    return board(_figures(week, "fast", _fastest), _quicker, _lowest, week.off)


def rank_steady(week: Week) -> Board:
    """By the median net of the witnessed among the first five runs, three or more; a run with no time is the slowest.

    A cook whose median has no time has no place.
    """
    return board(_figures(week, "steady", _steadiest), _quicker, _lowest, week.off)


def rank_clean(week: Week) -> Board:
    """By the share of plates right first time in the witnessed among the first five runs, few plates trusted less.

    The value is the lower end of Wilson's interval, one-sided 95 %; two shares are told apart by Newcombe's interval.
    """
    return board(_figures(week, "clean", _cleanest), _cleaner, _highest, week.off)


def first_runs(entries: Iterable[Entry]) -> list[tuple[str, list[Entry]]]:
    """Every cook's first five runs, in the order in which they came."""
    by_cook = groupby(sorted(entries, key=lambda entry: entry.user_id), key=lambda entry: entry.user_id)
    return [(cook, list(runs)[:RUNS_THAT_COUNT]) for cook, runs in by_cook]


def judged_nets_s(runs: Iterable[Entry]) -> list[float]:
    """The nets of the witnessed, counted runs; one with no time is slower than any."""
    return [inf if run.net_s is None else run.net_s for run in _good_for_boards(runs)]


def spread_of_middle(noise: float, runs: int) -> float:
    """The standard error of the median of so many log nets; of a single one it is the noise itself."""
    return noise if runs == 1 else noise * MEDIAN_SPREAD / sqrt(runs)


def _good_for_boards(runs: Iterable[Entry]) -> list[Entry]:
    return [run for run in runs if run.witnessed and run.kind == "counted"]


def _figures(week: Week, kind: str, figure_of: Callable[[str, Sequence[Entry], float], Figure | None]) -> list[Figure]:
    """The figures of those cooks who have one on this board, the forgotten among them."""
    figures = [figure_of(cook, runs, week.noise[cook]) for cook, runs in first_runs(week.entries)]
    return [figure for figure in (*figures, *week.forgotten.get(kind, ())) if figure]


def _fastest(cook: str, runs: Sequence[Entry], noise: float) -> Figure | None:
    nets_s = [net_s for net_s in judged_nets_s(runs) if not isinf(net_s)]
    return Figure(cook, whole_s(min(nets_s)), len(runs), noise) if nets_s else None


def _steadiest(cook: str, runs: Sequence[Entry], noise: float) -> Figure | None:
    nets_s = judged_nets_s(runs)
    if len(nets_s) < FEWEST_STEADY_RUNS or isinf(middle := median(nets_s)):
        return None
    return Figure(cook, whole_s(middle), len(nets_s), spread_of_middle(noise, len(nets_s)))


def _cleanest(cook: str, runs: Sequence[Entry], _noise: float) -> Figure | None:
    judged = _good_for_boards(runs)
    clean, attempted = sum(run.accepted - run.rebuilt for run in judged), sum(run.attempted for run in judged)
    if not attempted:
        return None
    low, _ = wilson(clean, attempted, ONE_SIDED_95)
    return Figure(cook, low, len(judged), clean=clean, attempted=attempted)


def _quicker(one: Figure, other: Figure) -> bool:
    """Whether the first time is shorter by more than chance would make it."""
    ahead = log(other.value / one.value)
    return ahead > 0 and ahead >= TOO_CLOSE * hypot(one.spread, other.spread)


def _cleaner(one: Figure, other: Figure) -> bool:
    """Whether the first share is higher by more than chance would make it."""
    least, _ = difference((one.clean, one.attempted), (other.clean, other.attempted), TOO_CLOSE)
    return least > 0 and one.value > other.value


def _lowest(figure: Figure) -> float:
    return figure.value


def _highest(figure: Figure) -> float:
    return -figure.value
