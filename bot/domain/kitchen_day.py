"""The kitchen's day and week: when they turn, when a weekly slot is due and when a run was, across clock changes.

A local wall time becomes an instant once and for all by the rule of RFC 5545, 3.3.5: of a repeated hour the first
passage, and in a gap the time that a clock not yet put forward would show. Days are compared as instants, never by
what the wall says, so that a repeated hour cannot turn a day back.
"""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from difflib import get_close_matches
from functools import cache
from typing import NamedTuple
from zoneinfo import ZoneInfo, available_timezones

from bot.errors import UserError

CLOCK_SKEW = timedelta(minutes=5)
"""How far ahead of the message's time a typed time of day may lie and still be meant: phones' clocks differ."""

_DAY = timedelta(days=1)
_WEEK = timedelta(days=7)
_LONGEST_ZONE = 60


class WeekSlot(NamedTuple):
    """One week's turn of a weekly schedule: the local ISO week that names it and the instant at which it is due."""

    week: str
    due_utc: datetime


def check_zone(typed: str) -> str:
    """The IANA name meant, whatever the case typed; a UserError names the nearest where there is none such."""
    wanted = "_".join(typed[:_LONGEST_ZONE].casefold().split())
    known = _zones().get(wanted)
    if known is None:
        raise UserError("unknown-zone", near=", ".join(_zones_near(wanted)) or "none")
    return known


def instant(day: date, at: time, zone: str) -> datetime:
    """The instant (UTC) at which a wall clock in the zone first reads this time of this day."""
    return datetime.combine(day, at.replace(fold=0), tzinfo=ZoneInfo(zone)).astimezone(UTC)


def kitchen_day(when_utc: datetime, zone: str, day_turn: time) -> date:
    """The day that a kitchen counts this instant to: before the day turns it is still the day before."""
    day = when_utc.astimezone(ZoneInfo(zone)).date()
    return day if when_utc >= instant(day, day_turn, zone) else day - _DAY


def week_of(day: date) -> str:
    """The ISO week of a day, as ``2026-W48``."""
    year, week, _ = day.isocalendar()
    return f"{year:04d}-W{week:02d}"


def week_closes(day: date, zone: str, day_turn: time) -> datetime:
    """The instant (UTC) at which the ISO week of this kitchen day ends: the turn of the Monday after it."""
    return instant(day + timedelta(days=7 - day.weekday()), day_turn, zone)


def slot_due(week: str, weekday: int, at: time, zone: str) -> datetime:
    """The instant (UTC) at which a week's slot is due; ``weekday`` 0 is Monday."""
    year, number = week.split("-W")
    return instant(date.fromisocalendar(int(year), int(number), weekday + 1), at, zone)


def slots_between(weekday: int, at: time, zone: str, after: datetime, until: datetime) -> Iterator[WeekSlot]:
    """The slots due later than ``after`` and no later than ``until``, in order."""
    day = after.astimezone(ZoneInfo(zone)).date() - _WEEK
    while (due := slot_due(week_of(day), weekday, at, zone)) <= until:
        if due > after:
            yield WeekSlot(week_of(day), due)
        day += _WEEK


def next_slot(weekday: int, at: time, zone: str, after: datetime) -> WeekSlot:
    """The first slot due later than ``after``."""
    return next(slots_between(weekday, at, zone, after, after + 3 * _WEEK))


def ran_at(sent_at: datetime, at: str, yesterday: bool, zone: str, day_turn: time) -> datetime:
    """When a run was (UTC, never after it was sent), from the words ``at 02:10`` and ``yesterday``.

    A time of day is the latest one before the sending. ``yesterday`` is the kitchen day before, so that with a time
    past midnight it is the end of that night's service; without a time it is the time of day of the sending.
    """
    if not at and not yesterday:
        return sent_at
    local = sent_at.astimezone(ZoneInfo(zone))
    typed = time.fromisoformat(at) if at else local.time()
    passages = _passages(local.date(), typed, zone)
    if not yesterday:
        return min(max(when for when in passages if when <= sent_at + CLOCK_SKEW), sent_at)
    today = kitchen_day(sent_at, zone, day_turn)
    starts, ends = instant(today - _DAY, day_turn, zone), instant(today, day_turn, zone)
    return max((when for when in passages if starts <= when < ends), default=starts)


def quiet_until(when: datetime, zone: str, quiet_from: time, quiet_to: time) -> datetime | None:
    """When the quiet hours end (UTC) that this instant falls in; None where it falls in none."""
    today = when.astimezone(ZoneInfo(zone)).date()
    wraps = _DAY if quiet_to < quiet_from else timedelta()
    for evening in (today, today - _DAY):
        ends = instant(evening + wraps, quiet_to, zone)
        if instant(evening, quiet_from, zone) <= when < ends:
            return ends
    return None


def _passages(today: date, at: time, zone: str) -> Iterator[datetime]:
    """Every instant about today at which a wall clock reads this time: twice in a repeated hour."""
    for days in range(-3, 2):
        first = instant(today + days * _DAY, at, zone)
        again = datetime.combine(today + days * _DAY, at.replace(fold=1), tzinfo=ZoneInfo(zone)).astimezone(UTC)
        yield from (first, again) if again > first else (first,)


@cache
def _zones() -> dict[str, str]:
    """Every zone's own spelling by its spelling in small letters."""
    return {zone.casefold(): zone for zone in available_timezones() - {"localtime", "Factory"}}


def _zones_near(typed: str) -> list[str]:
    zones = _zones()
    places = {zone.rpartition("/")[2]: name for zone, name in zones.items()} | zones
    return list(dict.fromkeys(places[near] for near in get_close_matches(typed, places, n=3, cutoff=0.6)))
