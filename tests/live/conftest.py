"""A private Synapse for the whole session, and people on it; every test has people and rooms of its own."""

import itertools
from collections.abc import AsyncIterator, Awaitable, Callable
from pathlib import Path
from typing import Any

import aiohttp
import pytest
import pytest_asyncio

from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from bot.matrix.outbox import Sender
from bot.matrix.sync import SyncLoop
from bot.services.ports.messages import Cause, EventRef
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock, a_note
from tests.live.bot_process import BotProcess
from tests.live.listening import new_loop
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import Say, new_sender
from tests.live.whole_bot import Team
from tests.matrix.fakes import Reports, Rests, a_world

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


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


@pytest.fixture
async def storage() -> AsyncIterator[SqlStorage]:
    """A storage in memory."""
    storage = SqlStorage("sqlite+aiosqlite://", FixedClock())
    await storage.migrate()
    yield storage
    await storage.close()


@pytest.fixture
def reports() -> Reports:
    """What the admins were told."""
    return Reports()


@pytest.fixture
async def chef(person: MakePerson) -> Person:
    """The chef, who may invite the bot."""
    return await person("Ime")


@pytest.fixture
def loop(client: Client, storage: SqlStorage, reports: Reports, chef: Person) -> SyncLoop:
    """The loop of a bot just started."""
    return new_loop(client, storage, reports, chef)


@pytest.fixture
def dead() -> list[str]:
    """Why rows were buried."""
    return []


@pytest.fixture
def sender(storage: SqlStorage, client: Client, clock: FixedClock, reports: Reports, dead: list[str]) -> Sender:
    """A sender on the shared server, as fast as it can."""
    return new_sender(storage, client, a_world(Rests(clock)), reports, dead)


@pytest.fixture
def say(storage: SqlStorage) -> Say:
    """Puts a note into the outbox, each for a cause of its own."""
    causes = iter(range(1000))

    async def say(to: str, text: str = "Heard.", **changes: Any) -> EventRef:
        async with storage.begin() as work:
            return await work.outbox.add(a_note(text, to=to, **changes), Cause(event_id=f"$cause{next(causes)}"), 0)

    return say


@pytest.fixture
async def kitchen(client: Client, chef: Person) -> str:
    """A room of the chef's in which the bot is."""
    room_id = await chef.open_room(power_level_content_override={"events": {"m.room.pinned_events": 0}})
    await chef.invite(room_id, client.user_id)
    await client.join(room_id)
    return room_id


@pytest.fixture
async def team(server: Homeserver, person: MakePerson, chef: Person, tmp_path: Path) -> Team:
    """Ime, Bastian, Noor and a bot that is down; without encryption, which has tests of its own."""
    user_id = await server.register(f"platepace{next(_NUMBERS)}", PASSWORD)
    team = Team(server.url, BotProcess(tmp_path, user_id), chef, await person("Bastian"), await person("Noor"))
    team.bot.configure(server, chef.user_id, encryption=False)
    return team
