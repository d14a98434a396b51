"""The inbox keeps everything once, in order, and forgets what was said."""

import asyncio
import logging
from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import select, update

from bot.services.ports.events import Edit, Incoming, Membership, Message, Reaction, Redaction, RoomState
from bot.storage.storage import SqlStorage
from bot.storage.tables import inbox
from tests.fakes import IME, KITCHEN_ROOM, LIO, MONDAY, NOOR, FixedClock, a_message
from tests.storage.conftest import Raw

ACCOUNT = "@platepace:tern.example"


def every_kind() -> list[Incoming]:
    """One event of each kind, each with all its fields."""
    return [
        Message(
            event_id="$1",
            room_id=KITCHEN_ROOM,
            sender=NOOR,
            sent_at=MONDAY,
            text="8'05\" ١١/١٢",
            reply_to="$0",
            thread="$t",
            mentions=(LIO,),
        ),
        Edit(event_id="$2", room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, target="$1", text="8:06 11/12"),
        Reaction(event_id="$3", room_id=KITCHEN_ROOM, sender=LIO, sent_at=MONDAY, target="$1", key="✋🏽"),
        Redaction(event_id="$4", room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, target="$1"),
        Membership(
            event_id="$5",
            room_id=KITCHEN_ROOM,
            sender=IME,
            sent_at=MONDAY,
            person=LIO,
            state="join",
            name="Lio",
            direct=True,
        ),
        RoomState(
            event_id="$6",
            room_id=KITCHEN_ROOM,
            sender=IME,
            sent_at=MONDAY,
            type="m.room.power_levels",
            content={"users": {IME: 100}, "events": {}, "ban": 50, "x": [1.5, None, True]},
        ),
    ]


async def drain(storage: SqlStorage) -> list[Incoming]:
    """Everything in the inbox in the order in which it comes out, each settled."""
    events = []
    async with storage.begin() as work:
        while received := await work.inbox.oldest():
            events.append(received.event)
            await work.inbox.settle(received.seq)
    return events


async def test_what_goes_in_comes_out_whole_and_in_order(storage: SqlStorage) -> None:
    """Every kind of event comes back equal to what was taken."""
    async with storage.begin() as work:
        assert await work.inbox.take(ACCOUNT, every_kind(), "s1") == 6
    assert await drain(storage) == every_kind()


async def test_an_event_is_taken_once_even_after_it_was_dealt_with(storage: SqlStorage) -> None:
    """The same event in one batch, in the next, and after settling is new only the first time."""
    async with storage.begin() as work:
        assert await work.inbox.take(ACCOUNT, [a_message("$1"), a_message("$1"), a_message("$2")], None) == 2
        assert await work.inbox.take(ACCOUNT, [a_message("$2"), a_message("$3")], None) == 1
    assert [event.event_id for event in await drain(storage)] == ["$1", "$2", "$3"]
    async with storage.begin() as work:
        assert await work.inbox.take(ACCOUNT, [a_message("$3")], None) == 0
        assert await work.inbox.known(["$1", "$3", "$9"]) == {"$1", "$3"}
        assert await work.inbox.known([]) == set()
        assert await work.inbox.oldest() is None


async def test_events_and_token_are_kept_together_or_not_at_all(storage: SqlStorage) -> None:
    """When the transaction that takes a batch fails, neither its events nor its token stay."""
    async with storage.begin() as work:
        await work.inbox.take(ACCOUNT, [a_message("$1")], "s1")

    async def power_cut() -> None:
        async with storage.begin() as work:
            await work.inbox.take(ACCOUNT, [a_message("$2")], "s2")
            raise OSError("power cut")

    with pytest.raises(OSError, match="power cut"):
        await power_cut()
    async with storage.begin() as work:
        assert await work.inbox.token(ACCOUNT) == "s1"
        assert await work.inbox.known(["$1", "$2"]) == {"$1"}


async def test_a_token_is_kept_for_each_account_until_forgotten(storage: SqlStorage) -> None:
    """The newest token counts; a batch without one leaves it; forgetting one account leaves the other."""
    async with storage.begin() as work:
        assert await work.inbox.token(ACCOUNT) is None
        await work.inbox.take(ACCOUNT, [], "s1")
        await work.inbox.take(ACCOUNT, [], "s2")
        await work.inbox.take(ACCOUNT, [], None)
        await work.inbox.take("@other:tern.example", [], "o1")
        assert await work.inbox.token(ACCOUNT) == "s2"
        assert await work.inbox.token("@other:tern.example") == "o1"


