"""The sync loop against a real Synapse: gaps, joins, invitations, lost tokens; nothing is lost, nothing comes twice."""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager, suppress

import pytest

from bot.matrix.client import Account, Client
from bot.matrix.sync import SyncLoop
from bot.matrix.world import World
from bot.services.ports.events import Edit, Incoming, Membership, Message, Reaction, Redaction, RoomState
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.live.conftest import MakePerson
from tests.live.people import Person
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live


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


def new_loop(client: Client, storage: SqlStorage, reports: Reports, chef: Person) -> SyncLoop:
    """Another loop on the same storage, as after a restart."""
    world = World(FixedClock(), _rest_briefly, lambda: 0.0)
    return SyncLoop(client, storage, world, allowed=chef.user_id.__eq__, wake=lambda: None, report=reports)


async def _rest_briefly(seconds: float) -> None:
    """Pauses are shortened, so that a test of three failures takes no ten seconds."""
    await asyncio.sleep(seconds / 20)


@asynccontextmanager
async def running(loop: SyncLoop) -> AsyncIterator[None]:
    """The loop at work until the block ends."""
    task = asyncio.create_task(loop.run())
    try:
        async with asyncio.timeout(30):
            await loop.caught_up.wait()
            yield
    finally:
        task.cancel()
        with suppress(asyncio.CancelledError):
            await task


async def kept(storage: SqlStorage) -> list[Incoming]:
    """What is in the inbox, in order; this empties it."""
    events = []
    async with storage.begin() as work:
        while received := await work.inbox.oldest():
            events.append(received.event)
            await work.inbox.settle(received.seq)
    return events


async def until_kept(storage: SqlStorage, condition: Callable[[Incoming], bool]) -> list[Incoming]:
    """Everything kept up to and with the first event for which this holds."""
    events: list[Incoming] = []
    while not any(condition(event) for event in events):
        events += await kept(storage)
        await asyncio.sleep(0.02)
    return events


def joins(client: Client, room_id: str) -> Callable[[Incoming], bool]:
    """Whether the event is the bot's joining of this room."""

    def is_it(event: Incoming) -> bool:
        return isinstance(event, Membership) and (event.person, event.room_id, event.state) == (
            client.user_id,
            room_id,
            "join",
        )

    return is_it


def says(text: str) -> Callable[[Incoming], bool]:
    """Whether the event is this message."""
    return lambda event: isinstance(event, Message) and event.text == text


async def kitchen_with(client: Client, chef: Person) -> str:
    """A room of the chef's in which the bot already is."""
    room_id = await chef.open_room()
    await chef.invite(room_id, client.user_id)
    await client.join(room_id)
    return room_id


async def test_a_first_sync_keeps_how_rooms_stand_and_nothing_said_in_them(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person
) -> None:
    """Who is in it, under which names, who has which power: of everybody, for members are not loaded lazily."""
    room_id = await kitchen_with(client, chef)
    await chef.say(room_id, "8:05 11/12")
    await loop.step()
    events = await kept(storage)
    assert not [event for event in events if not isinstance(event, Membership | RoomState)]
    assert {event.type for event in events if isinstance(event, RoomState)} == {
        "m.room.create",
        "m.room.power_levels",
        "m.room.name",
    }
    names = {event.name for event in events if isinstance(event, Membership) and event.state == "join"}
    assert names == {"Ime", "Platepace"}


async def test_every_kind_of_event_comes_through_as_what_it_is_and_the_bots_own_does_not(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person
) -> None:
    """Message, edit, reaction, redaction; a notice and the bot's own echo are nothing."""
    room_id = await kitchen_with(client, chef)
    await loop.step()
    await kept(storage)
    said = await chef.say(room_id, "3:02 8/8", **{"m.mentions": {"user_ids": [client.user_id]}})
    await client.send(room_id, "m.room.message", {"msgtype": "m.text", "body": "3:03 8/8"}, "t1")
    await chef.say(room_id, "a notice", msgtype="m.notice")
    edit = await chef.edit(room_id, said, "3:02 7/8")
    hand = await chef.react(room_id, said, "✋")
    async with running(loop):
        events = await until_kept(storage, lambda event: isinstance(event, Reaction))
        await chef.delete(room_id, hand)
        events += await until_kept(storage, lambda event: isinstance(event, Redaction))
    message, edited, reaction, redaction = events
    assert isinstance(message, Message)
    assert isinstance(edited, Edit)
    assert isinstance(reaction, Reaction)
    assert isinstance(redaction, Redaction)
    assert (message.event_id, message.text, message.mentions) == (said, "3:02 8/8", (client.user_id,))
    assert (edited.event_id, edited.target, edited.text) == (edit, said, "3:02 7/8")
    assert (reaction.target, reaction.key, redaction.target) == (said, "✋", hand)


async def test_a_gap_of_137_messages_is_filled_in_order(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person, reports: Reports
) -> None:
    """Said while the bot was away, with a change of name in between (which the server makes in its own time)."""
    room_id = await kitchen_with(client, chef)
    await loop.step()
    await kept(storage)
    for number in range(137):
        await chef.say(room_id, f"{number}")
        if number == 20:
            await chef.ask("PUT", f"profile/{chef.user_id}/displayname", {"displayname": "Chef Ime"})
    await loop.step()
    events = await kept(storage)
    assert [event.text for event in events if isinstance(event, Message)] == [f"{number}" for number in range(137)]
    (renamed,) = [event for event in events if isinstance(event, Membership)]
    assert renamed.name == "Chef Ime"
    assert 20 < events.index(renamed) < 60
    await chef.say(room_id, "and on")
    await loop.step()
    assert [event.text for event in await kept(storage) if isinstance(event, Message)] == ["and on"]
    assert reports.told == []


