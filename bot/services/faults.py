"""Faults that only the operator can mend: logged, and told to the admin room where there is one."""

import logging
from dataclasses import replace
from datetime import date

from bot.errors import OperatorError
from bot.services.house import House
from bot.services.ports.messages import Cause, Waiting
from bot.services.ports.world import Storage, UnitOfWork, Wake
from bot.services.speaker import Speaker
from bot.services.upgrades import moved_to

log = logging.getLogger(__name__)


class Faults:
    """Tells each fault to the admin room, the same one at most once a day; ``wake_sender`` is set once there is one."""

    def __init__(self, house: House, storage: Storage) -> None:
        self._house = house
        self._storage = storage
        self.wake_sender: Wake = _nobody

    async def report(self, fault: OperatorError) -> None:
        """Tell of a fault of the connection or the rooms."""
        log.error("%s", fault)
        today: date = self._house.clock().date()
        async with self._storage.begin() as work:
            await self._tell(work, f"fault:{today}:{fault}", str(fault))
        self.wake_sender()

    async def tell_dead(self, work: UnitOfWork, waiting: Waiting, problem: str) -> None:
        """Tell of a message that will never be sent; one to the admin room itself is only logged.

        What a room that is replaced refuses is said where its kitchen is now.
        """
        log.error("outbox row %s is dead: %s", waiting.id, problem)
        note, cause, phrases = waiting.note, f"dead:{waiting.id}", self._house.phrases
        now_in = await moved_to(work, note.to) if note.style in ("text", "notice") else None
        if now_in:
            moved = replace(note, to=now_in, thread=None, reply_to=None)
            await Speaker(work, Cause(event_id=f"moved:{waiting.id}")).say(moved)
        elif note.style == "join":
            await self._tell(work, cause, phrases("dead-join", room=note.to, problem=problem))
        elif note.to != self._house.admin_room:
            await self._tell(work, cause, phrases("dead-message", lane=waiting.lane, problem=problem))

    async def _tell(self, work: UnitOfWork, cause: str, text: str) -> None:
        if self._house.admin_room:
            await Speaker(work, Cause(event_id=cause)).notice(self._house.admin_room, text)


def _nobody() -> None:
    """Before there is a sender nobody sleeps."""
