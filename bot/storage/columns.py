"""What tables are made of: the metadata, moments that stay aware, records kept as canonical JSON, and short columns."""

import json
from datetime import UTC, datetime
from functools import cached_property
from typing import Any

from pydantic import TypeAdapter
from sqlalchemy import Boolean, Column, DateTime, Dialect, ForeignKey, Integer, MetaData, Text
from sqlalchemy.types import TypeDecorator

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "pk": "pk_%(table_name)s",
    }
)


class Moment(TypeDecorator[datetime]):
    """A moment in UTC, aware when it goes in and when it comes out, whatever the database makes of zones."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """The moment in UTC; a ValueError for one that does not say where."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"a moment needs its zone: {value}")
        return value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """The stored moment, aware: SQLite gives it bare."""
        return None if value is None else value.replace(tzinfo=UTC)


class Kept(TypeDecorator[Any]):
    """A value of this type as JSON text: keys sorted, no spaces, decimals as text, so equal values are equal texts."""

    impl = Text
    cache_ok = True

    def __init__(self, kind: Any) -> None:
        super().__init__()
        self.kind = kind

    @cached_property
    def _adapter(self) -> TypeAdapter[Any]:
        return TypeAdapter(self.kind)

    def process_bind_param(self, value: Any, dialect: Dialect) -> str | None:
        """The value as text."""
        if value is None:
            return None
        plain = self._adapter.dump_python(value, mode="json")
        return json.dumps(plain, sort_keys=True, separators=(",", ":"), ensure_ascii=False)

    def process_result_value(self, value: str | None, dialect: Dialect) -> Any:
        """The value back, of its own type."""
        return None if value is None else self._adapter.validate_json(value)


def number_key(name: str = "id") -> Column[int]:
    """The key of a table, given by the database in rising order."""
    return Column(name, Integer, primary_key=True)


def text_key(name: str) -> Column[str]:
    """The key of a table, or a part of it, known beforehand."""
    return Column(name, Text, primary_key=True)


def text(name: str) -> Column[str]:
    """Text that is always there."""
    return Column(name, Text, nullable=False)


def whole(name: str) -> Column[int]:
    """A whole number that is always there."""
    return Column(name, Integer, nullable=False)


def flag(name: str) -> Column[bool]:
    """Yes or no."""
    return Column(name, Boolean, nullable=False)


def moment(name: str) -> Column[datetime]:
    """A moment that is always there."""
    return Column(name, Moment, nullable=False)


def kept(name: str, kind: Any) -> Column[Any]:
    """A record that is always there."""
    return Column(name, Kept(kind), nullable=False)


def row_of(name: str, parent: str, *, nullable: bool = False) -> Column[int]:
    """A row of another table."""
    return Column(name, Integer, ForeignKey(f"{parent}.id"), nullable=nullable)
