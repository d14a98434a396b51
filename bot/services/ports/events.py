"""What comes from a room, in the bot's own terms: the matrix edge builds these, the inbox stores them.

Every event has the id that its server gave it, the room it came from, who sent it and the sender's server's time
(UTC). That time decides a run's kitchen day, never a duration. Order is stream order, which the inbox keeps.
"""

from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal


@dataclass(frozen=True, kw_only=True)
class Message:
    """Something said: the body without any reply fallback; of a ``picture``, its caption, empty where it has none."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    text: str
    reply_to: str | None = None
    thread: str | None = None
    mentions: tuple[str, ...] = ()
    picture: bool = False
    kind: Literal["message"] = "message"


@dataclass(frozen=True, kw_only=True)
class Edit:
    """New words for an earlier message, ``target``; the words are the new content, not the ``* ...`` fallback."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    target: str
    text: str
    mentions: tuple[str, ...] = ()
    kind: Literal["edit"] = "edit"


@dataclass(frozen=True, kw_only=True)
class Reaction:
    """An emoji (``key``, as sent) put on ``target``."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    target: str
    key: str
    kind: Literal["reaction"] = "reaction"


@dataclass(frozen=True, kw_only=True)
class Redaction:
    """A message or reaction, ``target``, taken back."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    target: str
    kind: Literal["redaction"] = "redaction"


@dataclass(frozen=True, kw_only=True)
class Membership:
    """``person`` is now in ``state`` in the room under the display name ``name``.

    ``direct`` is true of an invitation to, or the bot's own joining of, a room meant for two.
    """

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    person: str
    state: Literal["invite", "join", "leave", "ban", "knock"]
    name: str = ""
    direct: bool = False
    kind: Literal["membership"] = "membership"


StateType = Literal["m.room.create", "m.room.power_levels", "m.room.name", "m.room.tombstone"]


@dataclass(frozen=True, kw_only=True)
class RoomState:
    """Raw state that decides authority, naming or succession: create, power levels, name or tombstone of a room."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    type: StateType
    content: dict[str, object] = field(default_factory=dict)
    kind: Literal["state"] = "state"


@dataclass(frozen=True, kw_only=True)
class Sealed:
    """Something said that a key, named by ``session_id``, is needed to read; ``raw`` is the event as it came."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime
    session_id: str
    raw: dict[str, object] = field(repr=False)


Incoming = Message | Edit | Reaction | Redaction | Membership | RoomState


@dataclass(frozen=True)
class Received:
    """An inbox row waiting to be processed: ``seq`` is its place in stream order, ``attempts`` how often it failed.

    ``is_last`` where no other waits behind it.
    """

    seq: int
    event: Incoming
    attempts: int
    is_last: bool
