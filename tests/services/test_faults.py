"""What the admin room is told: faults and posts left out, each once a day, and nobody's words or names."""

import asyncio
import logging
from contextlib import suppress
from dataclasses import replace
from datetime import timedelta

from bot.errors import OperatorError
from bot.services.faults import AdminRoom, Alarm
from bot.services.planner import Planner
from bot.storage.storage import SqlStorage
from tests.chat import Chat
from tests.fakes import FixedClock

ADMINS = "!admins:tern.example"


async def told_to(storage: SqlStorage) -> list[str]:
    """What waits for the admin room."""
    async with storage.begin() as work:
        return [waiting.note.text for waiting in await work.outbox.head(ADMINS, 99)]


async def test_a_post_left_out_is_told_to_the_admins_too(chat: Chat) -> None:
    """The bot was away for more than twelve hours: the kitchen hears of it, and whoever runs the bot."""
    await chat.say("ime", "!post 6 mon 15:00")
    chat.stage.now += timedelta(hours=30)
    house = replace(chat.stage.house, admin_room=ADMINS)
    await Planner(chat.stage.storage, house, wake_sender=lambda: None).tick()
    (told,) = await told_to(chat.stage.storage)
    assert told.startswith("The weekly post of drill 6 in !kitchen:tern.example was due more than 12 hours ago")


async def test_a_fault_is_told_once_a_day_and_names_nobody(storage: SqlStorage, clock: FixedClock) -> None:
    """A person's id is left out of it, and tomorrow it is told again."""
    room = AdminRoom(ADMINS, clock, storage)
    for _ in range(2):
        await room.report(OperatorError("@noor:tern.example cannot be invited."))
    assert await told_to(storage) == ["@… cannot be invited."]
    clock.advance(86_400)
    await room.report(OperatorError("@noor:tern.example cannot be invited."))
    assert len(await told_to(storage)) == 2


async def test_an_unforeseen_fault_anywhere_is_told_by_its_kind(storage: SqlStorage, clock: FixedClock) -> None:
    """Which part failed how; not the message, which may hold what was said. Only the log has it in full."""
    alarm = asyncio.create_task(Alarm(AdminRoom(ADMINS, clock, storage)).run())
    await asyncio.sleep(0)
    try:
        raise ValueError("3:02 8/8 by Noor")
    except ValueError:
        logging.getLogger("bot.services.refits").exception("refits failed")
    async with asyncio.timeout(5):
        while not await told_to(storage):  # noqa: ASYNC110 - it is told by a task that tells nobody else
            await asyncio.sleep(0.01)
    alarm.cancel()
    with suppress(asyncio.CancelledError):
        await alarm
    assert await told_to(storage) == ["An unforeseen fault in bot.services.refits: ValueError. The log has it in full."]
