"""The way out to the rooms: what the outbox sender hands over becomes events on the homeserver."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Protocol

from bot.errors import OperatorError
from bot.matrix.comings import COMINGS, Doors, come_or_go
from bot.matrix.compose import TXN, compose_message, compose_reaction
from bot.matrix.faults import Refused, Report
from bot.matrix.private_rooms import Rooms, find_room, open_room
from bot.matrix.secrecy import InTheClear, Secrecy
from bot.matrix.uploads import Uploads
from bot.matrix.wire import Page, RawEvent, Reacted, parsed
from bot.services.ports.attachments import RenderFailed
from bot.services.ports.messages import Outgoing, SendRefused, Waiting

_PINS = "m.room.pinned_events"
_BAD_REQUEST = 400
_FORBIDDEN = 403
_CLOCKS_DIFFER_BY_S = 3600.0


class Homeserver(Rooms, Doors, Protocol):
    """What sending takes of the homeserver."""

    async def send(self, room_id: str, event_type: str, content: Mapping[str, object], txn_id: str) -> str:
        """Send an event under a transaction id; its event id."""

    async def put_state(self, room_id: str, event_type: str, content: Mapping[str, object]) -> str:
        """Set a state event; its event id."""

    async def reactions_to(self, room_id: str, event_id: str) -> Page:
        """The newest reactions to an event."""

    async def past(
        self, room_id: str, start: str | None, end: str | None = None, *, only: Mapping[str, object]
    ) -> Page:
        """A page of what came before ``start`` (None: the newest), the newest first."""


class RoomMessenger:
    """Sends to Matrix rooms; ``report`` hears once of each room where the bot may not pin or thread."""

    def __init__(
        self,
        homeserver: Homeserver,
        report: Report,
        secrecy: Secrecy | None = None,
        uploads: Uploads | None = None,
    ) -> None:
        self._homeserver = homeserver
        self._report = report
        self._secrecy = secrecy or InTheClear()
        self._uploads = uploads
        self._reported: set[str] = set()

    async def send(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Send a message, reaction or pin, or come and go; the event id it became."""
        if note.style in COMINGS:
            return await come_or_go(self._homeserver, room_id, note)
        if note.style == "pin":
            return await self._pin(waiting, room_id, note)
        if note.style == "reaction":
            return await self._react(waiting, room_id, note)
        try:
            return await self._say(waiting, room_id, note)
        except Refused as problem:
            if note.thread is None or problem.status != _BAD_REQUEST:
                raise
        # The server allows no thread there; what is to be said matters more than where it hangs.
        await self._report_once(f"The bot may not answer in threads in {room_id}; it answers in the main timeline.")
        return await self._say(waiting, room_id, replace(note, thread=None))

    async def upload(self, room_id: str, note: Outgoing) -> dict[str, object] | None:
        """What the message says of its attachment, now uploaded; None where there is none to be had."""
        if note.attachment is None or self._uploads is None:
            return None
        try:
            return await self._uploads.put(room_id, note.attachment, note.text)
        except (SendRefused, RenderFailed) as problem:
            await self._report_once(f"Messages go out without their files, whose words say the same: {problem}")
        return None

    async def _say(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        plain = compose_message(note, waiting.txn_id)
        event_type, content = await self._secrecy.seal(room_id, "m.room.message", plain)
        return await self._homeserver.send(room_id, event_type, content, waiting.txn_id)

    async def _react(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        content = compose_reaction(note, waiting.txn_id)
        try:
            return await self._homeserver.send(room_id, "m.reaction", content, waiting.txn_id)
        except Refused as problem:
            if problem.errcode != "M_DUPLICATE_ANNOTATION":
                raise
        return await self._own_reaction(room_id, note) or f"reacted:{waiting.txn_id}"

    async def _own_reaction(self, room_id: str, note: Outgoing) -> str | None:
        page = await self._homeserver.reactions_to(room_id, str(note.target))
        for event in self._own(page):
            content = parsed(Reacted, event.content)
            if content and content.relates_to.key == note.key:
                return event.event_id
        return None

    async def _pin(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Pin, in the place of what it replaces; where that is forbidden the message still stands, unpinned."""
        try:
            state = await self._homeserver.state(room_id, _PINS)
            pinned = (state or {}).get("pinned")
            kept = (
                [pin for pin in pinned if pin not in {note.target, note.replaces}] if isinstance(pinned, list) else []
            )
            return await self._homeserver.put_state(room_id, _PINS, {"pinned": [*kept, note.target]})
        except Refused as problem:
            if problem.status != _FORBIDDEN:
                raise
            await self._report_once(f"The bot may not pin in {room_id}; drills are posted there unpinned.")
            return f"unpinned:{waiting.txn_id}"

    async def _report_once(self, problem: str) -> None:
        if problem not in self._reported:
            self._reported.add(problem)
            await self._report(OperatorError(problem))

    async def find_sent(self, waiting: Waiting, room_id: str) -> str | None:
        """The event id of this row if it is already in the room; what twice is once (a pin, a coming) is not sought."""
        if waiting.note.style in {"pin", *COMINGS}:
            return None
        only = {"senders": [self._homeserver.user_id], "types": ["m.room.message", "m.room.encrypted", "m.reaction"]}
        start: str | None = None
        while True:
            page = await self._homeserver.past(room_id, start, only=only)
            own = self._own(page)
            for event in own:
                if waiting.txn_id in {event.content.get(TXN), event.unsigned.get("transaction_id")}:
                    return event.event_id
            if page.end in {None, start} or _all_before_first_try(own, waiting):
                return None
            start = page.end

    def _own(self, page: Page) -> list[RawEvent]:
        events = [parsed(RawEvent, raw) for raw in page.chunk]
        return [event for event in events if event and event.sender == self._homeserver.user_id]

    async def open_private(self, user_id: str, *, look_first: bool) -> str:
        """Open a room of two; with ``look_first`` an earlier one, made but never noted, is found and used."""
        found = await find_room(self._homeserver, user_id) if look_first else None
        return found or await open_room(self._homeserver, user_id, encrypted=await self._secrecy.suits(user_id))


def _all_before_first_try(own: list[RawEvent], waiting: Waiting) -> bool:
    earliest_s = (waiting.first_try_at_s or 0.0) - _CLOCKS_DIFFER_BY_S
    return bool(own) and own[-1].origin_server_ts / 1000 < earliest_s
