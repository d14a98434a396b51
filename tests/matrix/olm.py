"""nio's Olm machines on stores in memory, and what passes between two of them."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from nio.crypto import Olm, OlmDevice, OutgoingKeyRequest
from nio.store import SqliteMemoryStore

from tests.fakes import KITCHEN_ROOM

_MEGOLM = "m.megolm.v1.aes-sha2"


@contextmanager
def a_machine(user_id: str, device_id: str, kind: type[Any] = Olm) -> Iterator[Any]:
    """A machine of this kind, with keys of its own."""
    store = SqliteMemoryStore(user_id, device_id, "a pickle key")
    try:
        yield kind(user_id, device_id, store)
    finally:
        store.database.close()


def introduce(machine: Any, other: Any) -> OlmDevice:
    """Let a machine know the other's device."""
    device = OlmDevice(other.user_id, other.device_id, dict(other.account.identity_keys))
    machine.device_store.add(device)
    machine.store.save_device_keys({device.user_id: {device.id: device}})
    return device


def meet(machine: Any, other: Any) -> OlmDevice:
    """Let a machine begin a session with the other's device."""
    device = introduce(machine, other)
    other.account.generate_one_time_keys(1)
    (key,) = other.account.one_time_keys["curve25519"].values()
    machine.create_session(key, device.curve25519)
    other.mark_keys_as_published()
    return device


def whisper(machine: Any, device: OlmDevice, event_type: str, content: dict[str, Any]) -> dict[str, Any]:
    """A to-device message for that device, as its homeserver hands it over."""
    sealed = machine._olm_encrypt(machine.session_store.get(device.curve25519), device, event_type, content)
    return {"type": "m.room.encrypted", "sender": machine.user_id, "content": sealed}


def room_key(session: Any, room_id: str = KITCHEN_ROOM) -> dict[str, Any]:
    """The content of ``m.room_key`` for a session as it stands."""
    stated = {"algorithm": _MEGOLM, "room_id": room_id}
    return stated | {"session_id": session.id, "session_key": session.session_key}


def a_forwarded_key(machine: Any, maker: Any) -> dict[str, Any]:
    """A room key that the machine has asked for, forwarded to it by the device that made it."""
    device = meet(maker, machine)
    introduce(machine, maker)
    maker.create_outbound_group_session(KITCHEN_ROOM)
    session_id = maker.outbound_group_sessions[KITCHEN_ROOM].id
    machine.outgoing_key_requests[session_id] = OutgoingKeyRequest(session_id, session_id, KITCHEN_ROOM, _MEGOLM)
    own_key = maker.account.identity_keys["curve25519"]
    session = maker.inbound_group_store.get(KITCHEN_ROOM, own_key, session_id)
    with_device = maker.session_store.get(device.curve25519)
    forward = maker._encrypt_forwarding_key(KITCHEN_ROOM, session, with_device, device)
    return {"type": "m.room.encrypted", "sender": maker.user_id, "content": forward.content}
