"""The outbox keeps every saying once, under one transaction id, and lets each lane go in order."""

import hashlib
from datetime import datetime, timedelta

import pytest
from sqlalchemy import select

from bot.services.ports.messages import Cause, EventRef, Outgoing
from bot.services.ports.world import UnitOfWork
from bot.storage.outbox import transaction_id
from bot.storage.storage import SqlStorage
from bot.storage.tables import outbox
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR, FixedClock, a_note, a_schedule
from tests.storage.conftest import Raw

ANSWER = Cause(event_id="$asked")


async def add(work: UnitOfWork, *notes: Outgoing, cause: Cause = ANSWER) -> list[int]:
    """Put these into the outbox as parts of one saying; their row ids."""
    refs = [await work.outbox.add(note, cause, part) for part, note in enumerate(notes)]
    return [int(ref.removeprefix("outbox:")) for ref in refs]


async def free_lanes(work: UnitOfWork, now: datetime) -> list[str]:
    """The lanes that need not rest now."""
    return [lane for lane, until in await work.outbox.lanes() if until is None or until <= now]


async def next_try_at(work: UnitOfWork) -> datetime | None:
    """When the first of the lanes at rest may be tried."""
    return min((until for _, until in await work.outbox.lanes() if until), default=None)


async def test_a_message_waits_whole_under_its_stored_transaction_id(storage: SqlStorage) -> None:
    """What comes to the head of its lane is what was added, not yet tried, with the documented transaction id."""
    note = a_note(
        "Net 4:09 (one redo cost 0:49).",
        html="<b>4:09</b>",
        thread=EventRef("outbox:7"),
        reply_to=EventRef("$asked"),
        about="Noor",
        mentions=(NOOR,),
    )
    async with storage.begin() as work:
        [row] = await add(work, note)
        [head] = await work.outbox.head(KITCHEN_ROOM, 5)
    # The recipe of the design: cause event id, part, room, event type, revision; recomputed here [R].
    expected = hashlib.sha256(f"$asked|0|{KITCHEN_ROOM}|m.room.message|0".encode()).hexdigest()[:32]
    assert (head.id, head.lane, head.txn_id, head.note) == (row, KITCHEN_ROOM, expected, note)
    assert (head.attempts, head.first_try_at_s) == (0, None)


async def test_the_same_saying_is_kept_once(storage: SqlStorage) -> None:
    """The same cause and part again gives the first reference and changes nothing; a revision is a new saying."""
    async with storage.begin() as work:
        first = await work.outbox.add(a_note("Heard."), ANSWER, 0)
        assert await work.outbox.add(a_note("Heard, twice."), ANSWER, 0) == first
        assert await work.outbox.add(a_note("Heard.", to="!other:tern.example"), ANSWER, 0) == first
        second = await work.outbox.add(a_note("Corrected."), Cause(event_id="$asked", revision=1), 0)
        waiting = await work.outbox.head(KITCHEN_ROOM, 9)
    assert [row.note.text for row in waiting] == ["Heard.", "Corrected."]
    assert first != second


async def test_a_slot_of_a_schedule_says_its_parts_once(storage: SqlStorage) -> None:
    """Schedule, slot and part make a post unique, next to answers with the same part numbers."""
    async with storage.begin() as work:
        schedule = await work.schedules.save(a_schedule())
        monday = Cause(schedule_id=schedule.id, slot="2026-W48")
        ref = await work.outbox.add(a_note("Slipway"), monday, 0)
        assert await work.outbox.add(a_note("Slipway"), monday, 0) == ref
        await work.outbox.add(a_note("Heard."), ANSWER, 0)
        await work.outbox.add(a_note("Slipway"), Cause(schedule_id=schedule.id, slot="2026-W49"), 0)
        rows = await work.outbox.head(KITCHEN_ROOM, 9)
    assert [row.note.text for row in rows] == ["Slipway", "Heard.", "Slipway"]
    # Schedule, slot, part, room, event type; recomputed here [R].
    expected = hashlib.sha256(f"{schedule.id}|2026-W48|0|{KITCHEN_ROOM}|m.room.message".encode()).hexdigest()[:32]
    assert rows[0].txn_id == expected


def test_a_reaction_and_a_message_in_one_room_never_share_a_transaction_id() -> None:
    """Servers leave the event type out of their own key, so it is in ours."""
    styles = [a_note(style=style) for style in ("notice", "reaction", "pin")]
    assert len({transaction_id(note, ANSWER, 0) for note in styles}) == 3
    assert transaction_id(a_note(style="text"), ANSWER, 0) == transaction_id(a_note(style="notice"), ANSWER, 0)


async def test_reactions_have_a_lane_of_their_own(storage: SqlStorage) -> None:
    """A room's reactions need not wait for its messages; a person's lane is the person."""
    async with storage.begin() as work:
        await add(
            work, a_note("Heard."), a_note(style="reaction", target=EventRef("$asked"), key="📝"), a_note(to=NOOR)
        )
        assert await free_lanes(work, MONDAY) == [KITCHEN_ROOM, f"{KITCHEN_ROOM}#ack", NOOR]


async def test_a_lane_that_rests_blocks_its_own_messages_only(storage: SqlStorage) -> None:
    """After a failed attempt nothing of that lane goes until the moment named, and others go on."""
    later = MONDAY + timedelta(seconds=30)
    async with storage.begin() as work:
        first, _, other = await add(work, a_note("one"), a_note("two"), a_note("three", to=NOOR))
        assert await work.outbox.lease(first, [], a_note("one"), MONDAY)
        await work.outbox.postpone(first, later, "429")
        assert await free_lanes(work, MONDAY) == [NOOR]
        assert await next_try_at(work) == later
        assert await free_lanes(work, later) == [KITCHEN_ROOM, NOOR]
        [head] = await work.outbox.head(KITCHEN_ROOM, 1)
        assert (head.id, head.attempts, head.first_try_at_s) == (first, 1, MONDAY.timestamp())
        await work.outbox.sent(first, "$one")
        await work.outbox.sent(other, "$three")
        assert await free_lanes(work, MONDAY) == [KITCHEN_ROOM]
        assert await next_try_at(work) is None


