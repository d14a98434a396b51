"""The kitchens that tests talk to, and what stands under them: a clock, a storage, a file."""

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.storage.storage import SqlStorage
from tests.chat import Chat, kitchen, rope_coil
from tests.fakes import FixedClock


@pytest.fixture
async def chat() -> AsyncIterator[Chat]:
    """The Tern & Lantern on Monday morning: no drill posted, nobody counted in."""
    async with kitchen() as opened:
        yield opened


@pytest.fixture
async def live() -> AsyncIterator[Chat]:
    """The same with Rope coil live and Noor, Kwabena, Lio and Petra counted in."""
    async with rope_coil() as opened:
        yield opened


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


@pytest.fixture
async def storage(clock: FixedClock) -> AsyncIterator[SqlStorage]:
    """The real storage, on a database in memory."""
    storage = SqlStorage("sqlite+aiosqlite://", clock)
    await storage.migrate()
    yield storage
    await storage.close()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """Where a kitchen's database is that tests look into."""
    return tmp_path / "kitchen.db"
