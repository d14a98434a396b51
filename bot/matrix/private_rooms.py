"""The rooms of two that the bot opens, marked so that one whose making was never noted is found again."""

from collections.abc import Mapping, Sequence
from typing import Protocol

from bot.matrix.wire import RawEvent

MARK = "platepace.private_with"
"""In a room's create event, which nobody can change later: whose private room it is."""


_ENCRYPTION = {"type": "m.room.encryption", "state_key": "", "content": {"algorithm": "m.megolm.v1.aes-sha2"}}


class Rooms(Protocol):
    """What opening a room takes of the homeserver."""

    @property
    def user_id(self) -> str:
        """Who the bot is."""

    async def create_room(self, order: Mapping[str, object]) -> str:
        """Make a room; its id."""

    async def joined_rooms(self) -> Sequence[str]:
        """The rooms that the bot is in."""

    async def creation(self, room_id: str) -> RawEvent | None:
        """The event that made the room, with its sender."""

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> Mapping[str, object] | None:
        """The content of a state event; None if there is none."""


async def open_room(rooms: Rooms, user_id: str, *, encrypted: bool) -> str:
    """A new room of two: the person is invited to it, and reads on accepting what was said there before."""
    return await rooms.create_room(
        {
            "preset": "trusted_private_chat",
            "is_direct": True,
            "invite": [user_id],
            "creation_content": {MARK: user_id},
        }
        | ({"initial_state": [_ENCRYPTION]} if encrypted else {})
    )


async def find_room(rooms: Rooms, user_id: str) -> str | None:
    """The room of two made for this person earlier, by the bot and nobody else, unless they left it."""
    for room_id in await rooms.joined_rooms():
        creation = await rooms.creation(room_id)
        if creation and creation.sender == rooms.user_id and creation.content.get(MARK) == user_id:
            member = await rooms.state(room_id, "m.room.member", user_id)
            if member and member.get("membership") in {"invite", "join"}:
                return room_id
    return None
