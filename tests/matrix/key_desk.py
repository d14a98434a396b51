"""The part of a homeserver that keeps and hands on keys, in memory, and accounts that encrypt through it."""

import json
from collections import defaultdict, deque
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from bot.matrix.crypto.encryption import Encryption, open_encryption
from bot.matrix.crypto.server import KeyServer
from bot.matrix.wire import News
from bot.services.ports.events import Sealed
from bot.settings import EncryptionSettings
from tests.fakes import KITCHEN_ROOM, MONDAY, FixedClock
from tests.matrix.fakes import raw_event, raw_member

Device = tuple[str, str]
ALGORITHM = "m.megolm.v1.aes-sha2"


@dataclass
class KeyDesk:
    """Keeps what is published and hands it out. The next of ``faults`` under a path is raised instead of an answer."""

    devices: defaultdict[str, dict[str, Any]] = field(default_factory=lambda: defaultdict(dict))
    one_time_keys: defaultdict[Device, dict[str, Any]] = field(default_factory=lambda: defaultdict(dict))
    fallback_keys: dict[Device, dict[str, Any]] = field(default_factory=dict)
    used_fallbacks: set[Device] = field(default_factory=set)
    signing: defaultdict[str, dict[str, Any]] = field(default_factory=lambda: defaultdict(dict))
    waiting: defaultdict[Device, list[Any]] = field(default_factory=lambda: defaultdict(list))
    members: dict[str, list[str]] = field(default_factory=dict)
    states: dict[tuple[str, str], dict[str, Any]] = field(default_factory=dict)
    faults: defaultdict[str, deque[Exception]] = field(default_factory=lambda: defaultdict(deque))
    asked: list[str] = field(default_factory=list)
    failures: dict[str, Any] = field(default_factory=dict)
    proof: dict[str, Any] | None = None

    async def answer(self, who: Device, path: str, parts: tuple[str, ...], body: Any) -> dict[str, Any]:
        """One request of this device."""
        self.asked.append(path)
        if self.faults[path]:
            raise self.faults[path].popleft()
        desks = {
            "v3/keys/upload": self._upload,
            "v3/keys/query": self._query,
            "v3/keys/claim": self._claim,
            "v3/sendToDevice/{}/{}": self._send,
            "v3/rooms/{}/members": self._members,
            "v3/keys/device_signing/upload": self._publish_signing,
            "v3/keys/signatures/upload": self._sign,
        }
        answer: dict[str, Any] = json.loads(json.dumps(desks[path](who, parts, json.loads(json.dumps(body)))))
        return answer

    def _upload(self, who: Device, _: tuple[str, ...], body: Any) -> dict[str, Any]:
        if "device_keys" in body:
            self.devices[who[0]][who[1]] = body["device_keys"]
        self.one_time_keys[who] |= body.get("one_time_keys", {})
        if "fallback_keys" in body:
            self.fallback_keys[who] = body["fallback_keys"]
            self.used_fallbacks.discard(who)
        return {"one_time_key_counts": {"signed_curve25519": len(self.one_time_keys[who])}}

    def _query(self, _: Device, __: tuple[str, ...], body: Any) -> dict[str, Any]:
        users = body["device_keys"]
        kinds = {kind: {user: keys[kind] for user, keys in self.signing.items() if user in users} for kind in _KINDS}
        listed = {f"{kind}_keys": keys for kind, keys in kinds.items()}
        return {"device_keys": {user: self.devices[user] for user in users}} | listed

    def _claim(self, _: Device, __: tuple[str, ...], body: Any) -> dict[str, Any]:
        wanted = [(user, device) for user, devices in body["one_time_keys"].items() for device in devices]
        claimed: defaultdict[str, dict[str, Any]] = defaultdict(dict)
        for who in wanted:
            if self.one_time_keys[who]:
                claimed[who[0]][who[1]] = dict([self.one_time_keys[who].popitem()])
            elif who in self.fallback_keys:
                claimed[who[0]][who[1]] = self.fallback_keys[who]
                self.used_fallbacks.add(who)
        return {"one_time_keys": claimed}

    def _send(self, who: Device, parts: tuple[str, ...], body: Any) -> dict[str, Any]:
        for user, devices in body["messages"].items():
            for device, content in devices.items():
                told = {"type": parts[0], "sender": who[0], "content": content}
                for each in self.devices[user] if device == "*" else [device]:
                    self.waiting[user, each].append(told)
        return {}

    def _members(self, _: Device, parts: tuple[str, ...], __: Any) -> dict[str, Any]:
        return {"chunk": [raw_member(f"$m{user}", user) for user in self.members[parts[0]]]}

    def _publish_signing(self, who: Device, _: tuple[str, ...], body: Any) -> dict[str, Any]:
        self.proof = body.pop("auth", None)
        self.signing[who[0]] = {kind: body[f"{kind}_key"] for kind in _KINDS}
        return {}

    def _sign(self, who: Device, _: tuple[str, ...], body: Any) -> dict[str, Any]:
        if not self.failures:
            for key_id, signed in body[who[0]].items():
                known = self.devices[who[0]].get(key_id) or self.signing[who[0]]["master"]
                for user, signatures in signed["signatures"].items():
                    known.setdefault("signatures", {}).setdefault(user, {}).update(signatures)
        return {"failures": self.failures}

    def news(self, user_id: str, device_id: str) -> News:
        """What a sync of this device brings, once."""
        who = (user_id, device_id)
        told = {
            "next_batch": "s",
            "to_device": {"events": self.waiting.pop(who, [])},
            "device_one_time_keys_count": {"signed_curve25519": len(self.one_time_keys[who])},
            "device_unused_fallback_key_types": [] if who in self.used_fallbacks else ["signed_curve25519"],
        }
        return News.model_validate(told)


