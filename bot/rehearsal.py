"""The bot with no server: a scripted chat goes through the same inbox, words, services, storage and outbox.

Time is the script's: what comes due between two lines happens between them, at its own moment.
"""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, replace
from datetime import datetime

from bot.app import build_house
from bot.services.inbox import InboxWorker
from bot.services.planner import Planner
from bot.services.ports.events import Incoming, Membership, RoomState, StateType
from bot.services.ports.messages import EventRef, Outgoing, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from bot.words import vocabulary
from bot.words.interpreter import Interpreter

BOT = "@platepace:tern.example"
ACCOUNT = "rehearsal"


@dataclass(frozen=True)
class Heard:
    """One thing that the bot said: when, where, and as which event."""

    at: datetime
    room_id: str
    event_id: str
    note: Outgoing


class Rehearsal:
    """A bot at work on a storage of its own, fed by hand; ``heard`` is everything it has said."""

    def __init__(self, storage: SqlStorage, start: datetime, *, zone: str = "UTC") -> None:
        self.now = start
        self.heard: list[Heard] = []
        self.storage = storage
        self.house = build_house(clock=lambda: self.now, bot_id=BOT, zone=zone)
        handle = Interpreter(self.house, vocabulary())
        self._inbox = InboxWorker(storage, self.house, handle, wake_sender=_nobody)
        self._planner = Planner(storage, self.house, wake_sender=_nobody)

    async def take(self, *events: Incoming) -> list[Heard]:
        """Let these events come in at their own time; what the bot says to them, and what came due before."""
        before = len(self.heard)
        for event in events:
            await self.wait_until(event.sent_at)
            async with self.storage.begin() as work:
                await work.inbox.take(ACCOUNT, [event], None)
            await self._inbox.empty()
            await self._deliver()
        return self.heard[before:]

    async def wait_until(self, moment: datetime) -> None:
        """Let time pass, stopping wherever something comes due."""
        while self.now < moment:
            due = await self._planner.next_moment()
            self.now = min(due or moment, moment)
            await self._planner.tick()
            await self._deliver()

    async def open_kitchen(self, room_id: str, name: str, chef: str) -> None:
        """Make a room whose creator invites the bot."""
        states: dict[StateType, dict[str, object]] = {
            "m.room.create": {"room_version": "11"},
            "m.room.power_levels": {"users": {chef: 100}},
            "m.room.name": {"name": name},
        }
        for kind, content in states.items():
            await self.take(
                RoomState(
                    event_id=f"${kind}{room_id}",
                    room_id=room_id,
                    sender=chef,
                    sent_at=self.now,
                    type=kind,
                    content=content,
                )
            )
        await self.take(
            Membership(
                event_id=f"$bot{room_id}", room_id=room_id, sender=BOT, sent_at=self.now, person=BOT, state="join"
            )
        )

    async def _deliver(self) -> None:
        """Send all that waits, each lane in order."""
        while True:
            async with self.storage.begin() as work:
                lanes = await work.outbox.lanes(self.now)
                for lane in lanes:
                    (waiting,) = await work.outbox.head(lane, 1)
                    await self._send(work, waiting)
            if not lanes:
                return

    async def _send(self, work: UnitOfWork, waiting: Waiting) -> None:
        await work.outbox.lease(waiting.id, (), waiting.note, self.now)
        event_id = f"$said{waiting.id}"
        note = replace(waiting.note, thread=await _resolved(work, waiting.note.thread))
        self.heard.append(Heard(self.now, await self._room(work, note.to), event_id, note))
        await work.outbox.sent(waiting.id, event_id)

    async def _room(self, work: UnitOfWork, to: str) -> str:
        if not to.startswith("@"):
            return to
        room_id = await work.kitchens.private_room(to)
        if room_id is None:
            room_id = f"!private{to}"
            await work.kitchens.save_private(to, room_id)
        return room_id


async def _resolved(work: UnitOfWork, ref: EventRef | None) -> EventRef | None:
    event_id = await work.outbox.event_of(ref) if ref else None
    return EventRef(event_id) if event_id else None


def _nobody() -> None:
    """Nobody sleeps here, so nobody is woken."""


@asynccontextmanager
async def rehearsal(
    start: datetime, *, zone: str = "UTC", url: str = "sqlite+aiosqlite://"
) -> AsyncIterator[Rehearsal]:
    """A rehearsal on a database in memory."""
    storage = SqlStorage(url, lambda: start)
    await storage.migrate()
    try:
        yield Rehearsal(storage, start, zone=zone)
    finally:
        await storage.close()
