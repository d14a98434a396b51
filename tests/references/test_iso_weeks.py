"""Kitchen weeks against ISO 8601 week dates, weekly slots against RFC 5545's printed recurrences."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from dateutil.rrule import rrulestr

from bot.domain.kitchen_day import slots_between, week_of

ISO_WEEKS = {
    "2026-01-01": "2026-W01-4",
    "2026-12-28": "2026-W53-1",
    "2027-01-01": "2026-W53-5",
    "2027-01-03": "2026-W53-7",
    "2027-01-04": "2027-W01-1",
    "2025-12-29": "2026-W01-1",
}
"""Source: ISO 8601 week dates (recomputed from the rule that week 1 holds the year's first Thursday)."""

NEW_YORK = "America/New_York"
TUESDAY, THURSDAY, SUNDAY = 1, 3, 6

# RFC 5545, 3.8.5.3, examples of RRULE with DTSTART;TZID=America/New_York at 09:00: (rule, first day, dates as printed).
WEEKLY_FOR_TEN = (
    "FREQ=WEEKLY;COUNT=10",
    "1997-09-02",
    "1997-09-02 1997-09-09 1997-09-16 1997-09-23 1997-09-30 1997-10-07 1997-10-14 1997-10-21 1997-10-28 1997-11-04",
)
TWO_DAYS = (
    "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
    "1997-09-02",
    "1997-09-02 1997-09-04 1997-09-16 1997-09-18 1997-09-30 1997-10-02 1997-10-14 1997-10-16",
)
FROM_MONDAY = (
    "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
    "1997-08-05",
    "1997-08-05 1997-08-10 1997-08-19 1997-08-24",
)
FROM_SUNDAY = (
    "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
    "1997-08-05",
    "1997-08-05 1997-08-17 1997-08-19 1997-08-31",
)


@pytest.mark.parametrize("day", ISO_WEEKS)
def test_iso_weeks(day: str) -> None:
    """A day's week is ISO's, with its year of 53 weeks, and the weekday is the one that slots count from Monday."""
    moment = date.fromisoformat(day)
    assert f"{week_of(moment)}-{moment.weekday() + 1}" == ISO_WEEKS[day]


def slots_at_nine(weekdays: tuple[int, ...], first_day: str, every: int, count: int) -> list[datetime]:
    """Our weekly slots at 09:00 in New York on these weekdays, of every so-manieth ISO week, in local time."""
    start = datetime.fromisoformat(first_day).replace(tzinfo=UTC)
    every_slot = sorted(
        (slot.due_utc, slot.week)
        for weekday in weekdays
        for slot in slots_between(weekday, time(9), NEW_YORK, start, start + timedelta(weeks=20))
    )
    weeks = list(dict.fromkeys(week for _, week in every_slot))
    kept = [due.astimezone(ZoneInfo(NEW_YORK)) for due, week in every_slot if weeks.index(week) % every == 0]
    return kept[:count]


@pytest.mark.parametrize(
    ("example", "weekdays", "every"),
    [(WEEKLY_FOR_TEN, (TUESDAY,), 1), (TWO_DAYS, (TUESDAY, THURSDAY), 2), (FROM_MONDAY, (TUESDAY, SUNDAY), 2)],
)
def test_rfc_recurrences(example: tuple[str, str, str], weekdays: tuple[int, ...], every: int) -> None:
    """Our slots fall on the dates that RFC 5545 prints, at nine by the wall clock across the change of 26 October."""
    _, first_day, printed = example
    slots = slots_at_nine(weekdays, first_day, every, len(printed.split()))
    assert [slot.date().isoformat() for slot in slots] == printed.split()
    assert {slot.time() for slot in slots} == {time(9)}


def test_weeks_begin_on_monday() -> None:
    """Of RFC 5545's pair that differs in the first day of the week alone, ours gives Monday's dates, not Sunday's."""
    ours = [slot.date().isoformat() for slot in slots_at_nine((TUESDAY, SUNDAY), "1997-08-05", 2, 4)]
    assert ours == FROM_MONDAY[2].split()
    assert ours != FROM_SUNDAY[2].split()


@pytest.mark.parametrize("example", [WEEKLY_FOR_TEN, TWO_DAYS, FROM_MONDAY, FROM_SUNDAY])
def test_oracle_reads_the_rfc(example: tuple[str, str, str]) -> None:
    """python-dateutil, which the zone tests trust, gives the dates that RFC 5545 prints."""
    rule, first_day, printed = example
    found = rrulestr(rule, dtstart=datetime.fromisoformat(f"{first_day}T09:00:00"))
    assert [day.date().isoformat() for day in found] == printed.split()
