"""A week in the kitchen of the Tern & Lantern, on a private homeserver, with the real bot, in fast time."""

import asyncio
import logging
import sys
import tempfile
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from pathlib import Path
from secrets import token_urlsafe

from pydantic import SecretStr

from bot.app import Bot, open_bot
from bot.demo.fast_time import FastClock, FastTimeClient
from bot.demo.people import CAST, Cast, sign_in_all
from bot.demo.stage import FIRST_MONDAY, Stage
from bot.demo.stay import stay
from bot.demo.transcript import Transcript
from bot.demo.week import play_week
from bot.homeserver import Homeserver, private_homeserver
from bot.settings import MatrixSettings, PeopleSettings, Secrets, Settings, StorageSettings

BOT_NAME = "platepace"


def demo(*, interactive: bool) -> None:
    """Play the week and print the room as it happens; in a terminal stay, and take lines typed as Noor."""
    logging.basicConfig(level=logging.ERROR)
    sys.stdout.reconfigure(line_buffering=True)  # type: ignore[union-attr]  # a text stream, whoever reads it
    with tempfile.TemporaryDirectory(prefix="platepace-demo-") as directory:
        asyncio.run(_play(Path(directory), interactive=interactive))


async def _play(directory: Path, *, interactive: bool) -> None:
    clock = FastClock(FIRST_MONDAY)
    password = token_urlsafe(9)
    async with private_homeserver(directory / "homeserver") as server:
        bot_id = await server.register(BOT_NAME, password, display_name="Platepace")
        cast = await sign_in_all(server, password, clock)
        try:
            async with _bot_at_work(server, directory, bot_id, password, cast, clock) as bot:
                stage = Stage(bot, bot_id, cast, clock, Transcript(bot_id, cast))
                await play_week(stage)
                if interactive:
                    await stay(stage, server, password)
        finally:
            await cast.leave()


@asynccontextmanager
async def _bot_at_work(
    server: Homeserver, directory: Path, bot_id: str, password: str, cast: Cast, clock: FastClock
) -> AsyncIterator[Bot]:
    """The bot as ``platepace run`` would run it, on SQLite, its clock apart."""
    settings = Settings(
        matrix=MatrixSettings(homeserver=server.url, user=bot_id, messages_per_second=100, burst=100),
        storage=StorageSettings(url=f"sqlite+aiosqlite:///{directory / 'platepace.db'}"),
        people=PeopleSettings(may_invite=frozenset({cast.user_id(CAST[0])})),
    )
    secrets = Secrets(password=SecretStr(password))
    fast = FastTimeClient.maker(clock)
    async with open_bot(settings, secrets, clock, make_client=fast) as bot:
        work = asyncio.create_task(bot.run())
        try:
            yield bot
        finally:
            work.cancel()
            with suppress(asyncio.CancelledError):
                await work
