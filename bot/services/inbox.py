"""Works through the inbox: one event, one transaction, in stream order; a poison event never blocks the others."""

import asyncio
import logging
from collections.abc import Awaitable, Callable

from bot.services.faults import tell_admins
from bot.services.house import House
from bot.services.languages import room_phrases
from bot.services.ports.events import Message, Received
from bot.services.ports.messages import Cause
from bot.services.ports.world import Storage, UnitOfWork, Wake
from bot.services.speaker import Speaker

log = logging.getLogger(__name__)

ATTEMPTS = 3
AFTER_A_FAULT_S = 5.0

Handler = Callable[[Received, UnitOfWork], Awaitable[None]]
"""Understands one event and says what is to be said, all within the unit of work."""


class InboxWorker:
    """Sleeps until woken, then handles everything that waits."""

    def __init__(self, storage: Storage, house: House, handle: Handler, wake_sender: Wake) -> None:
        self._storage = storage
        self._house = house
        self._handle = handle
        self._wake_sender = wake_sender
        self._woken = asyncio.Event()

    def wake(self) -> None:
        """There is something in the inbox."""
        self._woken.set()

    async def run(self) -> None:
        """Work for ever."""
        while True:
            self._woken.clear()
            await self.empty()
            await self._woken.wait()

    async def empty(self) -> None:
        """Handle all that waits."""
        while await self._step():
            pass

    async def _step(self) -> bool:
        """Handle the oldest event with everything it causes, or leave no trace of it; whether another may wait."""
        received = None
        try:
            async with self._storage.begin() as work:
                received = await work.inbox.oldest()
                if received is None:
                    return False
                await self._handle(received, work)
                await work.inbox.settle(received.seq)
            self._wake_sender()
        except Exception as fault:
            if received is None:
                log.exception("the inbox cannot be read")
                await asyncio.sleep(AFTER_A_FAULT_S)
                return True
            log.exception("event %s failed", received.event.event_id)
            await self._failed(received, type(fault).__name__)
            self._wake_sender()
            return True
        return not received.is_last

    async def _failed(self, received: Received, problem: str) -> None:
        async with self._storage.begin() as work:
            if await work.inbox.fail(received.seq, problem) < ATTEMPTS:
                return
            await work.inbox.bury(received.seq)
            await self._confess(work, received, problem)

    async def _confess(self, work: UnitOfWork, received: Received, problem: str) -> None:
        """One fixed sentence where a person spoke, and the fault to whoever runs the bot."""
        event, phrases = received.event, self._house.phrases
        speaker = Speaker(work, Cause(event_id=event.event_id, revision=-1))
        if isinstance(event, Message):
            await speaker.notice(event.room_id, (await room_phrases(self._house, work, event.room_id))("my-fault"))
        await tell_admins(self._house, work, phrases("dead-event", event=event.event_id, problem=problem))
