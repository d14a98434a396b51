"""Brings a database to the shape that this code knows, by the revisions in ``migrations``."""

import sqlite3
from importlib.resources import as_file, files
from pathlib import Path

from sqlalchemy import Connection, column, inspect, select, table
from sqlalchemy.exc import DBAPIError
from sqlalchemy.ext.asyncio import AsyncEngine

from bot.errors import NO_DATABASE, OperatorError

HEAD = "0001"
"""The newest revision: compared before Alembic is imported, which takes longer than all the rest of a start."""


async def bring_up_to_date(engine: AsyncEngine) -> None:
    """Create or alter tables where needed; nothing but a look where not. An OperatorError where it cannot be done."""
    try:
        _try_file(engine)
        async with engine.begin() as connection:
            found = await connection.run_sync(_revision)
            if found != HEAD:
                await connection.run_sync(_upgrade)
    except (DBAPIError, sqlite3.Error, OSError) as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        raise OperatorError(
            f"The database cannot be used: {cause}. Look at storage.url and at who may write there.",
            NO_DATABASE,
        ) from fault


async def revision_of(engine: AsyncEngine) -> str | None:
    """The revision that the database is at; None where there is none yet. Nothing is made."""
    if not _is_there(engine):
        return None
    try:
        async with engine.begin() as connection:
            return await connection.run_sync(_revision)
    except (DBAPIError, OSError) as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        raise OperatorError(f"The database cannot be used: {cause}. Look at storage.url.", NO_DATABASE) from fault


def _is_there(engine: AsyncEngine) -> bool:
    """Whether SQLite's file is there, which looking would make; a server's database is there or says that it is not."""
    path = engine.url.database
    return engine.dialect.name != "sqlite" or bool(path and Path(path).exists())


def _try_file(engine: AsyncEngine) -> None:
    """Open SQLite's file once in the plain way: aiosqlite leaves a thread behind, loud at exit, where it cannot."""
    if engine.dialect.name == "sqlite":
        (path,), options = engine.dialect.create_connect_args(engine.url)
        sqlite3.connect(path, uri=bool(options.get("uri"))).close()


def _revision(connection: Connection) -> str | None:
    """The revision that the database is at; None if it is empty."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    found: str | None = connection.execute(select(column("version_num")).select_from(table("alembic_version"))).scalar()
    return found


def _upgrade(connection: Connection) -> None:
    from alembic import command  # noqa: PLC0415 - not before it is needed: it takes 0.4 s
    from alembic.config import Config  # noqa: PLC0415 - as above
    from alembic.util import CommandError  # noqa: PLC0415 - as above

    with as_file(files("bot.migrations")) as folder:
        config = Config(attributes={"connection": connection})
        config.set_main_option("script_location", str(folder).replace("%", "%%"))
        try:
            command.upgrade(config, "head")
        except CommandError as fault:
            raise OperatorError(
                f"The database was written by a newer Platepace ({fault}). Install that version, or restore a backup "
                f"made with this one, whose schema is {HEAD}."
            ) from fault
