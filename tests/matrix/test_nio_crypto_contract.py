"""What nio 0.26.0 does about encryption that the bot mends or steps around: each test fails when nio mends it itself.

Source of each: measured on nio itself. The mended counterparts are in ``bot/matrix/crypto/machine.py``, whose tests
are beside these.
"""

import asyncio
from typing import Any

import pytest
import vodozemac
from nio import AsyncClient, BadEvent, MatrixRoom, MegolmEvent, UnknownBadEvent
from nio.crypto import OutboundGroupSession
from nio.events.to_device import ToDeviceEvent
from nio.store import SqliteMemoryStore

from tests.fakes import KITCHEN_ROOM, NOOR
from tests.matrix.fakes import BOT, raw_event
from tests.matrix.olm import a_forwarded_key, a_machine, introduce, meet, room_key, whisper
from tests.matrix.stub import refuses, says
from tests.matrix.test_nio_contract import hangs, nio_to

OLM = "m.olm.v1.curve25519-aes-sha2"
ENCRYPTING = {"encryption_enabled": True, "store": SqliteMemoryStore, "max_limit_exceeded": 0, "max_timeouts": 0}


def garbage_for(machine: Any, body: str = "not a message") -> dict[str, Any]:
    """A to-device message that is addressed to this machine and is none."""
    ciphertext = {machine.account.identity_keys["curve25519"]: {"type": 0, "body": body}}
    content = {"algorithm": OLM, "sender_key": "A" * 43, "ciphertext": ciphertext}
    return {"type": "m.room.encrypted", "sender": NOOR, "content": content}


def in_an_encrypted_room(client: AsyncClient, *, with_session: bool) -> None:
    """Put the client, and a person with a device, into an encrypted room."""
    room = MatrixRoom(KITCHEN_ROOM, BOT, encrypted=True)
    room.add_member(NOOR, "Noor", None)
    room.members_synced = True
    client.rooms[KITCHEN_ROOM] = room
    client.olm.account.shared = True
    with a_machine(NOOR, "NOOR") as noor:
        (meet if with_session else introduce)(client.olm, noor)


async def say(client: AsyncClient) -> Any:
    """Send something to that room."""
    content = {"msgtype": "m.text", "body": "Heard."}
    return await client.room_send(KITCHEN_ROOM, "m.room.message", content, ignore_unverified_devices=True)


async def test_garbage_to_a_device_raises_out_of_the_sync() -> None:
    """And comes again with every sync from there on, for the token was not reached."""
    async with nio_to(says({"next_batch": "s2"}), **ENCRYPTING) as (client, stub):
        stub.answers[0] = says({"next_batch": "s2", "to_device": {"events": [garbage_for(client.olm)]}})
        with pytest.raises(vodozemac.DecodeException):
            await client.sync()
        client.store.database.close()


async def test_no_one_time_keys_left_is_taken_for_nothing_said() -> None:
    """So nobody new can begin a session with the bot."""
    async with nio_to(says({"next_batch": "s2", "device_one_time_keys_count": {}}), **ENCRYPTING) as (client, _):
        client.olm.account.shared = True
        await client.sync()
        assert client.olm.uploaded_key_count is None
        assert not client.should_upload_keys
        client.store.database.close()


def test_no_fallback_key_is_published() -> None:
    """Though vodozemac makes them."""
    with a_machine(BOT, "KITCHEN") as machine:
        assert "fallback_keys" not in machine.share_keys()


async def test_a_claim_broken_off_makes_the_room_hang_for_ever() -> None:
    """The second message waits for a sharing of keys that nobody is doing any more."""
    async with nio_to(hangs, **ENCRYPTING) as (client, stub):
        in_an_encrypted_room(client, with_session=False)
        for _ in range(2):
            with pytest.raises(TimeoutError):
                async with asyncio.timeout(0.3):
                    await say(client)
        assert len(stub.asked) == 1
        client.store.database.close()


