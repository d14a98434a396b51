"""Faults that only the operator can mend: logged, and told to the admin room where there is one."""

import logging
from datetime import date

from bot.errors import OperatorError
from bot.services.house import House
from bot.services.ports.messages import Cause, Waiting
from bot.services.ports.world import Storage, UnitOfWork
from bot.services.speaker import Speaker

log = logging.getLogger(__name__)


class Faults:
    """Tells each fault to the admin room, the same one at most once a day."""

    def __init__(self, house: House, storage: Storage) -> None:
        self._house = house
        self._storage = storage

    async def report(self, fault: OperatorError) -> None:
        """Tell of a fault of the connection or the rooms."""
        log.error("%s", fault)
        today: date = self._house.clock().date()
        async with self._storage.begin() as work:
            await self._tell(work, f"fault:{today}:{fault}", str(fault))

    async def tell_dead(self, work: UnitOfWork, waiting: Waiting, problem: str) -> None:
        """Tell of a message that will never be sent; one to the admin room itself is only logged."""
        log.error("outbox row %s is dead: %s", waiting.id, problem)
        if waiting.note.to != self._house.admin_room:
            text = self._house.phrases("dead-message", lane=waiting.lane, problem=problem)
            await self._tell(work, f"dead:{waiting.id}", text)

    async def _tell(self, work: UnitOfWork, cause: str, text: str) -> None:
        if self._house.admin_room:
            await Speaker(work, Cause(event_id=cause)).notice(self._house.admin_room, text)
