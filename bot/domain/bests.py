"""Personal bests on one set-up: first marks and bests, and how far a cook's runs usually lie apart."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import exp, log, sqrt
from statistics import NormalDist, median

from bot.domain.run import Kind

FEWEST_FOR_NOISE = 3
"""Runs with a time below which nothing is said of how far they lie apart."""

MEDIAN_DIVISOR = sqrt(2) * NormalDist().inv_cdf(0.75)
"""Median absolute difference of two normal values over their standard deviation: 0.954."""


@dataclass(frozen=True)
class Judged:
    """What of a run decides on bests; ``net_s`` is None where there is no time."""

    net_s: float | None
    accepted: int
    plates: int
    kind: Kind = "counted"
    witnessed: bool = False


@dataclass(frozen=True)
class Best:
    """The standing best: its time as shown, which of the runs it is, and whether it is still the first mark."""

    net_s: int
    nth: int
    is_first_mark: bool


def whole_s(net_s: float) -> int:
    """A time in whole seconds, as it is shown."""
    return round(net_s)


def best_of(runs: Sequence[Judged]) -> Best | None:
    """The best that stands after these runs, given in the order in which they were run; None before the first mark.

    A first mark needs no witness and may be set while settling in; a best after it needs a counted, witnessed run.
    Taking a run away or its witness back and asking again gives the best that then stands.
    """
    return next(reversed(bests_of(runs)), None)


def bests_of(runs: Sequence[Judged]) -> list[Best]:
    """Every best that stood after one of these runs, in order, the first mark first."""
    bests: list[Best] = []
    for nth, run in enumerate(runs):
        net_s = _net_of_good(run)
        if net_s is not None and (not bests or (_may_be_best(run) and net_s < bests[-1].net_s)):
            bests.append(Best(net_s, nth, is_first_mark=not bests))
    return bests


def own_noise(nets_s: Sequence[float]) -> float | None:
    """A cook's own noise: the standard deviation of log net that the steps from each run to the next speak of.

    The median absolute successive difference over 0.954, so that neither a slow drift nor one wild run counts much.
    None for fewer than three runs.
    """
    step = _usual_step(nets_s)
    return None if step is None else step / MEDIAN_DIVISOR


def usual_difference_s(nets_s: Sequence[float]) -> int | None:
    """By how many seconds two runs of this cook usually differ: half of the steps are larger, half smaller.

    The usual step of log net, taken at the median net. None for fewer than three runs.
    """
    step = _usual_step(nets_s)
    return None if step is None else whole_s(median(nets_s) * (exp(step) - 1))


def _net_of_good(run: Judged) -> int | None:
    """The whole seconds of a run good enough for bests: all plates attempted and nine tenths of them accepted."""
    good = run.kind in ("counted", "settling") and 10 * run.accepted >= 9 * run.plates
    return whole_s(run.net_s) if good and run.net_s is not None else None


def _may_be_best(run: Judged) -> bool:
    return run.witnessed and run.kind == "counted"


def _usual_step(nets_s: Sequence[float]) -> float | None:
    if len(nets_s) < FEWEST_FOR_NOISE:
        return None
    return median(abs(log(after / before)) for before, after in pairwise(nets_s))
