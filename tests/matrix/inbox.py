"""What the tests of the sync loop ask of it and of the inbox."""

import asyncio
from contextlib import suppress

from bot.matrix.sync import SyncLoop
from bot.services.ports.events import Incoming
from bot.storage.storage import SqlStorage
from tests.fakes import a_message
from tests.matrix.fakes import BOT, ScriptedServer


async def run_out(loop: SyncLoop, server: ScriptedServer) -> None:
    """Run the loop until the server has nothing left to say."""
    task = asyncio.create_task(loop.run())
    async with asyncio.timeout(10):
        await server.silent.wait()
    task.cancel()
    with suppress(asyncio.CancelledError):
        await task


async def kept(storage: SqlStorage) -> list[Incoming]:
    """What is in the inbox, in order; this empties it."""
    events = []
    async with storage.begin() as work:
        while received := await work.inbox.oldest():
            events.append(received.event)
            await work.inbox.settle(received.seq)
    return events


async def kept_ids(storage: SqlStorage) -> list[str]:
    """The ids of what is in the inbox."""
    return [event.event_id for event in await kept(storage)]


async def token(storage: SqlStorage) -> str | None:
    """The token kept."""
    async with storage.begin() as work:
        return await work.inbox.token(BOT)


async def start_at(storage: SqlStorage, reached: str, *known: str) -> None:
    """Be a bot that has synced so far, and has dealt with these messages."""
    async with storage.begin() as work:
        await work.inbox.take(BOT, [a_message(event_id) for event_id in known], reached)
    await kept(storage)
