"""The machine does not share nio's defects; each is listed in ``test_nio_crypto_contract.py``."""

from typing import Any

from nio.crypto import OutboundGroupSession

from bot.matrix.crypto.machine import Machine
from tests.fakes import KITCHEN_ROOM, NOOR
from tests.matrix.fakes import BOT, raw_event
from tests.matrix.olm import a_forwarded_key, a_machine, introduce, meet, room_key, whisper


def test_a_malformed_device_spoils_no_other() -> None:
    """Neither its keys nor its one-time key."""
    with a_machine(BOT, "KITCHEN", Machine) as bot, a_machine(NOOR, "NOOR") as noor, a_machine(NOOR, "BAD") as bad:
        sound, broken = noor.share_keys(), bad.share_keys()
        no_keys = dict.fromkeys(("ed25519:WORSE", "curve25519:WORSE"), "no key")
        worse = broken["device_keys"] | {"device_id": "WORSE", "keys": no_keys}
        keys = {"WORSE": worse, "NOOR": sound["device_keys"], "BAD": broken["device_keys"]}
        bot.learn_devices({NOOR: keys})
        assert {device.id for device in bot.device_store.active_user_devices(NOOR)} == {"NOOR", "BAD"}
        claimed = {"BAD": {"signed_curve25519:A": "no key"}, "NOOR": dict([sound["one_time_keys"].popitem()])}
        bot.begin_sessions({NOOR: claimed})
        assert bot.get_missing_sessions([NOOR]) == {NOOR: ["BAD"]}


def test_a_message_on_a_key_that_is_gone_has_a_new_session_made() -> None:
    """The sender could not know; with the new session they can send again."""
    with (
        a_machine(BOT, "KITCHEN") as bot,
        a_machine(BOT, "KITCHEN", Machine) as forgetful,
        a_machine(NOOR, "NOOR") as noor,
    ):
        forgetful.account = type(bot.account).from_pickle(bot.account.pickle("x"), "x")
        device = introduce(forgetful, noor)
        assert not forgetful.hear(whisper(noor, meet(noor, bot), "m.dummy", {}))
        assert forgetful.wedged_devices == [device]


def test_keys_are_saved_before_they_are_published() -> None:
    """And the fallback among them is signed as such. Source: T, specification, POST /keys/upload."""
    with a_machine(BOT, "KITCHEN", Machine) as bot:
        keys = bot.keys_to_publish(0, fallback=True)
        again = bot.store.load_account()
        assert len(again.one_time_keys["curve25519"]) == len(keys["one_time_keys"]) == 50
        ((name, fallback),) = keys["fallback_keys"].items()
        assert name.startswith("signed_curve25519:")
        assert fallback["fallback"] is True
        assert bot.verify_json(fallback, bot.account.identity_keys["ed25519"], BOT, "KITCHEN")
        assert [key.to_base64() for key in again._account.fallback_key.values()] == [fallback["key"]]


def test_the_room_key_that_reaches_further_back_is_kept() -> None:
    """In whichever order the two come."""
    for order in ((0, 1), (1, 0)):
        with a_machine(BOT, "KITCHEN", Machine) as bot, a_machine(NOOR, "NOOR") as noor:
            session, device, told = OutboundGroupSession(), meet(noor, bot), []
            session.mark_as_shared()
            for _ in order:
                told.append(whisper(noor, device, "m.room_key", room_key(session)))
                session.encrypt("a message")
            assert all(bot.hear(told[place]) for place in order)
            sender_key = noor.account.identity_keys["curve25519"]
            assert bot.inbound_group_store.get(KITCHEN_ROOM, sender_key, session.id).first_known_index == 0


def test_a_key_that_was_asked_for_is_taken_from_its_maker_alone() -> None:
    """Who passes on what somebody else made could have made it up."""
    with a_machine(BOT, "KITCHEN", Machine) as bot, a_machine(NOOR, "NOOR") as noor, a_machine(NOOR, "PHONE") as phone:
        phone_of_bot = meet(phone, bot)
        told = a_forwarded_key(bot, noor)
        plain: Any = noor.outbound_group_sessions[KITCHEN_ROOM]
        key = noor.account.identity_keys["curve25519"]
        passed_on = {
            "algorithm": "m.megolm.v1.aes-sha2",
            "forwarding_curve25519_key_chain": [],
            "room_id": KITCHEN_ROOM,
            "sender_claimed_ed25519_key": noor.account.identity_keys["ed25519"],
            "sender_key": key,
            "session_id": plain.id,
            "session_key": noor.inbound_group_store.get(KITCHEN_ROOM, key, plain.id).export_session(0),
        }
        assert not bot.hear(whisper(phone, phone_of_bot, "m.forwarded_room_key", passed_on))
        assert bot.hear(told)


def test_an_event_need_not_name_its_device() -> None:
    """The session's id is enough."""
    with a_machine(BOT, "KITCHEN", Machine) as bot, a_machine(NOOR, "NOOR") as noor:
        device = meet(noor, bot)
        noor.create_outbound_group_session(KITCHEN_ROOM)
        session = noor.outbound_group_sessions[KITCHEN_ROOM]
        bot.hear(whisper(noor, device, "m.room_key", room_key(session)))
        session.mark_as_shared()
        content = noor.group_encrypt(KITCHEN_ROOM, {"type": "m.room.message", "content": {"body": "8:05"}})
        bare = {name: content[name] for name in ("algorithm", "ciphertext", "session_id")}
        said = bot.unseal(raw_event("$1", "m.room.encrypted", content=bare), KITCHEN_ROOM)
        assert said is not None
        assert (said["content"]["body"], said["sender"], said["event_id"]) == ("8:05", NOOR, "$1")
        for ciphertext in ("", "AAAA", "\N{SNOWMAN}"):
            assert (
                bot.unseal(raw_event("$2", "m.room.encrypted", content=bare | {"ciphertext": ciphertext}), KITCHEN_ROOM)
                is None
            )
