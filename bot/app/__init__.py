"""The composition root: the only place that builds storage, client, workers and ticker, and joins and runs them."""

from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, AbstractContextManager, asynccontextmanager, nullcontext
from datetime import UTC, datetime

from bot.app.bot import Bot, join, join_safely
from bot.app.line import Line, MakeClient, MakeStorage, open_line
from bot.matrix.client import Client
from bot.safe_mode import MOST_BROKEN, Starts
from bot.services.ports.world import Clock
from bot.settings import Secrets, Settings
from bot.storage.storage import SqlStorage

Join = Callable[[Line], AbstractAsyncContextManager[Bot]]
"""Puts the whole bot on a line."""


def utc_now() -> datetime:
    """The time, in UTC."""
    return datetime.now(UTC)


@asynccontextmanager
async def open_bot(
    settings: Settings,
    secrets: Secrets,
    clock: Clock = utc_now,
    *,
    make_client: MakeClient = Client,
    make_storage: MakeStorage = SqlStorage,
) -> AsyncIterator[Bot]:
    """A bot signed in and ready to run; an OperatorError says what stands in its way."""
    async with open_line(settings, secrets, clock, make_client, make_storage) as line, join(line) as bot:
        yield bot


async def run_bot(settings: Settings, secrets: Secrets, join: Join = join) -> None:
    """Work until cancelled, as an operator starts it: in safe mode where the starts before have broken."""
    async with open_line(settings, secrets, utc_now, Client, SqlStorage) as line:
        starts = Starts(line.storage, settings.matrix.user, utc_now)
        if (await starts.broken())[0] >= MOST_BROKEN:
            async with join_safely(line, starts) as safe:
                await safe.run()
        async with starts.counted(), join(line) as bot:
            with _measured(line, bot):
                await bot.run()


def _measured(line: Line, bot: Bot) -> AbstractContextManager[None]:
    """The bot's figures at the address that the settings name, or nothing."""
    if line.settings.admin.metrics is None:
        return nullcontext()
    from bot.metrics import served  # noqa: PLC0415 - only if it is wanted

    return served(line.settings.admin.metrics, lambda: line.secrecy.is_signed, lambda: bot.sync.last_good_s)
