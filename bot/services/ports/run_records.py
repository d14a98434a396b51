"""Runs, and what was asked and not yet answered. ``id`` is 0 until the record is stored."""

from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Literal, NamedTuple

from bot.domain.run import Count, Result, Sent

RunStatus = Literal["kept", "pending", "scrapped", "void"]
"""pending: sent for a mate who has not said yes; scrapped: taken off by its runner; void: its message was deleted."""


@dataclass(frozen=True, kw_only=True)
class Run:
    """One run with its result. ``line`` is its line in the message; ``arrived`` the inbox order.

    ``live_id`` is the posting whose board it counts for, None where it counts for no board. ``witnesses`` are those
    who raised a hand. ``over_limit`` marks a run beyond the day's safe number: kept, not counted;
    ``sent_by`` who sent it where a mate did. ``partner`` built half of the plates of a pair run. ``photo`` is the event
    of its picture, never the picture. ``claimed`` is the count as sent, where judges found fewer good. A ``chat_timed``
    run has its clock from the times of two messages, which is good for no best.
    """

    room_id: str
    user_id: str
    event_id: str
    line: int
    arrived: int
    set_up_id: int
    spec_id: int
    live_id: int | None
    sent_at: datetime
    ran_at: datetime
    kitchen_day: date
    week: str
    result: Result
    status: RunStatus = "kept"
    reasons: tuple[str, ...] = ()
    splits_s: tuple[int, ...] = ()
    wipes: int = 0
    partner: str | None = None
    sent_by: str | None = None
    photo: str | None = None
    claimed: Count | None = None
    chat_timed: bool = False
    over_limit: bool = False
    witnesses: tuple[str, ...] = ()
    id: int = 0


class Ran(NamedTuple):
    """A run in brief, as later weeks compare with it: of one cook, all plates attempted, within the day's number."""

    user_id: str
    set_up_id: int
    week: str
    net_s: float | None
    standard_s: float


class Past(NamedTuple):
    """A kept run within the day's safe number, as a trend looks back at it."""

    set_up_id: int
    kitchen_day: date
    result: Result
    splits_s: tuple[int, ...]


@dataclass(frozen=True, kw_only=True)
class PhotoCheck:
    """A kitchen's check of its judges: the events of the photos, and of each judge whether each would have gone out."""

    room_id: str
    started_at: datetime
    photos: tuple[str, ...]
    answers: dict[str, tuple[bool, ...]] = field(default_factory=dict)


QuestionKind = Literal[
    "count",
    "left",
    "sure",
    "steps",
    "again",
    "undo",
    "mate",
    "join",
    "identity",
    "kitchen",
    "verdict",
    "clock",
    "forget",
]
"""What kind of answer is waited for: how many were good, whether one was left, whether it is right, which of clock and
steps is, whether it is a second run, whether a run is put back, a mate's yes, the word to be counted in, one of the
chef's three choices, which kitchen is meant, a judge's verdict, the end of a chat-timed run,
whether everything about a person is to be erased."""


@dataclass(frozen=True, kw_only=True)
class Held:
    """One line of a message that waits for an answer, as read: enough to take it as if it had just been sent.

    ``settled`` are the doubts about it that were answered before.
    """

    event_id: str
    line: int
    sent: Sent
    sent_at: datetime
    arrived: int
    room_id: str
    thread: str | None = None
    settled: frozenset[QuestionKind] = frozenset()
    picture: bool = False


@dataclass(frozen=True, kw_only=True)
class Question:
    """Something asked of one person and not yet answered.

    ``room_id`` is the kitchen's room, ``held`` the lines that the answer completes, ``about`` what else it concerns:
    the message of a run sent for a mate, or the posting that a chef wants to change.
    """

    user_id: str
    room_id: str
    kind: QuestionKind
    asked_at: datetime
    lapses_at: datetime
    held: tuple[Held, ...] = ()
    about: str = ""
    id: int = 0