@pytest.mark.parametrize("end", ["settle", "bury"])
async def test_only_event_id_and_state_stay(storage: SqlStorage, raw: Raw, clock: FixedClock, end: str) -> None:
    """What was said, where, and what went wrong is gone from the row once it is dealt with or given up."""
    async with storage.begin() as work:
        await work.inbox.take(ACCOUNT, [a_message("$1", "the soup is off")], None)
        received = await work.inbox.oldest()
        assert received is not None
        await work.inbox.fail(received.seq, "the soup is off")
    [before] = await raw(select(inbox))
    assert "the soup is off" in before["body"]
    assert before["received"] == clock()
    async with storage.begin() as work:
        await (work.inbox.settle if end == "settle" else work.inbox.bury)(received.seq)
    [after] = await raw(select(inbox.c.event_id, inbox.c.state, inbox.c.room_id, inbox.c.body, inbox.c.problem))
    assert list(after.values()) == ["$1", "done" if end == "settle" else "dead", None, None, None]


async def test_failures_are_counted_and_a_dead_event_lets_the_next_pass(storage: SqlStorage) -> None:
    """An event that fails stays first, with its count, until it is buried."""
    async with storage.begin() as work:
        await work.inbox.take(ACCOUNT, [a_message("$1"), a_message("$2")], None)
        first = await work.inbox.oldest()
        assert first is not None
        assert [await work.inbox.fail(first.seq, "TypeError") for _ in range(3)] == [1, 2, 3]
        again = await work.inbox.oldest()
        assert again is not None
        assert (again.event.event_id, again.attempts) == ("$1", 3)
        await work.inbox.bury(first.seq)
        following = await work.inbox.oldest()
        assert following is not None
        assert (following.event.event_id, following.attempts) == ("$2", 0)


async def test_words_that_are_no_text_hold_up_nobody(storage: SqlStorage, raw: Raw) -> None:
    """Half a surrogate pair cannot be stored: its event is dead at once, a NUL is harmless, and the token goes on."""
    async with storage.begin() as work:
        events = [a_message("$1", "\ud83d"), a_message("$2", "8:05\x00 11/12")]
        assert await work.inbox.take(ACCOUNT, events, "s1") == 2
        assert await work.inbox.token(ACCOUNT) == "s1"
    assert await drain(storage) == [a_message("$2", "8:05\x00 11/12")]
    assert [row["state"] for row in await raw(select(inbox.c.state).order_by(inbox.c.seq))] == ["dead", "done"]


async def test_an_event_written_by_another_version_is_buried(
    storage: SqlStorage, raw: Raw, caplog: pytest.LogCaptureFixture
) -> None:
    """A body that this code cannot read is given up, said in the log, and the next event comes."""
    async with storage.begin() as work:
        await work.inbox.take(ACCOUNT, [a_message("$1"), a_message("$2")], None)
    await raw(update(inbox).where(inbox.c.event_id == "$1").values(body='{"kind":"poll","text":"soup?"}'))
    with caplog.at_level(logging.ERROR):
        assert [event.event_id for event in await drain(storage)] == ["$2"]
    assert "cannot be read" in caplog.text


@settings(max_examples=40, deadline=None)
@given(
    stream=st.lists(st.integers(1, 12), max_size=30),
    steps=st.lists(st.tuples(st.integers(0, 8), st.integers(0, 12)), max_size=8),
)
def test_however_a_stream_is_cut_and_repeated_the_inbox_is_the_same(
    stream: list[int], steps: list[tuple[int, int]]
) -> None:
    """Batches of any size, each beginning up to twelve events back, give each event once, in the order first seen."""
    events = [a_message(f"${number}") for number in stream]
    batches, reached = [], 0
    for size, back in steps:
        batches.append(events[max(0, reached - back) : reached + size])
        reached += size
    batches.append(events[reached:])
    assert [event.event_id for event in asyncio.run(_take_all(batches))] == list(dict.fromkeys(f"${n}" for n in stream))


async def _take_all(batches: list[list[Message]]) -> list[Incoming]:
    storage = SqlStorage("sqlite://", FixedClock())
    await storage.migrate()
    for batch in batches:
        async with storage.begin() as work:
            await work.inbox.take(ACCOUNT, batch, None)
    events = await drain(storage)
    await storage.close()
    return events


async def test_the_time_of_arrival_is_the_clocks_and_in_utc(storage: SqlStorage, raw: Raw, clock: FixedClock) -> None:
    """What is stored is the bot's own time, aware."""
    clock.advance(90)
    async with storage.begin() as work:
        await work.inbox.take(ACCOUNT, [a_message("$1")], None)
    [row] = await raw(select(inbox.c.received))
    assert row["received"] == MONDAY + timedelta(seconds=90)
    assert row["received"].utcoffset() == timedelta(0)
