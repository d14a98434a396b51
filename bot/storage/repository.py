"""What every repository does alike: reads rows, and writes records by their fields' names."""

from collections.abc import Sequence
from dataclasses import fields, replace
from importlib import import_module
from typing import Any, ClassVar, Protocol, TypeVar

from sqlalchemy import Column, ColumnElement, Executable, RowMapping, Table, insert, select, update
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

    async def _one(self, query: Executable) -> RowMapping | None:
        """The first row, if there is any."""
        return (await self._connection.execute(query)).mappings().first()

    async def _all(self, query: Executable) -> Sequence[RowMapping]:
        """Every row."""
        return (await self._connection.execute(query)).mappings().all()

    async def _value(self, query: Executable) -> Any:
        """The first column of the first row, or None."""
        return (await self._connection.execute(query)).scalar()

    async def _do(self, statement: UpdateBase) -> int:
        """Write; how many rows it touched."""
        return (await self._connection.execute(statement)).rowcount

    async def _insert(self, table: Table, **values: Any) -> int:
        """A new row; its id."""
        return int(await self._value(insert(table).values(**values).returning(*table.primary_key)))

    async def _insert_new(self, table: Table, rows: Sequence[dict[str, Any]]) -> int:
        """Those of these rows that are not there yet; how many they were."""
        if not rows:
            return 0
        new = self._own_insert(table).on_conflict_do_nothing().returning(*table.primary_key)
        return len((await self._connection.execute(new, rows)).all())

    async def _insert_or_ignore(self, table: Table, **values: Any) -> bool:
        """A new row unless one like it is there; whether it is new."""
        return await self._do(self._own_insert(table).values(**values).on_conflict_do_nothing()) == 1

    async def _insert_or_find(self, table: Table, same: Sequence[ColumnElement[bool]], **values: Any) -> int:
        """A new row unless one like it is there; the id of whichever it is."""
        added = self._own_insert(table).values(**values).on_conflict_do_nothing().returning(table.c.id)
        row = await self._value(added)
        return int(await self._value(select(table.c.id).where(*same)) if row is None else row)

    async def _put(self, table: Table, **values: Any) -> None:
        """The row under the table's key, new or replaced."""
        key = [column.name for column in table.primary_key]
        rest = {name: value for name, value in values.items() if name not in key}
        await self._do(self._own_insert(table).values(**values).on_conflict_do_update(index_elements=key, set_=rest))

    async def _save(self, table: Table, record: R, **more: Any) -> R:
        """The record stored: new where its id is 0, else in the place of the one with its id."""
        values = values_of(table, record) | more
        if not record.id:
            return replace(record, id=await self._insert(table, **values))
        if not await self._do(update(table).where(table.c.id == record.id).values(**values)):
            raise LookupError(f"no {table.name} {record.id}")
        return record

    def _own_insert(self, table: Table) -> Any:
        """The database's own insert, which can yield to a row already there: same words on both, in two modules."""
        return import_module(f"sqlalchemy.dialects.{self._connection.dialect.name}").insert(table)
