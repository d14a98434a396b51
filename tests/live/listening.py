"""A sync loop on a real homeserver, and what the tests ask of it and of the inbox."""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager, suppress

from bot.matrix.client import Client
from bot.matrix.sync import SyncLoop
from bot.matrix.world import World
from bot.services.ports.events import Incoming, Membership, Message
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.live.people import Person
from tests.matrix.fakes import Reports


def new_loop(client: Client, storage: SqlStorage, reports: Reports, chef: Person) -> SyncLoop:
    """Another loop on the same storage, as after a restart."""
    world = World(FixedClock(), _rest_briefly, lambda: 0.0)
    return SyncLoop(client, storage, world, allowed=chef.user_id.__eq__, wake=lambda: None, report=reports)


async def _rest_briefly(seconds: float) -> None:
    """Pauses are shortened, so that a test of three failures takes no ten seconds."""
    await asyncio.sleep(seconds / 20)


@asynccontextmanager
async def running(loop: SyncLoop) -> AsyncIterator[None]:
    """The loop at work until the block ends."""
    task = asyncio.create_task(loop.run())
    try:
        async with asyncio.timeout(30):
            await loop.caught_up.wait()
            yield
    finally:
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


async def until_kept(storage: SqlStorage, condition: Callable[[Incoming], bool]) -> list[Incoming]:
    """Everything kept up to and with the first event for which this holds."""
    events: list[Incoming] = []
    while not any(condition(event) for event in events):
        events += await kept(storage)
        await asyncio.sleep(0.02)
    return events


def joins(client: Client, room_id: str) -> Callable[[Incoming], bool]:
    """Whether the event is the bot's joining of this room."""

    def is_it(event: Incoming) -> bool:
        return isinstance(event, Membership) and (event.person, event.room_id, event.state) == (
            client.user_id,
            room_id,
            "join",
        )

    return is_it


def says(text: str) -> Callable[[Incoming], bool]:
    """Whether the event is this message."""
    return lambda event: isinstance(event, Message) and event.text == text


async def kitchen_with(client: Client, chef: Person) -> str:
    """A room of the chef's in which the bot already is."""
    room_id = await chef.open_room()
    await chef.invite(room_id, client.user_id)
    await client.join(room_id)
    return room_id
