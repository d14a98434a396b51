"""With 100,000 runs stored no query of the ports reads a big table from end to end (SQLite's own query plans)."""

from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Engine, event, text

from bot.services.ports.messages import Cause, EventRef
from bot.services.ports.world import UnitOfWork
from bot.storage.engine import open_engine
from bot.storage.storage import SqlStorage
from tests.fakes import (
    KITCHEN_ROOM,
    LIO,
    MONDAY,
    NOOR,
    FixedClock,
    a_drill,
    a_live_drill,
    a_message,
    a_note,
    a_run,
    a_schedule,
)

FILL = """
WITH RECURSIVE nth(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM nth WHERE n < 100000)
INSERT INTO {table} ({columns}) SELECT {values} FROM {table}, nth WHERE {table}.{key} = 1
"""
BIG = ("run", "hand", "inbox", "outbox")
"""The tables that grow with every message."""
BY_WAITING = ("USING INDEX ix_inbox_new", "USING COVERING INDEX ix_outbox_open", "USING INDEX ix_outbox_open")
"""Reading one of these from end to end reads what waits, which is little."""

Statement = tuple[str, Any]
Call = Callable[[UnitOfWork], Awaitable[object]]

CALLS: dict[str, Call] = {
    "inbox.take": lambda work: work.inbox.take("@bot", [a_message("$new")], "s"),
    "inbox.known": lambda work: work.inbox.known(["$1", "$2"]),
    "inbox.oldest": lambda work: work.inbox.oldest(),
    "inbox.fail": lambda work: work.inbox.fail(1, "?"),
    "inbox.settle": lambda work: work.inbox.settle(1),
    "inbox.bury": lambda work: work.inbox.bury(1),
    "outbox.add": lambda work: work.outbox.add(a_note(), Cause(event_id="$new"), 0),
    "outbox.add a post": lambda work: work.outbox.add(a_note(), Cause(schedule_id=1, slot="2026-W48"), 0),
    "outbox.lanes": lambda work: work.outbox.lanes(),
    "outbox.head": lambda work: work.outbox.head(KITCHEN_ROOM, 5),
    "outbox.lease": lambda work: work.outbox.lease(1, [2, 3], a_note(), MONDAY),
    "outbox.release": lambda work: work.outbox.release(),
    "outbox.postpone": lambda work: work.outbox.postpone(1, MONDAY, "429"),
    "outbox.sent": lambda work: work.outbox.sent(1, "$sent"),
    "outbox.bury": lambda work: work.outbox.bury(1, "403"),
    "outbox.event_of": lambda work: work.outbox.event_of(EventRef("outbox:1")),
    "drills.live_by_root": lambda work: work.drills.live_by_root(KITCHEN_ROOM, "$root"),
    "runs.get": lambda work: work.runs.get(1),
    "runs.of_event": lambda work: work.runs.of_event("$1"),
    "runs.last": lambda work: work.runs.last(KITCHEN_ROOM, NOOR),
    "runs.last of some": lambda work: work.runs.last(KITCHEN_ROOM, NOOR, ("kept", "scrapped")),
    "runs.on_set_up": lambda work: work.runs.on_set_up(NOOR, 1),
    "runs.on_spec": lambda work: work.runs.on_spec(NOOR, 1),
    "runs.in_days": lambda work: work.runs.in_days(KITCHEN_ROOM, NOOR, date(2026, 6, 1), date(2026, 11, 29)),
    "runs.on_spec, the last": lambda work: work.runs.on_spec(NOOR, 1, 3),
    "runs.whole_in_days": lambda work: work.runs.whole_in_days(
        KITCHEN_ROOM, [NOOR, LIO], date(2026, 6, 1), date(2026, 11, 29)
    ),
    "runs.on_board": lambda work: work.runs.on_board(1),
    "runs.count_day": lambda work: work.runs.count_day(KITCHEN_ROOM, NOOR, date(2026, 11, 23)),
    "runs.count_on_spec": lambda work: work.runs.count_on_spec(KITCHEN_ROOM, NOOR, 1, date(2026, 11, 23)),
    "runs.count": lambda work: work.runs.count(KITCHEN_ROOM, NOOR),
    "runs.of_spec": lambda work: work.runs.of_spec(404),
    "fits.mark_of_runs": lambda work: work.fits.mark_of_runs([KITCHEN_ROOM], "2026-Q3"),
    "fits.gather": lambda work: work.fits.gather([KITCHEN_ROOM], "2026-Q3"),
    "runs.raise_hand": lambda work: work.runs.raise_hand("$1", NOOR, "$hand"),
    "runs.witnessed_by": lambda work: work.runs.witnessed_by("$hand"),
    "runs.lower_hand": lambda work: work.runs.lower_hand("$hand"),
}


