"""What keeps the way in and the way out: the bot's session, the inbox and the outbox.

Every call belongs to the unit of work it was reached through and commits with it.
"""

from collections.abc import Sequence
from datetime import datetime
from typing import Protocol

from bot.services.ports.events import Incoming, Received, Sealed
from bot.services.ports.messages import Cause, EventRef, Outgoing, Waiting
from bot.services.ports.records import Session


class Sessions(Protocol):
    """How the bot is signed in."""

    async def get(self, user_id: str) -> Session | None:
        """The session of an earlier start."""

    async def save(self, session: Session) -> None:
        """Keep the session, new or renewed."""


class Inbox(Protocol):
    """Everything that came from a room, once each, in stream order."""

    async def take(self, account: str, events: Sequence[Incoming], token: str | None) -> int:
        """Keep the new ones of these events and, with them, the sync token reached; how many were new."""

    async def token(self, account: str) -> str | None:
        """The sync token last kept for this account."""

    async def known(self, event_ids: Sequence[str]) -> set[str]:
        """Which of these events were kept before, whatever became of them since."""

    async def oldest(self) -> Received | None:
        """The first event not yet processed and not dead."""

    async def settle(self, seq: int) -> None:
        """Mark as processed and erase what was said: only event id and state stay."""

    async def fail(self, seq: int, problem: str) -> int:
        """Count a failed attempt; how many there have been."""

    async def bury(self, seq: int) -> None:
        """Mark as dead, so that it blocks no other; its content is erased."""


class SealedEvents(Protocol):
    """What was said and cannot be read yet, in stream order."""

    async def keep(self, events: Sequence[Sealed]) -> None:
        """Keep the new ones of these events until their key comes."""

    async def waiting(self) -> list[Sealed]:
        """Everything that waits for its key."""

    async def drop(self, event_ids: Sequence[str]) -> None:
        """Forget these: they have been opened, or deleted by who sent them."""

    async def untold(self, before: datetime) -> list[Sealed]:
        """The first event of each key that has been missing since before then and of which nobody has been told."""

    async def mark_told(self, session_id: str) -> None:
        """Note that people have been told of what is sealed with this key."""

    async def lapse(self, before: datetime) -> None:
        """Forget what was kept before then."""


class Outbox(Protocol):
    """Everything that goes to a room, once each, in lane order. A lane is a room, a person, or a room's reactions."""

    async def add(self, note: Outgoing, cause: Cause, part: int) -> EventRef:
        """Keep a message to be sent; the same cause and part again changes nothing and gives the first reference."""

    async def lanes(self) -> list[tuple[str, datetime | None]]:
        """Lanes with something to send, the longest waiting first, each with the moment before which it rests."""

    async def head(self, lane: str, most: int) -> list[Waiting]:
        """The first rows of the lane in order, at most so many."""

    async def lease(self, head: int, absorbed: Sequence[int], note: Outgoing, now: datetime) -> bool:
        """Mark the head as being tried, with its content as it will be sent, and the rows that it absorbs.

        False, and nothing is changed, if it is no longer the head of its lane or somebody else is trying it.
        """

    async def release(self) -> None:
        """Give up the leases that an earlier process took with it."""

    async def keep(self, row: int, note: Outgoing) -> None:
        """Keep a message as it has become by now; its transaction id stays."""

    async def sent(self, row: int, event_id: str) -> None:
        """Mark the row and those it absorbed as sent, under this event id, and erase what was said."""

    async def postpone(self, row: int, until: datetime, problem: str) -> None:
        """Count a failed attempt; its lane waits until then."""

    async def bury(self, row: int, problem: str) -> None:
        """Mark as dead: never tried again, never in the way of the next."""

    async def event_of(self, ref: EventRef) -> str | None:
        """The event id behind a reference; None while unsent or dead."""
