"""Wilson's interval and that of a difference against the worked examples of Newcombe."""

import pytest

from bot.domain.shares import ONE_SIDED_95, difference, wilson

TWO_SIDED_95 = 1.959963984540054
"""Standard normal quantile of 0.975 (any table: 1.96; recomputed)."""

NEWCOMBE = [
    (81, 263, 0.2553, 0.3662),
    (15, 148, 0.0624, 0.1605),
    (0, 20, 0.0000, 0.1611),
    (1, 29, 0.0061, 0.1718),
]
"""Successes, trials and 95 % score interval without continuity correction.

Source: R. G. Newcombe, Statistics in Medicine 17 (1998), 857-872 and 873-890 (recomputed to four figures).
"""


@pytest.mark.parametrize(("successes", "trials", "low", "high"), NEWCOMBE)
def test_newcombe(successes: int, trials: int, low: float, high: float) -> None:
    """Both ends agree to the four printed figures."""
    assert wilson(successes, trials, TWO_SIDED_95) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize(("successes", "trials", "low", "high"), NEWCOMBE)
def test_mirrored(successes: int, trials: int, low: float, high: float) -> None:
    """Failures for successes mirror the interval."""
    mirrored = wilson(trials - successes, trials, TWO_SIDED_95)
    assert mirrored == pytest.approx((1 - high, 1 - low), abs=5e-5)


def test_one_sided_quantile() -> None:
    """One-sided 95 % is 1.645 standard errors (any table of the normal distribution)."""
    assert pytest.approx(1.6449, abs=5e-5) == ONE_SIDED_95


def test_score_test_is_inverted() -> None:
    """At each end of the interval the score test is just at its limit: |x/n - p| = z sqrt(p (1 - p) / n).

    Source: E. B. Wilson, J. American Statistical Association 22 (1927), 209-212 (the defining equation; from memory).
    """
    for successes, trials in [(35, 36), (6, 6), (81, 263), (1, 29)]:
        for share in wilson(successes, trials, ONE_SIDED_95):
            reach = ONE_SIDED_95 * (share * (1 - share) / trials) ** 0.5
            assert abs(successes / trials - share) == pytest.approx(reach, abs=1e-12)


def test_newcombe_difference() -> None:
    """56 of 70 less 48 of 80, by method 10, lies between 0.0524 and 0.3339 with 95 %.

    Source: R. G. Newcombe, Statistics in Medicine 17 (1998), 873-890, method 10, first example (recomputed).
    """
    assert difference((56, 70), (48, 80), TWO_SIDED_95) == pytest.approx((0.0524314724, 0.3338726540), abs=1e-9)
    assert difference((48, 80), (56, 70), TWO_SIDED_95) == pytest.approx((-0.3338726540, -0.0524314724), abs=1e-9)
