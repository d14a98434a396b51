"""A storage in memory, a world whose time passes only in rests, and the bot's edge between them."""

from typing import Any

import pytest

from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.sync import SyncLoop
from bot.matrix.world import World
from bot.services.ports.messages import Cause, EventRef, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import IME, FixedClock, a_note
from tests.matrix.fakes import KeepingMessenger, Reports, Rests, ScriptedServer, a_world
from tests.matrix.outgoing import Say


@pytest.fixture
def rests(clock: FixedClock) -> Rests:
    """The rests taken so far."""
    return Rests(clock)


@pytest.fixture
def world(rests: Rests) -> World:
    """A world without chance."""
    return a_world(rests)


@pytest.fixture
def reports() -> Reports:
    """What the admins were told."""
    return Reports()


@pytest.fixture
def server() -> ScriptedServer:
    """A homeserver to script."""
    return ScriptedServer()


@pytest.fixture
def woken() -> list[int]:
    """One entry for each time that the inbox worker was woken."""
    return []


@pytest.fixture
def loop(server: ScriptedServer, storage: SqlStorage, world: World, reports: Reports, woken: list[int]) -> SyncLoop:
    """The loop between them; only the chef may invite."""
    return SyncLoop(
        server, storage, world, allowed=lambda who: who == IME, wake=lambda: woken.append(1), report=reports
    )


@pytest.fixture
def messenger() -> KeepingMessenger:
    """What was sent."""
    return KeepingMessenger()


@pytest.fixture
def dead() -> list[tuple[str, str]]:
    """What was buried, and why."""
    return []


@pytest.fixture
def sender(storage: SqlStorage, messenger: KeepingMessenger, world: World, dead: list[tuple[str, str]]) -> Sender:
    """The sender between them, as fast as it can."""

    async def on_dead(_: UnitOfWork, waiting: Waiting, problem: str) -> None:
        dead.append((waiting.note.text, problem))

    return Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=on_dead)


@pytest.fixture
def say(storage: SqlStorage) -> Say:
    """Puts a note into the outbox, each for a cause of its own."""
    causes = iter(range(1000))

    async def say(text: str = "Heard.", **changes: Any) -> EventRef:
        async with storage.begin() as work:
            return await work.outbox.add(a_note(text, **changes), Cause(event_id=f"$cause{next(causes)}"), 0)

    return say
