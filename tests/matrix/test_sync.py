"""The sync loop keeps every event once, in order, with the token reached; examples are constructed."""

import pytest

from bot.matrix.sync import SyncLoop
from bot.matrix.wire import News, Page
from bot.services.ports.events import Membership
from bot.services.ports.messages import TryLater
from bot.storage.storage import SqlStorage
from tests.fakes import IME, KITCHEN_ROOM, NOOR
from tests.matrix.fakes import (
    BOT,
    Rests,
    ScriptedServer,
    an_invitation,
    raw_event,
    raw_member,
    raw_message,
    some_news,
)
from tests.matrix.inbox import kept, kept_ids, run_out, start_at, token


async def test_a_first_sync_keeps_the_token_and_how_rooms_stand_but_nothing_said(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """State in the timeline counts, and comes after the state before it; history is not for the bot."""
    levels = raw_event("$levels", "m.room.power_levels", content={"users": {IME: 100}}, state_key="")
    name = raw_event("$name", "m.room.name", content={"name": "Tern & Lantern"}, state_key="")
    state = [raw_event("$create", "m.room.create", content={}, state_key=""), levels, raw_member("$noor", NOOR)]
    server.answers.append(some_news("s1", [raw_message("$old"), name, raw_message("$older")], state=state))
    await loop.step()
    assert await kept_ids(storage) == ["$create", "$levels", "$noor", "$name"]
    assert (await token(storage), server.asked) == ("s1", [None])
    assert loop.caught_up.is_set()


async def test_a_later_sync_keeps_what_was_said_once_and_wakes_the_worker(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, woken: list[int]
) -> None:
    """The same event again, and the bot's own, are not news."""
    await start_at(storage, "s1")
    server.answers.append(some_news("s2", [raw_message("$1"), raw_message("$2"), raw_message("$own", "mine", BOT)]))
    server.answers.append(some_news("s3", [raw_message("$2")]))
    await loop.step()
    await loop.step()
    assert await kept_ids(storage) == ["$1", "$2"]
    assert (await token(storage), server.asked, woken) == ("s3", ["s1", "s2"], [1])


async def test_a_limited_timeline_is_filled_before_anything_of_it_is_kept(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """The gap, then the state that no event of it explains, then the timeline."""
    await start_at(storage, "s1")
    server.pages[KITCHEN_ROOM, "p1"] = Page(chunk=[raw_message("$2"), raw_message("$1")])
    state = [raw_member("$lio", "@lio:tern.example")]
    server.answers.append(some_news("s2", [raw_message("$3")], state=state, limited=True, prev_batch="p1"))
    await loop.step()
    assert await kept_ids(storage) == ["$1", "$2", "$lio", "$3"]


async def test_a_gap_that_cannot_be_filled_now_keeps_nothing_and_is_tried_again(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, rests: Rests
) -> None:
    """Or what was said in the gap would be lost with the token before it."""
    await start_at(storage, "s1")
    news = some_news("s2", [raw_message("$3")], limited=True, prev_batch="p1")
    server.pages[KITCHEN_ROOM, "p1"] = TryLater("502")
    server.answers.append(news)
    with pytest.raises(TryLater):
        await loop.step()
    assert (await token(storage), await kept_ids(storage)) == ("s1", [])
    server.pages[KITCHEN_ROOM, "p1"] = Page(chunk=[raw_message("$2")])
    server.answers.append(news)
    await loop.step()
    assert await kept_ids(storage) == ["$2", "$3"]


async def test_after_joining_only_what_follows_the_joining_is_heard(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """The latest joining counts: what was said while the bot was outside was not said to it."""
    await start_at(storage, "s1")
    timeline = [
        raw_message("$1"),
        raw_member("$in", before="invite"),
        raw_message("$2"),
        raw_member("$out", membership="leave", before="join"),
        raw_message("$3"),
        raw_member("$lio", "@lio:tern.example"),
        raw_member("$again", before="leave"),
        raw_message("$4"),
        raw_member("$name", before="join"),
        raw_message("$5"),
    ]
    server.answers.append(some_news("s2", timeline))
    await loop.step()
    assert await kept_ids(storage) == ["$in", "$out", "$lio", "$again", "$4", "$name", "$5"]


async def test_the_joining_may_lie_in_the_gap(loop: SyncLoop, server: ScriptedServer, storage: SqlStorage) -> None:
    """And the same event in the state before the timeline does not make the gap after it unheard."""
    await start_at(storage, "s1")
    joining = raw_member("$in", before="invite")
    server.pages[KITCHEN_ROOM, "p1"] = Page(chunk=[raw_message("$2"), joining, raw_message("$1")])
    server.answers.append(some_news("s2", [raw_message("$3")], state=[joining], limited=True, prev_batch="p1"))
    await loop.step()
    assert await kept_ids(storage) == ["$in", "$2", "$3"]


async def test_being_put_out_of_a_room_is_heard(loop: SyncLoop, server: ScriptedServer, storage: SqlStorage) -> None:
    """With what was said before it."""
    await start_at(storage, "s1")
    kick = raw_member("$out", membership="leave", before="join", sender=IME)
    server.answers.append(some_news("s2", [raw_message("$1"), kick], section="leave"))
    await loop.step()
    last = (await kept(storage))[-1]
    assert isinstance(last, Membership)
    assert (last.person, last.state, last.sender) == (BOT, "leave", IME)


async def test_the_bots_joining_of_a_private_room_it_made_says_that_it_is_for_two(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Or the services would open a kitchen there; somebody else's room with the same mark is none of ours."""
    await start_at(storage, "s1")
    mark = {"platepace.private_with": NOOR}
    for creator in (BOT, IME):
        create = raw_event("$c" + creator, "m.room.create", creator, content=mark, state_key="")
        news = some_news("s2", [create, raw_member("$in" + creator)], room_id="!" + creator)
        server.answers.append(news)
        await loop.step()
    joins = [event for event in await kept(storage) if isinstance(event, Membership)]
    assert [join.direct for join in joins] == [True, False]


async def test_an_invitation_by_a_listed_person_is_kept_and_accepted(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """A stranger's is kept too, so that the services know of it, but not accepted."""
    await start_at(storage, "s1")
    server.answers.append(an_invitation("s2", IME, direct=True))
    server.answers.append(an_invitation("s3", "@mallory:elsewhere.example", room_id="!other:x"))
    await run_out(loop, server)
    first, second = await kept(storage)
    assert isinstance(first, Membership)
    assert (first.event_id, first.person, first.state) == (f"invite:{KITCHEN_ROOM}:{IME}", BOT, "invite")
    assert (first.direct, first.sender) == (True, IME)
    assert second.sender == "@mallory:elsewhere.example"
    assert server.joined == [KITCHEN_ROOM]


async def test_an_invitation_from_before_the_start_is_looked_up_once(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """A server does not repeat it in a sync that goes on from a token."""
    await start_at(storage, "s1")
    server.open_invitations = an_invitation("ignored", IME)
    server.answers.append(some_news("s2"))
    server.answers.append(some_news("s3"))
    await run_out(loop, server)
    assert server.joined == [KITCHEN_ROOM]
    assert await token(storage) == "s3"


def test_the_specifications_own_example_of_a_sync_is_understood() -> None:
    """Source: T, matrix-spec data/api/client-server/sync.yaml, shortened to the parts that are read."""
    told = {
        "next_batch": "s72595_4483_1934",
        "account_data": {"events": [{"type": "org.example.custom.config", "content": {"custom_config_key": "x"}}]},
        "rooms": {
            "join": {
                "!726s6s6q:example.com": {
                    "summary": {"m.heroes": ["@alice:example.com"], "m.joined_member_count": 2},
                    "timeline": {"events": [{}], "limited": True, "prev_batch": "t34-23535_0_0"},
                    "unread_notifications": {"highlight_count": 1, "notification_count": 5},
                }
            },
            "invite": {"!696r7674:example.com": {"invite_state": {"events": [{}, {}]}}},
            "knock": {"!223asd456:example.com": {"knock_state": {"events": []}}},
            "leave": {},
        },
    }
    news = News.model_validate(told)
    room = news.rooms.join["!726s6s6q:example.com"]
    assert (news.next_batch, room.timeline.limited, room.timeline.prev_batch) == (
        "s72595_4483_1934",
        True,
        "t34-23535_0_0",
    )
    assert room.state.events == []
    assert len(news.rooms.invite["!696r7674:example.com"].invite_state.events) == 2
