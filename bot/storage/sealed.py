"""What was said and cannot be read yet: kept as it came, in stream order, until its key comes or it lapses."""

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import bindparam, delete, func, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from bot.services.ports.events import Sealed
from bot.services.ports.world import Clock
from bot.storage.repository import Repository
from bot.storage.tables import sealed_events

_ALL = select(sealed_events.c.event).order_by(sealed_events.c.seq)
_FIRST = (
    select(func.min(sealed_events.c.seq))
    .where(~sealed_events.c.told, sealed_events.c.received <= bindparam("before"))
    .group_by(sealed_events.c.session_id)
)


class SqlSealedEvents(Repository):
    """Sealed events, once each."""

    def __init__(self, connection: AsyncConnection, clock: Clock) -> None:
        super().__init__(connection)
        self._clock = clock

    async def keep(self, events: Sequence[Sealed]) -> None:
        """Keep the new ones of these events until their key comes."""
        now = self._clock()
        rows = [
            {"event_id": event.event_id, "session_id": event.session_id, "received": now, "told": False, "event": event}
            for event in events
        ]
        await self._insert_new(sealed_events, rows)

    async def waiting(self) -> list[Sealed]:
        """Everything that waits for its key."""
        return [row["event"] for row in await self._all(_ALL)]

    async def drop(self, event_ids: Sequence[str]) -> None:
        """Forget these: they have been opened, or deleted by who sent them."""
        if event_ids:
            await self._do(delete(sealed_events).where(sealed_events.c.event_id.in_(event_ids)))

    async def untold(self, before: datetime) -> list[Sealed]:
        """The first event of each key that has been missing since before then and of which nobody has been told."""
        return [row["event"] for row in await self._all(_ALL.where(sealed_events.c.seq.in_(_FIRST)), before=before)]

    async def mark_told(self, session_id: str) -> None:
        """Note that people have been told of what is sealed with this key."""
        await self._do(update(sealed_events).where(sealed_events.c.session_id == session_id).values(told=True))

    async def lapse(self, before: datetime) -> None:
        """Forget what was kept before then."""
        await self._do(delete(sealed_events).where(sealed_events.c.received < before))