async def test_a_leased_lane_is_left_alone_until_the_lease_ends(storage: SqlStorage) -> None:
    """While one tries the head nobody else may; after the lease it is tried again under the same id."""
    async with storage.begin() as work:
        first, second = await add(work, a_note("one"), a_note("two"))
        [before, _] = await work.outbox.head(KITCHEN_ROOM, 2)
        assert not await work.outbox.lease(second, [], a_note("two"), MONDAY)
        assert await work.outbox.lease(first, [], a_note("one"), MONDAY)
        assert not await work.outbox.lease(first, [], a_note("one"), MONDAY + timedelta(seconds=59))
        assert await free_lanes(work, MONDAY + timedelta(seconds=59)) == []
        assert await next_try_at(work) == MONDAY + timedelta(seconds=60)
        lapsed = MONDAY + timedelta(seconds=60)
        assert await free_lanes(work, lapsed) == [KITCHEN_ROOM]
        assert await work.outbox.lease(first, [], a_note("one"), lapsed)
        [after] = await work.outbox.head(KITCHEN_ROOM, 2)
    assert after.txn_id == before.txn_id
    assert after.first_try_at_s == MONDAY.timestamp()


async def test_a_new_process_takes_over_what_the_last_one_was_sending(storage: SqlStorage) -> None:
    """Its leases end at once; a lane that rests after a failed attempt goes on resting."""
    later = MONDAY + timedelta(seconds=300)
    async with storage.begin() as work:
        in_hand, resting = await add(work, a_note("one"), a_note("two", to=NOOR))
        await work.outbox.lease(in_hand, [], a_note("one"), MONDAY)
        await work.outbox.lease(resting, [], a_note("two", to=NOOR), MONDAY)
        await work.outbox.postpone(resting, later, "429")
        await work.outbox.release()
        assert await free_lanes(work, MONDAY) == [KITCHEN_ROOM]
        [head] = await work.outbox.head(KITCHEN_ROOM, 1)
        assert head.first_try_at_s == MONDAY.timestamp()
        assert await work.outbox.lease(in_hand, [], a_note("one"), MONDAY)


async def test_what_was_tried_stands_as_it_was_tried(storage: SqlStorage) -> None:
    """Several answers sent as one stay one when tried again: the head comes alone, with all that it says."""
    both = a_note("Noor: Heard.\nLio: Heard.")
    async with storage.begin() as work:
        first, second, third = await add(work, a_note("Heard."), a_note("Heard."), a_note("Board."))
        assert await work.outbox.lease(first, [second], both, MONDAY)
        await work.outbox.postpone(first, MONDAY, "connection reset")
        [head] = await work.outbox.head(KITCHEN_ROOM, 9)
        assert (head.id, head.note) == (first, both)
        await work.outbox.sent(first, "$both")
        [following] = await work.outbox.head(KITCHEN_ROOM, 9)
        assert following.id == third


async def test_an_absorbed_message_is_known_by_the_event_that_carried_it(storage: SqlStorage) -> None:
    """References to both rows lead to the one event."""
    async with storage.begin() as work:
        first, second = await add(work, a_note("Heard."), a_note("Heard."))
        refs = [EventRef(f"outbox:{row}") for row in (first, second)]
        await work.outbox.lease(first, [second], a_note("both"), MONDAY)
        assert [await work.outbox.event_of(ref) for ref in refs] == [None, None]
        await work.outbox.sent(first, "$both")
        assert [await work.outbox.event_of(ref) for ref in refs] == ["$both", "$both"]
        assert await work.outbox.event_of(EventRef("$asked")) == "$asked"


@pytest.mark.parametrize("end", ["sent", "dead"])
async def test_what_was_said_is_erased_when_it_is_over(storage: SqlStorage, raw: Raw, end: str) -> None:
    """Sent or given up, neither the head nor what it absorbed keeps a word; a dead one keeps why; the next may go."""
    async with storage.begin() as work:
        first, second, third = await add(work, a_note("Net 4:09"), a_note("Net 3:58"), a_note("Board."))
        await work.outbox.lease(first, [second], a_note("Net 4:09, net 3:58"), MONDAY)
        await (work.outbox.sent(first, "$sent") if end == "sent" else work.outbox.bury(first, "403"))
        [head] = await work.outbox.head(KITCHEN_ROOM, 9)
        assert head.id == third
        assert await work.outbox.event_of(EventRef(f"outbox:{second}")) == ("$sent" if end == "sent" else None)
    rows = await raw(select(outbox.c.state, outbox.c.content, outbox.c.problem).order_by(outbox.c.id))
    problem = None if end == "sent" else "403"
    assert [list(row.values()) for row in rows[:2]] == [[end, None, problem]] * 2
    assert rows[2]["state"] == "waiting"


async def test_the_lane_that_waits_longest_goes_first(storage: SqlStorage, clock: FixedClock) -> None:
    """Lanes come in the order of their heads, and a lane's next message takes the lane to its own place."""
    async with storage.begin() as work:
        first, *_ = await add(work, a_note("one"), a_note("two", to=NOOR), a_note("three"))
        assert await free_lanes(work, clock()) == [KITCHEN_ROOM, NOOR]
        await work.outbox.sent(first, "$one")
        assert await free_lanes(work, clock()) == [NOOR, KITCHEN_ROOM]
