"""Days as people say them."""

from datetime import date

from bot.replies.phrases import Phrases


def day_text(say: Phrases, day: date) -> str:
    """Weekday, day and month."""
    return say("day", weekday=weekday_text(say, day), day=str(day.day), month=say(f"month-{day.month}"))


def week_text(say: Phrases, week: str) -> str:
    """A local ISO week, such as ``2026-W48``, by its Monday."""
    year, number = week.split("-W")
    return say("week-of", day=day_text(say, date.fromisocalendar(int(year), int(number), 1)))


def weekday_text(say: Phrases, day: date) -> str:
    """The weekday."""
    return say(f"weekday-{day.isoweekday()}")