async def test_an_invitation_is_accepted_and_only_what_follows_is_heard(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person, person: MakePerson
) -> None:
    """The room's history is readable and yet none of the bot's business; a stranger's invitation is left open."""
    mallory = await person("Mallory")
    async with running(loop):
        room_id = await chef.open_room()
        strange_room = await mallory.open_room()
        await mallory.invite(strange_room, client.user_id)
        for number in range(30):
            await chef.say(room_id, f"before {number}")
        await chef.invite(room_id, client.user_id)
        events = await until_kept(storage, joins(client, room_id))
        await chef.say(room_id, "after")
        events += await until_kept(storage, says("after"))
    assert [event.text for event in events if isinstance(event, Message)] == ["after"]
    invitations = [event for event in events if isinstance(event, Membership) and event.state == "invite"]
    assert {(event.room_id, event.sender) for event in invitations if event.event_id.startswith("invite:")} == {
        (room_id, chef.user_id),
        (strange_room, mallory.user_id),
    }
    assert strange_room not in await client.joined_rooms()


async def test_an_invitation_to_a_room_of_two_says_so_before_and_after_the_joining(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person
) -> None:
    """Clients say it in the invitation; the joining itself does not."""
    async with running(loop):
        room_id = await chef.open_room(is_direct=True, invite=[client.user_id], preset="trusted_private_chat")
        events = await until_kept(storage, joins(client, room_id))
    own = [event for event in events if isinstance(event, Membership) and event.person == client.user_id]
    assert {(event.state, event.direct) for event in own} == {("invite", True), ("join", True)}


async def test_an_invitation_that_came_while_the_bot_was_away_is_found_at_the_start(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person, reports: Reports
) -> None:
    """Also one that lies before the token of the run that was stopped, and is in no later sync."""
    await loop.step()
    room_id = await chef.open_room(invite=[client.user_id])
    async with storage.begin() as work:
        await work.inbox.take(client.user_id, [], (await client.sync(None, wait_s=0)).next_batch)
    async with running(new_loop(client, storage, reports, chef)):
        await until_kept(storage, joins(client, room_id))


async def test_being_kicked_is_heard_and_coming_back_begins_anew(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person
) -> None:
    """What was said while the bot was outside is not heard."""
    async with running(loop):
        room_id = await chef.open_room()
        await chef.invite(room_id, client.user_id)
        await until_kept(storage, joins(client, room_id))
        await chef.kick(room_id, client.user_id)
        events = await until_kept(storage, lambda event: isinstance(event, Membership) and event.state == "leave")
        assert [event.person for event in events if isinstance(event, Membership)] == [client.user_id]
        await chef.say(room_id, "behind its back")
        await chef.invite(room_id, client.user_id)
        await until_kept(storage, joins(client, room_id))
        await chef.say(room_id, "welcome back")
        heard = await until_kept(storage, says("welcome back"))
    assert [event.text for event in heard if isinstance(event, Message)] == ["welcome back"]


async def test_a_change_of_the_bots_own_name_makes_nothing_unheard(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person
) -> None:
    """On the wire it looks like a joining; also in a gap read back from the room's past."""
    room_id = await kitchen_with(client, chef)
    await loop.step()
    await kept(storage)
    rename = {"membership": "join", "displayname": "Platepace II"}
    for number in range(120):
        await chef.say(room_id, f"{number}")
        if number in {10, 110}:
            await client._call("PUT", "v3/rooms/{}/state/m.room.member/{}", room_id, client.user_id, body=rename)
            rename = rename | {"displayname": "Platepace III"}
    await loop.step()
    heard = [event.text for event in await kept(storage) if isinstance(event, Message)]
    assert heard == [f"{number}" for number in range(120)]


async def test_a_token_that_the_server_refuses_is_replaced_and_the_gap_is_filled(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person, reports: Reports
) -> None:
    """What was known is not heard twice, what was said since is heard once, what was never heard stays so."""
    room_id = await chef.open_room()
    await chef.say(room_id, "before the bot")
    await chef.invite(room_id, client.user_id)
    await client.join(room_id)
    await chef.say(room_id, "before the first sync")
    await loop.step()
    await chef.say(room_id, "known")
    await loop.step()
    await kept(storage)
    async with storage.begin() as work:
        await work.inbox.take(client.user_id, [], "no token of this server's")
    for number in range(130):
        await chef.say(room_id, f"{number}")
    async with running(new_loop(client, storage, reports, chef)):
        events = await until_kept(storage, says("129"))
    assert [event.text for event in events if isinstance(event, Message)] == [f"{number}" for number in range(130)]
    assert reports.told == []


async def test_a_login_lost_on_the_server_is_renewed_on_the_same_device(
    loop: SyncLoop, client: Client, storage: SqlStorage, chef: Person, bot_account: Account
) -> None:
    """The bot goes on where it was; the same transaction id still means the same message."""
    room_id = await kitchen_with(client, chef)
    await loop.step()
    await kept(storage)
    content = {"msgtype": "m.text", "body": "Heard."}
    first = await client.send(room_id, "m.room.message", content, "t1")
    device_id = await client.sign_in()
    before = client.token
    await client._call("POST", "v3/logout", body={})
    await chef.say(room_id, "3:02 8/8")
    async with running(loop):
        await until_kept(storage, says("3:02 8/8"))
    assert client.token != before
    assert await client.sign_in() == device_id
    assert await client.send(room_id, "m.room.message", content, "t2") != first
