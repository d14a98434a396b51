"""What the tables hold about one person, wherever it stands, and its erasure: found by looking into every column.

No list of columns has to be kept up to date: whatever table holds a person's id, whole or within a record, is found.
"""

import json
from typing import Any
from uuid import uuid4

from sqlalchemy import (
    Column,
    ColumnElement,
    RowMapping,
    String,
    Table,
    Text,
    cast,
    delete,
    or_,
    select,
    type_coerce,
    update,
)

from bot.services.ports.repositories import Holdings
from bot.storage.about import about, is_record, named, without
from bot.storage.outbox import lane_for_later
from bot.storage.repository import Repository
from bot.storage.tables import (
    OPEN,
    drafts,
    fitted_weeks,
    hands,
    inbox,
    members,
    metadata,
    outbox,
    photo_checks,
    private_rooms,
    questions,
    room_states,
    runs,
    sealed_events,
    sessions,
)

OWNED = (
    (runs, "user_id"),
    (runs, "partner"),
    (hands, "witness"),
    (questions, "user_id"),
    (drafts, "author"),
    (members, "user_id"),
)
"""The columns that make a whole row a person's own; in all other rows that name somebody only that part is theirs."""

NOT_THEIRS = (sessions, room_states, private_rooms, inbox, outbox)
"""The bot's own session, what a room says of itself, the way to reach somebody, and what is on its way in or out."""

_BARE = {
    **{"name": "", "consent": None, "counted_since": None, "role": "cook", "on_boards": True, "ready": ()},
    **{"rest_from": None, "rest_to": None, "language": None},
}


class SqlPersons(Repository):
    """What is held about one person, over all kitchens."""

    async def held(self, user_id: str) -> Holdings:
        """Everything about the person, by table; that they are in a room, and nothing else, is left out."""
        found: Holdings = {}
        for table in metadata.sorted_tables:
            if table not in NOT_THEIRS:
                rows = [_theirs(table, row, user_id) for row in await self._rows_with(table, user_id)]
                found[table.name] = [row for row in rows if not _is_bare(table, row)]
        return {name: rows for name, rows in found.items() if rows}

    async def erase(self, user_id: str) -> None:
        """Leave nothing that tells of the person but that they are in their rooms, as of anybody who never joined."""
        await self._erase_runs(user_id)
        for table, column in ((questions, "user_id"), (drafts, "author")):
            await self._do(delete(table).where(table.c[column] == user_id))
        await self._do(delete(sealed_events).where(_holds(sealed_events, user_id)))
        await self._erase_own_parts(user_id)
        await self._do(update(hands).where(hands.c.witness == user_id).values(reaction_id=_numbered(hands.c.id)))
        await self._do(delete(members).where(members.c.user_id == user_id, members.c.state != "join"))
        await self._do(update(members).where(members.c.user_id == user_id).values(_BARE))
        await self._erase_sent(user_id)
        for table in metadata.sorted_tables:
            if table not in (*NOT_THEIRS, members):
                await self._take_name_out(table, user_id)

    async def _erase_runs(self, user_id: str) -> None:
        """Runs of the person or waiting for a mate of theirs, the hands on them and the questions about them."""
        own = (runs.c.user_id == user_id) | ((runs.c.sent_by == user_id) & (runs.c.status == "pending"))
        events = set((await self._connection.execute(select(runs.c.event_id).where(own))).scalars())
        photos = set((await self._connection.execute(select(runs.c.photo).where(own))).scalars()) - {None}
        await self._do(delete(runs).where(own))
        left = select(runs.c.event_id)
        await self._do(delete(hands).where(hands.c.event_id.in_(events), hands.c.event_id.not_in(left)))
        await self._do(delete(questions).where(questions.c.about.in_(events)))
        for row in await self._all(select(photo_checks)):
            if photos & set(row["photos"]):
                await self._do(delete(photo_checks).where(photo_checks.c.room_id == row["room_id"]))

    async def _erase_own_parts(self, user_id: str) -> None:
        """What is kept by person in one record for several: the person's part of it goes."""
        for table, name in ((fitted_weeks, "cooks"), (photo_checks, "answers")):
            for row in await self._rows_with(table, user_id):
                kept = {key: value for key, value in json.loads(row[name]).items() if key != user_id}
                await self._change(table, row, {name: json.dumps(kept)})

    async def _erase_sent(self, user_id: str) -> None:
        """What is on its way to them goes unsent, and of what was sent nothing tells to whom."""
        to_them = outbox.c.lane.in_((user_id, lane_for_later(user_id)))
        await self._do(update(outbox).where(to_them, outbox.c.state.in_(OPEN)).values(state="dead"))
        await self._do(update(outbox).where(to_them).values(lane="forgotten", content=None))
        caused = outbox.c.cause_event_id.contains(user_id, autoescape=True)
        await self._do(update(outbox).where(caused).values(cause_event_id=_numbered(outbox.c.id)))

    async def _take_name_out(self, table: Table, user_id: str) -> None:
        """Wherever the person is still named in this table, somebody of whom nothing is known stands instead.

        Columns of one table keep one such name, so that it still shows who is the same; every record gets another.
        """
        nobody = _nobody()
        for row in await self._rows_with(table, user_id):
            plain = {name: nobody for name, value in row.items() if value == user_id}
            other = _nobody()
            records = {
                column.name: without(str(row[column.name]), user_id, other)
                for column in table.c
                if is_record(column) and named(str(row[column.name]), user_id)
            }
            await self._change(table, row, plain | records)

    async def _rows_with(self, table: Table, user_id: str) -> list[RowMapping]:
        """The rows that hold the id, their records as text."""
        columns = [type_coerce(c, Text).label(c.name) if is_record(c) else c for c in table.c]
        return list(await self._all(select(*columns).where(_holds(table, user_id))))

    async def _change(self, table: Table, row: RowMapping, values: dict[str, Any]) -> None:
        """Put these texts into the row as they stand."""
        if values:
            this = [column == row[column.name] for column in table.primary_key]
            raw = {name: type_coerce(value, Text) for name, value in values.items()}
            await self._do(update(table).where(*this).values(raw))


def _holds(table: Table, user_id: str) -> ColumnElement[bool]:
    """Whether a text of the row is the id, or a record in it has the id as one of its texts."""
    texts = [column for column in table.c if isinstance(column.type, Text)]
    records = [column for column in table.c if is_record(column)]
    quoted = json.dumps(user_id, ensure_ascii=False)
    whole = [column == user_id for column in texts]
    return or_(False, *whole, *(type_coerce(c, Text).contains(quoted, autoescape=True) for c in records))


def _theirs(table: Table, row: RowMapping, user_id: str) -> dict[str, Any]:
    """The whole row where it is the person's own, else its key and what it says of the person."""
    read = {c.name: json.loads(row[c.name]) if is_record(c) and row[c.name] else row[c.name] for c in table.c}
    if any(owned is table and row[column] == user_id for owned, column in OWNED):
        return read
    keys = {column.name for column in table.primary_key}
    parts = {name: value if value == user_id else about(value, user_id) for name, value in read.items()}
    return {name: read[name] if name in keys else part for name, part in parts.items() if name in keys or part}


def _is_bare(table: Table, row: dict[str, Any]) -> bool:
    """Whether the row only says that somebody is in a room."""
    return table is members and all(row[name] == value or not (row[name] or value) for name, value in _BARE.items())


def _numbered(column: Column[int]) -> ColumnElement[str]:
    return "forgotten:" + cast(column, String)


def _nobody() -> str:
    return f"forgotten:{uuid4().hex[:12]}"
