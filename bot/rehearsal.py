"""The bot with no server: a chat goes through the same inbox, words, services, storage and outbox.

Time belongs to whoever feeds it: what comes due between two events happens between them, at its own moment.
"""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import count
from zoneinfo import ZoneInfo

from bot.app.house import build_house
from bot.fitting import FittingHere
from bot.matrix.references import resolved
from bot.services.faults import Faults
from bot.services.house import Group
from bot.services.inbox import InboxWorker
from bot.services.planner import Planner
from bot.services.ports.events import Incoming, Membership, RoomState, StateType
from bot.services.ports.messages import Outgoing, Waiting
from bot.services.ports.world import UnitOfWork
from bot.services.refits import Refits
from bot.storage.storage import SqlStorage
from bot.words import vocabulary
from bot.words.interpreter import Interpreter

BOT = "@platepace:tern.example"
ACCOUNT = "rehearsal"
IN_MEMORY = "sqlite://"
MANY = 1_000
"""More messages than anything causes at one moment."""

REFITTED_AFTER = timedelta(hours=1)
"""So long a pause ends with a look at what fits have changed; within a busy hour nobody asks for one a message."""


@dataclass(frozen=True)
class Heard:
    """One thing that the bot said: when by the kitchen's clock, where, and as which event.

    References in ``note`` are event ids.
    """

    at: datetime
    room_id: str
    event_id: str
    note: Outgoing


