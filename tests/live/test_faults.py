"""The homeserver, or what stands before it, misbehaves: nothing is lost, said twice or stormed.

The bot is a process of its own; between it and a real Synapse stands the tests' own proxy. Each kind of fault is one of
those that trusted systems promise to survive; the answers' shapes are of the Matrix specification (T, client-server
API, "Standard error response", "Soft logout", "Account locking").
"""

import asyncio
import time
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

import aiohttp
import pytest
import pytest_asyncio

from bot.domain.pace import clock_text
from bot.errors import NO_DATABASE
from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from bot.services.ports.messages import TryLater
from tests.live.bot_process import BotProcess
from tests.live.fault_proxy import (
    ANYTHING,
    SEND,
    SENDING_ANYTHING,
    SYNC,
    Answer,
    Fault,
    FaultProxy,
    fault_proxy,
    late,
    page_502,
    refusal,
    reset_in_mid_answer,
    unheard,
)
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import clocks_heard
from tests.live.whole_bot import at_work

pytestmark = [pytest.mark.live, pytest.mark.asyncio(loop_scope="session")]

SOFT = {"errcode": "M_UNKNOWN_TOKEN", "error": "Soft logged out", "soft_logout": True}
HARD = {"errcode": "M_UNKNOWN_TOKEN", "error": "Unrecognised access token"}
LOCKED = {"errcode": "M_USER_LOCKED", "error": "This account has been locked", "soft_logout": True}
A_SECOND = {"Retry-After": "1"}

FAULTS: dict[str, tuple[str, Answer, int]] = {
    "429 by header alone, sending": (SEND, refusal(429, None, A_SECOND), 1),
    "429 by header alone, syncing": (SYNC, refusal(429, None, A_SECOND), 1),
    "a proxy's page, sending": (SEND, page_502, 1),
    "reset in mid-answer, syncing": (SYNC, reset_in_mid_answer, 1),
    "done and never heard of, sending": (SEND, unheard, 2),
    "late, sending": (SEND, late(1.5), 1),
    "signed out, sending": (SEND, refusal(401, HARD), 1),
    "softly signed out, syncing": (SYNC, refusal(401, SOFT), 1),
    "locked": (ANYTHING, refusal(401, LOCKED), 3),
}
MOST_REQUESTS = 40
"""For three runs with their answers, reactions, devices and retries; a loop without rests makes a thousand a second."""

BROKEN_FOR_S = 5.0
MOST_WHEN_BROKEN = 10
"""Whoever fails rests at least 1, 2 and 4 s: at most 3 requests of the loop and 3 of each of the room's two lanes."""


@dataclass
class Kitchen:
    """A room with a cook and the bot, which talks to its homeserver through the proxy."""

    bot: BotProcess
    noor: Person
    room_id: str
    proxy: FaultProxy
    clocks: Iterator[str] = field(default_factory=lambda: (clock_text(seconds) for seconds in count(170)))

    async def send_runs(self, runs: int) -> dict[str, str]:
        """Noor sends runs: by clock, the event."""
        return {
            clock: await self.noor.say(self.room_id, f"{clock} 8/8")
            for clock in [next(self.clocks) for _ in range(runs)]
        }

    async def check(self, sent: dict[str, str]) -> None:
        """Each of these runs is stored, answered and noted once, in order."""
        said = [
            e["content"].get("body", "") for e in await self.noor.read(self.room_id) if e["sender"] == self.bot.user_id
        ]
        answered = clocks_heard(said)
        assert [clock for clock in answered if clock in sent] == list(sent)
        reactions = await self.noor.read(self.room_id, "m.reaction")
        noted = [event["content"]["m.relates_to"]["event_id"] for event in reactions]
        for event_id in sent.values():
            assert noted.count(event_id) == 1
            assert self.bot.ask("SELECT count(*) FROM run WHERE event_id = ?", event_id) == [(1,)]


@pytest_asyncio.fixture(scope="module", loop_scope="session")
async def kitchen(server: Homeserver, tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Kitchen]:
    """A kitchen in which Rope coil is live and Noor is counted in; the bot is running."""
    async with aiohttp.ClientSession() as session, fault_proxy(server.url) as proxy:
        made = await open_kitchen(server, session, tmp_path_factory.mktemp("faults") / "bot", proxy)
        async with made.bot.running():
            await made.bot.until_settled(*(await made.send_runs(1)).values())
            yield made


async def open_kitchen(
    server: Homeserver, session: aiohttp.ClientSession, directory: Path, proxy: FaultProxy, *, encryption: bool = True
) -> Kitchen:
    """The kitchen, and the bot down."""
    names = [f"{name}-{directory.parent.name.lower()[:30]}" for name in ("bot", "ime", "noor")]
    bot_id, chef_id, noor_id = [await server.register(name, PASSWORD) for name in names]
    chef, noor = await sign_in(server, session, chef_id, "Ime"), await sign_in(server, session, noor_id, "Noor")
    room_id = await chef.open_room(invite=[bot_id, noor_id])
    await noor.join(room_id)
    bot = BotProcess(directory, bot_id)
    bot.configure(server, chef_id, through=proxy.url, encryption=encryption)
    async with at_work(bot):
        await bot.until("SELECT 1 FROM kitchen")
        await bot.until_settled(await chef.say(room_id, "!post now 6"), await noor.say(room_id, "!join"))
    return Kitchen(bot, noor, room_id, proxy)


