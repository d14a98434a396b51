"""Gaps are filled in order, back to where they begin, and what cannot be filled is said; examples are constructed."""

from typing import Any

from bot.matrix.faults import Refused
from bot.matrix.gap import Gaps
from bot.matrix.wire import Page, RoomNews
from tests.fakes import KITCHEN_ROOM
from tests.matrix.fakes import Reports, ScriptedServer, raw_member, raw_message


def messages(first: int, last: int) -> list[object]:
    """So many messages, the oldest first (the newest first if the numbers fall)."""
    step = 1 if last >= first else -1
    return [raw_message(f"${number}") for number in range(first, last + step, step)]


def limited(events: list[object], prev_batch: str | None = "p1") -> RoomNews:
    """A timeline that begins in the middle."""
    return RoomNews.model_validate({"timeline": {"events": events, "limited": True, "prev_batch": prev_batch}})


def ids(events: list[Any]) -> list[str]:
    """Their event ids."""
    return [event["event_id"] for event in events]


async def test_a_gap_is_paged_back_to_the_last_sync_and_comes_out_in_order(reports: Reports) -> None:
    """Two pages, each the newest first as servers send them."""
    server = ScriptedServer()
    server.pages = {
        (KITCHEN_ROOM, "p1"): Page(chunk=messages(6, 4), end="p2"),
        (KITCHEN_ROOM, "p2"): Page(chunk=messages(3, 1)),
    }
    filled = await Gaps(server, reports).before(KITCHEN_ROOM, limited(messages(7, 9)), "s1")
    assert ids(filled) == ["$1", "$2", "$3", "$4", "$5", "$6"]
    assert server.paged == [(KITCHEN_ROOM, "p1", "s1"), (KITCHEN_ROOM, "p2", "s1")]
    assert reports.told == []


async def test_a_timeline_without_a_gap_costs_no_request(reports: Reports) -> None:
    """Limited decides, not the token that every timeline brings."""
    server = ScriptedServer()
    whole = RoomNews.model_validate({"timeline": {"events": messages(1, 3), "prev_batch": "p1"}})
    assert await Gaps(server, reports).before(KITCHEN_ROOM, whole, "s1") == []
    assert server.paged == []


async def test_a_gap_beyond_measure_is_cut_and_the_admins_are_told(reports: Reports) -> None:
    """The newest are kept, for the oldest are the ones least missed."""
    server = ScriptedServer()
    server.pages = {
        (KITCHEN_ROOM, "p1"): Page(chunk=messages(9, 7), end="p2"),
        (KITCHEN_ROOM, "p2"): Page(chunk=messages(6, 4), end="p3"),
    }
    filled = await Gaps(server, reports, most=5).before(KITCHEN_ROOM, limited([]), "s1")
    assert ids(filled) == ["$4", "$5", "$6", "$7", "$8", "$9"]
    assert len(reports.told) == 1


async def test_a_server_that_repeats_its_token_ends_the_paging(reports: Reports) -> None:
    """Or the bot would page for ever."""
    server = ScriptedServer()
    server.pages = {(KITCHEN_ROOM, "p1"): Page(chunk=messages(1, 1), end="p1")}
    assert ids(await Gaps(server, reports).before(KITCHEN_ROOM, limited([]), "s1")) == ["$1"]


async def test_a_past_that_may_not_be_read_is_said_and_stops_nothing(reports: Reports) -> None:
    """A kicked bot may be refused; the sync goes on."""
    server = ScriptedServer()
    server.pages = {(KITCHEN_ROOM, "p1"): Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")}
    assert await Gaps(server, reports).before(KITCHEN_ROOM, limited([]), "s1") == []
    assert len(reports.told) == 1


def knowing(*known: str) -> Any:
    """An inbox that has kept these."""

    async def which(event_ids: list[str]) -> set[str]:
        return set(event_ids) & set(known)

    return which


async def test_after_a_lost_token_all_that_follows_the_newest_known_word_is_new(reports: Reports) -> None:
    """Found in the timeline itself, or paging back."""
    server = ScriptedServer()
    server.pages = {(KITCHEN_ROOM, "p1"): Page(chunk=messages(6, 2), end="p2")}
    gaps = Gaps(server, reports)
    found = await gaps.since_known(KITCHEN_ROOM, limited(messages(7, 9)), knowing("$3", "$4"))
    assert ids(found) == ["$5", "$6", "$7", "$8", "$9"]
    found = await gaps.since_known(KITCHEN_ROOM, limited(messages(7, 9)), knowing("$8"))
    assert ids(found) == ["$9"]
    assert reports.told == []


async def test_where_nothing_is_known_nothing_is_taken_for_new_and_the_admins_are_told(reports: Reports) -> None:
    """A member's coming is known since the first sync and proves nothing of what was said since."""
    server = ScriptedServer()
    server.pages = {(KITCHEN_ROOM, "p1"): Page(chunk=[*messages(6, 2), raw_member("$1")])}
    assert await Gaps(server, reports).since_known(KITCHEN_ROOM, limited(messages(7, 9)), knowing("$1")) == []
    assert len(reports.told) == 1


async def test_a_room_in_which_nothing_was_said_gives_nothing_to_tell(reports: Reports) -> None:
    """Only members came and went."""
    news = limited([raw_member("$1")], prev_batch=None)
    assert await Gaps(ScriptedServer(), reports).since_known(KITCHEN_ROOM, news, knowing()) == []
    assert reports.told == []
