"""What every use case is given of the house: its seconds, its course, its people in charge and the time."""

from collections.abc import Callable
from dataclasses import dataclass

from bot.domain.drill import Drill
from bot.domain.techniques import Seconds
from bot.replies.phrases import Phrases, phrases_in
from bot.services.ports.world import Clock


@dataclass(frozen=True)
class Group:
    """Sister kitchens that the operator listed together, by their rooms."""

    name: str
    rooms: tuple[str, ...]

    @property
    def key(self) -> str:
        """What its fits are kept under, beside those of rooms."""
        return f"group:{self.name}"


@dataclass(frozen=True)
class House:
    """Built once at the start and handed down.

    ``course`` gives the drills that a new kitchen begins with. ``bot_id`` is the bot's own user id, ``chefs`` those
    whom the operator named (on top of the room's own power levels), ``admin_room`` where faults are told, ``zone`` the
    time zone of a kitchen that has not said its own, ``language`` what is spoken in a new kitchen and to the
    admin room, ``groups`` the sister kitchens.
    """

    seconds: Seconds
    course: Callable[[], tuple[Drill, ...]]
    clock: Clock
    bot_id: str
    chefs: frozenset[str] = frozenset()
    admin_room: str | None = None
    zone: str = "UTC"
    language: str = "en"
    groups: tuple[Group, ...] = ()

    @property
    def phrases(self) -> Phrases:
        """The sentences for whoever runs the bot, and for rooms of no kitchen."""
        return phrases_in(self.language)
