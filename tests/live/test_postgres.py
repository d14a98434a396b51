"""What only a server can do to us: connections that die, idle or in the middle of a unit of work."""

import asyncio
from collections.abc import AsyncIterator

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine

from bot.services.ports.records import Occurrence
from bot.storage.storage import SqlStorage
from tests.fakes import MONDAY, FixedClock, a_kitchen, a_schedule
from tests.live.postgres import new_database

pytestmark = pytest.mark.live

CUT = text(
    "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
    " WHERE datname = current_database() AND pid <> pg_backend_pid()"
)


@pytest.fixture
def url() -> str:
    """An empty database on a real server."""
    return new_database()


@pytest.fixture
async def storage(url: str) -> AsyncIterator[SqlStorage]:
    """A storage with its tables made."""
    storage = SqlStorage(url, FixedClock())
    await storage.migrate()
    yield storage
    await storage.close()


@pytest.fixture
async def operator(url: str) -> AsyncIterator[AsyncEngine]:
    """Somebody who looks after the server, and waits for no unit of work."""
    engine = create_async_engine(url.replace("postgresql://", "postgresql+asyncpg://"), isolation_level="AUTOCOMMIT")
    yield engine
    await engine.dispose()


async def cut_everybody_off(operator: AsyncEngine) -> None:
    """End every connection to the database but this one."""
    async with operator.connect() as connection:
        await connection.execute(CUT)
    await asyncio.sleep(0.1)


async def test_a_connection_that_died_at_rest_is_replaced(storage: SqlStorage, operator: AsyncEngine) -> None:
    """After a restart of the server the next unit of work goes as if nothing had been."""
    async with storage.begin() as work:
        await work.kitchens.save(a_kitchen())
    await cut_everybody_off(operator)
    async with storage.begin() as work:
        assert await work.kitchens.all() == [a_kitchen()]


async def test_a_unit_of_work_cut_off_is_undone_and_frees_the_next(
    storage: SqlStorage, url: str, operator: AsyncEngine
) -> None:
    """It ends in an error, nothing of it stays, and neither this storage nor another waits for its lock."""
    other = SqlStorage(url, FixedClock())

    async def cut_off() -> None:
        async with storage.begin() as work:
            await work.kitchens.save(a_kitchen())
            await cut_everybody_off(operator)
            await work.kitchens.save(a_kitchen(name="Weir"))

    with pytest.raises(DBAPIError):
        await cut_off()
    for one in (other, storage):
        async with asyncio.timeout(5), one.begin() as work:
            assert await work.kitchens.all() == []
    await other.close()


async def test_many_bots_claim_each_slot_once(storage: SqlStorage, url: str) -> None:
    """Five storages claim the same ten slots at once: each slot has one owner."""
    bots = [storage, *(SqlStorage(url, FixedClock()) for _ in range(4))]
    async with storage.begin() as work:
        schedule = await work.schedules.save(a_schedule())

    async def claim(bot: SqlStorage, slot: str) -> bool:
        async with bot.begin() as work:
            return await work.schedules.deal(
                Occurrence(schedule_id=schedule.id, slot=slot, due_at=MONDAY, state="posted")
            )

    slots = [f"2027-W{week:02}" for week in range(1, 11)]
    claims = await asyncio.gather(*(claim(bot, slot) for slot in slots for bot in bots))
    assert [sum(claims[start : start + 5]) for start in range(0, 50, 5)] == [1] * 10
    for bot in bots[1:]:
        await bot.close()
