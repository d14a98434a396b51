"""Failures in a row make the pauses longer, within bounds; figures are constructed from the rule 1 to 300 s."""

import pytest

from tests.fakes import FixedClock
from tests.matrix.fakes import Rests, a_world


@pytest.mark.parametrize(
    ("failures", "chance", "seconds"),
    [
        (1, 0.0, 1.0),
        (1, 0.5, 1.5),
        (2, 0.0, 2.0),
        (5, 0.0, 16.0),
        (9, 0.0, 150.0),
        (9, 0.999, 299.85),
        (1000, 0.0, 150.0),
    ],
)
def test_pauses_double_from_one_second_to_five_minutes(failures: int, chance: float, seconds: float) -> None:
    """Half of each pause is left to chance."""
    assert a_world(Rests(FixedClock()), chance).wait_s(failures) == pytest.approx(seconds)


@pytest.mark.parametrize(("asked_s", "seconds"), [(30.0, 30.0), (0.0, 1.0), (400.0, 400.0)])
def test_a_servers_wish_goes_before_our_own_rule(asked_s: float, seconds: float) -> None:
    """But never less than a second, or a server that asks for none would be stormed."""
    assert a_world(Rests(FixedClock())).wait_s(7, asked_s) == pytest.approx(seconds)