_KINDS = ("master", "self_signing", "user_signing")


@dataclass
class Client:
    """An account on a device."""

    desk: KeyDesk
    user_id: str
    device_id: str
    password: str | None = None

    @property
    def keys(self) -> KeyServer:
        """The requests about keys."""

        async def call(
            method: str, path: str, *parts: str, query: object = None, body: Any = None
        ) -> dict[str, object]:
            return await self.desk.answer((self.user_id, self.device_id), path, parts, body)

        return KeyServer(call, self.user_id, self.password)

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> Mapping[str, object] | None:
        """The content of a state event."""
        return self.desk.states.get((room_id, event_type))


@dataclass
class Talker:
    """Somebody who encrypts."""

    desk: KeyDesk
    encryption: Encryption
    user_id: str
    device_id: str
    clock: FixedClock

    def hear(self) -> bool:
        """Take in what has been sent to the device; whether there was a room key in it."""
        return self.encryption.receive(self.desk.news(self.user_id, self.device_id))

    async def say(self, text: str, room_id: str = KITCHEN_ROOM) -> Sealed:
        """Say something, as the others' syncs bring it."""
        kind, content = await self.encryption.seal(room_id, "m.room.message", {"msgtype": "m.text", "body": text})
        assert kind == "m.room.encrypted"
        return sealed(f"${text}", self.user_id, dict(content))

    def reads(self, event: Sealed) -> str | None:
        """What an event says to this device; None if it cannot read it."""
        raw: Any = self.encryption.unseal(event)
        return str(raw["content"]["body"]) if raw else None


def sealed(event_id: str, sender: str, content: dict[str, Any]) -> Sealed:
    """An encrypted event as it comes."""
    raw = raw_event(event_id, "m.room.encrypted", sender, content=content)
    return Sealed(
        event_id=event_id,
        room_id=KITCHEN_ROOM,
        sender=sender,
        sent_at=MONDAY,
        session_id=str(content["session_id"]),
        raw=raw,
    )


@asynccontextmanager
async def talker(
    desk: KeyDesk, directory: Path, user_id: str, device_id: str = "", **choices: Any
) -> AsyncIterator[Talker]:
    """Somebody on a device whose store is in this directory; unless it is named, the device is called as they are."""
    device_id = device_id or user_id
    clock = FixedClock()
    own = directory / f"{user_id[1:]}-{device_id}"
    settings = EncryptionSettings(store=own, key_file=directory / f"{own.name}.key", **choices)
    async with open_encryption(Client(desk, user_id, device_id), device_id, settings, None, clock) as encryption:
        yield Talker(desk, encryption, user_id, device_id, clock)


def an_encrypted_room(*members: str) -> KeyDesk:
    """A homeserver with the kitchen's room, encrypted, these people in it."""
    desk = KeyDesk()
    desk.members[KITCHEN_ROOM] = list(members)
    desk.states[KITCHEN_ROOM, "m.room.encryption"] = {"algorithm": ALGORITHM}
    return desk
