"""``platepace check`` on a real homeserver, before the first start, at work and with something wrong; and figures."""

import asyncio
import sys
import time
from socket import socket

import aiohttp
import pytest

from bot.errors import BAD_SETTINGS, NO_DATABASE, NO_HOMESERVER
from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.whole_bot import Team

pytestmark = pytest.mark.live


async def check(bot: BotProcess) -> tuple[int, list[str]]:
    """The exit code and the lines."""
    command = ["-m", "bot", "check", "--config", str(bot.directory / "config.toml")]
    process = await asyncio.create_subprocess_exec(sys.executable, *command, stdout=asyncio.subprocess.PIPE)
    told, _ = await process.communicate()
    return process.returncode or 0, told.decode().splitlines()


async def test_from_before_the_first_start_to_a_bot_at_work(team: Team, server: Homeserver) -> None:
    """Nothing is made by looking; at work everything is ok, the chain of keys too; what is lost is wrong."""
    bot = team.bot
    bot.configure(server, team.chef.user_id)
    code, before = await check(bot)
    assert (code, bot.database.exists(), (bot.directory / "crypto").exists()) == (0, False, False)
    assert "ok     database: none yet, the first start makes it" in before
    async with bot.running():
        await team.open_kitchen()
        code, at_work = await check(bot)
    assert code == 0
    ((device,),) = bot.ask("SELECT device_id FROM session")
    assert f"ok     device {device} is signed by its owner, the chain of keys holds" in at_work
    assert not any(line.startswith("wrong") for line in at_work)
    with (bot.directory / "config.toml").open("a", encoding="utf-8") as config:
        config.write('[admin]\nroom = "!nowhere:tern.localhost"\n')
    code, unwatched = await check(bot)
    assert (code, unwatched[-1][:17]) == (BAD_SETTINGS, "wrong  admin room")
    (bot.directory / "crypto").rename(bot.directory / "lost")
    code, lost = await check(bot)
    assert code == NO_DATABASE
    assert any(line.startswith("wrong  crypto store: ") for line in lost)


async def test_a_homeserver_that_is_not_there(team: Team) -> None:
    """It is said before the first start too, with the code that a start would end with."""
    text = (team.bot.directory / "config.toml").read_text("utf-8").replace(team.server_url, "http://127.0.0.1:1")
    (team.bot.directory / "config.toml").write_text(text, "utf-8")
    code, told = await check(team.bot)
    assert code == NO_HOMESERVER
    assert told[-1].startswith("wrong  http://127.0.0.1:1: cannot be used now")


async def test_figures_for_whoever_watches(team: Team, server: Homeserver) -> None:
    """While the bot is at work they say that the chain holds and when it last heard; off, nobody listens."""
    bot = team.bot
    bot.configure(server, team.chef.user_id)
    with socket() as probe:
        probe.bind(("127.0.0.1", 0))
        address = f"127.0.0.1:{probe.getsockname()[1]}"
    with (bot.directory / "config.toml").open("a", encoding="utf-8") as config:
        config.write(f'[admin]\nmetrics = "{address}"\n')
    async with aiohttp.ClientSession() as session:
        async with bot.running():
            await team.open_kitchen()
            async with session.get(f"http://{address}/metrics") as answer:
                figures = dict(line.split(" ") for line in (await answer.text()).splitlines() if line[0] != "#")
        with pytest.raises(aiohttp.ClientError):
            await session.get(f"http://{address}/metrics")
    assert figures["platepace_signing_chain_holds"] == "1.0"
    assert 0 <= time.time() - float(figures["platepace_last_sync_timestamp_seconds"]) < 60
