"""A week in the kitchen of the Tern & Lantern, on a private homeserver, with the real bot, in fast time."""

import asyncio
import logging
import os
import signal
import sys
import tempfile
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from importlib.util import find_spec
from pathlib import Path
from secrets import token_urlsafe

from pydantic import SecretStr

from bot.app import open_bot
from bot.app.bot import Bot
from bot.demo.fast_time import FastClock, FastTimeClient
from bot.demo.people import CAST, ZONE, Cast, sign_in_all
from bot.demo.stage import FIRST_MONDAY, Stage
from bot.demo.stay import stay
from bot.demo.transcript import Transcript
from bot.demo.week import play_week
from bot.errors import NO_HOMESERVER, OperatorError
from bot.homeserver import private_homeserver
from bot.services.ports.messages import SendRefused, TryLater
from bot.settings import (
    EncryptionSettings,
    KitchenSettings,
    MatrixSettings,
    PeopleSettings,
    Secrets,
    Settings,
    StorageSettings,
)

BOT_NAME = "platepace"

_CANNOT_WRITE = 74  # EX_IOERR of sysexits.h

_TITLE = """\
A week of plating practice at the Tern & Lantern, in fast time: chef Ime, sous Bastian, cooks
Noor, Kwabena and Lio, commis Petra, night cook Anselm, and Platepace, the bot.
The drill's thread stands a little to the right, rooms of two further.
"""


async def demo(*, interactive: bool) -> None:
    """Play the week and print the room as it happens; in a terminal stay, and take lines typed as Noor."""
    if find_spec("synapse") is None:
        raise OperatorError("the demo needs matrix-synapse, which is not installed here; `make demo` sees to it")
    _end_with_the_terminal()
    logging.basicConfig(level=logging.ERROR)
    sys.stdout.reconfigure(line_buffering=True, errors="replace")  # type: ignore[union-attr]  # it is a text stream
    try:
        with tempfile.TemporaryDirectory(prefix="platepace-demo-") as directory:
            await _play(Path(directory), interactive=interactive)
    except* (TryLater, SendRefused) as several:
        raise OperatorError("the demo broke off: its homeserver does not answer any more", NO_HOMESERVER) from several
    except* BrokenPipeError as several:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())  # or Python would fail once more at its end
        raise OperatorError("the demo broke off: nobody reads it any more", _CANNOT_WRITE) from several


def _end_with_the_terminal() -> None:
    """Let a terminal that is closed end the demo in good order."""
    task = asyncio.current_task()
    if task:
        asyncio.get_running_loop().add_signal_handler(signal.SIGHUP, lambda: task.cancelling() or task.cancel())


async def _play(directory: Path, *, interactive: bool) -> None:
    sys.stdout.write(_TITLE)
    clock = FastClock(FIRST_MONDAY)
    password = token_urlsafe(9)
    async with private_homeserver(directory / "homeserver") as server:
        bot_id = await server.register(BOT_NAME, password, display_name="Platepace")
        async with sign_in_all(server, password, clock) as cast:
            settings = _settings(server.url, directory, bot_id, cast)
            async with _bot_at_work(settings, password, clock) as bot:
                stage = Stage(bot, bot_id, cast, clock, Transcript(bot_id, cast))
                await play_week(stage)
                if interactive:
                    await stay(stage, server, password)


def _settings(url: str, directory: Path, bot_id: str, cast: Cast) -> Settings:
    """What ``platepace run`` would read from a file: SQLite, the chef may invite, no waiting between messages."""
    return Settings(
        matrix=MatrixSettings(homeserver=url, user=bot_id, messages_per_second=100, burst=100),
        encryption=EncryptionSettings(store=directory / "crypto", key_file=directory / "key"),
        storage=StorageSettings(url=f"sqlite+aiosqlite:///{directory / 'platepace.db'}"),
        people=PeopleSettings(may_invite=frozenset({cast.user_id(CAST[0])})),
        kitchen=KitchenSettings(zone=ZONE.key),
    )


@asynccontextmanager
async def _bot_at_work(settings: Settings, password: str, clock: FastClock) -> AsyncIterator[Bot]:
    """The bot as ``platepace run`` would run it, its clock apart; if it fails, the play breaks off."""
    secrets = Secrets(password=SecretStr(password))
    fast = FastTimeClient.maker(clock)
    async with open_bot(settings, secrets, clock, make_client=fast) as bot, asyncio.TaskGroup() as group:
        work = group.create_task(bot.run())
        yield bot
        work.cancel()
