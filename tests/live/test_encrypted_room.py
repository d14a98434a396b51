"""The bot in an encrypted room of a real Synapse, the people there on encrypting clients of another make."""

import signal
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack
from pathlib import Path

import pytest

from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.conftest import MakePerson
from tests.live.encrypted import EncryptedPerson, encrypting
from tests.live.people import PASSWORD

pytestmark = pytest.mark.live

HAND = "\N{RAISED HAND}"


@pytest.fixture
async def bot(server: Homeserver, tmp_path: Path) -> BotProcess:
    """A bot that nobody has invited yet."""
    user_id = await server.register(f"bot-{tmp_path.name.lower()[:40]}", PASSWORD, display_name="Platepace")
    return BotProcess(tmp_path / "bot", user_id)


@pytest.fixture
async def people(
    server: Homeserver, person: MakePerson, tmp_path: Path
) -> AsyncIterator[tuple[EncryptedPerson, EncryptedPerson]]:
    """The chef, and Noor, who gives keys to signed devices alone."""
    async with AsyncExitStack() as stack:
        chef = await stack.enter_async_context(encrypting(server, await person("Ime"), tmp_path / "ime"))
        noor = await stack.enter_async_context(encrypting(server, await person("Noor"), tmp_path / "noor", wary=True))
        yield chef, noor


async def open_kitchen(bot: BotProcess, chef: EncryptedPerson, noor: EncryptedPerson) -> str:
    """An encrypted room in which Rope coil is live and Noor is counted in; the bot has to be running."""
    room_id = await chef.open_room(bot.user_id, noor.user_id)
    await noor.plain.join(room_id)
    await chef.until_heard(room_id, "I am Platepace", bot.user_id)
    await chef.say(room_id, "!post now 6")
    await noor.until_heard(room_id, "Rope coil (drill 6)", bot.user_id)
    await noor.say(room_id, "!join")
    await noor.until_heard(room_id, "Counted in, Noor", bot.user_id)
    return room_id


async def test_a_week_in_an_encrypted_room(
    server: Homeserver, bot: BotProcess, people: tuple[EncryptedPerson, EncryptedPerson]
) -> None:
    """Run, hand, edit and deletion are followed, with a client that talks to signed devices alone; nothing is open.

    Source: R, acceptance 21; the numbers are those of the unencrypted room in ``test_pipeline.py``.
    """
    chef, noor = people
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, noor)
        run = await noor.say(room_id, "3:20 8/8")
        await noor.until_heard(room_id, "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled.", bot.user_id)
        await chef.plain.react(room_id, run, HAND)
        await noor.until_heard(room_id, "First mark for Noor on Rope coil: 3:20.", bot.user_id)
        await noor.edit(room_id, run, "3:20 7/8 fell")
        await noor.until_heard(room_id, "Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)", bot.user_id)
        deletion = await noor.plain.delete(room_id, run)
        await bot.until_settled(deletion)
    assert bot.ask("SELECT status FROM run WHERE event_id = ?", run) == [("void",)]
    in_the_open = [e for e in await noor.plain.read(room_id) if e["sender"] == bot.user_id]
    assert in_the_open == []


async def keys_of(bot: BotProcess, asker: EncryptedPerson) -> dict[str, dict[str, str]]:
    """The bot's devices as others see them, each with its keys."""
    told = await asker.plain.ask("POST", "keys/query", {"device_keys": {bot.user_id: []}})
    return {device: keys["keys"] for device, keys in told["device_keys"][bot.user_id].items()}


async def use_up_one_time_keys(bot: BotProcess, device: str, claimer: EncryptedPerson) -> None:
    """Claim the bot's keys until only the fallback is left, which the server hands out for ever."""
    wanted = {"one_time_keys": {bot.user_id: {device: "signed_curve25519"}}}
    for _ in range(200):
        told = await claimer.plain.ask("POST", "keys/claim", wanted)
        (key,) = told["one_time_keys"][bot.user_id][device].values()
        if key.get("fallback"):
            return
    raise AssertionError("there are more than 200 one-time keys")