@pytest.mark.parametrize("name", FAULTS)
async def test_a_fault_loses_and_repeats_nothing(kitchen: Kitchen, name: str) -> None:
    """Three runs come while it lasts; the fault is met, and the server asked no more often than need be."""
    where, answer, times = FAULTS[name]
    fault = Fault(where, answer, times)
    kitchen.proxy.faults[:] = [fault]
    since_s = time.monotonic()
    sent = await kitchen.send_runs(3)
    await kitchen.bot.until_settled(*sent.values())
    assert fault.met == times
    assert len(kitchen.proxy.asked_since(since_s)) <= MOST_REQUESTS
    await kitchen.check(sent)


async def test_a_server_that_stays_broken_is_left_alone(kitchen: Kitchen) -> None:
    """Though there is much to send the rests grow; when it works again all is caught up with."""
    kitchen.proxy.faults[:] = [Fault(SENDING_ANYTHING, page_502)]
    sent = await kitchen.send_runs(2)
    for event_id in sent.values():
        await kitchen.bot.until("SELECT 1 FROM run WHERE event_id = ?", event_id)
    kitchen.proxy.faults[:] = [Fault(ANYTHING, page_502)]
    since_s = time.monotonic()
    sent |= await kitchen.send_runs(1)  # ends the request for news that was made before
    await asyncio.sleep(BROKEN_FOR_S)
    assert len(kitchen.proxy.asked_since(since_s)) <= MOST_WHEN_BROKEN
    kitchen.proxy.faults.clear()
    await kitchen.bot.until_settled(*sent.values())
    await kitchen.check(sent)


async def test_what_is_too_long_is_nobodys_result(kitchen: Kitchen) -> None:
    """60 kB in one message are passed over, and the next line is answered."""
    kitchen.proxy.faults.clear()
    long = await kitchen.noor.say(kitchen.room_id, "3:02 8/8 " * 6_600)
    sent = await kitchen.send_runs(1)
    await kitchen.bot.until_settled(*sent.values())
    assert kitchen.bot.ask("SELECT count(*) FROM run WHERE event_id = ?", long) == [(0,)]
    await kitchen.check(sent)


async def test_an_answer_later_than_the_bots_patience_is_no_second_message(server: Homeserver) -> None:
    """The homeserver has the message; asked again under the same transaction id, it names the same event."""
    user_id = await server.register("impatient", PASSWORD)
    async with fault_proxy(server.url) as proxy:
        client = Client(proxy.url, Account(user_id, password=PASSWORD), patience_s=1)
        await client.sign_in()
        room_id = await client.create_room({"preset": "private_chat"})
        proxy.faults.append(Fault(SEND, late(1.5), times=1))
        content = {"msgtype": "m.text", "body": "Heard."}
        with pytest.raises(TryLater):
            await client.send(room_id, "m.room.message", content, "t1")
        await asyncio.sleep(1)
        event_id = await client.send(room_id, "m.room.message", content, "t1")
        page = await client.past(room_id, None)
        await client.close()
    bodies = [event for event in page.chunk if isinstance(event, dict) and event["type"] == "m.room.message"]
    assert [event["event_id"] for event in bodies] == [event_id]


async def test_the_homeserver_restarts_in_mid_send(tmp_path: Path) -> None:
    """Killed as by a power cut once the first of many answers is out: each run is answered once all the same."""
    async with (
        private_homeserver(tmp_path / "synapse") as server,
        aiohttp.ClientSession() as session,
        fault_proxy(server.url) as proxy,
    ):
        kitchen = await open_kitchen(server, session, tmp_path / "bot", proxy)
        sent = await kitchen.send_runs(40)
        first = next(iter(sent.values()))
        proxy.faults.append(Fault(SENDING_ANYTHING, late(0.1)))
        async with kitchen.bot.running():
            await kitchen.bot.until("SELECT 1 FROM outbox WHERE state = 'sent' AND cause_event_id = ?", first)
            await server.kill()
            await server.start()
            await kitchen.bot.until_settled(*sent.values())
        await kitchen.check(sent)


async def test_two_bots_on_one_database_say_everything_once(server: Homeserver, tmp_path: Path) -> None:
    """Without a crypto store, whose lock the second would meet; both see every run."""
    async with aiohttp.ClientSession() as session, fault_proxy(server.url) as proxy:
        kitchen = await open_kitchen(server, session, tmp_path / "bot", proxy, encryption=False)
        async with kitchen.bot.running(), kitchen.bot.running():
            sent = await kitchen.send_runs(20)
            await kitchen.bot.until_settled(*sent.values())
        await kitchen.check(sent)


async def test_a_second_bot_on_one_crypto_store_is_refused(kitchen: Kitchen) -> None:
    """It says why and ends; the first goes on."""
    kitchen.proxy.faults.clear()
    second = await kitchen.bot.start()
    assert await asyncio.wait_for(second.wait(), 30) == NO_DATABASE
    sent = await kitchen.send_runs(1)
    await kitchen.bot.until_settled(*sent.values())
    await kitchen.check(sent)