async def test_a_key_that_was_not_handed_on_counts_as_handed_on() -> None:
    """Nobody can read the message, nor any that follows."""
    async with nio_to(refuses(403, "M_FORBIDDEN"), says({"event_id": "$1"}), **ENCRYPTING) as (client, _):
        in_an_encrypted_room(client, with_session=True)
        assert (await say(client)).event_id == "$1"
        session = client.olm.outbound_group_sessions[KITCHEN_ROOM]
        assert session.shared
        assert session.users_shared_with == set()
        client.store.database.close()


def test_a_malformed_key_raises() -> None:
    """One such device spoils the answer with everybody else's."""
    with a_machine(BOT, "KITCHEN") as machine:
        signed = {"signatures": {NOOR: {"ed25519:NOOR": machine.sign_json({})}}}
        with pytest.raises(vodozemac.KeyException):
            machine.verify_json(signed, "no key", NOOR, "NOOR")


def test_a_message_on_a_used_key_raises() -> None:
    """It is what comes from a device that claimed a key of ours which is gone."""
    with a_machine(BOT, "KITCHEN") as bot, a_machine(BOT, "KITCHEN") as forgetful, a_machine(NOOR, "NOOR") as noor:
        forgetful.account = type(bot.account).from_pickle(bot.account.pickle("x"), "x")
        told = whisper(noor, meet(noor, bot), "m.dummy", {})
        with pytest.raises(vodozemac.SessionCreationException):
            forgetful.handle_to_device_event(ToDeviceEvent.parse_event(told))


def test_one_time_keys_are_not_saved_before_they_are_published() -> None:
    """A kill between the two leaves the server with keys that nobody holds."""
    with a_machine(BOT, "KITCHEN") as machine:
        assert len(machine.share_keys()["one_time_keys"]) == 50
        assert machine.store.load_account().one_time_keys["curve25519"] == {}


def test_a_used_key_is_saved_as_if_it_were_not() -> None:
    """The account is written down before the first message of a session takes the key out of it, and not after."""
    with a_machine(BOT, "KITCHEN") as bot, a_machine(NOOR, "NOOR") as noor:
        told = whisper(noor, meet(noor, bot), "m.dummy", {})
        bot.handle_to_device_event(ToDeviceEvent.parse_event(told))
        again = bot.store.load_account()
        message = vodozemac.PreKeyMessage.from_base64(next(iter(told["content"]["ciphertext"].values()))["body"])
        assert again.create_inbound_session(noor.account.identity_keys["curve25519"], message)


def test_a_room_key_that_reaches_less_far_back_replaces_the_better() -> None:
    """What was said before it can then no longer be read."""
    with a_machine(BOT, "KITCHEN") as bot, a_machine(NOOR, "NOOR") as noor:
        session, device = OutboundGroupSession(), meet(noor, bot)
        session.mark_as_shared()
        for _ in range(2):
            bot.handle_to_device_event(
                ToDeviceEvent.parse_event(whisper(noor, device, "m.room_key", room_key(session)))
            )
            session.encrypt("a message")
        sender_key = noor.account.identity_keys["curve25519"]
        assert bot.inbound_group_store.get(KITCHEN_ROOM, sender_key, session.id).first_known_index == 1


def test_a_forwarded_key_is_not_taken_from_its_maker() -> None:
    """Though it was asked for and comes from the device that made it."""
    with a_machine(BOT, "KITCHEN") as bot, a_machine(NOOR, "NOOR") as noor:
        told = a_forwarded_key(bot, noor)
        bot.handle_to_device_event(ToDeviceEvent.parse_event(told))
        assert list(bot.inbound_group_store) == []


def test_an_event_that_does_not_name_its_device_is_malformed() -> None:
    """Source: T, specification, m.room.encrypted: sender_key and device_id are deprecated, and may be left out."""
    content = {"algorithm": "m.megolm.v1.aes-sha2", "ciphertext": "c", "session_id": "s"}
    assert isinstance(
        MegolmEvent.from_dict(raw_event("$1", "m.room.encrypted", content=content)), BadEvent | UnknownBadEvent
    )
