"""The whole bot within the process of the test, started in a moment and open to be looked into."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass
from typing import Any

from bot.app import open_bot, utc_now
from bot.app.bot import Bot
from bot.app.line import MakeStorage
from bot.settings import load_secrets, load_settings
from bot.storage.storage import SqlStorage
from tests.live.bot_process import BotProcess
from tests.live.people import Person


@asynccontextmanager
async def at_work(bot: BotProcess, make_storage: MakeStorage = SqlStorage) -> AsyncIterator[Bot]:
    """The bot of this directory at work until the block ends."""
    settings = load_settings(bot.directory / "config.toml")
    async with open_bot(settings, load_secrets(settings), utc_now, make_storage=make_storage) as whole:
        work = asyncio.create_task(whole.run())
        try:
            yield whole
        finally:
            work.cancel()
            with suppress(asyncio.CancelledError):
                await work


@dataclass
class Team:
    """A chef, a sous and a cook, and a bot that the chef may invite; ``bot`` is its directory."""

    server_url: str

    bot: BotProcess
    chef: Person
    bastian: Person
    noor: Person

    async def open_kitchen(self, **order: Any) -> str:
        """A room in which Rope coil is live and Noor is counted in; the bot has to be at work."""
        people = [self.bot.user_id, self.bastian.user_id, self.noor.user_id]
        room_id = await self.chef.open_room(invite=people, **order)
        await self.bastian.join(room_id)
        await self.noor.join(room_id)
        await self.bot.until("SELECT 1 FROM kitchen WHERE room_id = ?", room_id)
        await self.bot.until_settled(await self.chef.say(room_id, "!post now 6"), await self.noor.say(room_id, "!join"))
        return room_id

    async def answers(self, room_id: str) -> list[str]:
        """What the bot has said in a room, line by line."""
        said = [event for event in await self.chef.read(room_id) if event["sender"] == self.bot.user_id]
        return [line for event in said for line in event["content"]["body"].split("\n")]

    async def answered(self, room_id: str, person: Person, text: str) -> list[str]:
        """What the bot says when this has been said, and nothing more is to be sent."""
        before = len(await self.answers(room_id))
        await self.bot.until_settled(await person.say(room_id, text))
        return (await self.answers(room_id))[before:]
