"""The first tables, from an empty database."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None


def upgrade() -> None:
    """Make every table, parents before children."""
    _rooms()
    _drills()
    _week()
    _way_in_and_out()
    _runs()


def _rooms() -> None:
    settings = (sa.Column(name, sa.Time, nullable=False) for name in ("day_turn", "quiet_from", "quiet_to"))
    op.create_table(
        "kitchen",
        _key("room_id"),
        *_texts("name", "zone", "replies", "language"),
        *_moments("opened_at"),
        _maybe_moment("first_closing"),
        _maybe("currency"),
        *settings,
        *_flags("closed"),
    )
    op.create_table(
        "member",
        *(
            _key("room_id"),
            _key("user_id"),
            *_texts("name", "state"),
            _maybe("consent"),
            _maybe("language"),
            _maybe_moment("counted_since"),
            *_texts("role", "ready"),
            *_flags("on_boards"),
            *(sa.Column(name, sa.Time) for name in ("rest_from", "rest_to")),
        ),
    )
    op.create_index("ix_member_user_id", "member", ["user_id"])
    op.create_table("room_state", _key("room_id"), _key("type"), *_texts("content", "sender"))
    op.create_table("private_room", _key("user_id"), _maybe("room_id"), sa.UniqueConstraint("room_id"))
    op.create_table("session", _key("user_id"), *_texts("device_id", "token", "broken_by"), *_wholes("broken_starts"))
    op.create_table("sync_token", _key("account"), *_texts("token"))


def _drills() -> None:
    op.create_table(
        "spec",
        *(_id(), *_texts("room_id", "fingerprint", "spec"), *_wholes("number"), _of("parent", "spec", nullable=True)),
        *(sa.UniqueConstraint("room_id", "number"), sa.UniqueConstraint("room_id", "fingerprint")),
    )
    op.create_table(
        "set_up",
        *(_id(), _of("spec_id", "spec"), *_texts("letter", "fingerprint", "set_up"), *_moments("published_at")),
        *_flags("seeded", "retired"),
        *(sa.UniqueConstraint("spec_id", "letter"), sa.UniqueConstraint("spec_id", "fingerprint")),
    )
    op.create_table(
        "wording",
        *(_key_of("set_up_id", "set_up"), sa.Column("revision", sa.Integer, primary_key=True), *_texts("wording")),
        *_moments("published_at"),
    )
    op.create_table(
        "draft",
        *(_id(), *_texts("room_id", "author", "event_id", "drill"), _of("parent", "spec", nullable=True)),
        sa.UniqueConstraint("room_id", "author"),
    )
    op.create_index("ix_draft_event_id", "draft", ["event_id"])


def _week() -> None:
    op.create_table(
        "live_drill",
        *(
            _id(),
            *_texts("room_id", "drill", "week", "root"),
            _of("set_up_id", "set_up"),
            _of("spec_id", "spec"),
            *_flags("announced"),
        ),
        *(*_moments("posted_at", "closes_at"), _maybe_moment("closed_at")),
    )
    _index("live_drill", "room_id", "set_up_id", "week")
    _index("live_drill", "announced", "closed_at", "closes_at")
    op.create_table(
        "frozen_board",
        *(_key_of("live_id", "live_drill"), _key("kind"), *_moments("closed_at"), *_texts("board")),
    )
    op.create_table("fitted_week", _key_of("live_id", "live_drill"), *_texts("cooks"))
    op.create_table(
        "schedule",
        *(_id(), *_texts("room_id", "tz"), *_wholes("weekday", "hh", "mm", "version"), *_flags("enabled", "hold")),
        *(_of("set_up_id", "set_up", nullable=True), _maybe("skip_slot"), *_moments("since")),
    )
    _index("schedule", "room_id")
    op.create_table(
        "occurrence", _key_of("schedule_id", "schedule"), _key("slot"), *_moments("due_utc"), *_texts("state")
    )


def _way_in_and_out() -> None:
    op.create_table(
        "inbox",
        *(_id("seq"), *_texts("event_id", "state"), *_wholes("attempts"), *_moments("received")),
        *(_maybe("room_id"), _maybe("body"), _maybe("problem"), sa.UniqueConstraint("event_id")),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "sealed_event",
        *(_id("seq"), *_texts("event_id", "session_id", "event"), *_moments("received"), *_flags("told")),
        sa.UniqueConstraint("event_id"),
        sqlite_autoincrement=True,
    )
    _partial_index("ix_inbox_new", "inbox", ["state", "seq"], "state = 'new'")
    op.create_table(
        "outbox",
        *(_id(), *_texts("lane", "event_type", "txn_id", "state"), *_wholes("part", "attempts")),
        *(_of("schedule_id", "schedule", nullable=True), _of("head_id", "outbox", nullable=True)),
        *(_maybe(name) for name in ("slot", "content", "event_id", "cause_event_id", "problem")),
        *(_maybe_moment("lease_until"), _maybe_moment("first_try"), sa.Column("revision", sa.Integer)),
        sa.UniqueConstraint("txn_id"),
        sa.UniqueConstraint("schedule_id", "slot", "part"),
        sa.UniqueConstraint("cause_event_id", "part", "revision"),
        sqlite_autoincrement=True,
    )
    _index("outbox", "event_id")
    _index("outbox", "head_id")
    _partial_index("ix_outbox_open", "outbox", ["lane", "id"], "state IN ('waiting', 'leased')")


def _runs() -> None:
    op.create_table(
        "run",
        *(_id(), *_texts("room_id", "user_id", "event_id", "week", "kind", "result", "status", "reasons", "splits_s")),
        *(*_wholes("line", "arrived", "wipes"), *_flags("over_limit"), *_moments("sent_at", "ran_at")),
        *(_of("set_up_id", "set_up"), _of("spec_id", "spec"), _of("live_id", "live_drill", nullable=True)),
        *(sa.Column("kitchen_day", sa.Date, nullable=False), _maybe("partner"), _maybe("sent_by")),
        *(_maybe("photo"), _maybe("claimed"), *_flags("chat_timed")),
        *(sa.Column("net_s", sa.Float), sa.Column("standard_s", sa.Float, nullable=False)),
        *(sa.Column("log_ratio", sa.Float), *_wholes("day_number", "clean", "attempted")),
        sa.UniqueConstraint("event_id", "line"),
    )
    op.create_index("ix_run_last", "run", ["room_id", "user_id", "arrived", "line"])
    op.create_index("ix_run_day", "run", ["room_id", "user_id", "kitchen_day"])
    op.create_index("ix_run_set_up", "run", ["user_id", "set_up_id", "ran_at", "arrived"])
    op.create_index("ix_run_spec", "run", ["user_id", "spec_id", "ran_at", "arrived"])
    op.create_index("ix_run_board", "run", ["live_id", "user_id", "arrived"])
    op.create_index("ix_run_correct", "run", ["spec_id"])
    op.create_index("ix_run_quarter", "run", ["room_id", "day_number"])
    op.create_index("ix_run_partner", "run", ["partner", "set_up_id"])
    op.create_index("ix_run_photo", "run", ["photo"])
    op.create_table(
        "hand",
        *(_id(), *_texts("event_id", "witness", "reaction_id", "by")),
        *(sa.Column("good", sa.Integer), _maybe_moment("at")),
        *(sa.UniqueConstraint("reaction_id"), sa.UniqueConstraint("event_id", "witness", "by")),
    )
    op.create_table("photo_check", _key("room_id"), *_texts("photos", "answers"), *_moments("started_at"))
    op.create_table(
        "question",
        *(_id(), *_texts("user_id", "room_id", "kind", "held", "about"), *_moments("asked_at", "lapses_at")),
    )
    _index("question", "lapses_at")
    _index("question", "user_id", "lapses_at")
    op.create_table(
        "fit",
        *(_key("whose"), _key("quarter"), *_texts("mark", "cells", "ready", "seconds"), *_moments("fitted_at")),
        *(_maybe("fit"), _maybe("board"), _maybe_moment("closed_at")),
    )


def _id(name: str = "id") -> sa.Column[int]:
    return sa.Column(name, sa.Integer, primary_key=True)


def _key(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text, primary_key=True)


def _key_of(name: str, parent: str) -> sa.Column[int]:
    return sa.Column(name, sa.Integer, sa.ForeignKey(f"{parent}.id"), primary_key=True)


def _of(name: str, parent: str, *, nullable: bool = False) -> sa.Column[int]:
    return sa.Column(name, sa.Integer, sa.ForeignKey(f"{parent}.id"), nullable=nullable)


def _texts(*names: str) -> list[sa.Column[str]]:
    return [sa.Column(name, sa.Text, nullable=False) for name in names]


def _wholes(*names: str) -> list[sa.Column[int]]:
    return [sa.Column(name, sa.Integer, nullable=False) for name in names]


def _flags(*names: str) -> list[sa.Column[bool]]:
    return [sa.Column(name, sa.Boolean, nullable=False) for name in names]


def _moments(*names: str) -> list[sa.Column[object]]:
    return [sa.Column(name, sa.DateTime(timezone=True), nullable=False) for name in names]


def _maybe(name: str) -> sa.Column[str]:
    return sa.Column(name, sa.Text)


def _maybe_moment(name: str) -> sa.Column[object]:
    return sa.Column(name, sa.DateTime(timezone=True))


def _index(table: str, *columns: str) -> None:
    op.create_index(f"ix_{table}_{'_'.join(columns)}", table, list(columns))


def _partial_index(name: str, table: str, columns: list[str], condition: str) -> None:
    op.create_index(name, table, columns, sqlite_where=sa.text(condition), postgresql_where=sa.text(condition))
