"""The clock, the unit of work and the messenger."""

from collections.abc import Awaitable, Callable
from contextlib import AbstractAsyncContextManager
from datetime import datetime
from typing import Protocol

from bot.services.ports.drill_repository import Drills
from bot.services.ports.fitting import Fits
from bot.services.ports.messages import Outgoing, Waiting
from bot.services.ports.pipeline import Inbox, Outbox, SealedEvents, Sessions
from bot.services.ports.repositories import Kitchens, Moves, Persons, Schedules
from bot.services.ports.run_repository import Questions, Runs

Clock = Callable[[], datetime]
"""The time now, in UTC, aware."""


class UnitOfWork(Protocol):
    """One transaction: everything reached through it is stored together or not at all."""

    sessions: Sessions
    inbox: Inbox
    sealed: SealedEvents
    outbox: Outbox
    kitchens: Kitchens
    drills: Drills
    schedules: Schedules
    runs: Runs
    questions: Questions
    fits: Fits
    persons: Persons
    moves: Moves


class Storage(Protocol):
    """Where units of work come from."""

    def begin(self) -> AbstractAsyncContextManager[UnitOfWork]:
        """A transaction that commits on a clean exit and rolls back on an exception."""


class Messenger(Protocol):
    """The way out to the rooms."""

    async def send(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Send with the row's transaction id, every reference in ``note`` being an event id; the event id it became.

        Raises SendRefused where the server never will and TryLater where it may later.
        """

    async def upload(self, room_id: str, note: Outgoing) -> dict[str, object] | None:
        """What the message says of its attachment, now uploaded for this room; None where it is refused for good.

        Raises TryLater where it may later.
        """

    async def find_sent(self, waiting: Waiting, room_id: str) -> str | None:
        """The event id of this row if it is already in the room (looked for by transaction id), else None."""

    async def open_private(self, user_id: str, *, look_first: bool) -> str:
        """Open a room of two; with ``look_first`` an earlier one, made but never noted, is found and used."""


Wake = Callable[[], None]
"""Tells a sleeping worker that there is something to do."""

Rest = Callable[[float], Awaitable[None]]
"""Sleeps for so many seconds."""
