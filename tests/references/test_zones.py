"""Weekly slots across clock changes, against instants from the time zone database and two independent oracles.

Our code goes from wall time to instant by the fold rule of Python's ``zoneinfo``. The first oracle never goes that
way: it walks a year of UTC in quarter hours, asks only what the wall clock shows (which is never ambiguous), and
looks a slot up in what was shown. The second shares no code with ``zoneinfo``: python-dateutil reads the zone files
with a reader of its own, lays out the weekly dates by its own RFC 5545 recurrences and moves times out of gaps by its
own rule.
"""

from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from dateutil.rrule import WEEKLY, rrule

from bot.domain.kitchen_day import instant, slot_due, slots_between, week_of

TRANSITIONS_UTC = {
    "Europe/London": ["2026-03-29T01:00", "2026-10-25T01:00", "2027-03-28T01:00", "2027-10-31T01:00"],
    "America/New_York": ["2026-03-08T07:00", "2026-11-01T06:00", "2027-03-14T07:00", "2027-11-07T06:00"],
    "Australia/Lord_Howe": ["2026-04-04T15:00", "2026-10-03T15:30", "2027-04-03T15:00", "2027-10-02T15:30"],
}
"""Source: IANA time zone database 2026f (read from the compiled zones)."""

TEN_O_CLOCK_FROM_2026_10_01 = {
    "Europe/London": "10-01T09:00 10-08T09:00 10-15T09:00 10-22T09:00 10-29T10:00 11-05T10:00",
    "America/New_York": "10-01T14:00 10-08T14:00 10-15T14:00 10-22T14:00 10-29T14:00 11-05T15:00",
    "Australia/Lord_Howe": "09-30T23:30 10-07T23:00 10-14T23:00 10-21T23:00 10-28T23:00 11-04T23:00",
}
"""Six Thursdays at 10:00 local, in UTC. Source: computed from IANA time zone database 2026f."""

ZONES = [
    "Europe/London",
    "America/New_York",
    "Australia/Lord_Howe",
    "Pacific/Apia",
    "Africa/Casablanca",
    "America/Santiago",
    "Asia/Kathmandu",
    "Australia/Sydney",
    "Asia/Tehran",
    "Atlantic/Azores",
    "America/Havana",
    "Pacific/Chatham",
]
HOURS = [time(0), time(0, 30), time(1), time(1, 30), time(2), time(2, 30), time(3), time(3, 30), time(5), time(15)]
FIRST, LAST = date(2026, 1, 1), date(2027, 1, 3)
QUARTER = timedelta(minutes=15)


@pytest.mark.parametrize("zone", TRANSITIONS_UTC)
def test_day_turns_on_changing_nights(zone: str) -> None:
    """Where the clocks change at an instant, the two midnights about it are 24 h less or more the change apart."""
    for text in TRANSITIONS_UTC[zone]:
        change = datetime.fromisoformat(text).replace(tzinfo=UTC)
        moved = _offset(change, zone) - _offset(change - timedelta(seconds=1), zone)
        day = (change - timedelta(seconds=1)).astimezone(ZoneInfo(zone)).date()
        assert moved
        assert (
            instant(day + timedelta(days=1), time(0), zone) - instant(day, time(0), zone) == timedelta(days=1) - moved
        )


@pytest.mark.parametrize("zone", TEN_O_CLOCK_FROM_2026_10_01)
def test_ten_o_clock(zone: str) -> None:
    """Thursdays at 10:00 are at the instants computed from the time zone database."""
    expected = [datetime.fromisoformat(f"2026-{text}:00+00:00") for text in TEN_O_CLOCK_FROM_2026_10_01[zone].split()]
    slots = slots_between(3, time(10), zone, expected[0] - timedelta(hours=1), expected[-1])
    assert [slot.due_utc for slot in slots] == expected


def _offset(when: datetime, zone: str) -> timedelta:
    return when.astimezone(ZoneInfo(zone)).utcoffset() or timedelta()


@cache
def _shown(zone: str) -> dict[datetime, datetime]:
    """What the wall clock shows at every quarter hour of UTC from a few days before the year to a few after.

    By wall reading; of a reading shown twice the first instant is kept.
    """
    there = ZoneInfo(zone)
    shown: dict[datetime, datetime] = {}
    moment, end = (datetime.combine(day, time(0), UTC) for day in (FIRST - timedelta(7), LAST + timedelta(9)))
    while moment < end:
        shown.setdefault(moment.astimezone(there).replace(tzinfo=None), moment)
        moment += QUARTER
    return shown


def _by_walking(day: date, at: time, zone: str) -> datetime:
    """The first instant at which the wall shows this time; in a gap, what a clock not yet put forward would reach."""
    shown, wall, short = _shown(zone), datetime.combine(day, at), timedelta()
    while wall - short not in shown:
        short += QUARTER
    return shown[wall - short] + short


@pytest.mark.parametrize("zone", ZONES)
def test_every_weekly_slot_by_walking(zone: str) -> None:
    """Every weekday, ten hours of the day, every week of 2026: due when the walked clock first shows the time."""
    days = [FIRST + timedelta(days=n) for n in range((LAST - FIRST).days + 1)]
    wrong = [
        (day, at)
        for day in days
        for at in HOURS
        if slot_due(week_of(day), day.weekday(), at, zone) != _by_walking(day, at, zone)
    ]
    assert len(days) == 368
    assert wrong == []


@pytest.mark.parametrize("zone", ZONES)
def test_every_weekly_slot_by_dateutil(zone: str) -> None:
    """The same slots as python-dateutil's own zones and recurrences give, in the same order, one a week."""
    there = tz.gettz(zone)
    start, end = datetime.combine(FIRST, time(0), UTC), datetime.combine(LAST, time(0), UTC)
    for weekday in range(7):
        for at in HOURS:
            walls = rrule(WEEKLY, byweekday=weekday, dtstart=datetime.combine(FIRST - timedelta(7), at), count=55)
            theirs = [tz.resolve_imaginary(wall.replace(tzinfo=there)).astimezone(UTC) for wall in walls]
            ours = [slot.due_utc for slot in slots_between(weekday, at, zone, start, end)]
            assert ours == [due for due in theirs if start < due <= end]
            assert 52 <= len(ours) <= 53


@pytest.mark.parametrize("zone", ["Europe/London", "Australia/Lord_Howe", "America/Santiago", "Africa/Casablanca"])
def test_oracle_meets_gaps_and_repeats(zone: str) -> None:
    """The year walked holds both kinds of change in these zones, so the table does exercise them."""
    shown = sorted(_shown(zone))
    gaps = [after - before for before, after in pairwise(shown) if after - before != QUARTER]
    readings = (LAST + timedelta(9) - (FIRST - timedelta(7))) // QUARTER
    repeated = readings - len(shown)
    assert gaps
    assert repeated
