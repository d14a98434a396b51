"""Where the time of a run goes: its splits, step by step, beside standard time, one's own usual and the house's."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median, quantiles

from bot.domain.drill import SetUp, Spec, Step
from bot.domain.standard_time import tools, walk_s
from bot.domain.techniques import Seconds

MOST_OFF_S = 2
"""How far the splits may be from the clock: each is stopped by hand (common practice, no source)."""

RUNS_TO_REPEAT = 3
"""A loss in one run may be chance; what is lost in each of the last three is what to practise."""

FEWEST_OF_THE_HOUSE = 5
"""People below whom nothing is said of how the house does."""


@dataclass(frozen=True)
class SplitRun:
    """The splits of one run, in whole seconds by step, and the plates that were built in it."""

    splits_s: tuple[int, ...]
    attempted: int


@dataclass(frozen=True)
class StepTime:
    """One step of one run: the seconds that it took, its standard seconds, and its touches."""

    taken_s: int
    standard_s: float
    touches: int

    @property
    def pace_s(self) -> float:
        """Seconds a touch."""
        return self.taken_s / self.touches

    @property
    def lost_s(self) -> float:
        """Touches x (own seconds a touch - standard seconds a touch); below zero where time was won."""
        return self.taken_s - self.standard_s


def has_splits(set_up: SetUp) -> bool:
    """Whether a step has a beginning and an end of its own: component by component, and with no call in between."""
    return set_up.working == "component" and not set_up.pressure


def add_up(splits_s: Sequence[int], clock_s: int) -> bool:
    """Whether the splits make the clock, to what the hand can time."""
    return abs(sum(splits_s) - clock_s) <= MOST_OFF_S


def steps_standard_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int) -> tuple[float, ...]:
    """Standard seconds of each step on so many plates, component by component; together the run's standard time.

    A step has its touches on every plate, the tool change before it, and its walk along the row; a press and its lift
    walk together and take half of it each. Start and stop belong to the first step and the last by halves.
    """
    share = -(-plates // set_up.cooks)
    touching = [share * step.pieces * seconds.techniques[step.technique].seconds for step in spec.steps]
    changing = [0.0, *(seconds.tool_change_s * (before != tool) for before, tool in pairwise(tools(spec)))]
    walking = [part * walk_s(set_up, seconds, share) for part in _parts_of_a_walk(spec)]
    ends = [0.0] * len(spec.steps)
    ends[0] += seconds.start_stop_s / 2
    ends[-1] += seconds.start_stop_s / 2
    return tuple(map(sum, zip(touching, changing, walking, ends, strict=True)))


def step_times(spec: Spec, set_up: SetUp, seconds: Seconds, run: SplitRun) -> tuple[StepTime, ...]:
    """The steps of a run, in order; none where the splits are of another number of steps than the spec now has."""
    if len(run.splits_s) != len(spec.steps) or not run.attempted:
        return ()
    standards_s = steps_standard_s(spec, set_up, seconds, run.attempted)
    return tuple(
        StepTime(taken_s, standard, step.pieces * run.attempted)
        for step, taken_s, standard in zip(spec.steps, run.splits_s, standards_s, strict=True)
    )


def repeated_s(lost_s: Sequence[float]) -> float | None:
    """Seconds lost in each of the last three runs: the least of the three. None for fewer, or where one lost none.

    No more than the splits may be off by is no loss.
    """
    last = lost_s[-RUNS_TO_REPEAT:]
    return min(last) if len(last) == RUNS_TO_REPEAT and min(last) > MOST_OFF_S else None


def slowest_step(spec: Spec, set_up: SetUp, seconds: Seconds, runs: Sequence[SplitRun]) -> Step | None:
    """The step that costs most over standard time in each of the last three runs with splits; None where none does.

    Runs are given in the order in which they were run.
    """
    timed = [times for run in runs if (times := step_times(spec, set_up, seconds, run))]
    by_step = zip(spec.steps, zip(*timed, strict=True), strict=False)
    repeated = [(lost, step) for step, times in by_step if (lost := repeated_s([time.lost_s for time in times]))]
    return max(repeated, key=lambda each: each[0])[1] if repeated else None


def quickest_quarter_s(paces_s: Sequence[Sequence[float]]) -> float | None:
    """The pace that the quickest quarter of the house reaches on a step, each cook standing by their own median.

    ``paces_s`` are each cook's. None for fewer than five cooks. Between two cooks the quartile is interpolated as
    R's type 7 does (Hyndman and Fan, The American Statistician 50, 1996).
    """
    medians_s = [median(cook) for cook in paces_s if cook]
    return quantiles(medians_s, n=4, method="inclusive")[0] if len(medians_s) >= FEWEST_OF_THE_HOUSE else None


def _parts_of_a_walk(spec: Spec) -> list[float]:
    """How much of a walk along the row each step has to itself."""
    techniques = [step.technique for step in spec.steps]
    around = pairwise([None, *techniques, None])
    shared = [pair == ("press", "lift") for pair in around]
    return [1 - (before + after) / 2 for before, after in pairwise(shared)]
