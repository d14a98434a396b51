"""The tables of the trade: specs, set-ups, wordings, drafts, postings, boards, runs, raised hands and questions."""

from sqlalchemy import Boolean, Column, Date, Float, ForeignKey, Index, Integer, Table, Text, UniqueConstraint

from bot.domain.drill import Drill, SetUp, Spec, Wording
from bot.domain.expected import Fitted
from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.ranking import QuarterBoard
from bot.domain.own_board import Together
from bot.domain.places import Board
from bot.domain.run import Count, Result
from bot.domain.techniques import Seconds
from bot.services.ports.run_records import Held
from bot.storage.columns import Kept, Moment, flag, kept, metadata, moment, number_key, row_of, text, text_key, whole

specs = Table(
    "spec",
    metadata,
    number_key(),
    text("room_id"),
    whole("number"),
    text("fingerprint"),
    kept("spec", Spec),
    row_of("parent", "spec", nullable=True),
    UniqueConstraint("room_id", "number"),
    UniqueConstraint("room_id", "fingerprint"),
)

set_ups = Table(
    "set_up",
    metadata,
    number_key(),
    row_of("spec_id", "spec"),
    text("letter"),
    text("fingerprint"),
    kept("set_up", SetUp),
    moment("published_at"),
    flag("seeded"),
    flag("retired"),
    UniqueConstraint("spec_id", "letter"),
    UniqueConstraint("spec_id", "fingerprint"),
)

wordings = Table(
    "wording",
    metadata,
    Column("set_up_id", Integer, ForeignKey("set_up.id"), primary_key=True),
    Column("revision", Integer, primary_key=True),
    kept("wording", Wording),
    moment("published_at"),
)

drafts = Table(
    "draft",
    metadata,
    number_key(),
    text("room_id"),
    text("author"),
    Column("event_id", Text, nullable=False, index=True),
    kept("drill", Drill),
    row_of("parent", "spec", nullable=True),
    UniqueConstraint("room_id", "author"),
)

live_drills = Table(
    "live_drill",
    metadata,
    number_key(),
    text("room_id"),
    row_of("set_up_id", "set_up"),
    row_of("spec_id", "spec"),
    kept("drill", Drill),
    text("week"),
    moment("posted_at"),
    moment("closes_at"),
    text("root"),
    Column("closed_at", Moment),
    flag("announced"),
)
Index(None, live_drills.c.room_id, live_drills.c.set_up_id, live_drills.c.week)
Index(None, live_drills.c.announced, live_drills.c.closed_at, live_drills.c.closes_at)

frozen_boards = Table(
    "frozen_board",
    metadata,
    Column("live_id", Integer, ForeignKey("live_drill.id"), primary_key=True),
    text_key("kind"),
    moment("closed_at"),
    kept("board", Board | Together),
)

fitted_weeks = Table(
    "fitted_week",
    metadata,
    Column("live_id", Integer, ForeignKey("live_drill.id"), primary_key=True),
    kept("cooks", dict[str, Fitted]),
)

runs = Table(
    "run",
    metadata,
    number_key(),
    text("room_id"),
    text("user_id"),
    text("event_id"),
    whole("line"),
    whole("arrived"),
    row_of("set_up_id", "set_up"),
    row_of("spec_id", "spec"),
    row_of("live_id", "live_drill", nullable=True),
    moment("sent_at"),
    moment("ran_at"),
    Column("kitchen_day", Date, nullable=False),
    text("week"),
    text("kind"),
    kept("result", Result),
    text("status"),
    kept("reasons", tuple[str, ...]),
    kept("splits_s", tuple[int, ...]),
    whole("wipes"),
    Column("partner", Text),
    Column("sent_by", Text),
    Column("photo", Text),
    Column("claimed", Kept(Count)),
    flag("chat_timed"),
    Column("over_limit", Boolean, nullable=False),
    Column("net_s", Float),
    Column("standard_s", Float, nullable=False),
    Column("log_ratio", Float),
    whole("day_number"),
    whole("clean"),
    whole("attempted"),
    UniqueConstraint("event_id", "line"),
)
Index("ix_run_last", runs.c.room_id, runs.c.user_id, runs.c.arrived, runs.c.line)
Index("ix_run_day", runs.c.room_id, runs.c.user_id, runs.c.kitchen_day)
Index("ix_run_set_up", runs.c.user_id, runs.c.set_up_id, runs.c.ran_at, runs.c.arrived)
Index("ix_run_spec", runs.c.user_id, runs.c.spec_id, runs.c.ran_at, runs.c.arrived)
Index("ix_run_board", runs.c.live_id, runs.c.user_id, runs.c.arrived)
Index("ix_run_correct", runs.c.spec_id)
Index("ix_run_quarter", runs.c.room_id, runs.c.day_number)
Index("ix_run_partner", runs.c.partner, runs.c.set_up_id)
Index("ix_run_photo", runs.c.photo)

hands = Table(
    "hand",
    metadata,
    number_key(),
    text("event_id"),
    text("witness"),
    Column("reaction_id", Text, nullable=False, unique=True),
    text("by"),
    Column("good", Integer),
    Column("at", Moment),
    UniqueConstraint("event_id", "witness", "by"),
)

photo_checks = Table(
    "photo_check",
    metadata,
    text_key("room_id"),
    moment("started_at"),
    kept("photos", tuple[str, ...]),
    kept("answers", dict[str, tuple[bool, ...]]),
)

questions = Table(
    "question",
    metadata,
    number_key(),
    text("user_id"),
    text("room_id"),
    text("kind"),
    moment("asked_at"),
    Column("lapses_at", Moment, nullable=False, index=True),
    kept("held", tuple[Held, ...]),
    text("about"),
)
Index(None, questions.c.user_id, questions.c.lapses_at)

fits = Table(
    "fit",
    metadata,
    text_key("whose"),
    text_key("quarter"),
    text("mark"),
    moment("fitted_at"),
    Column("fit", Kept(Fit)),
    kept("cells", tuple[Cell, ...]),
    kept("ready", tuple[int, ...]),
    kept("seconds", Seconds),
    Column("closed_at", Moment),
    Column("board", Kept(QuarterBoard)),
)
