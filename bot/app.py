"""The composition root: builds the storage, the client, the workers and the ticker, and joins them."""

from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.replies.phrases import english
from bot.services.house import House
from bot.services.ports.world import Clock


def build_house(
    *,
    clock: Clock,
    bot_id: str,
    zone: str = "UTC",
    chefs: frozenset[str] = frozenset(),
    admin_room: str | None = None,
) -> House:
    """The house as every use case is given it."""
    return House(
        seconds=load_seconds(),
        course=load_course(),
        clock=clock,
        phrases=english(),
        bot_id=bot_id,
        chefs=chefs,
        admin_room=admin_room,
        zone=zone,
    )
