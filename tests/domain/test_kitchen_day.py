"""The kitchen's day and week turn where they should, on ordinary nights and when the clocks change."""

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.kitchen_day import (
    check_zone,
    instant,
    kitchen_day,
    next_slot,
    quiet_until,
    ran_at,
    slot_due,
    slots_between,
    week_closes,
    week_of,
)
from bot.errors import UserError

LONDON = "Europe/London"
FIVE, SEVEN = time(5), time(7)

zones = st.sampled_from(
    [
        "UTC",
        LONDON,
        "America/New_York",
        "America/Santiago",
        "America/Havana",
        "Australia/Lord_Howe",
        "Pacific/Apia",
        "Atlantic/Azores",
        "Africa/Casablanca",
        "Asia/Kathmandu",
    ]
)
instants = st.datetimes(datetime(2026, 1, 1), datetime(2027, 12, 31), timezones=st.just(UTC))  # noqa: DTZ001 - bounds
times = st.times().map(lambda at: at.replace(second=0, microsecond=0))


def utc(text: str) -> datetime:
    """An instant written as ``2026-11-23 05:10`` in UTC."""
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


def test_night_run_is_last_weeks() -> None:
    """Monday 05:10 with the day turning at 07:00: a run at 02:10 is Sunday night's and of last week, still open."""
    sent = utc("2026-11-23 05:10")
    ran = ran_at(sent, "02:10", yesterday=False, zone=LONDON, day_turn=SEVEN)
    assert ran == utc("2026-11-23 02:10")
    day = kitchen_day(ran, LONDON, SEVEN)
    assert day == date(2026, 11, 22)
    assert week_of(day) == "2026-W47"
    assert week_closes(day, LONDON, SEVEN) == utc("2026-11-23 07:00") > sent


def test_day_turns_to_the_minute() -> None:
    """A second before the turn it is still the day before."""
    assert kitchen_day(utc("2026-11-25 04:59:59"), LONDON, FIVE) == date(2026, 11, 24)
    assert kitchen_day(utc("2026-11-25 05:00:00"), LONDON, FIVE) == date(2026, 11, 25)


def test_half_past_two_twice() -> None:
    """The night the clocks go back in New York two runs at 01:30 an hour apart are kept apart, both Saturday's."""
    before, after = utc("2026-11-01 05:40"), utc("2026-11-01 06:40")
    first = ran_at(before, "01:30", yesterday=False, zone="America/New_York", day_turn=FIVE)
    second = ran_at(after, "01:30", yesterday=False, zone="America/New_York", day_turn=FIVE)
    assert (first, second) == (utc("2026-11-01 05:30"), utc("2026-11-01 06:30"))
    assert {kitchen_day(run, "America/New_York", FIVE) for run in (first, second)} == {date(2026, 10, 31)}


def test_day_turn_in_a_repeated_hour() -> None:
    """Where the day turns inside the hour that is lived twice, it turns once: at the first passage."""
    night = [utc("2026-10-25 00:00") + timedelta(minutes=10 * step) for step in range(18)]
    days = [kitchen_day(when, LONDON, time(1, 30)) for when in night]
    assert days == sorted(days)
    assert days.index(date(2026, 10, 25)) == night.index(utc("2026-10-25 00:30"))


@pytest.mark.parametrize(
    ("sent", "at", "yesterday", "ran"),
    [
        ("2026-11-25 15:28", "14:38", False, "2026-11-25 14:38"),
        ("2026-11-25 00:20", "23:50", False, "2026-11-24 23:50"),
        ("2026-11-25 14:36", "14:38", False, "2026-11-25 14:36"),
        ("2026-11-25 14:32", "14:38", False, "2026-11-24 14:38"),
        ("2026-11-24 23:58", "00:01", False, "2026-11-24 23:58"),
        ("2026-11-25 15:00", "", False, "2026-11-25 15:00"),
        ("2026-11-25 15:00", "", True, "2026-11-24 15:00"),
        ("2026-11-25 15:00", "23:10", True, "2026-11-24 23:10"),
        ("2026-11-25 15:00", "00:30", True, "2026-11-25 00:30"),
        ("2026-11-25 02:00", "23:10", True, "2026-11-23 23:10"),
    ],
)
def test_ran_at(sent: str, at: str, yesterday: bool, ran: str) -> None:
    """A time of day is the latest before the sending, five minutes of skew forgiven; yesterday is the kitchen's."""
    assert ran_at(utc(sent), at, yesterday=yesterday, zone=LONDON, day_turn=FIVE) == utc(ran)


@given(instants, times, zones, times)
def test_ran_at_is_the_latest_passage(sent: datetime, at: time, zone: str, turn: time) -> None:
    """The run is not after the sending, and no whole minute from it to the sending shows the typed time again."""
    ran = ran_at(sent, f"{at:%H:%M}", yesterday=False, zone=zone, day_turn=turn)
    assert sent - timedelta(hours=49) < ran <= sent
    minute, shown = ran.replace(second=0, microsecond=0), []
    while (minute := minute + timedelta(minutes=1)) <= sent:
        shown.append(minute.astimezone(ZoneInfo(zone)).time())
    assert at not in shown
    assert zone != "UTC" or ran == sent or ran.time() == at


