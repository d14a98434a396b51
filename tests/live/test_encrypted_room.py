"""The bot in an encrypted room of a real Synapse, the people there on encrypting clients of another make."""

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
