"""The sender, messenger and client against a real Synapse: said once, in order, where and as it was meant."""

import time

import pytest

from bot.homeserver import Homeserver
from bot.matrix.client import Account, Client
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import Sender
from bot.services.ports.messages import EventRef, Outgoing, Waiting
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock, a_note
from tests.live.conftest import MakePerson
from tests.live.people import PASSWORD, Person
from tests.live.saying import Say, texts
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live


async def test_the_same_transaction_id_is_the_same_event_also_after_signing_in_anew(
    client: Client, chef: Person, kitchen: str, server: Homeserver, bot_account: Account
) -> None:
    """On the same device; on another one it is a second message, which is why the device is kept for life."""
    content = {"msgtype": "m.notice", "body": "Heard."}
    first = await client.send(kitchen, "m.room.message", content, "t1")
    assert await client.send(kitchen, "m.room.message", content, "t1") == first
    device_id = await client.sign_in()
    assert await client.send(kitchen, "m.room.message", content, "t1") == first
    assert len(await chef.read(kitchen)) == 1
    other = Client(server.url, Account(bot_account.user_id, password=PASSWORD))
    assert await other.sign_in() != device_id
    assert await other.send(kitchen, "m.room.message", content, "t1") != first
    await other.close()


async def test_the_server_swallows_a_reaction_under_a_messages_transaction_id(
    client: Client, chef: Person, kitchen: str
) -> None:
    """It answers with the message's event and adds nothing: that is why the event type is part of our ids."""
    said = await chef.say(kitchen, "3:02 8/8")
    first = await client.send(kitchen, "m.room.message", {"msgtype": "m.notice", "body": "Heard."}, "t1")
    reaction = {"m.relates_to": {"rel_type": "m.annotation", "event_id": said, "key": "📝"}}
    assert await client.send(kitchen, "m.reaction", reaction, "t1") == first
    assert await chef.read(kitchen, "m.reaction") == []


async def test_a_row_sent_but_not_marked_is_sent_again_and_said_once(
    sender: Sender, say: Say, storage: SqlStorage, client: Client, chef: Person, kitchen: str, clock: FixedClock
) -> None:
    """As when the process dies between the server's answer and the mark."""
    await say(kitchen, style="text")
    async with storage.begin() as work:
        (row,) = await work.outbox.head(kitchen, 1)
        await work.outbox.lease(row.id, (), row.note, clock())
    sent = await RoomMessenger(client, Reports()).send(row, kitchen, row.note)
    async with storage.begin() as work:
        await work.outbox.release()
    await sender.flush()
    (message,) = await chef.read(kitchen)
    assert message["event_id"] == sent
    async with storage.begin() as work:
        assert await work.outbox.event_of(EventRef(f"outbox:{row.id}")) == sent


async def test_thread_reply_reaction_pin_and_rich_text_are_what_the_server_makes_of_them(
    sender: Sender, say: Say, chef: Person, kitchen: str, client: Client
) -> None:
    """The server counts the thread, aggregates the reaction, and shows the pin."""
    said = await chef.say(kitchen, "3:02 8/8")
    root = await say(kitchen, "Drill of the week", style="text", html="<b>Drill of the week</b>")
    await say(kitchen, "", style="pin", target=root)
    await say(kitchen, "", style="reaction", target=EventRef(said), key="📝")
    await say(kitchen, "Heard.", thread=root, reply_to=EventRef(said), mentions=(chef.user_id,))
    await sender.flush()
    _, post, answer = await chef.read(kitchen)
    assert post["unsigned"]["m.relations"]["m.thread"]["count"] == 1
    assert post["content"]["formatted_body"] == "<b>Drill of the week</b>"
    assert answer["content"]["m.mentions"] == {"user_ids": [chef.user_id]}
    assert await chef.state(kitchen, "m.room.pinned_events") == {"pinned": [post["event_id"]]}
    (reaction,) = await chef.read(kitchen, "m.reaction")
    assert (reaction["sender"], reaction["content"]["m.relates_to"]["key"]) == (client.user_id, "📝")


async def test_the_longest_text_that_is_sent_fits(sender: Sender, say: Say, chef: Person, kitchen: str) -> None:
    """16 kB of it, and as much rich text, in four-byte characters, which JSON may write as twelve."""
    await say(kitchen, "🔪" * 4000, html="🔪" * 4000, style="text")
    await sender.flush()
    assert texts(await chef.read(kitchen)) == ["🔪" * 4000]


async def test_a_private_room_is_opened_once_and_found_again(
    sender: Sender, say: Say, client: Client, person: MakePerson, storage: SqlStorage
) -> None:
    """Found by its mark where its making was never noted; what was said before the cook came in can be read."""
    noor = await person("Noor")
    await say(noor.user_id, "Yours alone.", style="text")
    await sender.flush()
    async with storage.begin() as work:
        room_id = await work.kitchens.private_room(noor.user_id)
        await work.kitchens.save_private(noor.user_id, None)
    assert room_id is not None
    assert await client.joined_rooms() == [room_id]
    messenger = RoomMessenger(client, Reports())
    assert await messenger.open_private(noor.user_id, look_first=True) == room_id
    await noor.join(room_id)
    assert texts(await noor.read(room_id)) == ["Yours alone."]
    assert await messenger.open_private(noor.user_id, look_first=True) == room_id
    invitation = await noor.ask("GET", f"rooms/{room_id}/members", membership="join")
    assert {event["state_key"] for event in invitation["chunk"]} == {client.user_id, noor.user_id}


async def test_a_room_that_somebody_else_marked_is_not_taken_for_the_private_one(
    client: Client, person: MakePerson
) -> None:
    """Or its maker would read what is meant for one cook alone."""
    noor, mallory = await person("Noor"), await person("Mallory")
    mark = {"platepace.private_with": noor.user_id}
    trap = await mallory.open_room(creation_content=mark, invite=[noor.user_id, client.user_id])
    await noor.join(trap)
    await client.join(trap)
    assert await RoomMessenger(client, Reports()).open_private(noor.user_id, look_first=True) != trap


async def test_a_row_of_yesterday_is_found_in_the_room_by_what_it_carries(
    client: Client, chef: Person, kitchen: str, clock: FixedClock
) -> None:
    """Behind hundreds of others' messages and some of the bot's own; from another device too."""
    messenger = RoomMessenger(client, Reports())

    def row(txn_id: str, note: Outgoing) -> Waiting:
        return Waiting(id=1, lane=kitchen, txn_id=txn_id, note=note, attempts=1, first_try_at_s=time.time())

    note = a_note("Heard.", to=kitchen)
    sent = await messenger.send(row("mine", note), kitchen, note)
    for number in range(250):
        await chef.say(kitchen, f"{number}")
    await messenger.send(row("later", note), kitchen, note)
    assert await messenger.find_sent(row("mine", note), kitchen) == sent
    assert await messenger.find_sent(row("never", note), kitchen) is None


async def test_a_hundred_answers_go_out_in_seconds(sender: Sender, say: Say, chef: Person, kitchen: str) -> None:
    """Merged by twelves: nine messages, every line in order."""
    for number in range(100):
        await say(kitchen, f"{number}")
    started = time.monotonic()
    await sender.flush()
    assert time.monotonic() - started < 10
    messages = texts(await chef.read(kitchen))
    assert len(messages) == 9
    assert "\n".join(messages) == "\n".join(f"{number}" for number in range(100))
