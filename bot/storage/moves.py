"""A kitchen moves to the room that replaces its own: every table that names the old room names the new one.

No list of tables has to be kept up to date: whatever column holds a room's id, whole or within a record, is found.
"""

from dataclasses import replace
from typing import Any

from sqlalchemy import Table, Text, select, type_coerce, update

from bot.services.ports.messages import EventRef, Outgoing
from bot.storage.about import is_record, named, without
from bot.storage.columns import metadata
from bot.storage.outbox import ref_of
from bot.storage.repository import Repository
from bot.storage.tables import (
    OPEN,
    inbox,
    kitchens,
    live_drills,
    members,
    outbox,
    private_rooms,
    room_states,
    sealed_events,
    sessions,
    sync_tokens,
)

STAYS = (sessions, sync_tokens, private_rooms, inbox, sealed_events, room_states)
"""What is not the kitchen's: the bot's own session, rooms of two, what came from a room, what a room says of itself."""

BY_HAND = (members, outbox)
"""What moves by rules of its own."""

_STRANGER = {"consent": None, "counted_since": None, "role": "cook", "on_boards": True, "ready": ()}


class SqlMoves(Repository):
    """Carries a kitchen over."""

    async def carry_over(self, old: str, new: str, thread: EventRef | None) -> None:
        """Make everything of the kitchen in the old room that of the new one, the room's own state apart."""
        moved = await self._redirect_unsent(old, new)
        if thread:
            goes_on = (live_drills.c.room_id == old, ~live_drills.c.announced, live_drills.c.root.not_in(moved))
            await self._do(update(live_drills).where(*goes_on).values(root=thread))
        await self._move_members(old, new)
        for table in metadata.sorted_tables:
            if table not in (*STAYS, *BY_HAND):
                await self._rename(table, old, new)
        await self._do(update(kitchens).where(kitchens.c.room_id == new).values(closed=False))

    async def _redirect_unsent(self, old: str, new: str) -> list[EventRef]:
        """Send to the new room what was to go to the old one; the references of what this is.

        What was tried before may have arrived in the old room, so it is tried there until that is known, and what is
        to be put on something in the old room cannot go elsewhere.
        """
        unsent = (outbox.c.lane == old, outbox.c.state.in_(OPEN), outbox.c.first_try.is_(None))
        rows = await self._all(select(outbox.c.id, outbox.c.content).where(*unsent))
        moved = [ref_of(row["id"]) for row in rows]
        for row in (row for row in rows if row["content"].target in {None, *moved}):
            note = _without_past(replace(row["content"], to=new), moved)
            await self._do(update(outbox).where(outbox.c.id == row["id"]).values(lane=new, content=note))
        return moved

    async def _move_members(self, old: str, new: str) -> None:
        """Who somebody is moves, that they are in a room does not: that each room says by itself."""
        here = {row["user_id"]: row for row in await self._all(select(members).where(members.c.room_id == new))}
        for row in await self._all(select(members).where(members.c.room_id == old)):
            there = here.get(row["user_id"])
            state, name = (there["state"], there["name"] or row["name"]) if there else ("leave", row["name"])
            await self._put(members, **{**row, "room_id": new, "state": state, "name": name})
        await self._do(update(members).where(members.c.room_id == old).values(_STRANGER))

    async def _rename(self, table: Table, old: str, new: str) -> None:
        for column in table.c:
            if is_record(column):
                await self._rename_within(table, column.name, old, new)
            elif isinstance(column.type, Text):
                await self._do(update(table).where(column == old).values({column.name: new}))

    async def _rename_within(self, table: Table, name: str, old: str, new: str) -> None:
        raw = type_coerce(table.c[name], Text)
        query = select(*table.primary_key, raw.label("raw")).where(raw.contains(old, autoescape=True))
        for row in await self._all(query):
            if named(row["raw"], old):
                this = [column == row[column.name] for column in table.primary_key]
                text: Any = type_coerce(without(row["raw"], old, new), Text)
                await self._do(update(table).where(*this).values({name: text}))


def _without_past(note: Outgoing, moved: list[EventRef]) -> Outgoing:
    """The note without references to what stands in the old room."""

    def kept(ref: EventRef | None) -> EventRef | None:
        return ref if ref in moved else None

    return replace(note, thread=kept(note.thread), reply_to=kept(note.reply_to), replaces=None)
