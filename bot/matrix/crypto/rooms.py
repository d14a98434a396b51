"""Which rooms are encrypted, and who is in them. A room that was encrypted once is so for ever."""

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Protocol

from bot.matrix.crypto.store import CryptoStore
from bot.matrix.crypto.wire import RoomRules
from bot.matrix.wire import RawEvent, parsed
from bot.services.ports.messages import SendRefused

ALGORITHM = "m.megolm.v1.aes-sha2"

_ENCRYPTION = "m.room.encryption"


class RoomServer(Protocol):
    """What the homeserver says of a room."""

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> Mapping[str, object] | None:
        """The content of a state event; None if there is none."""


class MemberServer(Protocol):
    """What the homeserver says of who is in a room."""

    async def members(self, room_id: str) -> list[object]:
        """The membership events of everybody who has not left the room."""


class EncryptedRooms:
    """Learns from the sync what has changed and asks for the rest once."""

    def __init__(self, store: CryptoStore, rooms: RoomServer, members: MemberServer) -> None:
        self._store = store
        self._rooms = rooms
        self._server = members
        self._encrypted: set[str] = store.load_encrypted_rooms()
        self._plain: set[str] = set()
        self._rules: dict[str, RoomRules] = {}
        self._members: dict[str, frozenset[str]] = {}
        self._changes: Counter[str] = Counter()

    def look_at(self, room_id: str, events: Sequence[object]) -> None:
        """Take note of what these events, newest or not, say of the room."""
        for raw in events:
            event = raw if isinstance(raw, Mapping) else {}
            if event.get("type") == _ENCRYPTION and event.get("state_key") == "":
                self._note(room_id)
                self._rules.pop(room_id, None)
            elif event.get("type") == "m.room.member":
                self._changes[room_id] += 1
                self._members.pop(room_id, None)

    def _note(self, room_id: str) -> None:
        self._plain.discard(room_id)
        if room_id not in self._encrypted:
            self._encrypted.add(room_id)
            self._store.save_encrypted_rooms([room_id])

    async def rules(self, room_id: str) -> RoomRules | None:
        """How the room is encrypted; None where it is not. ``SendRefused`` where it is in a way unknown to us."""
        if room_id in self._plain:
            return None
        if room_id not in self._rules:
            content = await self._rooms.state(room_id, _ENCRYPTION)
            if content is None and room_id not in self._encrypted:
                self._plain.add(room_id)
                return None
            self._note(room_id)
            self._rules[room_id] = _read(content or {})
        rules = self._rules[room_id]
        if rules.algorithm != ALGORITHM:
            raise SendRefused(f"{room_id} is encrypted with {rules.algorithm}, which is not known here")
        return rules

    async def members(self, room_id: str) -> frozenset[str]:
        """Who may read what is said now: those in the room and, unless its history is closed to them, those invited."""
        while room_id not in self._members:
            seen = self._changes[room_id]
            entitled = await self._entitled(room_id)
            found = [parsed(RawEvent, raw) for raw in await self._server.members(room_id)]
            if seen == self._changes[room_id]:  # else somebody came or went meanwhile
                self._members[room_id] = frozenset(
                    event.state_key
                    for event in found
                    if event and event.state_key and event.content.get("membership") in entitled
                )
        return self._members[room_id]

    async def _entitled(self, room_id: str) -> set[str]:
        content = await self._rooms.state(room_id, "m.room.history_visibility")
        return {"join"} if content and content.get("history_visibility") == "joined" else {"join", "invite"}


def _read(content: Mapping[str, object]) -> RoomRules:
    """The room's rules; where only its periods are malformed, the usual ones."""
    algorithm = content.get("algorithm", ALGORITHM)
    return parsed(RoomRules, content) or RoomRules(algorithm=str(algorithm))