class Rehearsal:
    """A bot at work on a storage of its own, fed by hand; what it says is given back once and not kept."""

    def __init__(
        self, start: datetime, *, zone: str, url: str, groups: tuple[Group, ...] = (), language: str = "en"
    ) -> None:
        self.now = start
        self.storage = SqlStorage(url, lambda: self.now)
        self.house = build_house(clock=lambda: self.now, bot_id=BOT, zone=zone, groups=groups, language=language)
        handle = Interpreter(self.house, vocabulary())
        self._inbox = InboxWorker(self.storage, self.house, handle, wake_sender=_nobody)
        self._planner = Planner(self.storage, self.house, wake_sender=_nobody)
        self._refits = Refits(self.storage, self.house, FittingHere(), Faults(self.house, self.storage).report)
        self._drills: dict[str, str] = {}
        self._numbers = count(1)

    def new_id(self) -> str:
        """The id of an event that nothing has had yet."""
        return f"$event{next(self._numbers)}"

    def newest_drill(self, room_id: str) -> str | None:
        """The event as which the newest drill was posted; None before the first."""
        return self._drills.get(room_id)

    async def take(self, event: Incoming) -> list[Heard]:
        """Let an event come in at its own time; what the bot has said by then, and says to it."""
        return [*await self.wait_until(event.sent_at), *await self.take_now(event)]

    async def take_now(self, *events: Incoming) -> list[Heard]:
        """Let these events come in now, all at once; what the bot says to them."""
        async with self.storage.begin() as work:
            await work.inbox.take(ACCOUNT, events, None)
        await self._inbox.empty()
        return await self._deliver()

    async def wait_until(self, moment: datetime) -> list[Heard]:
        """Let time pass, stopping wherever something comes due; what the bot says meanwhile."""
        heard: list[Heard] = []
        while self.now < moment:
            due = await self._next_moment()
            if due is not None and due <= moment:
                await self._refits.look()
                heard += await self.wake_at(due)
            else:
                idle, self.now = moment - self.now, moment
                if idle >= REFITTED_AFTER:
                    await self._refits.look()
        return heard

    async def _next_moment(self) -> datetime | None:
        """When something is next due to be planned, or may be said that was kept for later."""
        async with self.storage.begin() as work:
            kept = [until for _, until in await work.outbox.lanes() if until and until > self.now]
        planned = await self._planner.next_moment()
        return min(kept + ([planned] if planned else []), default=None)

    async def wake_at(self, moment: datetime) -> list[Heard]:
        """Look only now what has come due, as when the bot was off until this moment; what it says then."""
        self.now = moment
        await self._planner.tick()
        return await self._deliver()

    async def open_kitchen(self, room_id: str, name: str, chef: str) -> list[Heard]:
        """Make a room to which its creator has invited the bot; what the bot says on coming."""
        await self.set_state(room_id, chef, "m.room.create", {"room_version": "11"})
        await self.set_state(room_id, chef, "m.room.power_levels", {"users": {chef: 100}})
        await self.set_state(room_id, chef, "m.room.name", {"name": name})
        return await self.take_now(self._member(room_id, BOT))

    async def set_state(self, room_id: str, sender: str, kind: StateType, content: dict[str, object]) -> None:
        """Let somebody set a state of the room."""
        event_id, now = self.new_id(), self.now
        await self.take_now(
            RoomState(event_id=event_id, room_id=room_id, sender=sender, sent_at=now, type=kind, content=content)
        )

    async def come(self, room_id: str, person: str, name: str) -> None:
        """Let a person come into the room, or take another name there."""
        await self.take_now(self._member(room_id, person, name))

    async def private_room(self, person: str) -> str:
        """The private room of the bot and this person, who opens it if nobody has."""
        async with self.storage.begin() as work:
            known = await work.kitchens.private_room(person)
        if known is None:
            invitation = replace(self._member(_private(person), BOT), sender=person, state="invite", direct=True)
            await self.take_now(invitation)
        return known or _private(person)

    def _member(self, room_id: str, person: str, name: str = "") -> Membership:
        """The event of a person who comes into a room by themselves."""
        return Membership(
            event_id=self.new_id(),
            room_id=room_id,
            sender=person,
            sent_at=self.now,
            person=person,
            state="join",
            name=name,
        )

    async def _deliver(self) -> list[Heard]:
        """Send all that waits, each lane in order."""
        async with self.storage.begin() as work:
            return [
                await self._send(work, waiting)
                for lane, until in await work.outbox.lanes()
                if until is None or until <= self.now
                for waiting in await work.outbox.head(lane, MANY)
            ]

    async def _send(self, work: UnitOfWork, waiting: Waiting) -> Heard:
        event_id, note = f"$said{waiting.id}", await resolved(work, waiting.note)
        room_id, zone = await _room(work, note.to), await _zone(work, note.to)
        if note.style == "pin" and note.target:
            self._drills[room_id] = note.target
        await work.outbox.sent(waiting.id, event_id)
        return Heard(self.now.astimezone(ZoneInfo(zone)), room_id, event_id, note)


async def _room(work: UnitOfWork, to: str) -> str:
    """The room itself, or the private room of a person, opened if need be."""
    if not to.startswith("@"):
        return to
    known = await work.kitchens.private_room(to)
    if known is None:
        await work.kitchens.save_private(to, _private(to))
    return known or _private(to)


async def _zone(work: UnitOfWork, to: str) -> str:
    """The zone of the kitchen where it is said; in private, of the one that the person has been in longest."""
    kitchens = await work.kitchens.of(to) if to.startswith("@") else [await work.kitchens.get(to)]
    return next((kitchen.zone for kitchen in kitchens if kitchen), "UTC")


def _private(person: str) -> str:
    return f"!private{person}"


def _nobody() -> None:
    """Nobody sleeps here, so nobody is woken."""


@asynccontextmanager
async def rehearsal(
    start: datetime, *, zone: str = "UTC", url: str = IN_MEMORY, groups: tuple[Group, ...] = (), language: str = "en"
) -> AsyncIterator[Rehearsal]:
    """A rehearsal on a database in memory, or at a URL, that begins at this moment."""
    stage = Rehearsal(start, zone=zone, url=url, groups=groups, language=language)
    await stage.storage.migrate()
    try:
        yield stage
    finally:
        await stage.storage.close()
