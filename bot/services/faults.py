"""Faults that only the operator can mend: logged, and told to the admin room where there is one, once a day each."""

import asyncio
import logging
import re
from dataclasses import replace

from bot.errors import OperatorError
from bot.services.house import House
from bot.services.ports.messages import Cause, Waiting
from bot.services.ports.world import Clock, Storage, UnitOfWork, Wake
from bot.services.speaker import Speaker
from bot.services.upgrades import moved_to

log = logging.getLogger(__name__)

_PERSON = re.compile(r"@[^\s:@]+:[^\s,;()'\"]+")


async def tell_admins(house: House, work: UnitOfWork, text: str) -> None:
    """Put it into the admin room, the same at most once a day, with no person's id in it; without a room do nothing."""
    if house.admin_room:
        await _tell(work, house.admin_room, house.clock, _PERSON.sub(house.phrases("somebody"), text))


async def _tell(work: UnitOfWork, room_id: str, clock: Clock, text: str) -> None:
    await Speaker(work, Cause(event_id=f"fault:{clock().date()}:{text}")).notice(room_id, text)


class AdminRoom:
    """Where faults are told with no need of a house that stands; ``wake_sender`` is set once there is a sender."""

    def __init__(self, room_id: str | None, clock: Clock, storage: Storage) -> None:
        self._room_id = room_id
        self._clock = clock
        self._storage = storage
        self.wake_sender: Wake = _nobody

    async def report(self, fault: OperatorError) -> None:
        """Tell of a fault of the connection, the rooms or the start."""
        log.error("%s", fault)
        if self._room_id:
            async with self._storage.begin() as work:
                await _tell(work, self._room_id, self._clock, _PERSON.sub("@…", str(fault)))
            self.wake_sender()

    async def log_dead(self, _: UnitOfWork, waiting: Waiting, problem: str) -> None:
        """Log that a message will never be sent."""
        log.error("outbox row %s is dead: %s", waiting.id, problem)


class Faults(AdminRoom):
    """The admin room of a house."""

    def __init__(self, house: House, storage: Storage) -> None:
        super().__init__(house.admin_room, house.clock, storage)
        self._house = house

    async def tell_dead(self, work: UnitOfWork, waiting: Waiting, problem: str) -> None:
        """Tell of a message that will never be sent; one to the admin room itself is only logged.

        What a room that is replaced refuses is said where its kitchen is now.
        """
        await self.log_dead(work, waiting, problem)
        note, phrases = waiting.note, self._house.phrases
        now_in = await moved_to(work, note.to) if note.style in ("text", "notice") else None
        if now_in:
            moved = replace(note, to=now_in, thread=None, reply_to=None)
            await Speaker(work, Cause(event_id=f"moved:{waiting.id}")).say(moved)
        elif note.style == "join":
            await tell_admins(self._house, work, phrases("dead-join", room=note.to, problem=problem))
        elif note.to != self._house.admin_room:
            await tell_admins(self._house, work, phrases("dead-message", lane=waiting.lane, problem=problem))


class Alarm(logging.Handler):
    """Hears of every unforeseen fault that is logged, wherever, and tells the admin room which part failed how.

    Only the name of the part and the kind of the exception are told: what was said and by whom may be in the rest.
    """

    def __init__(self, room: AdminRoom) -> None:
        super().__init__(logging.ERROR)
        self._room = room
        self._loop = asyncio.get_running_loop()
        self._heard: asyncio.Queue[tuple[str, str]] = asyncio.Queue(maxsize=100)

    def emit(self, record: logging.LogRecord) -> None:
        """Take note, from whatever thread it comes."""
        kind = record.exc_info[0] if record.exc_info else None
        if kind:
            self._loop.call_soon_threadsafe(self._note, record.name, kind.__name__)

    def _note(self, part: str, kind: str) -> None:
        if not self._heard.full():  # a storm is one fault, told once
            self._heard.put_nowait((part, kind))

    async def run(self) -> None:
        """Listen to the whole log and tell, until cancelled."""
        logging.getLogger().addHandler(self)
        try:
            while True:
                await self._tell_next()
        finally:
            logging.getLogger().removeHandler(self)

    async def _tell_next(self) -> None:
        part, kind = await self._heard.get()
        try:
            await self._room.report(OperatorError(f"An unforeseen fault in {part}: {kind}. The log has it in full."))
        except Exception as fault:  # heard of no more than once, or it would be told of its own telling for ever
            log.warning("the admin room could not be told: %s", type(fault).__name__)


def _nobody() -> None:
    """Before there is a sender nobody sleeps."""
