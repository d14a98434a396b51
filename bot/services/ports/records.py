"""Kitchens, their people and their weeks, as the services see them. ``id`` is 0 until the record is stored."""

from dataclasses import dataclass, field
from datetime import datetime, time
from typing import Literal


@dataclass(frozen=True, kw_only=True)
class Session:
    """How the bot is signed in: the device is kept for life, since transaction ids hold for it alone.

    ``broken_starts`` are the starts in a row that broke, the last of them by ``broken_by``.
    """

    user_id: str
    device_id: str
    token: str = field(repr=False)
    broken_starts: int = 0
    broken_by: str = ""


@dataclass(frozen=True, kw_only=True)
class Kitchen:
    """A team's room and its settings; ``zone`` is an IANA name, ``day_turn`` the local hour at which the day turns.

    ``first_closing`` is when its first board was closed: whoever joins later has settling-in runs. ``currency`` is the
    ISO 4217 code of its prices, None until a chef says it; ``language`` is what the bot speaks in the room.
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
    language: str = "en"


Role = Literal["chef", "sous", "cook", "commis", "trainee", "judge"]
"""What somebody is in a kitchen by its chef's word; a cook where none was said."""


@dataclass(frozen=True, kw_only=True)
class Member:
    """A person in a kitchen's room; ``consent`` is what they said to being counted in, None until they say.

    Public boards show only those who are ``on_boards``; ``ready`` are the set-ups that they said they are ready to
    have made harder. From ``rest_from`` to ``rest_to``, the break of a split shift, they are told nothing unasked.
    ``language`` is what they are told in private in, None for the room's.
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
    rest_from: time | None = None
    rest_to: time | None = None
    language: str | None = None


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
