"""What every repository does alike: reads rows, and writes records by their fields' names.

Statements are built once and given their values when they are run: building one takes longer than running it.
"""

from collections.abc import Callable, Sequence
from dataclasses import fields, replace
from functools import cache
from importlib import import_module
from typing import Any, ClassVar, Protocol, TypeVar

from sqlalchemy import Column, ColumnElement, Executable, RowMapping, Table, bindparam, insert, select, update
from sqlalchemy.ext.asyncio import AsyncConnection
from sqlalchemy.sql.dml import UpdateBase


class _Record(Protocol):
    """A stored dataclass with an id of its own."""

    __dataclass_fields__: ClassVar[dict[str, Any]]

    @property
    def id(self) -> int: ...


R = TypeVar("R", bound=_Record)


def columns_of(table: Table, record: type[Any]) -> list[Column[Any]]:
    """The table's columns that hold fields of this record, in the record's order."""
    return [table.c[field.name] for field in fields(record) if field.name in table.c]


def values_of(table: Table, record: Any) -> dict[str, Any]:
    """The record's fields that the table has columns for, its id left out."""
    return {c.name: getattr(record, c.name) for c in columns_of(table, type(record)) if c.name != "id"}


class Repository:
    """Reaches tables through the connection of one unit of work."""

    def __init__(self, connection: AsyncConnection) -> None:
        self._connection = connection

    async def _one(self, query: Executable, **values: Any) -> RowMapping | None:
        """The first row, if there is any."""
        return (await self._connection.execute(query, values)).mappings().first()

    async def _all(self, query: Executable, **values: Any) -> Sequence[RowMapping]:
        """Every row."""
        return (await self._connection.execute(query, values)).mappings().all()

    async def _value(self, query: Executable, **values: Any) -> Any:
        """The first column of the first row, or None."""
        return (await self._connection.execute(query, values)).scalar()

    async def _do(self, statement: UpdateBase, **values: Any) -> int:
        """Write; how many rows it touched."""
        return (await self._connection.execute(statement, values)).rowcount

    async def _insert(self, table: Table, **values: Any) -> int:
        """A new row; its id."""
        return int(await self._value(_new_row(table), **values))

    async def _insert_new(self, table: Table, rows: Sequence[dict[str, Any]]) -> int:
        """Those of these rows that are not there yet; how many they were."""
        if not rows:
            return 0
        return len((await self._connection.execute(_new_row_or_none(self._dialect, table), rows)).all())

    async def _insert_or_ignore(self, table: Table, **values: Any) -> bool:
        """A new row unless one like it is there; whether it is new."""
        return await self._insert_new(table, [values]) == 1

    async def _insert_or_find(
        self, table: Table, same: Callable[[], Sequence[ColumnElement[bool]]], **values: Any
    ) -> int:
        """A new row unless one like it is there, found by what ``same`` gives; the id of whichever it is."""
        row = await self._value(_new_row_or_none(self._dialect, table), **values)
        return int(await self._value(select(table.c.id).where(*same())) if row is None else row)

    async def _put(self, table: Table, **values: Any) -> None:
        """The row under the table's key, new or replaced."""
        await self._do(_row_under_key(self._dialect, table, tuple(values)), **values)

    async def _save(self, table: Table, record: R, **more: Any) -> R:
        """The record stored: new where its id is 0, else in the place of the one with its id."""
        values = values_of(table, record) | more
        if not record.id:
            return replace(record, id=await self._insert(table, **values))
        if not await self._do(_changed_row(table), row_id=record.id, **values):
            raise LookupError(f"no {table.name} {record.id}")
        return record

    @property
    def _dialect(self) -> str:
        return self._connection.dialect.name


@cache
def _new_row(table: Table) -> Any:
    return insert(table).returning(*table.primary_key)


@cache
def _changed_row(table: Table) -> UpdateBase:
    return update(table).where(table.c.id == bindparam("row_id"))


@cache
def _new_row_or_none(dialect: str, table: Table) -> Any:
    """A row unless one like it is there."""
    return _own_insert(dialect, table).on_conflict_do_nothing().returning(*table.primary_key)


@cache
def _row_under_key(dialect: str, table: Table, names: tuple[str, ...]) -> Any:
    """A row with these columns in the place of the one with its key."""
    key, new = [column.name for column in table.primary_key], _own_insert(dialect, table)
    rest = {name: new.excluded[name] for name in names if name not in key}
    return new.on_conflict_do_update(index_elements=key, set_=rest)


def _own_insert(dialect: str, table: Table) -> Any:
    """The database's own insert, which can yield to a row already there: same words on both, in two modules."""
    return import_module(f"sqlalchemy.dialects.{dialect}").insert(table)
