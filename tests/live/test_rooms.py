"""Rooms come and go on a real Synapse: invitations, kicks, and what is said before, between and after."""

import pytest

from bot.matrix.client import Client
from bot.matrix.sync import SyncLoop
from bot.services.ports.events import Membership, Message
from bot.storage.storage import SqlStorage
from tests.live.conftest import MakePerson
from tests.live.listening import joins, kept, kitchen_with, new_loop, running, says, until_kept
from tests.live.people import Person
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live


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
    assert room_id in await client.joined_rooms()


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
