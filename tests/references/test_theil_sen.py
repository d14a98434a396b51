"""The steady line against a published example, an exact learning curve with wild values, and scipy."""

import random
from math import log, log2

import pytest
from scipy.stats import theilslopes

from bot.domain.forecast import least_squares
from bot.domain.theil_sen import theil_sen

LEARNING_80 = log2(0.8)
"""The exponent of an 80 % learning curve: -0.32193."""


def test_hollander_and_wolfe() -> None:
    """Five points have the slope -0.05625.

    Source: Hollander and Wolfe, Nonparametric Statistical Methods, 1973, Theil's estimator (recomputed).
    """
    line = theil_sen([1, 2, 3, 4, 5], [1.26, 1.27, 1.12, 1.16, 1.03])
    assert line.slope == pytest.approx(-0.05625, abs=1e-12)


def test_wild_values_do_not_move_it() -> None:
    """On an exact 80 % curve with three of sixteen units doubled it finds the curve, where least squares does not.

    Source: the unit curve of Crawford, t(n) = t(1) n^log2(0.8), doubled at 4, 9 and 13; both slopes recomputed.
    """
    doubled = {4, 9, 13}
    units = [log(n) for n in range(1, 17)]
    times = [log(10 * n**LEARNING_80 * (2 if n in doubled else 1)) for n in range(1, 17)]
    assert theil_sen(units, times).slope == pytest.approx(-0.32192809488736235, abs=1e-9)
    assert least_squares(units, times).slope == pytest.approx(-0.29243395577867537, abs=1e-9)


@pytest.mark.parametrize("n", [2, 3, *range(8, 13), 25])
def test_scipy(n: int) -> None:
    """Slope and level are those of scipy, equal values and equal places among them."""
    draw = random.Random(n)  # noqa: S311 - a simulation
    for _ in range(20):
        xs = [0.0, 1.0, *(float(draw.randrange(n)) for _ in range(n - 2))]
        ys = [float(draw.randrange(200, 230)) for _ in range(n)]
        line, theirs = theil_sen(xs, ys), theilslopes(ys, xs)
        assert (line.slope, line.level) == pytest.approx((theirs.slope, theirs.intercept), abs=1e-9)
        assert line.at(3) == pytest.approx(theirs.intercept + 3 * theirs.slope, abs=1e-9)
