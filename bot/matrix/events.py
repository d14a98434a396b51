"""Raw events become the bot's own records; what is malformed, or none of the bot's business, becomes nothing."""

from collections.abc import Callable, Mapping
from contextlib import suppress
from datetime import UTC, datetime
from typing import TypedDict, get_args

from pydantic import ValidationError

from bot.matrix.wire import Encrypted, Member, Mentions, RawEvent, Reacted, Redacted, Relation, Said, writable
from bot.services.ports.events import (
    Edit,
    Incoming,
    Membership,
    Message,
    Reaction,
    Redaction,
    RoomState,
    Sealed,
    StateType,
)

SPOKEN = ("m.room.message", "m.reaction", "m.room.redaction", "m.room.encrypted")
"""The types that the bot reads but never from itself."""

_KEPT_STATE: tuple[StateType, ...] = get_args(StateType)
STATE = ("m.room.member", "m.room.encryption", *_KEPT_STATE)
"""The types that say how a room is, whoever sent them."""

_PICTURED = frozenset({"m.image", "m.video", "m.file"})
_NAME_LENGTH = 255

_Reader = Callable[[RawEvent, str], Incoming | Sealed | None]


class _Envelope(TypedDict):
    event_id: str
    room_id: str
    sender: str
    sent_at: datetime


def read_event(raw: object, room_id: str, own_id: str) -> Incoming | Sealed | None:
    """What this event of the room means to the bot, whose own words and reactions (on any device) mean nothing.

    What is encrypted stays sealed.
    """
    try:
        event = RawEvent.model_validate(writable(raw))
        if event.type in SPOKEN and event.sender == own_id:
            return None
        reader = _READERS.get(event.type)
        return reader(event, room_id) if reader else None
    except (ValueError, TypeError, RecursionError):  # pydantic's are ValueErrors
        return None


def arrives(raw: object, person: str) -> bool:
    """Whether by this event the person came into the room, having been outside (a new display name is no coming)."""
    try:
        event = RawEvent.model_validate(raw)
        if event.type != "m.room.member" or event.state_key != person:
            return False
        return Member.model_validate(event.content).membership == "join" and _before(event).get("membership") != "join"
    except ValidationError:
        return False


def _read_message(event: RawEvent, room_id: str) -> Message | Edit | None:
    said = Said.model_validate(event.content)
    if said.relates_to.rel_type == "m.replace":
        return _read_edit(event, room_id, said)
    text, answered = _words(said), _answered(said.relates_to)
    picture = said.msgtype == "m.image"
    if text is None and not (picture and answered):
        return None
    text = text or ""
    return Message(
        **_envelope(event, room_id),
        text=_without_fallback(text) if said.relates_to.in_reply_to else text,
        reply_to=answered,
        picture=picture,
        thread=said.relates_to.event_id if said.relates_to.rel_type == "m.thread" else None,
        mentions=_mentioned(said),
    )


def _read_edit(event: RawEvent, room_id: str, said: Said) -> Edit | None:
    if said.new_content is None or said.relates_to.event_id is None:
        return None
    fresh = Said.model_validate(said.new_content)
    text = _words(fresh)
    if text is None:
        return None
    return Edit(
        **_envelope(event, room_id),
        target=said.relates_to.event_id,
        text=text,
        mentions=_mentioned(fresh),
    )


def _read_reaction(event: RawEvent, room_id: str) -> Reaction | None:
    relation = Reacted.model_validate(event.content).relates_to
    if relation.rel_type != "m.annotation" or relation.event_id is None or not relation.key:
        return None
    return Reaction(
        **_envelope(event, room_id),
        target=relation.event_id,
        key=relation.key,
    )


def _read_redaction(event: RawEvent, room_id: str) -> Redaction | None:
    # Before room version 11 only the outer field counts, since then the inner one, which servers copy to the outer.
    target = event.redacts or Redacted.model_validate(event.content).redacts
    if target is None:
        return None
    return Redaction(**_envelope(event, room_id), target=target)


def _read_sealed(event: RawEvent, room_id: str) -> Sealed | None:
    session_id = Encrypted.model_validate(event.content).session_id
    return Sealed(**_envelope(event, room_id), session_id=session_id, raw=event.model_dump(exclude_none=True))


def _read_membership(event: RawEvent, room_id: str) -> Membership | None:
    if event.state_key is None:
        return None
    member = Member.model_validate(event.content)
    return Membership(
        **_envelope(event, room_id),
        person=event.state_key,
        state=member.membership,
        name=member.displayname[:_NAME_LENGTH] if isinstance(member.displayname, str) else "",
        direct=member.is_direct is True or _before(event).get("is_direct") is True,
    )


def _read_state(event: RawEvent, room_id: str) -> RoomState | None:
    for known in _KEPT_STATE:
        if event.type == known and event.state_key == "":
            return RoomState(**_envelope(event, room_id), type=known, content=event.content)
    return None


_READERS: Mapping[str, _Reader] = {
    "m.room.message": _read_message,
    "m.reaction": _read_reaction,
    "m.room.redaction": _read_redaction,
    "m.room.encrypted": _read_sealed,
    "m.room.member": _read_membership,
    **dict.fromkeys(_KEPT_STATE, _read_state),
}


def _envelope(event: RawEvent, room_id: str) -> _Envelope:
    return {
        "event_id": event.event_id,
        "room_id": room_id,
        "sender": event.sender,
        "sent_at": datetime.fromtimestamp(event.origin_server_ts / 1000, UTC),
    }


def _before(event: RawEvent) -> Mapping[str, object]:
    """The content of the state event that this one takes the place of."""
    before = event.unsigned.get("prev_content")
    return before if isinstance(before, dict) else {}


def _words(said: Said) -> str | None:
    """What was said: a text, or a picture's caption (its body is one only where the file's name stands apart)."""
    if said.msgtype == "m.text":
        return said.body
    captioned = said.msgtype in _PICTURED and said.filename is not None and said.filename != said.body
    return said.body if captioned else None


def _without_fallback(text: str) -> str:
    """The text without the quotation that older clients put before a reply."""
    if not text.startswith(("> <@", "> * <@")):
        return text
    lines = text.split("\n")
    quoted = next((place for place, line in enumerate(lines) if not line.startswith(">")), len(lines))
    return "\n".join(lines[quoted:]).removeprefix("\n")


def _answered(relation: Relation) -> str | None:
    """The message that is answered; in a thread the link to its latest message is only there for older clients."""
    if relation.in_reply_to is None or (relation.rel_type == "m.thread" and relation.is_falling_back):
        return None
    return relation.in_reply_to.event_id


def _mentioned(said: Said) -> tuple[str, ...]:
    """Who is mentioned; nobody where that part is malformed, which is no reason to lose what was said."""
    with suppress(ValidationError):
        return tuple(Mentions.model_validate(said.mentions).user_ids)
    return ()
