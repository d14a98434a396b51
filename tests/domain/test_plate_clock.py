"""The clock on the plate, checked against plane geometry: an hour is thirty degrees, twelve is straight up."""

import math
from itertools import pairwise

import pytest

from bot.domain.plate_clock import CENTRE, WELL_SHARE, Spot, apart, hour_spot, spots


@pytest.mark.parametrize(
    ("hour", "x", "y"),
    [
        # plane geometry, recomputed: sine and cosine of thirty degrees an hour
        (12, 0.0, 1.0),
        (2, 0.866025, 0.5),
        (3, 1.0, 0.0),
        (6, 0.0, -1.0),
        (9, -1.0, 0.0),
        (10, -0.866025, 0.5),
        (11, -0.5, 0.866025),
    ],
)
def test_an_hour_lies_where_the_clock_has_it(hour: int, x: float, y: float) -> None:
    """Seen from above, twelve is away from the guest and three to the right."""
    spot = hour_spot(hour)
    assert (spot.x, spot.y) == pytest.approx((x, y), abs=1e-6)


def _hours(found: tuple[Spot, ...] | None) -> list[float]:
    """The hours that the spots lie on, told by their angle."""
    assert found is not None
    return [round(math.degrees(math.atan2(spot.x, spot.y)) / 30 % 12, 6) or 12.0 for spot in found]


@pytest.mark.parametrize(
    ("at", "pieces", "hours"),
    [
        ("12-4-8", 3, [12, 4, 8]),
        ("11 and 5", 2, [11, 5]),
        ("8 to 2", 3, [8, 11, 2]),
        ("10 to 4", 3, [10, 1, 4]),
        ("8 to 4", 3, [8, 6, 4]),
        ("9", 1, [9]),
        ("right edge", 3, [2, 3, 4]),
    ],
)
def test_pieces_go_to_the_hours_that_the_chef_wrote(at: str, pieces: int, hours: list[float]) -> None:
    """Listed hours are taken in turn; an arc is shared evenly, the shorter way round (constructed by hand)."""
    found = spots(at, pieces)
    assert _hours(found) == pytest.approx(hours)
    assert all(math.hypot(spot.x, spot.y) == pytest.approx(WELL_SHARE) for spot in found or ())


def test_the_centre_is_the_centre_and_other_words_name_no_hour() -> None:
    """Words that hang on another component, or on nothing, name no place on the clock by themselves."""
    assert spots("centre", 2) == (CENTRE, CENTRE)
    assert spots("on the 11 twirl", 1) is None
    assert spots("", 1) is None


def test_a_ring_is_even() -> None:
    """Eight in a ring at half radius lie 45 degrees apart (plane geometry: a chord of 2 r sin 22.5 degrees)."""
    eight = spots("ring at half radius", 8) or ()
    assert [math.hypot(spot.x, spot.y) for spot in eight] == pytest.approx([0.5] * 8)
    assert [apart(one, other) for one, other in pairwise(eight)] == pytest.approx([0.382683] * 7, abs=1e-6)
