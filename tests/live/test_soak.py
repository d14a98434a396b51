"""``make soak``: the bot is killed at random moments, and the homeserver too, while runs keep coming.

Two kitchens, one of them encrypted, and weekly posts that come due meanwhile: afterwards nothing is lost, repeated or
out of order.
"""

import asyncio
import random
import signal
import time
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path

import aiohttp
import pytest

from bot.domain.pace import clock_text
from bot.errors import NO_HOMESERVER
from bot.homeserver import Homeserver, private_homeserver
from tests.live.bot_process import BotProcess
from tests.live.encrypted import encrypting
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import clocks_heard
from tests.live.schedules import schedule_due_now

pytestmark = pytest.mark.soak

KILLS = 200
SEED = 20261125
UNREADABLE = "cannot be read"
LIVE = 6
"""The drill that is live all along."""
EVERY_RESTART = 10
"""After so many kills the homeserver is ended too, every other time at once as by a power cut."""
EVERY_POST = 20
"""After so many kills a weekly post comes due in each kitchen."""


@dataclass
class Kitchen:
    """A room where one cook sends runs, each with a clock of its own, and what the bot has said in it can be read."""

    name: str
    room_id: str
    say: Callable[[str], Awaitable[str]]
    read: Callable[[], Awaitable[list[str]]]
    """Everything that the bot has said, in order, however often."""
    rest_s: float
    sent: dict[str, str] = field(default_factory=dict)
    """By clock, the event that said it."""
    posts: dict[int, str] = field(default_factory=dict)
    """By schedule, how its post begins."""
    drills: list[int] = field(default_factory=lambda: [number for number in range(1, 12) if number != LIVE])
    """Those of the course not yet posted."""

    async def send_runs(self, server_is_up: asyncio.Lock) -> None:
        """One run after another, for ever, but not to a server that is down."""
        while True:
            async with server_is_up:
                clock = clock_text(170 + len(self.sent))
                self.sent[clock] = await self.say(f"{LIVE} {clock} 8/8")
            await asyncio.sleep(self.rest_s)

    async def schedule(self, bot: BotProcess) -> None:
        """A drill not yet posted comes due."""
        number = self.drills.pop(0)
        schedule_id, name = await schedule_due_now(bot.url, self.room_id, number)
        self.posts[schedule_id] = f"{name} (drill {number}"


@dataclass(frozen=True)
class Tally:
    """What came of one kitchen."""

    lost: int
    repeated: int
    out_of_order: int
    unreadable: int
    posts_wrong: int


async def test_random_kills_lose_nothing_and_repeat_nothing(tmp_path: Path) -> None:
    """Every run is stored and answered once, in order, and every post is there once, whatever was killed when."""
    async with private_homeserver(tmp_path / "synapse") as server, aiohttp.ClientSession() as session:
        bot = BotProcess(tmp_path / "bot", await server.register("soaked", PASSWORD))
        chef = await sign_in(server, session, await server.register("ime", PASSWORD), "Ime")
        bot.configure(server, chef.user_id)
        async with _plain(server, session, bot, chef) as plain, _sealed(server, session, bot, chef, tmp_path) as sealed:
            kitchens, server_is_up = [plain, sealed], asyncio.Lock()
            sending = [asyncio.create_task(kitchen.send_runs(server_is_up)) for kitchen in kitchens]
            slowest_s, restarts = await _kill_at_random(bot, server, server_is_up, kitchens)
            for task in sending:
                task.cancel()
            await asyncio.gather(*sending, return_exceptions=True)
            started_s = time.perf_counter()
            async with bot.running():
                await bot.until_settled(*(event for kitchen in kitchens for event in kitchen.sent.values()))
                posts = sum(len(kitchen.posts) for kitchen in kitchens)
                await bot.until("SELECT 1 WHERE (SELECT count(*) FROM occurrence) = ?", posts)
                await bot.until_settled()
            caught_up_s = time.perf_counter() - started_s
            tallies = [await _tally(bot, kitchen) for kitchen in kitchens]
    print(f"\nseed {SEED}: {KILLS} kills of the bot, {restarts} of the homeserver")
    for kitchen, tally in zip(kitchens, tallies, strict=True):
        print(f"{kitchen.name}: {len(kitchen.sent)} submissions, {len(kitchen.posts)} posts, {tally}")
    print(f"slowest start to a sync {slowest_s:.1f} s, caught up {caught_up_s:.1f} s after the last kill")
    assert tallies == [Tally(0, 0, 0, 0, 0)] * 2


