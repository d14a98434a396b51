"""The outbox: every message once, under a transaction id that never changes, first come first served in its lane.

A row waits, is leased to whoever tries it, and ends as sent or dead; one that another message absorbed is merged until
that one is sent. Its words go when it no longer needs them. ``lease_until`` is the moment before which nobody tries it:
the end of a lease, of the rest after a failed attempt, or of the time in which its person is left in peace.
"""

import hashlib
from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import partial

from sqlalchemy import ColumnElement, FromClause, bindparam, exists, func, or_, select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from bot.services.ports.messages import Cause, EventRef, Outgoing, Waiting
from bot.storage.columns import Moment
from bot.storage.repository import Repository
from bot.storage.tables import OPEN, outbox

_OURS = "outbox:"
_EVENT_TYPES = {
    "reaction": "m.reaction",
    "pin": "m.room.pinned_events",
    "join": "m.room.member",
    "leave": "m.room.member",
    "leave_if_empty": "m.room.member",
}


def _is_open(rows: FromClause) -> ColumnElement[bool]:
    return rows.c.state.in_(OPEN)


_BEFORE = outbox.alias("before")
_HAS_ONE_BEFORE_IT = exists().where(_BEFORE.c.lane == outbox.c.lane, _BEFORE.c.id < outbox.c.id, _is_open(_BEFORE))
_MAY_BE_TRIED = or_(outbox.c.lease_until.is_(None), outbox.c.lease_until <= bindparam("now"))
_FIRST_IDS = select(func.min(outbox.c.id)).where(_is_open(outbox)).group_by(outbox.c.lane)
_HEADS = select(outbox.c.lane, outbox.c.lease_until).where(outbox.c.id.in_(_FIRST_IDS)).order_by(outbox.c.id)
_LINE = (
    select(outbox)
    .where(outbox.c.lane == bindparam("lane"), _is_open(outbox))
    .order_by(outbox.c.id)
    .limit(bindparam("most"))
)
_LEASE = (
    update(outbox)
    .where(outbox.c.id == bindparam("row"), _is_open(outbox), _MAY_BE_TRIED, ~_HAS_ONE_BEFORE_IT)
    .values(
        state="leased",
        content=bindparam("note"),
        lease_until=bindparam("until"),
        first_try=func.coalesce(outbox.c.first_try, bindparam("now", type_=Moment)),
    )
)
_WITH_ABSORBED = update(outbox).where(or_(outbox.c.id == bindparam("row"), outbox.c.head_id == bindparam("row")))
_EVENT_ID = select(outbox.c.event_id).where(outbox.c.id == bindparam("row"))


