"""Drills being written: one a person in a kitchen."""

from dataclasses import replace

from sqlalchemy import ColumnElement, delete, select

from bot.services.ports.drill_records import Draft
from bot.storage.repository import Repository, values_of
from bot.storage.tables import drafts


class Drafts(Repository):
    """Keeps the drafts."""

    async def save_draft(self, draft: Draft) -> Draft:
        """Store; a person has one draft in a kitchen, so a new one takes the place of the former."""
        theirs = (drafts.c.room_id == draft.room_id) & (drafts.c.author == draft.author)
        await self._do(delete(drafts).where(theirs))
        return replace(draft, id=await self._insert(drafts, **values_of(drafts, draft)))

    async def draft(self, room_id: str, author: str) -> Draft | None:
        """The open draft of this chef."""
        return await self._draft(drafts.c.room_id == room_id, drafts.c.author == author)

    async def draft_of_event(self, event_id: str) -> Draft | None:
        """The draft written by this message."""
        return await self._draft(drafts.c.event_id == event_id)

    async def drop_draft(self, draft_id: int) -> None:
        """Erase it."""
        await self._do(delete(drafts).where(drafts.c.id == draft_id))

    async def _draft(self, *which: ColumnElement[bool]) -> Draft | None:
        row = await self._one(select(drafts).where(*which))
        return Draft(**row) if row else None
