"""The line and the width behind the forecast against NIST's certified values, scipy and statsmodels."""

import random
from math import exp, log, sqrt

import pytest
import statsmodels.api as sm
from scipy.stats import t as student

from bot.domain.forecast import TAIL_T, least_squares, next_run

NORRIS_X = [
    *(0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5),
    *(11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1),
    *(448.9, 0.5),
]
NORRIS_Y = [
    *(0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9),
    *(10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4),
    *(449.2, 0.2),
]
"""Source: NIST Statistical Reference Datasets, linear regression, Norris (recomputed to the certified values)."""

NORRIS_LINE = (-0.262323073774029, 1.00211681802045)
NORRIS_ERRORS = (0.232818234301152, 0.000429796848199937)
"""Certified level and slope, and their standard errors."""


def test_norris() -> None:
    """The line agrees with the certified one, and so do the two standard errors that its width is made of."""
    fit = least_squares(NORRIS_X, NORRIS_Y)
    assert (fit.level, fit.slope) == pytest.approx(NORRIS_LINE, rel=1e-10)
    error_of_level = sqrt(fit.spread_at(0) ** 2 - fit.residual_sd**2)
    error_of_slope = fit.residual_sd / sqrt(fit.squares_x)
    assert (error_of_level, error_of_slope) == pytest.approx(NORRIS_ERRORS, rel=1e-9)


def test_student_t() -> None:
    """Student's t with a tenth above it at 6, 7 and 8 degrees of freedom: 1.440, 1.415, 1.397 (any table; scipy)."""
    assert [round(t, 3) for t in TAIL_T.values()] == [1.440, 1.415, 1.397]
    assert {freedom: pytest.approx(student.ppf(0.9, freedom), abs=5e-5) for freedom in (6, 7, 8)} == TAIL_T


@pytest.mark.parametrize("runs", [8, 9, 10])
def test_statsmodels(runs: int) -> None:
    """The band is the 80 % prediction interval for a new observation that an independent library gives."""
    draw = random.Random(runs)  # noqa: S311 - a simulation
    nets_s = [exp(draw.gauss(log(200) - 0.01 * nth, 0.04)) for nth in range(runs)]
    theirs = sm.OLS([log(net_s) for net_s in nets_s], sm.add_constant(range(runs))).fit()
    low, high = theirs.get_prediction([[1, runs]]).conf_int(obs=True, alpha=0.2)[0]
    band = next_run(nets_s)
    assert band is not None
    assert (band.low_s, band.high_s) == pytest.approx((exp(low), exp(high)), rel=1e-5)
