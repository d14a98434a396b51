"""The house as every use case is given it, built of the data files and the settings."""

from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.services.house import Group, House
from bot.services.ports.world import Clock
from bot.settings import Settings


def build_house(
    *,
    clock: Clock,
    bot_id: str,
    zone: str = "UTC",
    language: str = "en",
    chefs: frozenset[str] = frozenset(),
    admin_room: str | None = None,
    groups: tuple[Group, ...] = (),
) -> House:
    """The house as every use case is given it."""
    return House(
        seconds=load_seconds(),
        course=load_course,
        clock=clock,
        bot_id=bot_id,
        chefs=chefs,
        admin_room=admin_room,
        zone=zone,
        language=language,
        groups=groups,
    )


def house_of(settings: Settings, clock: Clock) -> House:
    """The house that the settings describe."""
    return build_house(
        clock=clock,
        bot_id=settings.matrix.user,
        zone=settings.kitchen.zone,
        language=settings.kitchen.language,
        chefs=settings.people.chefs,
        admin_room=settings.admin.room,
        groups=tuple(Group(group.name, group.rooms) for group in settings.groups),
    )
