"""What is remembered, as the services see it. ``id`` is 0 until the record is stored."""

from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import Literal

from bot.domain.drill import Drill
from bot.domain.own_board import Together
from bot.domain.places import Board
from bot.domain.run import Count, Result, Sent
from bot.services.ports.messages import EventRef


@dataclass(frozen=True, kw_only=True)
class Session:
    """How the bot is signed in: the device is kept for life, since transaction ids hold for it alone."""

    user_id: str
    device_id: str
    token: str = field(repr=False)


@dataclass(frozen=True, kw_only=True)
class Kitchen:
    """A team's room and its settings; ``zone`` is an IANA name, ``day_turn`` the local hour at which the day turns.

    ``first_closing`` is when its first board was closed: whoever joins later has settling-in runs. ``currency`` is the
    ISO 4217 code of its prices, None until a chef says it.
    """

    room_id: str
    name: str
    opened_at: datetime
    zone: str = "UTC"
    day_turn: time = time(5)
    quiet_from: time = time(22)
    quiet_to: time = time(9)
    replies: Literal["full", "short"] = "full"
    first_closing: datetime | None = None
    currency: str | None = None


Role = Literal["chef", "sous", "cook", "commis", "trainee", "judge"]
"""What somebody is in a kitchen by its chef's word; a cook where none was said."""


@dataclass(frozen=True, kw_only=True)
class Member:
    """A person in a kitchen's room; ``consent`` is what they said to being counted in, None until they say.

    Public boards show only those who are ``on_boards``; ``ready`` are the set-ups that they said they are ready to
    have made harder.
    """

    room_id: str
    user_id: str
    name: str
    state: Literal["invite", "join", "leave", "ban", "knock"]
    consent: Literal["in", "out"] | None = None
    counted_since: datetime | None = None
    role: Role = "cook"
    on_boards: bool = True
    ready: tuple[int, ...] = ()


@dataclass(frozen=True, kw_only=True)
class Draft:
    """A drill being written; editing the message ``event_id`` re-parses it, ``parent`` is the spec it came from."""

    room_id: str
    author: str
    event_id: str
    drill: Drill
    parent: int | None = None
    id: int = 0


@dataclass(frozen=True, kw_only=True)
class PublishedDrill:
    """A set-up that can be posted, with its stored ids."""

    set_up_id: int
    spec_id: int
    room_id: str
    drill: Drill
    published_at: datetime
    parent: int | None = None
    retired: bool = False


@dataclass(frozen=True, kw_only=True)
class Schedule:
    """A weekly posting: ``weekday`` 0 is Monday, local wall time in ``zone``; no set-up means the newest published.

    ``skip_slot`` is the one week left out; a schedule that is not ``enabled`` was cancelled, one on ``hold`` waits.
    """

    room_id: str
    weekday: int
    at: time
    zone: str
    set_up_id: int | None = None
    enabled: bool = True
    hold: bool = False
    skip_slot: str | None = None
    since: datetime
    version: int = 1
    id: int = 0


OccurrenceState = Literal["posted", "skipped", "missed"]


@dataclass(frozen=True, kw_only=True)
class Occurrence:
    """One slot of a schedule that has been dealt with; schedule and slot are unique together."""

    schedule_id: int
    slot: str
    due_at: datetime
    state: OccurrenceState


@dataclass(frozen=True, kw_only=True)
class LiveDrill:
    """A drill as posted for one kitchen week: ``root`` is its thread, ``closes_at`` the day turn that ends it.

    ``announced`` once the closed board was told to the room, which in quiet hours is later than its closing.
    """

    room_id: str
    set_up_id: int
    spec_id: int
    drill: Drill
    week: str
    posted_at: datetime
    closes_at: datetime
    root: EventRef
    closed_at: datetime | None = None
    announced: bool = False
    id: int = 0


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


@dataclass(frozen=True, kw_only=True)
class FrozenBoard:
    """A closed board as it stood, with every cook's figures, not only those shown; or what the house did together."""

    live_id: int
    kind: str
    closed_at: datetime
    board: Board | Together


@dataclass(frozen=True, kw_only=True)
class ClosedBoard:
    """A frozen board of places with the set-up and the week that it was of."""

    set_up_id: int
    week: str
    board: Board
