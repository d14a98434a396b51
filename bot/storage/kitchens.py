"""Kitchens, the people in them, the state of their rooms, and the private rooms of two."""

from typing import Any

from sqlalchemy import Select, bindparam, delete, select, update

from bot.services.ports.records import Kitchen, Member
from bot.storage.repository import Repository, columns_of, values_of
from bot.storage.tables import kitchens, members, private_rooms, room_states

_KITCHEN = select(*columns_of(kitchens, Kitchen))
_MEMBER = select(*columns_of(members, Member))
_BY_ROOM = _KITCHEN.where(kitchens.c.room_id == bindparam("room_id"))
_BY_ROOM_AND_PERSON = _MEMBER.where(
    members.c.room_id == bindparam("room_id"), members.c.user_id == bindparam("user_id")
)


class SqlKitchens(Repository):
    """Rooms, their settings, who is in them, and the bot's private rooms of two."""

    async def save(self, kitchen: Kitchen) -> None:
        """Store the kitchen, new or changed; one that the bot had left is open again."""
        await self._put(kitchens, **values_of(kitchens, kitchen), closed=False)

    async def get(self, room_id: str) -> Kitchen | None:
        """The kitchen of this room, closed or not."""
        row = await self._one(_BY_ROOM, room_id=room_id)
        return Kitchen(**row) if row else None

    async def all(self) -> list[Kitchen]:
        """Every kitchen that the bot is in, the longest opened first."""
        return await self._open(_KITCHEN)

    async def of(self, user_id: str) -> list[Kitchen]:
        """The kitchens that this person is now in, the longest opened first."""
        theirs = (members.c.user_id == user_id) & (members.c.state == "join")
        return await self._open(_KITCHEN.join(members, members.c.room_id == kitchens.c.room_id).where(theirs))

    async def _open(self, query: Select[Any]) -> list[Kitchen]:
        rows = await self._all(query.where(~kitchens.c.closed).order_by(kitchens.c.opened_at, kitchens.c.room_id))
        return [Kitchen(**row) for row in rows]

    async def close(self, room_id: str) -> None:
        """The bot is no longer in this room: its schedules rest; nothing is lost."""
        await self._do(update(kitchens).where(kitchens.c.room_id == room_id).values(closed=True))

    async def save_member(self, member: Member) -> None:
        """Store who a person is in a room."""
        await self._put(members, **values_of(members, member))

    async def member(self, room_id: str, user_id: str) -> Member | None:
        """What is known of this person in this room."""
        row = await self._one(_BY_ROOM_AND_PERSON, room_id=room_id, user_id=user_id)
        return Member(**row) if row else None

    async def members(self, room_id: str) -> list[Member]:
        """Everybody ever seen in this room, those who left too, by user id."""
        rows = await self._all(_MEMBER.where(members.c.room_id == room_id).order_by(members.c.user_id))
        return [Member(**row) for row in rows]

    async def save_state(self, room_id: str, type_: str, content: dict[str, object], sender: str) -> None:
        """Keep the raw content (and sender) of a state event; the newest replaces the former."""
        await self._put(room_states, room_id=room_id, type=type_, content=content, sender=sender)

    async def state(self, room_id: str, type_: str) -> tuple[dict[str, object], str] | None:
        """The raw content and sender of a state event."""
        this = (room_states.c.room_id == room_id) & (room_states.c.type == type_)
        row = await self._one(select(room_states.c.content, room_states.c.sender).where(this))
        return (row["content"], row["sender"]) if row else None

    async def states(self, type_: str) -> list[tuple[str, dict[str, object], str]]:
        """Room, raw content and sender of every state event of this type."""
        rows = await self._all(select(room_states).where(room_states.c.type == type_).order_by(room_states.c.room_id))
        return [(row["room_id"], row["content"], row["sender"]) for row in rows]

    async def private_room(self, user_id: str) -> str | None:
        """The private room of two with this person."""
        theirs = select(private_rooms.c.room_id).where(private_rooms.c.user_id == user_id)
        room: str | None = await self._value(theirs)
        return room

    async def private_person(self, room_id: str) -> str | None:
        """Whose private room this is; None of any other room."""
        person: str | None = await self._value(
            select(private_rooms.c.user_id).where(private_rooms.c.room_id == room_id)
        )
        return person

    async def start_private(self, user_id: str) -> bool:
        """Note that a private room is about to be opened; False if one was noted before, opened or not."""
        return await self._insert_or_ignore(private_rooms, user_id=user_id)

    async def save_private(self, user_id: str, room_id: str | None) -> None:
        """Keep the private room of this person; None where it is gone."""
        await self._do(delete(private_rooms).where(private_rooms.c.user_id == user_id))
        if room_id is not None:
            await self._put(private_rooms, user_id=user_id, room_id=room_id)
