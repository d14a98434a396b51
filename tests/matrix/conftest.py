"""A storage in memory, and a world whose time passes only in rests."""

from collections.abc import AsyncIterator

import pytest

from bot.matrix.world import World
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.matrix.fakes import Reports, Rests, a_world


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


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
async def storage(clock: FixedClock) -> AsyncIterator[SqlStorage]:
    """The real storage, on a database in memory."""
    storage = SqlStorage("sqlite+aiosqlite://", clock)
    await storage.migrate()
    yield storage
    await storage.close()
