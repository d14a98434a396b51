"""A fit answers with numbers that can be added up by hand, and with none where there is no ground for one."""

from math import exp, log, sqrt

import pytest

from bot.domain.fairness.cells import TimedRun, cells_of
from bot.domain.fairness.fit import CookEffect, Fit, SetUpEffect
from bot.domain.fairness.reml import fit_cells

FIT = Fit(
    level=0.05,
    level_se=0.03,
    trend=-0.01,
    learning=-0.07,
    sd_cook=0.18,
    sd_set_up=0.12,
    sd_pair=0.04,
    sd_noise=0.06,
    criterion=-100.0,
    mid_week=6.0,
    mid_practice=2.0,
    cooks=(
        CookEffect("noor", 20, 0, -0.10, 0.03, 2.2),
        CookEffect("lio", 5, 0, 0.10, 0.05, 1.0),
        CookEffect("anselm", 9, 1, 0.02, 0.04, 1.5),
    ),
    set_ups=(SetUpEffect(6, 18, 0, 0.20, 0.05), SetUpEffect(9, 16, 1, -0.10, 0.06)),
    pairs=((0.03, 0.0), (-0.01, 0.0), (0.0, 0.02)),
    pace_covariances=((0.0016, 0.0007, 0.0001), (0.0007, 0.0034, 0.0001), (0.0001, 0.0001, 0.0025)),
)
"""A fixture: the numbers are nobody's."""


def test_expected() -> None:
    """Level, trend, learning, cook, set-up and pair add up."""
    expected = 0.05 - 0.01 * (8 - 6) - 0.07 * (log(12) - 2.0) - 0.10 + 0.20 + 0.03
    assert FIT.expected("noor", 6, week=8, nth=12) == pytest.approx(expected)


def test_expected_of_the_next_run() -> None:
    """Unless it is said which, it is the run after those of the fit."""
    assert FIT.expected("lio", 6, week=6) == FIT.expected("lio", 6, week=6, nth=6)


@pytest.mark.parametrize("set_up", [7, 9], ids=["a new one", "another group's"])
def test_expected_on_an_unknown_set_up(set_up: int) -> None:
    """It is the cook's own ratio alone."""
    own = 0.05 - 0.07 * (log(21) - 2.0) - 0.10
    assert FIT.expected("noor", set_up, week=6) == pytest.approx(own)


def test_pace() -> None:
    """A cook's pace is read in the middle of the quarter at the cook's own mean practice, on set-ups as computed."""
    assert FIT.pace("noor") == pytest.approx(0.05 - 0.07 * (2.2 - 2.0) - 0.10)


def test_levelled_s() -> None:
    """A levelled touch is 1.5 s of standard time; the band is so many standard errors wide on either side."""
    found = FIT.levelled_s("noor", z=1.28)
    assert found == pytest.approx([1.5 * exp(-0.064 + by * 0.04) for by in (0, -1.28, 1.28)])


def test_difficulty() -> None:
    """A fitted effect of 0.20 makes 22 % more than computed."""
    assert FIT.difficulty(6, z=1.0) == pytest.approx((exp(0.20), exp(0.15), exp(0.25)))


def test_difference() -> None:
    """What two cooks share does not blur their difference."""
    assert FIT.difference_se("noor", "lio") == pytest.approx(sqrt(0.0016 + 0.0034 - 2 * 0.0007))


def test_no_common_ground() -> None:
    """Across groups there is no difference to speak of."""
    assert not FIT.comparable("noor", "anselm")
    assert FIT.difference_se("noor", "anselm") is None


def test_of_nobody() -> None:
    """Of a cook or a set-up that the fit does not know there is no number."""
    told = [FIT.expected("ime", 6, 1), FIT.pace("ime"), FIT.levelled_s("ime"), FIT.difficulty(7)]
    assert told == [None] * 4
    assert not FIT.comparable("ime", "ime")


def test_json() -> None:
    """A fit comes back from JSON as it was."""
    runs = [
        TimedRun(cook, set_up, len(cook) / 10 + set_up / 7, 1.0) for cook in ("noor", "lio") for set_up in (6, 9, 11)
    ]
    fit = fit_cells(cells_of(runs))
    assert fit is not None
    assert Fit.from_json(fit.to_json()) == fit
