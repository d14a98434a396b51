"""The sync loop alone on a real Synapse that misbehaves; its rests last a twentieth of what they are.

The answers' shapes are of the Matrix specification (T, client-server API, "Standard error response").
"""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager

import pytest

from bot.homeserver import Homeserver
from bot.matrix.client import Account, Client
from bot.services.ports.events import Membership
from bot.storage.storage import SqlStorage
from tests.live.fault_proxy import SYNC, Fault, fault_proxy, refusal
from tests.live.listening import joins, kitchen_with, new_loop, running, says, until_kept
from tests.live.people import Person
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live

JOIN = r"POST .*/join"
FORBIDDEN = {"errcode": "M_FORBIDDEN", "error": "You are not invited to this room"}
HARD = {"errcode": "M_UNKNOWN_TOKEN", "error": "Unrecognised access token"}


async def test_a_server_that_forgets_every_token_is_not_stormed(
    server: Homeserver, bot_account: Account, storage: SqlStorage, reports: Reports, chef: Person
) -> None:
    """Over a minute it signs in after rests of 1, 2, 4, 8 and 16 s; then it hears what was said meanwhile."""
    async with fault_proxy(server.url) as proxy, listening(proxy.url, bot_account) as client:
        room_id = await kitchen_with(client, chef)
        loop = new_loop(client, storage, reports, chef)
        async with running(loop):
            refused = Fault(SYNC, refusal(401, HARD))
            proxy.faults.append(refused)
            await chef.say(room_id, "and so on")  # ends the request that was made before
            await until(lambda: refused.met > 0)
            proxy.asked.clear()
            await chef.say(room_id, "3:02 8/8")
            await asyncio.sleep(60 / 20)
            asked = [what for _, what in proxy.asked if "/sync" in what or "/login" in what]
            proxy.faults.clear()
            await until_kept(storage, says("3:02 8/8"))
    assert 8 <= len(asked) <= 14
    assert reports.told == []


async def test_an_invitation_refused_for_a_while_is_accepted_in_the_end(
    server: Homeserver, bot_account: Account, storage: SqlStorage, reports: Reports, chef: Person
) -> None:
    """A server may not know yet of the invitation that it has just passed on."""
    async with fault_proxy(server.url) as proxy, listening(proxy.url, bot_account) as client:
        proxy.faults.append(Fault(JOIN, refusal(403, FORBIDDEN), times=2))
        async with running(new_loop(client, storage, reports, chef)):
            room_id = await chef.open_room(invite=[client.user_id])
            await until_kept(storage, joins(client, room_id))
        assert len([what for _, what in proxy.asked if "/join" in what]) == 3
    assert reports.told == []


async def test_an_invitation_taken_back_is_let_go(
    server: Homeserver, bot_account: Account, storage: SqlStorage, reports: Reports, chef: Person
) -> None:
    """No further attempt is made; the next invitation counts."""
    async with fault_proxy(server.url) as proxy, listening(proxy.url, bot_account) as client:
        refused = Fault(JOIN, refusal(403, FORBIDDEN))
        proxy.faults.append(refused)
        async with running(new_loop(client, storage, reports, chef)):
            room_id = await chef.open_room(invite=[client.user_id])
            await until(lambda: refused.met > 0)
            await chef.kick(room_id, client.user_id)
            await until_kept(storage, lambda event: isinstance(event, Membership) and event.state == "leave")
            await asyncio.sleep(0.05)  # an attempt may be under way
            tries = refused.met
            await asyncio.sleep(1.8)  # the second to fourth would have come 0.05, 0.3 and 1.8 s after the first
            assert refused.met == tries
            proxy.faults.clear()
            await chef.invite(room_id, client.user_id)
            await until_kept(storage, joins(client, room_id))
    assert reports.told == []


async def until(condition: Callable[[], bool]) -> None:
    """Wait until this holds."""
    async with asyncio.timeout(20):
        while not condition():  # noqa: ASYNC110 - the proxy only counts
            await asyncio.sleep(0.01)


@asynccontextmanager
async def listening(url: str, account: Account) -> AsyncIterator[Client]:
    """The bot's client, signed in at this address."""
    client = Client(url, account)
    await client.sign_in()
    try:
        yield client
    finally:
        await client.close()
