"""A kitchen that moves leaves its old room's id nowhere, whatever tables there are, alike in both databases."""

import json
from typing import Any

from sqlalchemy import Boolean, Column, Date, Float, Integer, Table, Text, Time, insert, select, type_coerce

from bot.services.ports.messages import EventRef
from bot.services.ports.records import Member
from bot.storage.about import is_record
from bot.storage.columns import Moment
from bot.storage.moves import BY_HAND, STAYS
from bot.storage.storage import SqlStorage
from bot.storage.tables import live_drills, metadata
from tests.fakes import KITCHEN_ROOM, LIO, MONDAY, NOOR
from tests.storage.conftest import Raw

NEW = "!new:tern.example"
_PLAIN: dict[type[Any], Any] = {Boolean: False, Integer: 1, Float: 1.0, Moment: MONDAY, Date: MONDAY.date()}


def _value(column: Column[Any]) -> Any:
    """The old room's id wherever a text or a record can hold it."""
    if is_record(column):
        return type_coerce(json.dumps({"of": [KITCHEN_ROOM, f"{KITCHEN_ROOM}/x"]}, separators=(",", ":")), Text)
    if isinstance(column.type, Text):
        return KITCHEN_ROOM
    if isinstance(column.type, Time):
        return MONDAY.time()
    return next(value for kind, value in _PLAIN.items() if isinstance(column.type, kind))


async def test_no_table_is_forgotten(storage: SqlStorage, raw: Raw) -> None:
    """Every text and record of every table names the old room; afterwards only those named as staying do.

    Members and the outbox, which move by rules of their own, have tests of their own.
    """
    for table in (table for table in metadata.sorted_tables if table not in BY_HAND):
        await raw(insert(table).values({column.name: _value(column) for column in table.c}))
    async with storage.begin() as work:
        await work.moves.carry_over(KITCHEN_ROOM, NEW, EventRef("$line"))
    left = {table.name for table in metadata.sorted_tables if await _names_the_old(raw, table)}
    assert left == {table.name for table in STAYS}
    (live,) = await raw(select(live_drills.c.room_id, type_coerce(live_drills.c.drill, Text).label("drill")))
    assert live["room_id"] == NEW
    assert json.loads(live["drill"]) == {"of": [NEW, f"{KITCHEN_ROOM}/x"]}


async def _names_the_old(raw: Raw, table: Table) -> bool:
    """Whether a text is the old room's id, or a record has it among its texts."""
    texts = [type_coerce(c, Text).label(c.name) for c in table.c if isinstance(c.type, Text) or is_record(c)]
    rows = await raw(select(*texts)) if texts else ()
    return any(value == KITCHEN_ROOM or f'"{KITCHEN_ROOM}"' in str(value) for row in rows for value in row.values())


async def test_members_keep_who_they_are_and_each_room_says_who_is_in_it(storage: SqlStorage) -> None:
    """Role and consent move; presence and a newer name are the new room's; in the old room they are strangers."""
    noor = Member(room_id=KITCHEN_ROOM, user_id=NOOR, name="Noor", state="leave", consent="in", role="sous", ready=(6,))
    lio = Member(room_id=KITCHEN_ROOM, user_id=LIO, name="Lio", state="join", consent="out")
    async with storage.begin() as work:
        await work.kitchens.save_member(noor)
        await work.kitchens.save_member(lio)
        await work.kitchens.save_member(Member(room_id=NEW, user_id=NOOR, name="Noor II", state="join"))
        await work.moves.carry_over(KITCHEN_ROOM, NEW, EventRef("$line"))
    async with storage.begin() as work:
        assert await work.kitchens.members(NEW) == [
            Member(room_id=NEW, user_id=LIO, name="Lio", state="leave", consent="out"),
            Member(room_id=NEW, user_id=NOOR, name="Noor II", state="join", consent="in", role="sous", ready=(6,)),
        ]
        left = await work.kitchens.member(KITCHEN_ROOM, LIO)
        assert left == Member(room_id=KITCHEN_ROOM, user_id=LIO, name="Lio", state="join")
