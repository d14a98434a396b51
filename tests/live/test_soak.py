"""``make soak``: the bot is killed at random moments while runs keep coming; afterwards nothing is lost or repeated."""

import asyncio
import random
import re
import signal
import time
from pathlib import Path

import pytest

from bot.domain.pace import clock_text
from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.conftest import MakePerson
from tests.live.people import PASSWORD, Person

pytestmark = pytest.mark.soak

KILLS = 60
SEED = 20261125


async def test_random_kills_lose_nothing_and_repeat_nothing(
    server: Homeserver, person: MakePerson, tmp_path: Path
) -> None:
    """Every run is stored once and answered once, in order, however often the bot was killed meanwhile."""
    chef, noor = await person("Ime"), await person("Noor")
    bot = BotProcess(tmp_path, await server.register("soaked", PASSWORD))
    bot.configure(server, chef.user_id)
    room_id = await chef.open_room(invite=[bot.user_id, noor.user_id])
    await noor.join(room_id)
    async with bot.running():
        await bot.until("SELECT 1 FROM kitchen")
        await bot.until_settled(await chef.say(room_id, "!post now 6"), await noor.say(room_id, "!join"))

    sent: dict[str, str] = {}
    killing = asyncio.create_task(_kill_at_random(bot))
    while not killing.done():
        clock = clock_text(170 + len(sent))
        sent[clock] = await noor.say(room_id, f"{clock} 8/8")
        await asyncio.sleep(0.1)
    slowest_s = await killing
    started_s = time.perf_counter()
    async with bot.running():
        await bot.until_settled(*sent.values())
    caught_up_s = time.perf_counter() - started_s

    answered = await _answered(bot, noor, room_id)
    stored = bot.ask("SELECT event_id, count(*) FROM run GROUP BY event_id")
    lost, repeated = set(sent) - set(answered), len(answered) - len(set(answered))
    out_of_order = sum(sent_before != answer for sent_before, answer in zip(sent, answered, strict=False))
    print(
        f"\n{KILLS} kills, {len(sent)} submissions, {len(lost)} lost, {repeated} repeated, {out_of_order} out of order;"
        f" slowest start to a sync {slowest_s:.1f} s, caught up {caught_up_s:.1f} s after the last"
    )
    assert sorted(stored) == sorted((event_id, 1) for event_id in sent.values())
    assert answered == list(sent)


async def _kill_at_random(bot: BotProcess) -> float:
    """Start and kill the bot, each time after a moment drawn at random; the longest that a start took to its sync."""
    chance, slowest_s = random.Random(SEED), 0.0  # noqa: S311 - a repeatable draw, no secret
    for _ in range(KILLS):
        ((before,),) = bot.ask("SELECT token FROM sync_token")
        started_s, process = time.perf_counter(), await bot.start()
        await bot.until("SELECT 1 FROM sync_token WHERE token != ?", before)
        slowest_s = max(slowest_s, time.perf_counter() - started_s)
        await asyncio.sleep(chance.uniform(0, 0.6))
        process.send_signal(signal.SIGKILL)
        await process.wait()
    return slowest_s


async def _answered(bot: BotProcess, reader: Person, room_id: str) -> list[str]:
    events = await reader.read(room_id)
    bodies = [event["content"].get("body", "") for event in events if event["sender"] == bot.user_id]
    return [clock for body in bodies for clock in re.findall(r"Heard\. (\d+:\d\d)", body)]
