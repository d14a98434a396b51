"""A start that breaks again and again, and what the log and the wire hold, on a real homeserver."""

import asyncio
from contextlib import AbstractAsyncContextManager, suppress

import pytest

from bot.app import run_bot
from bot.app.bot import Bot
from bot.app.line import Line
from bot.safe_mode import MOST_BROKEN
from bot.settings import load_secrets, load_settings
from tests.live.bot_process import BotProcess
from tests.live.fault_proxy import fault_proxy
from tests.live.people import PASSWORD
from tests.live.whole_bot import Team, at_work

pytestmark = pytest.mark.live


class Broken(AbstractAsyncContextManager[Bot]):
    """A start in which something is broken that nobody foresaw."""

    def __init__(self, _: Line) -> None:
        """On any line."""

    async def __aenter__(self) -> Bot:
        """Break."""
        raise RuntimeError("the course cannot be read")

    async def __aexit__(self, *_: object) -> None:
        """Never come to."""


async def start(bot: BotProcess, *, is_broken: bool = False) -> None:
    """The bot as its operator starts it."""
    settings = load_settings(bot.directory / "config.toml")
    secrets = load_secrets(settings)
    await (run_bot(settings, secrets, join=Broken) if is_broken else run_bot(settings, secrets))


async def test_after_three_broken_starts_it_keeps_what_comes_and_waits(team: Team) -> None:
    """Nothing is answered and nothing lost; the admin room is told; stopped and started again it works it all off."""
    async with at_work(team.bot):
        room_id = await team.open_kitchen()
        admins = await team.chef.open_room("Faults", invite=[team.bot.user_id])
        await team.bot.until("SELECT 1 FROM kitchen WHERE room_id = ?", admins)
    with (team.bot.directory / "config.toml").open("a", encoding="utf-8") as config:
        config.write(f'[admin]\nroom = "{admins}"\n')
    for _ in range(MOST_BROKEN):
        with pytest.raises(RuntimeError):
            await start(team.bot, is_broken=True)
    run = await team.noor.say(room_id, "3:20 8/8")
    safe = asyncio.create_task(start(team.bot, is_broken=True))
    await team.bot.until("SELECT 1 FROM inbox WHERE event_id = ? AND state = 'new'", run)
    async with asyncio.timeout(20):
        while not any(line.startswith("Safe mode: 3 starts") for line in await team.answers(admins)):  # noqa: ASYNC110 - a room tells nobody
            await asyncio.sleep(0.1)
    safe.cancel()
    with suppress(asyncio.CancelledError):
        await safe
    assert "Heard. 3:20" not in "".join(await team.answers(room_id))
    well = asyncio.create_task(start(team.bot))
    await team.bot.until_settled(run)
    well.cancel()
    with suppress(asyncio.CancelledError):
        await well
    assert "Heard. 3:20" in "".join(await team.answers(room_id))


async def test_neither_log_nor_address_holds_a_secret_or_a_word(team: Team) -> None:
    """At its most talkative: no token, password or key, nothing that was said, and nobody's name."""
    async with fault_proxy(team.server_url) as proxy:
        text = (team.bot.directory / "config.toml").read_text("utf-8")
        text = text.replace(team.server_url, proxy.url) + '[admin]\nlog_level = "DEBUG"\n'
        (team.bot.directory / "config.toml").write_text(text, "utf-8")
        async with team.bot.running():
            room_id = await team.open_kitchen()
            await team.bot.until_settled(
                await team.noor.say(room_id, "3:20 7/8 fell"), await team.noor.say(room_id, "wildgarlic is in")
            )
        addresses = proxy.addresses
    ((token,),) = team.bot.ask("SELECT token FROM session")
    log = team.bot.log(whole=True)
    assert "bot.services.faults" in log
    for secret in (str(token), PASSWORD, "3:20", "wildgarlic", "Noor"):
        assert secret not in log
    assert not any(str(token) in address or PASSWORD in address for address in addresses)
