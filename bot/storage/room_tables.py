"""The tables of the way in and out: inbox, outbox, kitchens with their people and rooms, and the week's schedule.

Two indices are partial, by the migration alone: a condition named here would load PostgreSQL's dialect at every start.
What they hold on is written out in queries, never bound: a database uses such an index only where it can read that.
"""

from sqlalchemy import (
    Column,
    ColumnClause,
    ForeignKey,
    Index,
    Integer,
    Table,
    Text,
    Time,
    UniqueConstraint,
    literal_column,
)

from bot.services.ports.events import Sealed
from bot.services.ports.messages import Outgoing
from bot.storage.columns import (
    Kept,
    Moment,
    flag,
    kept,
    metadata,
    moment,
    number_key,
    row_of,
    text,
    text_key,
    whole,
)

NEW: ColumnClause[str] = literal_column("'new'")
OPEN: list[ColumnClause[str]] = [literal_column("'waiting'"), literal_column("'leased'")]

inbox = Table(
    "inbox",
    metadata,
    number_key("seq"),
    Column("event_id", Text, nullable=False, unique=True),
    Column("room_id", Text),
    moment("received"),
    Column("body", Text),
    text("state"),
    whole("attempts"),
    Column("problem", Text),
    sqlite_autoincrement=True,
)
Index("ix_inbox_new", inbox.c.state, inbox.c.seq)  # where state is NEW

sealed_events = Table(
    "sealed_event",
    metadata,
    number_key("seq"),
    Column("event_id", Text, nullable=False, unique=True),
    text("session_id"),
    moment("received"),
    flag("told"),
    kept("event", Sealed),
    sqlite_autoincrement=True,
)

sessions = Table(
    "session",
    metadata,
    *(text_key("user_id"), text("device_id"), text("token"), whole("broken_starts"), text("broken_by")),
)
sync_tokens = Table("sync_token", metadata, text_key("account"), text("token"))

outbox = Table(
    "outbox",
    metadata,
    number_key(),
    text("lane"),
    row_of("schedule_id", "schedule", nullable=True),
    Column("slot", Text),
    whole("part"),
    text("event_type"),
    Column("content", Kept(Outgoing)),
    Column("txn_id", Text, nullable=False, unique=True),
    text("state"),
    Column("lease_until", Moment),
    whole("attempts"),
    Column("first_try", Moment),
    Column("event_id", Text, index=True),
    Column("cause_event_id", Text),
    Column("revision", Integer),
    Column("head_id", Integer, ForeignKey("outbox.id"), index=True),
    Column("problem", Text),
    UniqueConstraint("schedule_id", "slot", "part"),
    UniqueConstraint("cause_event_id", "part", "revision"),
    sqlite_autoincrement=True,
)
Index("ix_outbox_open", outbox.c.lane, outbox.c.id)  # where state is in OPEN

kitchens = Table(
    "kitchen",
    metadata,
    text_key("room_id"),
    text("name"),
    moment("opened_at"),
    Column("first_closing", Moment),
    Column("currency", Text),
    text("zone"),
    text("language"),
    Column("day_turn", Time, nullable=False),
    Column("quiet_from", Time, nullable=False),
    Column("quiet_to", Time, nullable=False),
    text("replies"),
    flag("closed"),
)

members = Table(
    "member",
    metadata,
    text_key("room_id"),
    text_key("user_id"),
    text("name"),
    text("state"),
    Column("consent", Text),
    Column("counted_since", Moment),
    text("role"),
    flag("on_boards"),
    kept("ready", tuple[int, ...]),
    Column("rest_from", Time),
    Column("rest_to", Time),
    Column("language", Text),
)
Index(None, members.c.user_id)

room_states = Table(
    "room_state", metadata, text_key("room_id"), text_key("type"), kept("content", dict[str, object]), text("sender")
)

private_rooms = Table("private_room", metadata, text_key("user_id"), Column("room_id", Text, unique=True))

schedules = Table(
    "schedule",
    metadata,
    number_key(),
    text("room_id"),
    whole("weekday"),
    whole("hh"),
    whole("mm"),
    text("tz"),
    row_of("set_up_id", "set_up", nullable=True),
    flag("enabled"),
    flag("hold"),
    Column("skip_slot", Text),
    moment("since"),
    whole("version"),
)
Index(None, schedules.c.room_id)

occurrences = Table(
    "occurrence",
    metadata,
    Column("schedule_id", Integer, ForeignKey("schedule.id"), primary_key=True),
    text_key("slot"),
    moment("due_utc"),
    text("state"),
)
