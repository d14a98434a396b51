"""How far the runs of each cook on a board lie apart of themselves, so that chance is not ranked."""

from collections.abc import Mapping, Sequence
from itertools import pairwise
from math import log
from statistics import median

from bot.domain.bests import MEDIAN_DIVISOR, own_noise

FEWEST_OWN_RUNS = 8
FEWEST_CREW_STEPS = 8

NOISE_TO_BEGIN_WITH = 0.04
"""Of log net, until the crew has shown its own (common practice, no source)."""

LEAST_NOISE = 0.01
"""A few runs alike by chance make no clockwork of a cook (common practice, no source)."""


def noises(nets_s: Mapping[str, Sequence[float]]) -> dict[str, float]:
    """Each cook's own noise of log net, from their runs on the set-up in order.

    Of a cook with fewer than eight runs it is the crew's, from the steps of all of them together, eight or more; and
    before there are so many, 4 %.
    """
    crew = _of_crew(nets_s)
    return {cook: max(_own(nets, crew), LEAST_NOISE) for cook, nets in nets_s.items()}


def _own(nets_s: Sequence[float], crew: float) -> float:
    own = own_noise(nets_s) if len(nets_s) >= FEWEST_OWN_RUNS else None
    return crew if own is None else own


def _of_crew(nets_s: Mapping[str, Sequence[float]]) -> float:
    steps = [abs(log(after / before)) for nets in nets_s.values() for before, after in pairwise(nets)]
    return median(steps) / MEDIAN_DIVISOR if len(steps) >= FEWEST_CREW_STEPS else NOISE_TO_BEGIN_WITH
