"""Paces, and times as they are shown."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.pace import clock_text, levelled_s, pace_s


def test_pace_is_net_seconds_a_touch() -> None:
    """Fixture: 3:02 over the 56 touches of Rope coil shows 3.25."""
    assert round(pace_s(182, 56), 2) == 3.25


def test_levelled_pace_stands_beside_other_specs() -> None:
    """Fixture: 3:02 against the standard of 164.5 s shows 1.66, and the standard itself 1.50."""
    assert round(levelled_s(182, 164.5), 2) == 1.66
    assert levelled_s(164.5, 164.5) == 1.5


@pytest.mark.parametrize(
    ("seconds", "shown"),
    [(0, "0:00"), (9, "0:09"), (59.6, "1:00"), (164, "2:44"), (3599.5, "1:00:00"), (3723, "1:02:03")],
)
def test_times_are_shown_with_a_colon(seconds: float, shown: str) -> None:
    """Minutes and seconds, and hours only from an hour on."""
    assert clock_text(seconds) == shown


# ISO 80000-1:2009, annex B, rule A: of two multiples equally near, the even one. From memory; the default of IEEE 754.
@pytest.mark.parametrize(("seconds", "shown"), [(0.5, "0:00"), (1.5, "0:02"), (164.5, "2:44"), (165.5, "2:46")])
def test_half_a_second_goes_to_the_even_one(seconds: float, shown: str) -> None:
    """A time exactly between two seconds is shown as the even one."""
    assert clock_text(seconds) == shown


@given(st.integers(0, 86400))
def test_a_time_shown_reads_back(seconds: int) -> None:
    """Hours, minutes and seconds as shown add up to the whole seconds they came from."""
    parts = [int(part) for part in clock_text(seconds).split(":")]
    assert sum(part * 60**place for place, part in enumerate(reversed(parts))) == seconds
    assert all(part < 60 for part in parts[1:])
