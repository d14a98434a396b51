"""What the bot says in an encrypted room can be read by whom it should be, whatever fails on the way."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.matrix.faults import Refused
from bot.matrix.wire import DeviceLists
from bot.services.ports.messages import SendRefused, TryLater
from tests.fakes import IME, KITCHEN_ROOM, NOOR
from tests.matrix.fakes import BOT, raw_member
from tests.matrix.key_desk import KeyDesk, Talker, an_encrypted_room, sealed, talker

ENCRYPTION = "m.room.encryption"
CLAIM, SEND = "v3/keys/claim", "v3/sendToDevice/{}/{}"


def changed(bot: Talker, *users: str) -> None:
    """Tell the bot that these people's devices have changed."""
    bot.encryption._devices.changed(DeviceLists(changed=list(users)))


def came_or_went(bot: Talker, *members: str) -> None:
    """Tell the bot that somebody came or went; who is there now."""
    bot.desk.members[KITCHEN_ROOM] = list(members)
    bot.encryption.look_at(KITCHEN_ROOM, [raw_member("$m", NOOR)])


async def test_every_device_of_the_room_reads_what_is_said(tmp_path: Path) -> None:
    """One that comes later reads from then on, with the same key; the messages' relations stand open beside them."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        first = await bot.say("8:05")
        assert noor.hear()
        assert noor.reads(first) == "8:05"
        async with talker(desk, tmp_path, NOOR, "PHONE") as phone:
            changed(bot, NOOR)
            second = await bot.say("8:06")
            assert phone.hear()
            assert (phone.reads(first), phone.reads(second), noor.reads(second)) == (None, "8:06", "8:06")
        assert first.session_id == second.session_id
        relation = {"rel_type": "m.thread", "event_id": "$root"}
        content = {"body": "b", "m.relates_to": relation, "platepace.txn": "t", "m.mentions": {}}
        _, told = await bot.encryption.seal(KITCHEN_ROOM, "m.room.message", content)
        assert (told["m.relates_to"], told["platepace.txn"], "m.mentions" in told) == (relation, "t", False)


async def test_who_has_gone_reads_on_no_longer(tmp_path: Path) -> None:
    """A new key is made; a device that is signed out is gone too."""
    desk = an_encrypted_room(BOT, IME, NOOR)
    async with (
        talker(desk, tmp_path, BOT) as bot,
        talker(desk, tmp_path, IME) as ime,
        talker(desk, tmp_path, NOOR) as noor,
        talker(desk, tmp_path, NOOR, "PHONE") as phone,
    ):
        await bot.say("to all")
        for person in (ime, noor, phone):
            assert person.hear()
        del desk.devices[NOOR]["PHONE"]
        changed(bot, NOOR)
        told = await bot.say("without the phone")
        noor.hear()
        phone.hear()
        assert (noor.reads(told), phone.reads(told)) == ("without the phone", None)
        came_or_went(bot, BOT, IME)
        told = await bot.say("without Noor")
        ime.hear()
        noor.hear()
        assert (ime.reads(told), noor.reads(told)) == ("without Noor", None)


async def test_a_failing_claim_is_waited_for_twice_and_then_done_without(tmp_path: Path) -> None:
    """The message goes out, and the device that could not be reached has the key ten minutes later."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        desk.faults[CLAIM].extend([TryLater("down"), Refused("no", 403, "M_FORBIDDEN"), TryLater("down")])
        for _ in range(2):
            with pytest.raises(TryLater):
                await bot.say("8:05")
        missed = await bot.say("8:05")
        asked = desk.asked.count(CLAIM)
        await bot.say("8:06")
        assert desk.asked.count(CLAIM) == asked
        bot.clock.advance(timedelta(minutes=10).total_seconds())
        read = await bot.say("8:07")
        noor.hear()
        assert (noor.reads(missed), noor.reads(read)) == (None, "8:07")