async def test_no_query_of_the_ports_reads_a_big_table_through(tmp_path: Path) -> None:
    """Every call is answered by looking into an index; and a query without an index would have been noticed."""
    url = f"sqlite:///{tmp_path}/kitchen.db"
    storage = SqlStorage(url, FixedClock())
    await storage.migrate()
    await fill(storage, url)
    read_through = {}
    for name, call in CALLS.items():
        with watching() as statements:
            async with storage.begin() as work:
                await call(work)
        read_through[name] = [plan for plan in await plans(url, statements) if reads_through(plan)]
        assert len(statements) > 1, f"{name} was not seen"
    await storage.close()
    assert {name: found for name, found in read_through.items() if found} == {}
    bad: Statement = ("SELECT * FROM run WHERE wipes = ?", (1,))
    assert [reads_through(plan) for plan in await plans(url, [bad])] == [True]


def reads_through(plan: str) -> bool:
    """Whether a line of a query plan goes through a whole big table."""
    scans = any(plan.startswith(f"SCAN {table}") for table in (*BIG, "before", "put_up"))
    return scans and not plan.endswith(BY_WAITING)


async def fill(storage: SqlStorage, url: str) -> None:
    """100,000 runs of fifty cooks, each with a hand, as many settled messages in the inbox and as many sent."""
    async with storage.begin() as work:
        published = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        await work.drills.save_live(a_live_drill(published.set_up_id, published.spec_id))
        await work.runs.save(a_run(published.set_up_id, published.spec_id, live_id=1))
        await work.runs.raise_hand("$run", "@lio:tern.example", "$hand0")
        await work.inbox.take("@bot", [a_message("$first")], None)
        await work.inbox.settle(1)
        await work.schedules.save(a_schedule())
        await work.outbox.add(a_note(), Cause(event_id="$first"), 0)
        await work.outbox.sent(1, "$answer")
    engine = open_engine(url)
    async with engine.begin() as connection:
        cook, message = "'@cook' || (n % 50) || ':tern.example'", "'$' || n"
        filled = {
            ("run", "id"): {"event_id": message, "user_id": cook, "arrived": "n", "live_id": "NULL"},
            ("hand", "id"): {"event_id": message, "reaction_id": "'$hand' || n"},
            ("inbox", "seq"): {"event_id": message},
            ("outbox", "id"): {"txn_id": "n", "cause_event_id": message, "event_id": "'$answer' || n"},
        }
        for (table, key), new in filled.items():
            rows = await connection.execute(text(f"SELECT name FROM pragma_table_info('{table}')"))  # noqa: S608 - ours
            columns = [column for column in rows.scalars() if column != key]
            values = ", ".join(new.get(column, f"{table}.{column}") for column in columns)
            await connection.execute(
                text(FILL.format(table=table, columns=", ".join(columns), values=values, key=key).replace(":", "\\:"))
            )
    await engine.dispose()


@contextmanager
def watching() -> Iterator[list[Statement]]:
    """The statements executed meanwhile."""
    statements: list[Statement] = []

    def keep(*seen: Any) -> None:
        _connection, _cursor, statement, parameters, _context, many = seen
        statements.append((statement, parameters[0] if many else parameters))

    event.listen(Engine, "before_cursor_execute", keep)
    yield statements
    event.remove(Engine, "before_cursor_execute", keep)


async def plans(url: str, statements: list[Statement]) -> list[str]:
    """How SQLite would answer each of these, line by line."""
    engine = open_engine(url)
    lines: list[str] = []
    async with engine.begin() as connection:
        for statement, parameters in statements:
            if not statement.startswith(("BEGIN", "PRAGMA")):
                plan = await connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", tuple(parameters))
                lines += [row.detail for row in plan]
    await engine.dispose()
    return lines


async def test_a_closing_date_is_an_index_away(tmp_path: Path) -> None:
    """The planner's look every thirty seconds reads the postings still open, not all that ever were."""
    url = f"sqlite:///{tmp_path}/kitchen.db"
    storage = SqlStorage(url, FixedClock())
    await storage.migrate()
    with watching() as statements:
        async with storage.begin() as work:
            await work.drills.to_close(MONDAY + timedelta(days=7))
            await work.drills.to_announce()
    await storage.close()
    searches = [plan for plan in await plans(url, statements) if "live_drill" in plan]
    assert len(searches) == 2
    assert all(plan.startswith("SEARCH live_drill USING INDEX") for plan in searches)
