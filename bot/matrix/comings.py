"""The bot comes into a room and goes out of it as the outbox says: done again, both change nothing."""

from collections.abc import Collection
from contextlib import suppress
from typing import Protocol

from bot.matrix.faults import Refused
from bot.services.ports.messages import Outgoing

RETRIES_S = (1.0, 5.0, 30.0, 120.0, 600.0)
"""The waits between attempts to join: a server may refuse for a while whom it has just let be invited."""

COMINGS = frozenset({"join", "leave", "leave_if_empty"})
"""The styles of what is no message."""


class Doors(Protocol):
    """What coming and going takes of the homeserver."""

    @property
    def user_id(self) -> str:
        """Who the bot is."""

    async def join(self, room_id: str, through: str = "") -> None:
        """Come in, through this server where the room is only elsewhere."""

    async def leave(self, room_id: str) -> None:
        """Go out."""

    async def people_in(self, room_id: str) -> Collection[str]:
        """Who is in the room."""


async def come_or_go(doors: Doors, room_id: str, note: Outgoing) -> str:
    """Do what the note says; what to keep in the place of an event id."""
    if note.style == "join":
        await doors.join(room_id, note.key)
        return f"joined:{room_id}"
    with suppress(Refused):  # the bot is out already
        if note.style == "leave" or set(await doors.people_in(room_id)) <= {doors.user_id}:
            await doors.leave(room_id)
    return f"left:{room_id}"
