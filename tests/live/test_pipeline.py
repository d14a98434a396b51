"""The whole bot on a real homeserver: from what people do in their clients to what they read there."""

import asyncio
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import aiohttp
import pytest

from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.conftest import MakePerson
from tests.live.people import PASSWORD, Person
from tests.live.postgres import new_database
from tests.live.saying import clocks_heard

pytestmark = pytest.mark.live

HAND = "\N{RAISED HAND}"


@pytest.fixture
async def bot(server: Homeserver, tmp_path: Path) -> BotProcess:
    """A bot that nobody has invited yet."""
    user_id = await server.register(f"bot-{tmp_path.name.lower()[:40]}", PASSWORD, display_name="Platepace")
    return BotProcess(tmp_path / "bot", user_id)


async def said_by(bot: BotProcess, reader: Person, room_id: str) -> list[dict[str, Any]]:
    """What the bot has said in a room, the oldest first."""
    return [event for event in await reader.read(room_id) if event["sender"] == bot.user_id]


async def heard_by(bot: BotProcess, reader: Person, room_id: str) -> list[str]:
    """The clocks that the bot has answered for with a clean run, in order, however often."""
    bodies = [event["content"].get("body", "") for event in await said_by(bot, reader, room_id)]
    return clocks_heard(bodies)


async def until_said(bot: BotProcess, reader: Person, room_id: str, words: str) -> dict[str, Any]:
    """The first thing that the bot says with these words in it."""
    async with asyncio.timeout(30):
        while True:
            for event in await said_by(bot, reader, room_id):
                if words in event["content"].get("body", ""):
                    return event
            await asyncio.sleep(0.1)


async def open_kitchen(bot: BotProcess, chef: Person, cooks: Sequence[Person]) -> str:
    """A room in which Rope coil is live and the cooks are counted in; the bot has to be running."""
    room_id = await chef.open_room(invite=[bot.user_id, *(cook.user_id for cook in cooks)])
    for cook in cooks:
        await cook.join(room_id)
    await until_said(bot, chef, room_id, "I am Platepace")
    await chef.say(room_id, "!post now 6")
    await until_said(bot, chef, room_id, "Rope coil (drill 6)")
    for cook in cooks:
        await cook.say(room_id, "!join")
        await until_said(bot, chef, room_id, f"Counted in, {cook.name}")
    return room_id


async def test_what_is_sent_while_the_bot_is_down_is_answered_once_and_in_order(
    server: Homeserver, person: MakePerson, bot: BotProcess
) -> None:
    """Twenty-five runs of five cooks wait for it; each is answered for once, also after another restart."""
    chef, cooks = await person("Ime"), [await person(name) for name in ("Noor", "Lio", "Kwabena", "Petra", "Anselm")]
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, cooks)
    clocks = [f"3:{second:02d}" for second in range(25)]
    sent = [await cooks[n % 5].say(room_id, f"{clock} 8/8") for n, clock in enumerate(clocks)]
    for _ in range(2):
        async with bot.running():
            await bot.until_settled(*sent)
        assert await heard_by(bot, chef, room_id) == clocks
    answers = [event for event in await said_by(bot, chef, room_id) if "Heard." in event["content"].get("body", "")]
    assert len(answers) < len(clocks)


async def test_an_edit_a_hand_and_a_deletion_are_followed(
    server: Homeserver, person: MakePerson, bot: BotProcess
) -> None:
    """A witnessed run is a first mark; edited it is worked out again; deleted it is void and its best is gone."""
    chef, noor, bastian = await person("Ime"), await person("Noor"), await person("Bastian")
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, [noor, bastian])
        run = await noor.say(room_id, "3:20 8/8")
        answer = await until_said(bot, noor, room_id, "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled.")
        card = await until_said(bot, noor, room_id, "Rope coil (drill 6)")
        assert answer["content"]["m.relates_to"]["event_id"] == card["event_id"]
        assert answer["content"]["msgtype"] == "m.notice"
        assert card["content"]["msgtype"] == "m.image"

        hand = await bastian.react(room_id, run, HAND)
        await until_said(bot, noor, room_id, "First mark for Noor on Rope coil: 3:20.")
        await bastian.delete(room_id, hand)
        await until_said(bot, noor, room_id, "Noor has no witnessed best")
        await noor.edit(room_id, run, "3:20 7/8 fell")
        await until_said(bot, noor, room_id, "Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)")
        deletion = await noor.delete(room_id, run)
        await bot.until_settled(deletion)
    assert bot.ask("SELECT status FROM run WHERE event_id = ?", run) == [("void",)]


async def test_own_numbers_come_in_a_private_room_and_talk_gets_silence(
    server: Homeserver, person: MakePerson, bot: BotProcess
) -> None:
    """``!best`` in the kitchen is answered in a room of two; ordinary talk is not answered and not kept."""
    chef, noor = await person("Ime"), await person("Noor")
    bot.configure(server, chef.user_id)
    async with bot.running():
        room_id = await open_kitchen(bot, chef, [noor])
        run = await noor.say(room_id, "3:20 8/8")
        await bot.until_settled(run)
        before = len(await said_by(bot, noor, room_id))
        talk = [await noor.say(room_id, text) for text in ("table 12?", "86 the trout", "why", "next", "hold on")]
        asked = await noor.say(room_id, "!best")
        await bot.until_settled(*talk, asked)
        assert len(await said_by(bot, noor, room_id)) == before
        ((private,),) = bot.ask("SELECT room_id FROM private_room WHERE user_id = ?", noor.user_id)
        await noor.join(str(private))
        await until_said(bot, noor, str(private), "Rope coil: first mark 3:20")
        members = await noor.ask("GET", f"rooms/{private}/joined_members")
        assert set(members["joined"]) == {noor.user_id, bot.user_id}
    held = "".join(str(row) for table in ("inbox", "outbox", "question") for row in bot.ask(f"SELECT * FROM {table}"))  # noqa: S608 - fixed names
    assert not any(word in held for word in ("trout", "table 12", "hold on"))


async def test_the_week_runs_on_postgresql_too(server: Homeserver, person: MakePerson, bot: BotProcess) -> None:
    """The same bot with another URL: a drill is posted, runs are answered for, also those sent while it was down."""
    chef, noor = await person("Ime"), await person("Noor")
    bot.configure(server, chef.user_id, database_url=new_database())
    async with bot.running():
        room_id = await open_kitchen(bot, chef, [noor])
        await noor.say(room_id, "3:20 8/8")
        await until_said(bot, noor, room_id, "Heard. 3:20")
    await noor.say(room_id, "3:19 8/8")
    async with bot.running():
        await until_said(bot, noor, room_id, "Heard. 3:19")
    assert await heard_by(bot, noor, room_id) == ["3:20", "3:19"]


async def test_the_process_ends_in_good_order(server: Homeserver, person: MakePerson, bot: BotProcess) -> None:
    """Asked to end, it ends with 0; signed out by an admin with no way back in, it says so and ends with 77."""
    chef = await person("Ime")
    bot.configure(server, chef.user_id)
    async with bot.running() as process:
        await bot.until("SELECT 1 FROM sync_token")
    assert process.returncode == 0
    (bot.directory / "password").write_text("changed", "utf-8")
    ((token,),) = bot.ask("SELECT token FROM session")
    async with aiohttp.ClientSession() as session:
        headers = {"Authorization": f"Bearer {token}"}
        await session.post(f"{server.url}/_matrix/client/v3/logout", headers=headers)
    process = await bot.start()
    assert await process.wait() == 77
    assert "Traceback" not in bot.log()
