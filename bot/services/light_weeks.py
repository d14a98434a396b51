"""Which weeks of a kitchen are light: short, tidy, no board."""

from bot.domain.kitchen_day import kitchen_day, week_of
from bot.domain.lighter import is_light
from bot.services.ports.records import Kitchen


def is_light_week(kitchen: Kitchen, week: str) -> bool:
    """Whether this ISO week is light, counted from the week in which the kitchen was opened."""
    return is_light(week, week_of(kitchen_day(kitchen.opened_at, kitchen.zone, kitchen.day_turn)))
