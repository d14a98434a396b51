"""The private homeserver starts fast, keeps its data, limits only when asked, and never outlives its owner."""

import asyncio
import os
import signal
import sys
import time
from pathlib import Path

import aiohttp
import pytest

from bot.errors import OperatorError
from bot.homeserver import Homeserver, private_homeserver
from tests.live.people import PASSWORD, sign_in

pytestmark = pytest.mark.live


async def test_it_starts_in_seconds_and_keeps_its_data_and_address_over_a_restart(tmp_path: Path) -> None:
    """Measured on two cores: 2.2 s from nothing; the bound allows for a busy machine."""
    started = time.monotonic()
    async with private_homeserver(tmp_path) as server, aiohttp.ClientSession() as session:
        assert time.monotonic() - started < 15
        user_id = await server.register("noor", PASSWORD, display_name="Noor")
        noor = await sign_in(server, session, user_id, "Noor")
        room_id = await noor.open_room()
        event_id = await noor.say(room_id, "3:02 8/8")
        url = server.url
        await server.restart()
        assert server.url == url
        assert [event["event_id"] for event in await noor.read(room_id)] == [event_id]
        await server.kill()
        await server.start()
        assert [event["event_id"] for event in await noor.read(room_id)] == [event_id]


async def test_who_is_registered_has_a_name_and_an_account_of_their_own(server: Homeserver) -> None:
    """And a name taken twice is an operator's fault with the server's words in it."""
    user_id = await server.register("sunniva", PASSWORD, display_name="Sunniva")
    assert user_id == f"@sunniva:{server.name}"
    async with aiohttp.ClientSession() as session:
        sunniva = await sign_in(server, session, user_id, "Sunniva")
        assert (await sunniva.ask("GET", f"profile/{user_id}"))["displayname"] == "Sunniva"
    with pytest.raises(OperatorError, match="M_USER_IN_USE"):
        await server.register("sunniva", PASSWORD)


async def test_with_its_own_limits_the_server_stops_a_burst(tmp_path: Path) -> None:
    """Source: T, Synapse's documentation: rc_message allows 0.2 a second after a burst of 10."""
    async with private_homeserver(tmp_path, rate_limits=True) as server, aiohttp.ClientSession() as session:
        noor = await sign_in(server, session, await server.register("noor", PASSWORD), "Noor")
        room_id = await noor.open_room()
        answers = await asyncio.gather(*(noor.say(room_id, "8/8") for _ in range(20)), return_exceptions=True)
    refused = [str(answer) for answer in answers if isinstance(answer, AssertionError)]
    assert 5 <= len(refused) <= 15
    assert all("M_LIMIT_EXCEEDED" in answer for answer in refused)


OWNER = """
import asyncio, pathlib, sys
from bot.homeserver import private_homeserver
async def main():
    async with private_homeserver(pathlib.Path(sys.argv[1])) as server:
        print(server.url, flush=True)
        await asyncio.sleep(600)
asyncio.run(main())
"""


@pytest.mark.parametrize("how", [signal.SIGKILL, signal.SIGINT])
async def test_it_dies_with_its_owner_however_the_owner_dies(tmp_path: Path, how: signal.Signals) -> None:
    """Killed outright, it has no chance to stop anything; the kernel does."""
    owner = await asyncio.create_subprocess_exec(
        sys.executable, "-c", OWNER, str(tmp_path), stdout=asyncio.subprocess.PIPE, stderr=asyncio.subprocess.DEVNULL
    )
    assert owner.stdout is not None
    url = (await owner.stdout.readline()).decode().strip()
    async with aiohttp.ClientSession() as session, asyncio.timeout(10):
        assert await is_up(session, url)
        os.kill(owner.pid, how)
        await owner.wait()
        while await is_up(session, url):  # noqa: ASYNC110 - another process has no event to wait for
            await asyncio.sleep(0.05)


async def is_up(session: aiohttp.ClientSession, url: str) -> bool:
    """Whether anything answers there."""
    try:
        async with session.get(f"{url}/_matrix/client/versions") as answer:
            return answer.ok
    except aiohttp.ClientError:
        return False
