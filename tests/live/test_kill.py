"""The bot is killed between each pair of steps of its way in and out; nothing is lost and nothing is said twice.

The kill is SIGKILL, sent by the process to itself at the step (``killable.py``), so every case is the same each time.
"""

import signal
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

import aiohttp
import pytest
import pytest_asyncio

from bot.domain.pace import clock_text
from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import clocks_heard
from tests.live.schedules import schedule_due_now

pytestmark = [pytest.mark.live, pytest.mark.asyncio(loop_scope="session")]

WAY_IN_AND_OUT = (
    "before inbox.take",
    "after inbox.take",
    "commit inbox.take",
    "after inbox.oldest",
    "after runs.save",
    "after outbox.add",
    "after inbox.settle",
    "commit inbox.settle",
    "after outbox.lease",
    "commit outbox.lease",
    "before client.send",
    "after client.send",
    "after outbox.sent",
    "commit outbox.sent",
)

WAY_OF_A_POST = (
    "after schedules.deal",
    "after drills.save_live",
    "commit schedules.deal",
    "commit outbox.lease",
    "before client.send",
    "after client.send",
    "commit outbox.sent",
)


LIVE = 6
"""The drill that is live all along."""


@dataclass
class Kitchen:
    """A room with a chef, a cook and the bot; every case sends clocks that no other sent and posts another drill."""

    bot: BotProcess
    chef: Person
    noor: Person
    room_id: str
    clocks: Iterator[str] = field(default_factory=lambda: (clock_text(seconds) for seconds in count(170)))
    drills: Iterator[int] = field(default_factory=lambda: (number for number in count(1) if number != LIVE))

    async def send_run(self) -> tuple[str, str]:
        """Noor sends a run: its clock and the event's id."""
        clock = next(self.clocks)
        return clock, await self.noor.say(self.room_id, f"{clock} 8/8")

    async def answered(self) -> list[str]:
        """The clocks that the bot has answered for, in order, however often."""
        said = [
            e["content"].get("body", "") for e in await self.noor.read(self.room_id) if e["sender"] == self.bot.user_id
        ]
        return clocks_heard(said)


@pytest_asyncio.fixture(scope="module", loop_scope="session")
async def kitchen(server: Homeserver, tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Kitchen]:
    """A kitchen in which Rope coil is live and Noor is counted in; the bot is down."""
    async with aiohttp.ClientSession() as session:
        made = await _open_kitchen(server, session, tmp_path_factory.mktemp("killed"))
        yield made


async def _open_kitchen(server: Homeserver, session: aiohttp.ClientSession, directory: Path) -> Kitchen:
    bot_id, chef_id, noor_id = [await server.register(f"kill-{name}", PASSWORD) for name in ("bot", "ime", "noor")]
    chef = await sign_in(server, session, chef_id, "Ime")
    noor = await sign_in(server, session, noor_id, "Noor")
    levels = {"users": {bot_id: 50}}
    room_id = await chef.open_room(invite=[bot_id, noor_id], power_level_content_override=levels)
    await noor.join(room_id)
    bot = BotProcess(directory, bot_id)
    bot.configure(server, chef_id)
    async with bot.running():
        await bot.until("SELECT 1 FROM kitchen")
        await bot.until_settled(await chef.say(room_id, f"!post now {LIVE}"), await noor.say(room_id, "!join"))
    return Kitchen(bot, chef, noor, room_id)


@pytest.mark.parametrize("step", WAY_IN_AND_OUT)
async def test_a_submission_survives_a_kill(kitchen: Kitchen, step: str) -> None:
    """Two runs wait when the bot starts, it dies at the step, a third comes, it starts again: each is answered once."""
    bot, sent = kitchen.bot, [await kitchen.send_run(), await kitchen.send_run()]
    process = await bot.start(die_at=step)
    assert await process.wait() == -signal.SIGKILL
    sent.append(await kitchen.send_run())
    async with bot.running():
        await bot.until_settled(*(event_id for _, event_id in sent))
    clocks = [clock for clock, _ in sent]
    assert [clock for clock in await kitchen.answered() if clock in clocks] == clocks
    for _, event_id in sent:
        assert bot.ask("SELECT count(*) FROM run WHERE event_id = ?", event_id) == [(1,)]
    reactions = await kitchen.noor.read(kitchen.room_id, "m.reaction")
    noted = [event["content"]["m.relates_to"]["event_id"] for event in reactions]
    assert all(noted.count(event_id) == 1 for _, event_id in sent)


@pytest.mark.parametrize("step", WAY_OF_A_POST)
async def test_a_post_survives_a_kill(kitchen: Kitchen, step: str) -> None:
    """A weekly post is due when the bot starts, it dies at the step and starts again: the drill is posted once."""
    bot, number = kitchen.bot, next(kitchen.drills)
    schedule_id, name = await schedule_due_now(bot.url, kitchen.room_id, number)
    process = await bot.start(die_at=step)
    assert await process.wait() == -signal.SIGKILL
    async with bot.running():
        await bot.until("SELECT 1 FROM occurrence WHERE schedule_id = ?", schedule_id)
        await bot.until_settled()
    bodies = [e["content"].get("body", "") for e in await kitchen.noor.read(kitchen.room_id)]
    assert sum(f"{name} (drill {number})" in body for body in bodies) == 1
    assert bot.ask("SELECT state, count(*) FROM occurrence WHERE schedule_id = ?", schedule_id) == [("posted", 1)]
    pinned = (await kitchen.noor.state(kitchen.room_id, "m.room.pinned_events"))["pinned"]
    assert len(pinned) == 1
