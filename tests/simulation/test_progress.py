"""Progress, forecast and plateau are honest on simulated cooks whose truth is known.

The bars are those promised, loosened by about two standard errors of so few cooks; ``make bench`` measures thousands.
"""

import pytest

from tests.simulation.first_run_cooks import asked, called, called_by_an_ordinary_test, covered

COOKS = 500


def test_luck_is_seldom_called_progress() -> None:
    """Of unchanged cooks who look after each of 24 runs at most one in ten is called faster, or slower."""
    assert called(1, COOKS, slope=0, speed="faster") <= 0.12
    assert called(2, COOKS, slope=0, speed="slower") <= 0.12


def test_an_ordinary_test_would_not_do() -> None:
    """A test at one in ten would call over half of the unchanged cooks faster: why the rule asks for more."""
    assert 0.55 <= called_by_an_ordinary_test(3, COOKS) <= 0.67


def test_real_progress_is_found() -> None:
    """1 % a run is found within 24 runs for at least nine cooks of ten, and losing as much alike."""
    assert called(4, COOKS, slope=-0.01, speed="faster") >= 0.87
    assert called(5, COOKS, slope=0.01, speed="slower") >= 0.87


@pytest.mark.parametrize("slope", [0, -0.005, -0.01, -0.02])
def test_forecast_holds(slope: float) -> None:
    """Four next runs in five, 75 to 85 of 100, fall within the band, with a trend or without."""
    assert 0.75 <= covered(6, 1_500, slope) <= 0.85


def test_plateau_is_a_weak_sign() -> None:
    """Fewer than half of the cooks who stay level are asked, and few of those who gain 1 % a run: hence a question."""
    assert 0.38 <= asked(7, 2_000, slope=0) <= 0.5
    assert asked(8, 2_000, slope=-0.01) <= 0.1
