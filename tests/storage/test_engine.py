"""SQLite's statements run where they are awaited."""

import threading
from pathlib import Path
from typing import Any

from bot.storage.engine import open_engine


async def test_statements_run_in_the_thread_of_the_loop(tmp_path: Path) -> None:
    """Fails when aiosqlite goes over to its own thread after all, by a way that the engine does not know."""
    engine = open_engine(f"sqlite:///{tmp_path}/kitchen.db")
    async with engine.connect() as connection:
        driver: Any = (await connection.get_raw_connection()).driver_connection
        await driver.create_function("thread", 0, threading.get_ident)
        ran_in = (await connection.exec_driver_sql("SELECT thread()")).scalar()
    await engine.dispose()
    assert ran_in == threading.get_ident()
