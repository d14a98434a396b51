"""Every contract is tested on SQLite and, marked live, on a real PostgreSQL: the test bodies are the same."""

from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from pathlib import Path

import pytest
from sqlalchemy import Executable, RowMapping

from bot.storage.engine import open_engine
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.live.postgres import new_database

Raw = Callable[[Executable], Awaitable[Sequence[RowMapping]]]
"""Runs a statement past the storage, to see what the database really holds."""


@pytest.fixture(params=["sqlite", pytest.param("postgresql", marks=pytest.mark.live)])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """An empty database, on each kind of server in turn."""
    return f"sqlite:///{tmp_path}/kitchen.db" if request.param == "sqlite" else new_database()


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


@pytest.fixture
async def storage(url: str, clock: FixedClock) -> AsyncIterator[SqlStorage]:
    """A storage with its tables made."""
    storage = SqlStorage(url, clock)
    await storage.migrate()
    yield storage
    await storage.close()


@pytest.fixture
async def raw(url: str, storage: SqlStorage) -> AsyncIterator[Raw]:
    """A second way into the same database."""
    engine = open_engine(url)

    async def look(statement: Executable) -> Sequence[RowMapping]:
        async with engine.begin() as connection:
            result = await connection.execute(statement)
            return result.mappings().all() if result.returns_rows else ()

    yield look
    await engine.dispose()
