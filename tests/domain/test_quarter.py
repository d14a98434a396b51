"""Quarters are thirteen ISO weeks, a week 53 goes with the last, and they turn with the kitchen's own Monday."""

from datetime import UTC, date, datetime, time, timedelta

from hypothesis import given
from hypothesis import strategies as st

from bot.domain.kitchen_day import week_of
from bot.domain.quarter import quarter_before, quarter_closes, quarter_days, quarter_of, weeks_into


def test_quarters_of_a_long_year() -> None:
    """2026 has 53 weeks (ISO 8601, by Python's own calendar): its last quarter has fourteen."""
    weeks = [f"2026-W{number:02d}" for number in (1, 13, 14, 26, 27, 39, 40, 52, 53)]
    assert [quarter_of(week)[-1] for week in weeks] == list("112233444")
    assert quarter_days("2026-Q4") == (date(2026, 9, 28), date(2027, 1, 3))
    assert quarter_days("2027-Q1") == (date(2027, 1, 4), date(2027, 4, 4))


@given(st.dates(date(1990, 1, 1), date(2100, 1, 1)))
def test_every_day_is_in_the_quarter_of_its_week(day: date) -> None:
    """Quarters follow each other without a gap, in whole weeks from a Monday."""
    quarter = quarter_of(week_of(day))
    first, last = quarter_days(quarter)
    assert first <= day <= last
    assert (first.weekday(), last.weekday()) == (0, 6)
    assert quarter_days(quarter_before(quarter))[1] == first - timedelta(days=1)
    assert (last - first).days + 1 in (91, 98)


def test_a_quarter_ends_when_the_kitchens_monday_turns() -> None:
    """At 05:00 in London, in summer an hour earlier by UTC; weeks into it are counted with fractions."""
    assert quarter_closes("2026-Q4", "Europe/London", time(5)) == datetime(2027, 1, 4, 5, tzinfo=UTC)
    assert quarter_closes("2026-Q2", "Europe/London", time(5)) == datetime(2026, 6, 29, 4, tzinfo=UTC)
    assert weeks_into("2026-Q4", date(2026, 9, 28)) == 0
    assert weeks_into("2026-Q4", date(2026, 10, 8)) == 10 / 7
