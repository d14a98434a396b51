"""The sync loop against a real Synapse: gaps, lost tokens and logins; nothing is lost, nothing comes twice."""

import pytest

from bot.matrix.client import Account, Client
from bot.matrix.sync import SyncLoop
from bot.services.ports.events import Edit, Membership, Message, Reaction, Redaction, RoomState
from bot.storage.storage import SqlStorage
from tests.live.listening import kept, kitchen_with, new_loop, running, says, until_kept
from tests.live.people import Person
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live


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
