"""A cook's own noise against the constants of the moving-range chart and a published series."""

import random
from itertools import pairwise
from math import exp, log
from statistics import median

import pytest

from bot.domain.bests import MEDIAN_DIVISOR, own_noise

NIST_6322 = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
"""Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals chart (read at second hand)."""

NIST_MEAN_MOVING_RANGE = 1.8778
"""As printed there; checks that the series is copied right."""


def test_median_divisor() -> None:
    """The divisor of a median moving range of two is 0.954 as printed in control-chart tables.

    Source: closed form for span 2, sqrt(2) x the upper quartile of the normal distribution (recomputed).
    """
    assert pytest.approx(0.9538725524089398, abs=1e-12) == MEDIAN_DIVISOR
    assert round(MEDIAN_DIVISOR, 3) == 0.954


def test_published_series() -> None:
    """Over the published series, taken as log net, the noise is its median moving range over 0.954."""
    ranges = [abs(after - before) for before, after in pairwise(NIST_6322)]
    assert sum(ranges) / len(ranges) == pytest.approx(NIST_MEAN_MOVING_RANGE, abs=5e-5)
    noise = own_noise([exp(value) for value in NIST_6322])
    assert noise == pytest.approx(1.5 / 0.9538725524089398, abs=1e-9)


def test_noise_of_a_normal_cook() -> None:
    """For normal log nets of known spread the noise finds the spread: what the divisor is for, within 3 %."""
    draw = random.Random(954)  # noqa: S311 - a simulation
    nets_s = [exp(draw.gauss(log(180), 0.04)) for _ in range(40_000)]
    assert own_noise(nets_s) == pytest.approx(0.04, rel=0.03)
    assert median(nets_s) == pytest.approx(180, rel=0.01)
