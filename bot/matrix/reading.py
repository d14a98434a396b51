"""A room's news, as a sync brings it, becomes the events that the inbox keeps."""

from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import datetime

from bot.matrix.events import arrives, read_event
from bot.matrix.private_rooms import MARK
from bot.matrix.wire import News, Stripped, writable
from bot.services.ports.events import Incoming, Membership, RoomState, Sealed


def read_room(
    room_id: str, own_id: str, *, stream: Sequence[object], state: Sequence[object] = (), state_at: int = 0
) -> list[Incoming | Sealed]:
    """The events of a room in order: what was said since the bot last came in, and all that says how the room is.

    ``state`` is how the room was before the event of the stream at ``state_at``; it comes in no order, and the bot's
    own membership is put last, since what it means hangs on how the room was made. What was said before the bot came in
    was not said to it.
    """
    arrival = max((place for place, raw in enumerate(stream) if arrives(raw, own_id)), default=0)
    entries = [(raw, place >= arrival) for place, raw in enumerate(stream)]
    entries[state_at:state_at] = [(raw, False) for raw in sorted(state, key=lambda raw: _is_member(raw, own_id))]
    read = [(read_event(raw, room_id, own_id), addressed) for raw, addressed in entries]
    events = [event for event, addressed in read if event and (addressed or isinstance(event, Membership | RoomState))]
    return _with_private_marked(events, own_id)


def _is_member(raw: object, own_id: str) -> bool:
    return isinstance(raw, Mapping) and (raw.get("type"), raw.get("state_key")) == ("m.room.member", own_id)


def read_invitations(news: News, own_id: str, now: datetime) -> list[Membership]:
    """The bot's own invitations, from the state that the invited are shown; their events have no id there."""
    return [
        Membership(
            event_id=f"invite:{room_id}:{event.sender}",
            room_id=room_id,
            sender=event.sender,
            sent_at=now,
            person=own_id,
            state="invite",
            direct=event.content.get("is_direct") is True,
        )
        for room_id, invited in news.rooms.invite.items()
        for event in map(_stripped, invited.invite_state.events)
        if event and event.type == "m.room.member" and event.state_key == own_id
    ]


def _stripped(raw: object) -> Stripped | None:
    with suppress(ValueError, TypeError, RecursionError):
        return Stripped.model_validate(writable(raw))
    return None


def _with_private_marked(events: list[Incoming | Sealed], own_id: str) -> list[Incoming | Sealed]:
    """The same events; of a private room that the bot made, its own joining says that it is meant for two."""
    if not any(isinstance(event, RoomState) and MARK in event.content and event.sender == own_id for event in events):
        return events
    return [
        replace(event, direct=True) if isinstance(event, Membership) and event.person == own_id else event
        for event in events
    ]