class SqlOutbox(Repository):
    """Everything that goes to a room, once each, in lane order."""

    def __init__(self, connection: AsyncConnection, lease: timedelta) -> None:
        super().__init__(connection)
        self._lease = lease

    async def add(self, note: Outgoing, cause: Cause, part: int) -> EventRef:
        """Keep a message to be sent; the same cause and part again changes nothing and gives the first reference."""
        row = await self._insert_or_find(
            outbox,
            partial(_said_for, cause, part),
            lane=lane_of(note),
            schedule_id=cause.schedule_id,
            slot=cause.slot,
            part=part,
            event_type=event_type_of(note),
            content=note,
            txn_id=transaction_id(note, cause, part),
            state="waiting",
            attempts=0,
            lease_until=note.not_before,
            cause_event_id=cause.event_id,
            revision=None if cause.event_id is None else cause.revision,
        )
        return ref_of(row)

    async def lanes(self) -> list[tuple[str, datetime | None]]:
        """Lanes with something to send, the longest waiting first, each with the moment before which it rests."""
        return [(row["lane"], row["lease_until"]) for row in await self._all(_HEADS)]

    async def head(self, lane: str, most: int) -> list[Waiting]:
        """The first rows of the lane in order; one tried before comes alone, for what it says is settled."""
        rows = await self._all(_LINE, lane=lane, most=most)
        return [
            Waiting(
                id=row["id"],
                lane=row["lane"],
                txn_id=row["txn_id"],
                note=row["content"],
                attempts=row["attempts"],
                first_try_at_s=row["first_try"].timestamp() if row["first_try"] else None,
            )
            for row in (rows[:1] if rows and rows[0]["first_try"] else rows)
        ]

    async def lease(self, head: int, absorbed: Sequence[int], note: Outgoing, now: datetime) -> bool:
        """Mark the head as being tried, with its content as it will be sent, and the rows that it absorbs.

        False, and nothing is changed, if it is no longer the head of its lane or somebody else is trying it.
        """
        leased = await self._do(_LEASE, row=head, note=note, now=now, until=now + self._lease)
        if leased and absorbed:
            merged = {"state": "merged", "head_id": head, "content": None}
            await self._do(update(outbox).where(outbox.c.id.in_(absorbed), _is_open(outbox)).values(merged))
        return leased == 1

    async def release(self) -> None:
        """Give up the leases that an earlier process took with it."""
        taken = (_is_open(outbox), outbox.c.state == "leased")
        await self._do(update(outbox).where(*taken).values(lease_until=None))

    async def keep(self, row: int, note: Outgoing) -> None:
        """Keep a message as it has become by now; its transaction id stays."""
        await self._do(update(outbox).where(outbox.c.id == row, _is_open(outbox)).values(content=note))

    async def sent(self, row: int, event_id: str) -> None:
        """Mark the row and those it absorbed as sent, under this event id, and erase what was said."""
        await self._end(row, state="sent", event_id=event_id)

    async def postpone(self, row: int, until: datetime, problem: str) -> None:
        """Count a failed attempt; its lane waits until then."""
        values = {"state": "waiting", "attempts": outbox.c.attempts + 1, "lease_until": until, "problem": problem}
        await self._do(update(outbox).where(outbox.c.id == row).values(values))

    async def bury(self, row: int, problem: str) -> None:
        """Mark as dead: never tried again, never in the way of the next; what it absorbed goes with it."""
        await self._end(row, state="dead", problem=problem)

    async def _end(self, row: int, **values: str) -> None:
        await self._do(_WITH_ABSORBED, row=row, content=None, lease_until=None, **values)

    async def event_of(self, ref: EventRef) -> str | None:
        """The event id behind a reference; None while unsent or dead."""
        if not ref.startswith(_OURS):
            return ref
        row = int(ref.removeprefix(_OURS))
        event_id: str | None = await self._value(_EVENT_ID, row=row)
        return event_id


def lane_of(note: Outgoing) -> str:
    """A room, a person, a room's reactions, which need not wait for its messages, or what is kept for later."""
    if note.not_before is not None:
        return lane_for_later(note.to)
    return f"{note.to}#ack" if note.style == "reaction" else note.to


def lane_for_later(to: str) -> str:
    """The lane of what is kept for somebody until they may be told it."""
    return f"{to}#later"


def event_type_of(note: Outgoing) -> str:
    """What the message is called on the wire."""
    return _EVENT_TYPES.get(note.style, "m.room.message")


def transaction_id(note: Outgoing, cause: Cause, part: int) -> str:
    """The same for the same saying, different for every other.

    The event type is in it because servers leave it out of their own key: the same id on a reaction and a message in
    one room would make the second vanish.
    """
    if cause.schedule_id is not None:
        said = [cause.schedule_id, cause.slot, part, note.to, event_type_of(note)]
    else:
        said = [cause.event_id, part, note.to, event_type_of(note), cause.revision]
    return hashlib.sha256("|".join(map(str, said)).encode()).hexdigest()[:32]


def ref_of(row: int) -> EventRef:
    """The reference to this row, whether sent or not."""
    return EventRef(f"{_OURS}{row}")


def _said_for(cause: Cause, part: int) -> list[ColumnElement[bool]]:
    if cause.schedule_id is not None:
        return [outbox.c.schedule_id == cause.schedule_id, outbox.c.slot == cause.slot, outbox.c.part == part]
    return [outbox.c.cause_event_id == cause.event_id, outbox.c.part == part, outbox.c.revision == cause.revision]