@given(instants, st.none() | times, zones, times)
def test_yesterday_is_the_kitchen_day_before(sent: datetime, at: time | None, zone: str, turn: time) -> None:
    """Whatever the hour and the zone, yesterday's run counts to the kitchen day before the sending's."""
    ran = ran_at(sent, f"{at:%H:%M}" if at else "", yesterday=True, zone=zone, day_turn=turn)
    assert kitchen_day(ran, zone, turn) == kitchen_day(sent, zone, turn) - timedelta(days=1)


@given(st.lists(instants, min_size=2, max_size=8), zones, times)
def test_days_never_turn_back(moments: list[datetime], zone: str, turn: time) -> None:
    """Of two instants the later one never has the earlier kitchen day, whatever the clocks do."""
    days = [kitchen_day(when, zone, turn) for when in sorted(moments)]
    assert days == sorted(days)


@given(instants, zones, times)
def test_day_holds_its_instant(when: datetime, zone: str, turn: time) -> None:
    """Every instant lies between the turn of its kitchen day and the next, and before its week closes."""
    day = kitchen_day(when, zone, turn)
    assert instant(day, turn, zone) <= when < instant(day + timedelta(days=1), turn, zone)
    assert when < week_closes(day, zone, turn) == instant(date.fromisocalendar(*_next_week(day)), turn, zone)


def _next_week(day: date) -> tuple[int, int, int]:
    year, week, _ = (day + timedelta(days=7)).isocalendar()
    return year, week, 1


@given(instants, st.integers(0, 6), times, zones)
def test_next_slot(after: datetime, weekday: int, at: time, zone: str) -> None:
    """The next slot is later, is due when its week's slot is, and no slot lies between."""
    found = next_slot(weekday, at, zone, after)
    assert after < found.due_utc == slot_due(found.week, weekday, at, zone)
    assert list(slots_between(weekday, at, zone, after, found.due_utc)) == [found]


@given(instants, st.integers(0, 6), times, zones)
def test_each_week_fires_once(after: datetime, weekday: int, at: time, zone: str) -> None:
    """Over a year every ISO week has exactly one slot, later than the one before it."""
    slots = list(slots_between(weekday, at, zone, after, after + timedelta(days=364)))
    assert 51 <= len(slots) <= 53
    assert len({slot.week for slot in slots}) == len(slots)
    assert all(
        timedelta(days=6, hours=21) < b.due_utc - a.due_utc < timedelta(days=7, hours=3) for a, b in pairwise(slots)
    )


@pytest.mark.parametrize(
    ("when", "until"),
    [
        ("2026-11-25 21:59", None),
        ("2026-11-25 22:00", "2026-11-26 09:00"),
        ("2026-11-26 03:00", "2026-11-26 09:00"),
        ("2026-11-26 09:00", None),
        ("2026-10-24 23:00", "2026-10-25 09:00"),
    ],
)
def test_quiet_hours(when: str, until: str | None) -> None:
    """From 22:00 to 09:00 local, over midnight, also on the night the clocks go back."""
    assert quiet_until(utc(when), LONDON, time(22), time(9)) == (utc(until) if until else None)


def test_quiet_hours_within_a_day_and_none() -> None:
    """The split-shift break lies within one day; equal ends mean no quiet hours."""
    assert quiet_until(utc("2026-11-25 15:30"), LONDON, time(15), time(17)) == utc("2026-11-25 17:00")
    assert quiet_until(utc("2026-11-25 18:00"), LONDON, time(15), time(17)) is None
    assert quiet_until(utc("2026-11-25 15:30"), LONDON, time(15), time(15)) is None


@given(instants, zones, times, times)
def test_quiet_end_is_not_quiet(when: datetime, zone: str, quiet_from: time, quiet_to: time) -> None:
    """The end of the quiet hours is later, within a day or so, and itself not quiet."""
    ends = quiet_until(when, zone, quiet_from, quiet_to)
    if ends is not None:
        assert when < ends < when + timedelta(hours=26)
        assert quiet_until(ends, zone, quiet_from, quiet_to) is None


def test_zone_names() -> None:
    """A zone is known in any case of letters; an unknown one brings the nearest names, or none."""
    assert check_zone("europe/london") == LONDON
    assert check_zone(" America/New York ") == "America/New_York"
    assert str(_refused("London").values["near"]).split(", ")[0] == LONDON
    assert str(_refused("Europe/Londn").values["near"]).split(", ")[0] == LONDON
    assert _refused("xyzzy").values == {"near": "none"}


@given(st.text())
def test_only_zones_are_known(typed: str) -> None:
    """Any text is a zone that exists or a UserError: no path, no empty name, nothing else."""
    try:
        known = check_zone(typed)
    except UserError:
        return
    assert ZoneInfo(known).key == known


def _refused(typed: str) -> UserError:
    with pytest.raises(UserError, match="unknown-zone") as refused:
        check_zone(typed)
    return refused.value
