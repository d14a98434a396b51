"""Quarters of a kitchen's year: thirteen ISO weeks each, of which the last also takes a week 53."""

from datetime import date, datetime, time, timedelta

from bot.domain.kitchen_day import instant

WEEKS = 13
QUARTERS = 4


def quarter_of(week: str) -> str:
    """The quarter of an ISO week such as ``2026-W48``: ``2026-Q4``."""
    year, number = week.split("-W")
    return f"{year}-Q{min((int(number) - 1) // WEEKS + 1, QUARTERS)}"


def quarter_before(quarter: str) -> str:
    """The quarter that ended where this one began."""
    year, number = _parts(quarter)
    return f"{year:04d}-Q{number - 1}" if number > 1 else f"{year - 1:04d}-Q{QUARTERS}"


def quarter_days(quarter: str) -> tuple[date, date]:
    """The first kitchen day of a quarter, a Monday, and its last, a Sunday."""
    year, number = _parts(quarter)
    following = (year, number + 1) if number < QUARTERS else (year + 1, 1)
    return _monday(year, number), _monday(*following) - timedelta(days=1)


def quarter_closes(quarter: str, zone: str, day_turn: time) -> datetime:
    """The instant (UTC) at which a kitchen's quarter ends: the turn of the Monday after it."""
    return instant(quarter_days(quarter)[1] + timedelta(days=1), day_turn, zone)


def weeks_into(quarter: str, day: date) -> float:
    """Weeks since the quarter began, with fractions, as the fit counts them."""
    return (day - quarter_days(quarter)[0]).days / 7


def _parts(quarter: str) -> tuple[int, int]:
    year, number = quarter.split("-Q")
    return int(year), int(number)


def _monday(year: int, number: int) -> date:
    return date.fromisocalendar(year, WEEKS * (number - 1) + 1, 1)
