"""Days as people say them."""

from datetime import date

from bot.replies.phrases import Phrases


def day_text(say: Phrases, day: date) -> str:
    """Weekday, day and month."""
    return say("day", weekday=weekday_text(say, day), day=str(day.day), month=say(f"month-{day.month}"))


def weekday_text(say: Phrases, day: date) -> str:
    """The weekday."""
    return say(f"weekday-{day.isoweekday()}")
