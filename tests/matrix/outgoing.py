"""What the tests of the sender ask of it, and a messenger that takes its time."""

import asyncio
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager, suppress

from bot.matrix.outbox import Sender
from bot.services.ports.messages import EventRef, Outgoing, Waiting
from bot.services.ports.world import UnitOfWork
from tests.fakes import KITCHEN_ROOM
from tests.matrix.fakes import KeepingMessenger

Say = Callable[..., Awaitable[EventRef]]
"""Puts a note into the outbox, for a cause of its own."""


@asynccontextmanager
async def running(sender: Sender) -> AsyncIterator[None]:
    """The sender at work, until the block ends."""
    task = asyncio.create_task(sender.run())
    try:
        async with asyncio.timeout(10):
            yield
    finally:
        task.cancel()
        with suppress(asyncio.CancelledError):
            await task


async def until(condition: Callable[[], bool]) -> None:
    """Wait until it holds."""
    while not condition():  # noqa: ASYNC110 - what is awaited is kept in plain lists
        await asyncio.sleep(0.001)


async def nobody(_: UnitOfWork, waiting: Waiting, problem: str) -> None:
    """Nobody is told."""
    raise AssertionError(f"buried {waiting}: {problem}")


class SlowMessenger(KeepingMessenger):
    """Takes its time in one room: until ``let_go`` is set."""

    def __init__(self) -> None:
        super().__init__()
        self.let_go = asyncio.Event()
        self.entered = asyncio.Event()

    async def send(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Wait in the kitchen, not elsewhere."""
        if room_id == KITCHEN_ROOM:
            self.entered.set()
            await self.let_go.wait()
        return await super().send(waiting, room_id, note)