@asynccontextmanager
async def _plain(
    server: Homeserver, session: aiohttp.ClientSession, bot: BotProcess, chef: Person
) -> AsyncIterator[Kitchen]:
    """A room in the clear, with Noor."""
    noor = await sign_in(server, session, await server.register("noor", PASSWORD), "Noor")
    room_id = await chef.open_room(invite=[bot.user_id, noor.user_id])
    await noor.join(room_id)

    async def read() -> list[str]:
        return [e["content"].get("body", "") for e in await noor.read(room_id) if e["sender"] == bot.user_id]

    kitchen = Kitchen("in the clear", room_id, lambda text: noor.say(room_id, text), read, rest_s=0.3)
    async with bot.running():
        await bot.until("SELECT 1 FROM kitchen WHERE room_id = ?", room_id)
        await bot.until_settled(await chef.say(room_id, f"!post now {LIVE}"), await kitchen.say("!join"))
    yield kitchen


@asynccontextmanager
async def _sealed(
    server: Homeserver, session: aiohttp.ClientSession, bot: BotProcess, chef: Person, directory: Path
) -> AsyncIterator[Kitchen]:
    """An encrypted room, with Lio, whose client talks to signed devices alone."""
    lio = await sign_in(server, session, await server.register("lio", PASSWORD), "Lio")
    async with (
        encrypting(server, chef, directory / "ime") as ime,
        encrypting(server, lio, directory / "lio", wary=True) as sealed,
    ):
        room_id = await ime.open_room(bot.user_id, lio.user_id)
        await lio.join(room_id)

        async def read() -> list[str]:
            heard = [event.body for event in sealed.heard_from(room_id, bot.user_id)]
            in_the_room = [e for e in await lio.read(room_id, "m.room.encrypted") if e["sender"] == bot.user_id]
            return [*heard, *[UNREADABLE] * (len(in_the_room) - len(heard))]

        kitchen = Kitchen("encrypted", room_id, lambda text: sealed.say(room_id, text), read, rest_s=0.6)
        async with bot.running():
            await bot.until("SELECT 1 FROM kitchen WHERE room_id = ?", room_id)
            await ime.until_heard(room_id, "I am Platepace", bot.user_id)
            await bot.until_settled(await ime.say(room_id, f"!post now {LIVE}"), await kitchen.say("!join"))
        yield kitchen


async def _kill_at_random(
    bot: BotProcess, server: Homeserver, server_is_up: asyncio.Lock, kitchens: list[Kitchen]
) -> tuple[float, int]:
    """Start and kill the bot, each time after a moment drawn at random; the slowest start to a sync, and restarts."""
    chance, slowest_s, restarts = random.Random(SEED), 0.0, 0  # noqa: S311 - a repeatable draw, no secret
    for nth in range(1, KILLS + 1):
        if nth % EVERY_POST == 0:
            for kitchen in kitchens:
                await kitchen.schedule(bot)
        ((before,),) = bot.ask("SELECT token FROM sync_token")
        started_s, process = time.perf_counter(), await bot.start()
        if nth % EVERY_RESTART == 0:
            restarts += 1
            await asyncio.sleep(chance.uniform(0, 2))
            async with server_is_up:
                await (server.kill() if restarts % 2 else server.stop())
                await asyncio.sleep(chance.uniform(0, 1))
                await server.start()
        elif chance.random() < 0.8:  # the others die before they are ready
            await bot.until("SELECT 1 FROM sync_token WHERE token != ?", before)
            slowest_s = max(slowest_s, time.perf_counter() - started_s)
        await asyncio.sleep(chance.uniform(0, 0.8))
        with suppress(ProcessLookupError):  # it found no homeserver and has ended by itself
            process.send_signal(signal.SIGKILL)
        assert await process.wait() in (-signal.SIGKILL, NO_HOMESERVER)
    return slowest_s, restarts


async def _tally(bot: BotProcess, kitchen: Kitchen) -> Tally:
    """What is missing, there twice, or in another order, of what was sent, stored, answered and posted."""
    said = await _all_said(kitchen)
    answered = clocks_heard(said)
    rows = bot.ask("SELECT event_id, count(*) FROM run WHERE room_id = ? GROUP BY event_id", kitchen.room_id)
    stored = {event: times for event, times in rows}  # noqa: C416 - of tuples whose length is not known
    lost = sum(clock not in answered or event not in stored for clock, event in kitchen.sent.items())
    repeated = len(answered) - len(set(answered)) + sum(times != 1 for times in stored.values())
    in_order = [clock for clock in kitchen.sent if clock in set(answered)]
    out_of_order = sum(one != other for one, other in zip(in_order, dict.fromkeys(answered), strict=False))
    posts_wrong = sum(sum(head in body for body in said) != 1 for head in kitchen.posts.values())
    return Tally(lost, repeated, out_of_order, said.count(UNREADABLE), posts_wrong)


async def _all_said(kitchen: Kitchen) -> list[str]:
    """What the bot has said, once the reader's own client has caught up with it."""
    deadline, said = time.monotonic() + 60, await kitchen.read()
    last = f"Heard. {list(kitchen.sent)[-1]}"
    while time.monotonic() < deadline and (UNREADABLE in said or last not in "".join(said)):
        await asyncio.sleep(0.5)
        said = await kitchen.read()
    return said