async def test_a_key_that_could_not_be_handed_on_is_handed_on_later(tmp_path: Path) -> None:
    """After a lost connection at the retry of the same message; after a refusal when the device has rested."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        desk.faults[SEND].append(TryLater("reset"))
        with pytest.raises(TryLater):
            await bot.say("8:05")
        told = await bot.say("8:05")
        noor.hear()
        assert noor.reads(told) == "8:05"
        async with talker(desk, tmp_path, NOOR, "PHONE") as phone:
            changed(bot, NOOR)
            desk.faults[SEND].append(Refused("no", 403, "M_FORBIDDEN"))
            await bot.say("8:06")
            bot.clock.advance(timedelta(minutes=10).total_seconds())
            told = await bot.say("8:07")
            phone.hear()
            assert phone.reads(told) == "8:07"


async def test_who_has_missed_the_key_may_ask_for_it(tmp_path: Path) -> None:
    """It comes with the next message."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        missed = await bot.say("8:05")
        desk.waiting.clear()
        assert noor.reads(missed) is None
        noor.encryption.miss(missed)
        noor.encryption.miss(missed)
        await noor.encryption.tend()
        assert [event["type"] for event in desk.waiting[BOT, BOT]] == ["m.room_key_request"]
        bot.hear()
        told = await bot.say("8:06")
        noor.hear()
        assert noor.reads(told) == "8:06"


POISON = [
    None,
    "text",
    {"type": "m.room.encrypted"},
    {"type": "m.room.encrypted", "sender": NOOR, "content": {}},
    {"type": "m.room.encrypted", "sender": 7, "content": {"algorithm": [], "sender_key": {}}},
    {"type": "m.room_key_request", "sender": NOOR, "content": {"action": "request", "body": 1}},
    {"type": "m.key.verification.start", "sender": NOOR, "content": {"method": "m.sas.v1"}},
    {"type": "m.room_key", "sender": NOOR, "content": {"session_key": "in the open"}},
]


async def test_poison_does_not_keep_a_key_from_coming(tmp_path: Path) -> None:
    """Whatever stands before it in the same sync."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        own_key = bot.encryption._machine.account.identity_keys["curve25519"]
        garbage = [
            {
                "type": "m.room.encrypted",
                "sender": NOOR,
                "content": {
                    "algorithm": "m.olm.v1.curve25519-aes-sha2",
                    "sender_key": "A" * 43,
                    "ciphertext": {own_key: {"type": kind, "body": body}},
                },
            }
            for kind in (0, 1, 2)
            for body in ("AAAA", "not base64 \N{SNOWMAN}", "")
        ]
        told = await noor.say("8:05 11/12")
        desk.waiting[BOT, BOT][:0] = [*POISON, *garbage]
        assert bot.hear()
        assert bot.reads(told) == "8:05 11/12"


async def test_keys_that_are_used_up_are_made_good(tmp_path: Path) -> None:
    """Meanwhile the fallback key serves; it too is replaced once used."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        desk.one_time_keys[BOT, BOT].clear()
        first = desk.fallback_keys[BOT, BOT]
        told = await noor.say("8:05 11/12")
        assert desk.used_fallbacks == {(BOT, BOT)}
        assert bot.hear()
        assert bot.reads(told) == "8:05 11/12"
        await bot.encryption.tend()
        assert len(desk.one_time_keys[BOT, BOT]) == 50
        assert desk.fallback_keys[BOT, BOT] != first


async def test_a_device_that_the_server_forgot_is_published_and_signed_anew(tmp_path: Path) -> None:
    """As after an admin has signed it out and the password has brought it back."""
    desk = an_encrypted_room(BOT)
    async with talker(desk, tmp_path, BOT) as bot:
        before = desk.devices[BOT].pop(BOT)
        desk.one_time_keys.clear()
        bot.hear()
        await bot.encryption.tend()
        assert desk.devices[BOT][BOT]["keys"] == before["keys"]
        assert bot.encryption.chain.holds


