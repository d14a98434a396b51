"""Clocks against ISO 8601 durations."""

import pytest

from bot.domain.durations import DAY_S, read_clock
from bot.errors import UserError

ISO_8601 = {"PT1M30.5S": 90.5, "PT90S": 90.0, "PT1H30M": 5400.0, "P1DT2H": 93600.0, "P2W": 1209600.0, "PT0.5H": 1800.0}
"""Duration and its seconds. Source: ISO 8601, durations (recomputed from its designators)."""


@pytest.mark.parametrize("text", [text for text, seconds in ISO_8601.items() if seconds <= DAY_S])
def test_iso_durations(text: str) -> None:
    """A duration of up to a day is read to the whole second, a half going to the even one (as Python's round does)."""
    assert read_clock(text) == round(ISO_8601[text])


@pytest.mark.parametrize("text", [text for text, seconds in ISO_8601.items() if seconds > DAY_S])
def test_iso_durations_over_a_day(text: str) -> None:
    """A duration of more than a day is understood as one and refused for its length."""
    with pytest.raises(UserError, match="clock-over-a-day"):
        read_clock(text)
