"""A look into the SQLite file itself, past every layer of ours."""

import sqlite3
from contextlib import closing
from pathlib import Path

Row = dict[str, object]
Tables = dict[str, list[Row]]


def tables_in(file: Path) -> Tables:
    """Every row of every table, by column."""
    with closing(sqlite3.connect(file)) as connection:
        connection.row_factory = sqlite3.Row
        names = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
        return {name: [dict(row) for row in connection.execute(_ALL.format(name))] for (name,) in names}


_ALL = 'SELECT * FROM "{}" ORDER BY rowid'
"""The names put in come from the database's own catalogue."""


def tables_that_hold(file: Path, text: str) -> list[str]:
    """The tables in which this text stands anywhere."""
    return [
        name
        for name, rows in tables_in(file).items()
        if any(text in str(value) for row in rows for value in row.values())
    ]
