"""A private Synapse for the whole session, and people on it; every test has people and rooms of its own."""

import itertools
from collections.abc import AsyncIterator, Awaitable, Callable
from pathlib import Path

import aiohttp
import pytest
import pytest_asyncio

from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from tests.live.people import PASSWORD, Person, sign_in

_NUMBERS = itertools.count(1)


@pytest_asyncio.fixture(scope="session", loop_scope="session")
async def server(tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Homeserver]:
    """One homeserver without rate limits for all tests; whoever restarts or limits it starts another."""
    directory: Path = tmp_path_factory.mktemp("synapse")
    async with private_homeserver(directory) as server:
        yield server


@pytest.fixture
async def session() -> AsyncIterator[aiohttp.ClientSession]:
    """The connections of a test's people."""
    async with aiohttp.ClientSession() as session:
        yield session


MakePerson = Callable[[str], Awaitable[Person]]
"""Makes somebody of this name, with an account that nobody else in the session has."""


@pytest.fixture
def person(server: Homeserver, session: aiohttp.ClientSession) -> MakePerson:
    """A maker of people."""

    async def make(name: str) -> Person:
        user_id = await server.register(f"{name.lower()}{next(_NUMBERS)}", PASSWORD, display_name=name)
        return await sign_in(server, session, user_id, name)

    return make


@pytest.fixture
async def bot_account(server: Homeserver) -> Account:
    """An account for a bot, new to the server, that signs in by password."""
    user_id = await server.register(f"platepace{next(_NUMBERS)}", PASSWORD, display_name="Platepace")
    return Account(user_id, password=PASSWORD)


@pytest.fixture
async def client(server: Homeserver, bot_account: Account) -> AsyncIterator[Client]:
    """The bot's client, signed in."""
    client = Client(server.url, bot_account)
    await client.sign_in()
    yield client
    await client.close()
