"""Postings are found by thread, week and state, and their closed boards stay as they stood."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.expected import Fitted
from bot.domain.own_board import Together
from bot.domain.places import Board, Figure, Row
from bot.services.ports.drill_records import FrozenBoard, LiveDrill
from bot.services.ports.messages import Cause, EventRef
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, LIO, MONDAY, NOOR, a_drill, a_live_drill, a_note

UPPER_LOCK = "!lock:tern.example"


async def post(work: UnitOfWork, **changes: object) -> LiveDrill:
    """Post the drill, published first."""
    published = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
    return await work.drills.save_live(a_live_drill(published.set_up_id, published.spec_id, **changes))


async def test_a_posting_is_kept_and_changed(storage: SqlStorage) -> None:
    """It comes back as saved, its drill as it was when posted."""
    async with storage.begin() as work:
        live = await post(work)
        assert await work.drills.live(live.id) == live == a_live_drill(live.set_up_id, live.spec_id, id=live.id)
        closed = replace(live, closed_at=MONDAY, announced=True)
        await work.drills.save_live(closed)
        assert await work.drills.live(live.id) == closed
        assert await work.drills.live(live.id + 1) is None


async def test_a_room_knows_its_open_postings_and_the_last(storage: SqlStorage) -> None:
    """The newest first; closed ones are still the last and still those of their week."""
    async with storage.begin() as work:
        first = await post(work)
        second = await post(work, week="2026-W49", root=EventRef("$root2"))
        elsewhere = await post(work, room_id=UPPER_LOCK)
        assert await work.drills.live_in(KITCHEN_ROOM) == [second, first]
        closed = await work.drills.save_live(replace(second, closed_at=MONDAY))
        assert await work.drills.live_in(KITCHEN_ROOM) == [first]
        assert await work.drills.last_live(KITCHEN_ROOM) == closed
        assert await work.drills.last_live("!nowhere:tern.example") is None
        assert await work.drills.live_for(KITCHEN_ROOM, first.set_up_id, "2026-W49") == closed
        assert await work.drills.live_for(KITCHEN_ROOM, first.set_up_id, "2026-W50") is None
        assert await work.drills.live_for(UPPER_LOCK, first.set_up_id, "2026-W48") == elsewhere


async def test_a_thread_leads_to_its_posting_before_and_after_it_is_sent(storage: SqlStorage) -> None:
    """The root may be an outbox reference; the event that it became leads there, in its own room only."""
    async with storage.begin() as work:
        ref = await work.outbox.add(a_note("Slipway"), Cause(event_id="close:1"), 0)
        live = await post(work, root=ref)
        assert await work.drills.live_by_root(KITCHEN_ROOM, "$posted") is None
        await work.outbox.sent(int(ref.removeprefix("outbox:")), "$posted")
        assert await work.drills.live_by_root(KITCHEN_ROOM, "$posted") == live
        assert await work.drills.live_by_root(UPPER_LOCK, "$posted") is None
        direct = await post(work, root=EventRef("$direct"), week="2026-W49")
        assert await work.drills.live_by_root(KITCHEN_ROOM, "$direct") == direct


async def test_postings_close_in_time_and_are_announced_once(storage: SqlStorage) -> None:
    """What is due to close, and what is closed and untold."""
    async with storage.begin() as work:
        late = await post(work, closes_at=MONDAY + timedelta(days=14))
        soon = await post(work, week="2026-W49")
        assert await work.drills.to_close(soon.closes_at - timedelta(seconds=1)) == []
        assert await work.drills.to_close(soon.closes_at) == [soon]
        assert await work.drills.to_close(late.closes_at) == [soon, late]
        assert await work.drills.to_announce() == []
        closed = await work.drills.save_live(replace(soon, closed_at=soon.closes_at))
        assert await work.drills.to_close(soon.closes_at) == []
        assert await work.drills.to_announce() == [closed]
        await work.drills.save_live(replace(closed, announced=True))
        assert await work.drills.to_announce() == []


async def test_a_closed_board_stays_as_it_stood(storage: SqlStorage) -> None:
    """Every kind comes back with its places and figures, and one kept again stands in the place of the former."""
    async with storage.begin() as work:
        live = await post(work)
        rows = (Row(1, Figure(NOOR, 182, 2, 0.04)), Row(1, Figure(LIO, 182, 1, 0.04)))
        fast = FrozenBoard(live_id=live.id, kind="fast", closed_at=MONDAY, board=Board(rows, shown=2))
        house = replace(fast, kind="house", board=Together(compared=3, met=2, clean_plates=76))
        await work.drills.freeze(replace(fast, board=Board(())))
        await work.drills.freeze(house)
        await work.drills.freeze(fast)
        assert await work.drills.frozen(live.id) == [fast, house]
        assert await work.drills.frozen(live.id + 1) == []


async def test_closed_boards_of_earlier_weeks(storage: SqlStorage) -> None:
    """Those of the kind, of the room, from a week on and before another, the earliest first."""
    async with storage.begin() as work:
        posted = {week: await post(work, week=week) for week in ("2026-W49", "2026-W47", "2026-W48", "2026-W50")}
        posted["elsewhere"] = await post(work, week="2026-W48", room_id=UPPER_LOCK)
        own = Board((Row(1, Figure(NOOR, 1.5, 3, 0.02)),))
        for live in posted.values():
            for kind, board in (("own", own), ("fast", Board(()))):
                await work.drills.freeze(FrozenBoard(live_id=live.id, kind=kind, closed_at=MONDAY, board=board))
        found = await work.drills.closed_boards(KITCHEN_ROOM, "own", "2026-W48", "2026-W50")
        assert [(closed.week, closed.board) for closed in found] == [("2026-W48", own), ("2026-W49", own)]
        assert {closed.set_up_id for closed in found} == {posted["2026-W48"].set_up_id}


async def test_what_the_fit_said_as_a_posting_began(storage: SqlStorage) -> None:
    """It comes back cook by cook; of a posting with nothing kept it is empty."""
    async with storage.begin() as work:
        live = await post(work)
        fitted = {NOOR: Fitted(1.1, 1.2, 7, -0.07), LIO: Fitted(0.9, None)}
        await work.drills.keep_fitted(live.id, fitted)
        assert await work.drills.fitted(live.id) == fitted
        assert await work.drills.fitted(live.id + 1) == {}