async def poison(bot: BotProcess, device: str, sender: EncryptedPerson) -> None:
    """Send the device what no client can read."""
    own_key = (await keys_of(bot, sender))[device][f"curve25519:{device}"]
    for kind, body in ((0, "AAAA"), (1, "AAAA"), (0, ""), (7, "x")):
        ciphertext = {own_key: {"type": kind, "body": body}}
        content = {"algorithm": "m.olm.v1.curve25519-aes-sha2", "sender_key": "A" * 43, "ciphertext": ciphertext}
        messages = {"messages": {bot.user_id: {device: content}}}
        await sender.plain.ask("PUT", f"sendToDevice/m.room.encrypted/p{kind}{body}x", messages)


async def test_a_restart_keeps_the_device_and_what_was_sent_meanwhile(
    server: Homeserver,
    person: MakePerson,
    bot: BotProcess,
    people: tuple[EncryptedPerson, EncryptedPerson],
    tmp_path: Path,
) -> None:
    """One-time keys used up, poison before the keys, a person whose device nobody has met; private rooms sealed too."""
    chef, noor = people
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, noor)
        (device,) = keys = await keys_of(bot, noor)
    await use_up_one_time_keys(bot, device, noor)
    await poison(bot, device, noor)
    sent = [await noor.say(room_id, "3:20 8/8"), await noor.say(room_id, "3:10 8/8")]
    async with encrypting(server, await person("Lio"), tmp_path / "lio", wary=True) as lio:
        await chef.plain.invite(room_id, lio.user_id)
        await lio.plain.join(room_id)
        sent.append(await lio.say(room_id, "!join"))
        async with bot.running():
            await bot.until_settled(*sent)
            await lio.until_heard(room_id, "Counted in, Lio", bot.user_id)
            await noor.until_heard(room_id, "Heard. 3:10", bot.user_id)
            assert await keys_of(bot, noor) == keys
            await bot.until_settled(await noor.say(room_id, "!best"))
            ((private,),) = bot.ask("SELECT room_id FROM private_room WHERE user_id = ?", noor.user_id)
            await noor.plain.join(str(private))
            await noor.until_heard(str(private), "Rope coil", bot.user_id)
    heard = [event.body for event in noor.heard_from(room_id, bot.user_id) if "Heard." in event.body]
    assert [clock for body in heard for clock in ("3:20", "3:10") if f"Heard. {clock}" in body] == ["3:20", "3:10"]
    assert "Traceback" not in bot.log()


STEPS = ("after inbox.take", "commit inbox.take", "commit outbox.lease", "before client.send", "after client.send")


async def test_kills_lose_and_double_nothing(
    server: Homeserver, bot: BotProcess, people: tuple[EncryptedPerson, EncryptedPerson]
) -> None:
    """Killed at each step between keys, inbox and outbox: every run is answered once and can be read.

    After a kill the message is sealed anew, with a new key, and goes out under the transaction id of the first.
    """
    chef, noor = people
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, noor)
    for number, step in enumerate(STEPS):
        run = await noor.say(room_id, f"3:{20 - number} 8/8")
        process = await bot.start(die_at=step)
        assert await process.wait() == -signal.SIGKILL
        async with bot.running():
            await bot.until_settled(run)
            await noor.until_heard(room_id, f"Heard. 3:{20 - number}", bot.user_id)
    heard = [event.body for event in noor.heard_from(room_id, bot.user_id)]
    assert [sum(f"Heard. 3:{20 - n}," in body for body in heard) for n in range(len(STEPS))] == [1] * len(STEPS)
    in_the_room = [e for e in await noor.plain.read(room_id, "m.room.encrypted") if e["sender"] == bot.user_id]
    assert len(in_the_room) == len(heard)
