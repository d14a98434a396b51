"""Migrations make the tables that the code knows, cost nothing when there is nothing to do, and refuse the future."""

import subprocess
import sys
from importlib.resources import as_file, files
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, column, select, table, text, update
from sqlalchemy.sql.schema import SchemaItem

from bot.errors import OperatorError
from bot.storage.engine import open_engine
from bot.storage.schema import HEAD
from bot.storage.storage import SqlStorage
from bot.storage.tables import metadata
from tests.fakes import FixedClock, a_kitchen
from tests.storage.conftest import Raw

VERSION = table("alembic_version", column("version_num"))


async def test_migrated_tables_are_those_of_the_code(storage: SqlStorage, url: str, raw: Raw) -> None:
    """Alembic's own comparison of the migrated database with the metadata is empty, until an index is lost."""
    assert await differences(url) == []
    await raw(text("DROP INDEX ix_run_day"))
    assert [kind for kind, _ in await differences(url)] == ["add_index"]


async def differences(url: str) -> list[tuple[str, SchemaItem]]:
    """What a new migration would have to do."""

    def compare(connection: Connection) -> list[tuple[str, SchemaItem]]:
        return list(compare_metadata(MigrationContext.configure(connection, opts={"compare_type": True}), metadata))

    engine = open_engine(url)
    async with engine.begin() as connection:
        found = await connection.run_sync(compare)
    await engine.dispose()
    return found


async def test_the_newest_revision_is_the_one_that_the_code_names(storage: SqlStorage, raw: Raw) -> None:
    """The constant compared at every start is Alembic's head, and a migrated database is at it."""
    with as_file(files("bot.migrations")) as folder:
        config = Config()
        config.set_main_option("script_location", str(folder))
        assert ScriptDirectory.from_config(config).get_current_head() == HEAD
    assert [row["version_num"] for row in await raw(select(VERSION.c.version_num))] == [HEAD]


async def test_migrating_again_keeps_everything(storage: SqlStorage) -> None:
    """A second start changes nothing."""
    async with storage.begin() as work:
        await work.kitchens.save(a_kitchen())
    await storage.migrate()
    async with storage.begin() as work:
        assert await work.kitchens.all() == [a_kitchen()]


async def test_a_database_of_a_newer_version_is_refused(storage: SqlStorage, raw: Raw) -> None:
    """The operator is told to install the newer version, and nothing is touched."""
    await raw(update(VERSION).values(version_num="9999"))
    with pytest.raises(OperatorError, match="newer Platepace"):
        await storage.migrate()
    assert [row["version_num"] for row in await raw(select(VERSION.c.version_num))] == ["9999"]


@pytest.mark.parametrize("url", ["sqlite:////nowhere/at/all/kitchen.db", "postgresql://u:p@127.0.0.1:1/db"])
async def test_a_database_that_cannot_be_opened_says_so(url: str) -> None:
    """A missing folder and a server that does not answer are faults that the operator can mend."""
    storage = SqlStorage(url, FixedClock())
    with pytest.raises(OperatorError, match=r"storage\.url"):
        await storage.migrate()
    await storage.close()


async def test_a_file_that_is_no_database_is_left_alone(tmp_path: Path) -> None:
    """The operator is told, and the file stays as it was."""
    file = tmp_path / "menu.txt"
    file.write_text("Soup of the day: leek and smoked haddock.\n" * 100)
    before = file.read_bytes()
    storage = SqlStorage(f"sqlite:///{file}", FixedClock())
    with pytest.raises(OperatorError, match="not a database"):
        await storage.migrate()
    await storage.close()
    assert file.read_bytes() == before


def test_a_start_with_nothing_to_migrate_does_not_load_alembic(tmp_path: Path) -> None:
    """A fresh Python migrates; the next one, on the same file, never imports Alembic."""
    program = f"""
import asyncio, sys
from datetime import UTC, datetime
from bot.storage.storage import SqlStorage

async def start():
    storage = SqlStorage("sqlite:///{tmp_path}/kitchen.db", lambda: datetime.now(UTC))
    await storage.migrate()
    await storage.close()

asyncio.run(start())
print("alembic" in sys.modules)
"""
    said = [
        subprocess.run([sys.executable, "-c", program], check=True, capture_output=True, text=True).stdout for _ in "12"
    ]
    assert said == ["True\n", "False\n"]