async def test_sessions_outlive_a_restart(tmp_path: Path) -> None:
    """What was sent while the bot was off is read, on the session begun before, and the device is the same."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, NOOR) as noor:
        async with talker(desk, tmp_path, BOT) as bot:
            keys = desk.devices[BOT][BOT]["keys"]
            first = await noor.say("8:05")
            bot.hear()
        desk.states[KITCHEN_ROOM, ENCRYPTION] = {"algorithm": "m.megolm.v1.aes-sha2", "rotation_period_msgs": 1}
        noor.encryption.look_at(KITCHEN_ROOM, [{"type": ENCRYPTION, "state_key": ""}])
        noor.encryption._machine.outbound_group_sessions.clear()
        second = await noor.say("8:06")
        async with talker(desk, tmp_path, BOT) as bot:
            assert bot.hear()
            assert (bot.reads(first), bot.reads(second)) == ("8:05", "8:06")
            assert desk.devices[BOT][BOT]["keys"] == keys
            assert (await noor.say("8:07")).session_id != second.session_id


async def test_a_room_is_never_taken_for_open_again(tmp_path: Path) -> None:
    """Not when the server says so, not after a restart; nor is one with an unknown algorithm spoken in."""
    desk = an_encrypted_room(BOT)
    async with talker(desk, tmp_path, BOT) as bot:
        bot.encryption.look_at(KITCHEN_ROOM, [{"type": ENCRYPTION, "state_key": "", "content": {}}])
    desk.states.clear()
    async with talker(desk, tmp_path, BOT) as bot:
        assert (await bot.encryption.seal(KITCHEN_ROOM, "m.room.message", {}))[0] == "m.room.encrypted"
        assert (await bot.encryption.seal(KITCHEN_ROOM, "m.reaction", {}))[0] == "m.reaction"
        assert (await bot.encryption.seal("!open:x", "m.room.message", {}))[0] == "m.room.message"
        desk.states["!odd:x", ENCRYPTION] = {"algorithm": "m.of_tomorrow"}
        with pytest.raises(SendRefused, match=r"m\.of_tomorrow"):
            await bot.encryption.seal("!odd:x", "m.room.message", {})


async def test_a_room_that_becomes_encrypted_is_noticed(tmp_path: Path) -> None:
    """From one message to the next."""
    desk = KeyDesk(members={KITCHEN_ROOM: [BOT]})
    async with talker(desk, tmp_path, BOT) as bot:
        assert (await bot.encryption.seal(KITCHEN_ROOM, "m.room.message", {}))[0] == "m.room.message"
        desk.states[KITCHEN_ROOM, ENCRYPTION] = {"algorithm": "m.megolm.v1.aes-sha2"}
        bot.encryption.look_at(KITCHEN_ROOM, [{"type": ENCRYPTION, "state_key": ""}])
        assert (await bot.encryption.seal(KITCHEN_ROOM, "m.room.message", {}))[0] == "m.room.encrypted"


async def test_unsigned_devices_are_left_out_where_the_operator_says_so(tmp_path: Path) -> None:
    """The device that starts last makes the account's keys anew and signs itself alone; the other is unsigned now."""
    desk = an_encrypted_room(BOT, NOOR)
    async with (
        talker(desk, tmp_path, BOT, withhold_from_unsigned=True) as bot,
        talker(desk, tmp_path, NOOR) as noor,
        talker(desk, tmp_path, NOOR, "PHONE") as phone,
    ):
        told = await bot.say("8:05")
        noor.hear()
        phone.hear()
        assert (noor.reads(told), phone.reads(told)) == (None, "8:05")


async def test_a_message_under_somebody_elses_name_is_no_message(tmp_path: Path) -> None:
    """A homeserver can put any sender on an event, but not make the key theirs. Source: T, specification, Megolm."""
    desk = an_encrypted_room(BOT, IME, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        told = await noor.say("8:05 11/12")
        bot.hear()
        await bot.say("so that it knows the devices")
        assert bot.encryption.unseal(sealed("$forged", IME, told.raw["content"])) == {}  # type: ignore[arg-type]  # a dict


async def test_a_message_may_not_come_twice(tmp_path: Path) -> None:
    """The same words in another event are a replay; the same event again, as from the room's past, is itself."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        told = await noor.say("8:05 11/12")
        bot.hear()
        replay = sealed("$replay", NOOR, told.raw["content"])  # type: ignore[arg-type]  # a dict
        assert [bot.reads(event) for event in (told, told, replay)] == ["8:05 11/12", "8:05 11/12", None]


async def test_only_messages_and_reactions_come_out_of_an_envelope(tmp_path: Path) -> None:
    """A room's state is never read from what only members could write."""
    desk = an_encrypted_room(BOT, NOOR)
    async with talker(desk, tmp_path, BOT) as bot, talker(desk, tmp_path, NOOR) as noor:
        _, content = await noor.encryption.seal(KITCHEN_ROOM, "m.room.power_levels", {"users": {NOOR: 100}})
        bot.hear()
        assert bot.encryption.unseal(sealed("$1", NOOR, dict(content))) == {}
