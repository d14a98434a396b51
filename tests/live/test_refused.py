"""What a real Synapse refuses, limits or calls a duplicate loses no message, repeats none and blocks no lane."""

import asyncio
from pathlib import Path
from typing import Any

import aiohttp
import pytest

from bot.homeserver import private_homeserver
from bot.matrix.client import Account, Client
from bot.matrix.faults import Refused
from bot.matrix.outbox import Sender
from bot.services.ports.messages import EventRef
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import Say, new_sender, texts
from tests.matrix.fakes import Reports, Rests, a_world

pytestmark = pytest.mark.live


async def test_a_reaction_put_on_twice_is_there_once_and_both_rows_are_done(
    sender: Sender, say: Say, chef: Person, kitchen: str, storage: SqlStorage, dead: list[str]
) -> None:
    """Under another transaction id, as for a second cause: the server's refusal is a formality."""
    said = await chef.say(kitchen, "3:02 8/8")
    refs = [await say(kitchen, "", style="reaction", target=EventRef(said), key="📝") for _ in range(2)]
    await sender.flush()
    (reaction,) = await chef.read(kitchen, "m.reaction")
    async with storage.begin() as work:
        assert [await work.outbox.event_of(ref) for ref in refs] == [reaction["event_id"]] * 2
    assert dead == []


async def test_where_the_bot_may_not_pin_it_posts_all_the_same(
    sender: Sender, say: Say, client: Client, chef: Person, reports: Reports, dead: list[str]
) -> None:
    """In a room as clients make them, only moderators pin."""
    room_id = await chef.open_room(invite=[client.user_id])
    await client.join(room_id)
    root = await say(room_id, "Drill of the week", style="text")
    await say(room_id, "", style="pin", target=root)
    await say(room_id, "Heard.")
    await sender.flush()
    assert texts(await chef.read(room_id)) == ["Drill of the week", "Heard."]
    assert (len(reports.told), dead) == (1, [])


async def test_where_the_server_allows_no_thread_it_is_said_without(
    sender: Sender, say: Say, chef: Person, kitchen: str, reports: Reports
) -> None:
    """Source: T, specification, "Validation of m.thread relationships": 400 where the root has a relation itself."""
    said = await chef.say(kitchen, "3:02 8/8")
    edit = await chef.edit(kitchen, said, "3:02 7/8")
    await say(kitchen, "Heard.", thread=EventRef(edit))
    await sender.flush()
    last = (await chef.read(kitchen))[-1]
    assert (last["content"]["body"], "m.relates_to" in last["content"]) == ("Heard.", False)
    assert len(reports.told) == 1


async def test_the_server_refuses_for_good_what_is_too_large_or_forbidden(
    sender: Sender, say: Say, client: Client, chef: Person, kitchen: str, dead: list[str]
) -> None:
    """65 kB at the wire; and a room that the bot is not in."""
    with pytest.raises(Refused) as too_large:
        await client.send(kitchen, "m.room.message", {"msgtype": "m.text", "body": "x" * 66_000}, "t1")
    assert (too_large.value.status, too_large.value.errcode) == (413, "M_TOO_LARGE")
    await say(await chef.open_room(), "Nobody hears this.")
    await say(kitchen, "Heard.")
    await sender.flush()
    assert texts(await chef.read(kitchen)) == ["Heard."]
    assert [problem.split()[:2] for problem in dead] == [["403", "M_FORBIDDEN"]]


class RealRests(Rests):
    """Rests that take their time."""

    async def __call__(self, seconds: float) -> None:
        """Sleep, and let the clock know."""
        await super().__call__(seconds)
        await asyncio.sleep(seconds)


async def test_a_limited_bot_says_everything_once_and_in_order(
    storage: SqlStorage, say: Say, clock: FixedClock, reports: Reports, dead: list[str], tmp_path: Path
) -> None:
    """Synapse's own limits stop it after ten messages; it leaves the server alone as asked and goes on."""
    rests = RealRests(clock)
    async with private_homeserver(tmp_path, rate_limits=True) as server, aiohttp.ClientSession() as session:
        chef = await sign_in(server, session, await server.register("ime", PASSWORD), "Ime")
        bot_id = await server.register("platepace", PASSWORD)
        client = Client(server.url, Account(bot_id, password=PASSWORD))
        await client.sign_in()
        room_id = await chef.open_room(invite=[bot_id])
        await client.join(room_id)
        for number in range(12):
            await say(room_id, f"{number}", style="text")
        task = asyncio.create_task(new_sender(storage, client, a_world(rests), reports, dead).run())
        said: list[dict[str, Any]] = []
        async with asyncio.timeout(60):
            while len(said) < 12:
                await asyncio.sleep(1)
                said = await chef.read(room_id)
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)
        await client.close()
    assert texts(said) == [f"{number}" for number in range(12)]
    assert dead == []
    assert max(rests.taken) > 1.0
