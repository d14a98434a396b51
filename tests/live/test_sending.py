"""The sender, messenger and client against a real Synapse: said once, in order, where and as it was meant."""

import asyncio
import time
from collections.abc import AsyncIterator, Awaitable, Callable
from pathlib import Path
from typing import Any

import aiohttp
import pytest

from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from bot.matrix.faults import Refused
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.world import World
from bot.services.ports.messages import Cause, EventRef, Outgoing, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock, a_note
from tests.live.conftest import MakePerson
from tests.live.people import PASSWORD, Person, sign_in
from tests.matrix.fakes import Reports, Rests, a_world

pytestmark = pytest.mark.live

Say = Callable[..., Awaitable[EventRef]]


@pytest.fixture
def clock() -> FixedClock:
    """Monday at three."""
    return FixedClock()


@pytest.fixture
async def storage(clock: FixedClock) -> AsyncIterator[SqlStorage]:
    """A storage in memory."""
    storage = SqlStorage("sqlite+aiosqlite://", clock)
    await storage.migrate()
    yield storage
    await storage.close()


@pytest.fixture
def reports() -> Reports:
    """What the admins were told."""
    return Reports()


@pytest.fixture
def dead() -> list[str]:
    """Why rows were buried."""
    return []


def new_sender(storage: SqlStorage, client: Client, world: World, reports: Reports, dead: list[str]) -> Sender:
    """A sender as the bot has it."""

    async def on_dead(_: UnitOfWork, __: Waiting, problem: str) -> None:
        dead.append(problem)

    pace = Pace(world, rate_per_s=1e6, burst=1e6)
    return Sender(storage, RoomMessenger(client, reports), world, pace, on_dead=on_dead)


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
async def chef(person: MakePerson) -> Person:
    """The chef."""
    return await person("Ime")


@pytest.fixture
async def kitchen(client: Client, chef: Person) -> str:
    """A room of the chef's in which the bot is."""
    room_id = await chef.open_room(power_level_content_override={"events": {"m.room.pinned_events": 0}})
    await chef.invite(room_id, client.user_id)
    await client.join(room_id)
    return room_id


def texts(events: list[dict[str, Any]]) -> list[str]:
    """What these messages say."""
    return [event["content"]["body"] for event in events]


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


async def test_a_reaction_put_on_twice_is_there_once_and_both_rows_are_done(
    sender: Sender, say: Say, chef: Person, kitchen: str, storage: SqlStorage, dead: list[str]
) -> None:
    """Under another transaction id, as for a second cause: the server's refusal is a formality."""
    said = await chef.say(kitchen, "3:02 8/8")
    refs = [await say(kitchen, "", style="reaction", target=EventRef(said), key="📝") for _ in range(2)]
    await sender.flush()
    (reaction,) = await chef.read(kitchen, "m.reaction")
    async with storage.begin() as work:
        assert [await work.outbox.event_of(ref) for ref in refs] == [reaction["event_id"]] * 2
    assert dead == []


async def test_where_the_bot_may_not_pin_it_posts_all_the_same(
    sender: Sender, say: Say, client: Client, chef: Person, reports: Reports, dead: list[str]
) -> None:
    """In a room as clients make them, only moderators pin."""
    room_id = await chef.open_room(invite=[client.user_id])
    await client.join(room_id)
    root = await say(room_id, "Drill of the week", style="text")
    await say(room_id, "", style="pin", target=root)
    await say(room_id, "Heard.")
    await sender.flush()
    assert texts(await chef.read(room_id)) == ["Drill of the week", "Heard."]
    assert (len(reports.told), dead) == (1, [])


async def test_where_the_server_allows_no_thread_it_is_said_without(
    sender: Sender, say: Say, chef: Person, kitchen: str, reports: Reports
) -> None:
    """Source: T, specification, "Validation of m.thread relationships": 400 where the root has a relation itself."""
    said = await chef.say(kitchen, "3:02 8/8")
    edit = await chef.edit(kitchen, said, "3:02 7/8")
    await say(kitchen, "Heard.", thread=EventRef(edit))
    await sender.flush()
    last = (await chef.read(kitchen))[-1]
    assert (last["content"]["body"], "m.relates_to" in last["content"]) == ("Heard.", False)
    assert len(reports.told) == 1


async def test_the_server_refuses_for_good_what_is_too_large_or_forbidden(
    sender: Sender, say: Say, client: Client, chef: Person, kitchen: str, dead: list[str]
) -> None:
    """65 kB at the wire; and a room that the bot is not in."""
    with pytest.raises(Refused) as too_large:
        await client.send(kitchen, "m.room.message", {"msgtype": "m.text", "body": "x" * 66_000}, "t1")
    assert (too_large.value.status, too_large.value.errcode) == (413, "M_TOO_LARGE")
    await say(await chef.open_room(), "Nobody hears this.")
    await say(kitchen, "Heard.")
    await sender.flush()
    assert texts(await chef.read(kitchen)) == ["Heard."]
    assert [problem.split()[:2] for problem in dead] == [["403", "M_FORBIDDEN"]]


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


class RealRests(Rests):
    """Rests that take their time."""

    async def __call__(self, seconds: float) -> None:
        """Sleep, and let the clock know."""
        await super().__call__(seconds)
        await asyncio.sleep(seconds)


async def test_a_limited_bot_says_everything_once_and_in_order(
    storage: SqlStorage, say: Say, clock: FixedClock, reports: Reports, dead: list[str], tmp_path: Path
) -> None:
    """Synapse's own limits stop it after ten messages; it leaves the server alone as asked and goes on."""
    rests = RealRests(clock)
    async with private_homeserver(tmp_path, rate_limits=True) as server, aiohttp.ClientSession() as session:
        chef = await sign_in(server, session, await server.register("ime", PASSWORD), "Ime")
        bot_id = await server.register("platepace", PASSWORD)
        client = Client(server.url, Account(bot_id, password=PASSWORD))
        await client.sign_in()
        room_id = await chef.open_room(invite=[bot_id])
        await client.join(room_id)
        for number in range(12):
            await say(room_id, f"{number}", style="text")
        task = asyncio.create_task(new_sender(storage, client, a_world(rests), reports, dead).run())
        said: list[dict[str, Any]] = []
        async with asyncio.timeout(60):
            while len(said) < 12:
                await asyncio.sleep(1)
                said = await chef.read(room_id)
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)
        await client.close()
    assert texts(said) == [f"{number}" for number in range(12)]
    assert dead == []
    assert max(rests.taken) > 1.0


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
