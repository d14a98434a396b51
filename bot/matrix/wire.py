"""What the server sends, as far as the bot reads it.

Strict: a number where a string belongs is an error, never a conversion. An event in a list is left as it came, so
that one malformed event spoils no other.
"""

import json
from typing import Annotated, Literal, TypeVar

from pydantic import BaseModel, ConfigDict, Field, ValidationError

_LARGEST_BYTES = 65_536
_YEAR_9999_MS = 253_402_300_799_000

Id = Annotated[str, Field(min_length=1, max_length=255)]


_Model = TypeVar("_Model", bound=BaseModel)


def parsed(model: type[_Model], raw: object) -> _Model | None:
    """The raw thing as this model has it; None where it is malformed."""
    try:
        return model.model_validate(raw)
    except ValidationError:
        return None


class _Wire(BaseModel):
    model_config = ConfigDict(strict=True, frozen=True)


class Timeline(_Wire):
    """A stretch of a room's events, the oldest first; ``limited`` if some before it were left out."""

    events: list[object] = []
    limited: bool = False
    prev_batch: str | None = None


class Events(_Wire):
    """Some state events, or messages to the bot's device."""

    events: list[object] = []


class RoomNews(_Wire):
    """What is new in a room that the bot is in, or has just left; ``state`` is as at the timeline's start."""

    timeline: Timeline = Timeline()
    state: Events = Events()


class Invited(_Wire):
    """A room that the bot is invited to."""

    invite_state: Events = Events()


class Rooms(_Wire):
    """The rooms of which there is news, by room id."""

    join: dict[str, RoomNews] = {}
    leave: dict[str, RoomNews] = {}
    invite: dict[str, Invited] = {}


class DeviceLists(_Wire):
    """Whose devices have changed, and whose the server will tell of no more."""

    changed: list[str] = []
    left: list[str] = []


class News(_Wire):
    """The answer to a sync; of the bot's own keys it says how many are left."""

    next_batch: str
    rooms: Rooms = Rooms()
    to_device: Events = Events()
    device_lists: DeviceLists = DeviceLists()
    device_one_time_keys_count: dict[str, int] | None = None
    device_unused_fallback_key_types: list[str] | None = None


class Page(_Wire):
    """A page of a room's past, the newest event first; no ``end`` where there is nothing beyond it."""

    chunk: list[object] = []
    end: str | None = None


class RawEvent(_Wire):
    """An event's envelope."""

    type: Id
    event_id: Id
    sender: Id
    origin_server_ts: int = Field(ge=0, le=_YEAR_9999_MS)
    content: dict[str, object]
    state_key: str | None = None
    redacts: str | None = None
    unsigned: dict[str, object] = {}


class Stripped(_Wire):
    """A state event as the invited see it."""

    type: Id
    sender: Id
    state_key: str
    content: dict[str, object]


class InReplyTo(_Wire):
    """Which message is answered."""

    event_id: Id


class Relation(_Wire):
    """How a message hangs together with another."""

    rel_type: str | None = None
    event_id: Id | None = None
    key: Annotated[str, Field(max_length=100)] | None = None
    in_reply_to: InReplyTo | None = Field(default=None, alias="m.in_reply_to")
    is_falling_back: bool = False


class Said(_Wire):
    """The content of a message, or of the new version that an edit brings."""

    msgtype: str
    body: Annotated[str, Field(max_length=16_384)]
    filename: str | None = None
    relates_to: Relation = Field(default=Relation(), alias="m.relates_to")
    new_content: dict[str, object] | None = Field(default=None, alias="m.new_content")
    mentions: object = Field(default=None, alias="m.mentions")


class Encrypted(_Wire):
    """The content of an encrypted event, as far as it is needed for opening it; the device may go unnamed."""

    algorithm: Literal["m.megolm.v1.aes-sha2"]
    ciphertext: str
    session_id: Id
    device_id: Id | None = None


class Mentions(_Wire):
    """Who is mentioned."""

    user_ids: Annotated[list[Id], Field(max_length=50)] = []


class Reacted(_Wire):
    """The content of a reaction."""

    relates_to: Relation = Field(alias="m.relates_to")


class Redacted(_Wire):
    """The content of a redaction; rooms of version 11 and later name the target here."""

    redacts: Id | None = None


class Member(_Wire):
    """The content of a membership event."""

    membership: Literal["invite", "join", "leave", "ban", "knock"]
    displayname: object = None
    is_direct: object = None


def writable(raw: object) -> object:
    """The event itself, if everything in it can be stored: Unicode text without NUL, no larger than the protocol's."""
    text = json.dumps(raw, ensure_ascii=False)
    if len(text.encode()) > _LARGEST_BYTES or "\\u0000" in text:
        raise ValueError("too large, or with a NUL in it")
    return raw
