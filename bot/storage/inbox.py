"""The inbox: every event once, in stream order, its words gone as soon as it is dealt with."""

import logging
from collections.abc import Sequence
from typing import Annotated, Any

from pydantic import Field, TypeAdapter, ValidationError
from pydantic_core import PydanticSerializationError
from sqlalchemy import bindparam, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from bot.services.ports.events import Incoming, Received
from bot.services.ports.world import Clock
from bot.storage.repository import Repository
from bot.storage.tables import NEW, inbox, sync_tokens

log = logging.getLogger(__name__)

_EVENT: TypeAdapter[Incoming] = TypeAdapter(Annotated[Incoming, Field(discriminator="kind")])
_OLDEST = select(inbox.c.seq, inbox.c.body, inbox.c.attempts).where(inbox.c.state == NEW).order_by(inbox.c.seq).limit(2)

_ONE = update(inbox).where(inbox.c.seq == bindparam("which"))


class SqlInbox(Repository):
    """Everything that came from a room, once each, in stream order."""

    def __init__(self, connection: AsyncConnection, clock: Clock) -> None:
        super().__init__(connection)
        self._clock = clock

    async def take(self, account: str, events: Sequence[Incoming], token: str | None) -> int:
        """Keep the new ones of these events and, with them, the sync token reached; how many were new."""
        by_id: dict[str, Incoming] = {}
        for event in events:
            by_id.setdefault(event.event_id, event)
        new = await self._insert_new(inbox, [self._row(event) for event in by_id.values()])
        if token is not None:
            await self._put(sync_tokens, account=account, token=token)
        return new

    def _row(self, event: Incoming) -> dict[str, Any]:
        row = {"event_id": event.event_id, "room_id": event.room_id, "received": self._clock(), "attempts": 0}
        try:
            body = _EVENT.dump_json(event, warnings="none").decode()
        except PydanticSerializationError:
            # Words that are no Unicode text cannot be written down; their event must not hold up the others.
            log.warning("event %s cannot be stored and is dropped", event.event_id)
            return row | {"room_id": None, "body": None, "state": "dead"}
        return row | {"body": body, "state": "new"}

    async def token(self, account: str) -> str | None:
        """The sync token last kept for this account."""
        token: str | None = await self._value(select(sync_tokens.c.token).where(sync_tokens.c.account == account))
        return token

    async def known(self, event_ids: Sequence[str]) -> set[str]:
        """Which of these events were kept before, whatever became of them since."""
        rows = await self._all(select(inbox.c.event_id).where(inbox.c.event_id.in_(event_ids)))
        return {row["event_id"] for row in rows}

    async def oldest(self) -> Received | None:
        """The first event not yet processed and not dead; one that can no longer be read is buried on the way."""
        while rows := await self._all(_OLDEST):
            row = rows[0]
            try:
                event = _EVENT.validate_json(row["body"])
                return Received(row["seq"], event, row["attempts"], is_last=len(rows) == 1)
            except ValidationError:
                log.exception("inbox row %s cannot be read and is buried", row["seq"])
                await self.bury(row["seq"])
        return None

    async def settle(self, seq: int) -> None:
        """Mark as processed and erase what was said: only event id and state stay."""
        await self._erase(seq, "done")

    async def fail(self, seq: int, problem: str) -> int:
        """Count a failed attempt; how many there have been."""
        counted = update(inbox).where(inbox.c.seq == seq).values(attempts=inbox.c.attempts + 1, problem=problem)
        return int(await self._value(counted.returning(inbox.c.attempts)))

    async def bury(self, seq: int) -> None:
        """Mark as dead, so that it blocks no other; its content is erased."""
        await self._erase(seq, "dead")

    async def _erase(self, seq: int, state: str) -> None:
        await self._do(_ONE, which=seq, state=state, room_id=None, body=None, problem=None)
