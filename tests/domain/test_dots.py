"""Dots measured on a plate. The tolerances are common practice, no source; spread is checked by hand and by scipy."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import variation

from bot.domain.dots import measure_even, measure_graded

WIDTHS = st.lists(st.integers(10, 400).map(lambda tenths: tenths / 10), min_size=2, max_size=12)


def test_five_dots() -> None:
    """10 10 9 11 10: mean 10, sum of squares 2, sd sqrt(2 / 4) = 0.7071, spread 7.07 %."""
    dots = measure_even([10, 10, 9, 11, 10])
    assert (dots.mean_mm, dots.fault) == (10.0, None)
    assert dots.spread_percent == pytest.approx(7.0711, abs=5e-5)


@given(WIDTHS)
def test_spread_is_the_coefficient_of_variation(widths_mm: list[float]) -> None:
    """In percent and of a sample, as scipy has it."""
    assert measure_even(widths_mm).spread_percent == pytest.approx(100 * float(variation(widths_mm, ddof=1)), abs=1e-6)


@pytest.mark.parametrize(("widths_mm", "fault"), [([9, 10, 11], None), ([8.9, 10, 11.1], "spread")])
def test_spread_of_a_tenth_is_even(widths_mm: list[float], fault: str | None) -> None:
    """9 10 11 is a spread of exactly 10 %, which is accepted; a hair more is not."""
    assert measure_even(widths_mm).fault == fault


@pytest.mark.parametrize(
    ("widths_mm", "called_mm", "dot"),
    [([10, 11], 10, 0), ([10, 11.1], 10, 2), ([5, 6], 5, 0), ([6.1, 5], 5, 1), ([22, 18], 20, 0), ([20, 17.9], 20, 2)],
)
def test_called_width(widths_mm: list[float], called_mm: float, dot: int) -> None:
    """Each within a tenth of the called width, or within 1 mm where a tenth is less."""
    dots = measure_even(widths_mm, called_mm)
    assert (dots.fault == "size", dots.dot) == (bool(dot), dot)


def test_the_right_size_may_still_be_uneven() -> None:
    """Three of 5 mm within 1 mm each, yet a spread of 20 %: redo for the spread."""
    assert measure_even([4, 5, 6], 5).fault == "spread"


@pytest.mark.parametrize(
    ("widths_mm", "fault", "dot"),
    [
        ([14, 12, 10, 8, 6], None, 0),
        ([15.5, 12, 10, 8, 4.5], None, 0),
        ([14, 12, 12, 8, 6], "grade", 3),
        ([14, 12, 10, 8, 7], None, 0),
        ([14, 12, 10, 8, 7.6], "grade", 5),
        ([12.4, 11, 10, 8, 6], "ends", 1),
        ([14, 12, 10, 9.5, 8], "grade", 4),
        ([14, 12, 10.5, 9.5, 7.6], "ends", 5),
    ],
)
def test_graded(widths_mm: list[float], fault: str | None, dot: int) -> None:
    """Each at least 1 mm smaller than the one before, the ends within 1.5 mm of what was called."""
    dots = measure_graded(widths_mm, [14, 12, 10, 8, 6])
    assert (dots.fault, dots.dot) == (fault, dot)
