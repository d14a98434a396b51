"""The sync loop keeps every event once, in order, with the token reached; examples are constructed."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress

import pytest

from bot.matrix.faults import Locked, LoggedOut, SignedOut, TokenRefused
from bot.matrix.sync import SyncLoop
from bot.matrix.wire import News, Page
from bot.matrix.world import World
from bot.services.ports.events import Incoming, Membership
from bot.services.ports.messages import TryLater
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import IME, KITCHEN_ROOM, NOOR, a_message
from tests.matrix.fakes import (
    BOT,
    Reports,
    Rests,
    ScriptedServer,
    an_invitation,
    raw_event,
    raw_member,
    raw_message,
    some_news,
)


@pytest.fixture
def server() -> ScriptedServer:
    """A homeserver to script."""
    return ScriptedServer()


@pytest.fixture
def woken() -> list[int]:
    """One entry for each time that the inbox worker was woken."""
    return []


@pytest.fixture
def loop(server: ScriptedServer, storage: SqlStorage, world: World, reports: Reports, woken: list[int]) -> SyncLoop:
    """The loop between them; only the chef may invite."""
    return SyncLoop(
        server, storage, world, allowed=lambda who: who == IME, wake=lambda: woken.append(1), report=reports
    )


async def run_out(loop: SyncLoop, server: ScriptedServer) -> None:
    """Run the loop until the server has nothing left to say."""
    task = asyncio.create_task(loop.run())
    async with asyncio.timeout(10):
        await server.silent.wait()
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


async def kept_ids(storage: SqlStorage) -> list[str]:
    """The ids of what is in the inbox."""
    return [event.event_id for event in await kept(storage)]


async def token(storage: SqlStorage) -> str | None:
    """The token kept."""
    async with storage.begin() as work:
        return await work.inbox.token(BOT)


async def start_at(storage: SqlStorage, reached: str, *known: str) -> None:
    """Be a bot that has synced so far, and has dealt with these messages."""
    async with storage.begin() as work:
        await work.inbox.take(BOT, [a_message(event_id) for event_id in known], reached)
    await kept(storage)


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


async def test_failures_leave_the_server_alone_for_longer_each_time_and_then_not(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, rests: Rests
) -> None:
    """A 502 page, an unforeseen fault, a 429 with a wish; a good sync in between counts anew."""
    await start_at(storage, "s1")
    server.answers.extend(
        [TryLater("502"), TryLater("reset"), ValueError("odd"), TryLater("429", 40.0), some_news("s2"), TryLater("502")]
    )
    await run_out(loop, server)
    assert rests.taken == pytest.approx([1.0, 2.0, 4.0, 40.0, 1.0])
    assert set(server.asked) == {"s1", "s2"}


async def test_a_lost_login_is_renewed_and_the_token_goes_on(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, rests: Rests
) -> None:
    """With a pause, or a server that forgets every login would be stormed."""
    await start_at(storage, "s1")
    server.answers.extend([SignedOut("401"), SignedOut("401"), some_news("s2")])
    server.sign_ins.extend([TryLater("503", 7.0), None])
    await run_out(loop, server)
    assert (server.signed_in, server.asked[:3]) == (2, ["s1", "s1", "s1"])
    assert rests.taken == pytest.approx([7.0, 2.0])


async def test_where_no_login_is_possible_the_loop_ends(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Whoever runs the bot has to act."""
    await start_at(storage, "s1")
    server.answers.append(SignedOut("401"))
    server.sign_ins.append(LoggedOut("no password"))
    with pytest.raises(LoggedOut):
        await loop.run()


async def test_a_locked_account_keeps_its_token_and_waits(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, rests: Rests
) -> None:
    """It is not signed in again, for its login is good."""
    await start_at(storage, "s1")
    server.answers.extend([*[Locked("401 M_USER_LOCKED")] * 12, some_news("s2")])
    await run_out(loop, server)
    assert server.signed_in == 0
    assert max(rests.taken) == pytest.approx(150.0)
    assert await token(storage) == "s2"


async def test_a_sync_token_refused_three_times_is_given_up_and_the_gap_filled_from_what_is_known(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Until the new token is kept the old one stays, so that a crash in between loses nothing."""
    await start_at(storage, "s1", "$2")
    server.pages[KITCHEN_ROOM, "p1"] = Page(chunk=[raw_message("$3"), raw_message("$2"), raw_message("$1")])
    server.answers.extend([TokenRefused("400")] * 3)
    server.answers.append(
        some_news("t1", [raw_message("$4")], state=[raw_member("$noor", NOOR)], limited=True, prev_batch="p1")
    )
    server.answers.append(some_news("t2", [raw_message("$5")]))
    await run_out(loop, server)
    assert server.asked == ["s1", "s1", "s1", None, "t1", "t2"]
    assert sorted(await kept_ids(storage)) == ["$3", "$4", "$5", "$noor"]


async def test_a_token_refused_now_and_then_is_kept(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """A good sync in between clears the count."""
    await start_at(storage, "s1")
    server.answers.extend([TokenRefused("400"), TokenRefused("400"), some_news("s2"), TokenRefused("400")])
    await run_out(loop, server)
    assert None not in server.asked


class TornStorage:
    """A storage of which each write of a token is undone while it is ``torn``, as on a full disk."""

    def __init__(self, storage: SqlStorage) -> None:
        self._storage = storage
        self.torn = True

    @asynccontextmanager
    async def begin(self) -> AsyncIterator[UnitOfWork]:
        """A transaction that may fail at its end."""
        async with self._storage.begin() as work:
            before = await work.inbox.token(BOT)
            yield work
            if self.torn and await work.inbox.token(BOT) != before:
                raise OSError("disk full")


async def test_a_storage_that_fails_leaves_the_token_where_it_was(
    server: ScriptedServer, storage: SqlStorage, world: World, reports: Reports, woken: list[int]
) -> None:
    """Events and token are one transaction; the same news is asked for again, and the worker hears of it once."""
    await start_at(storage, "s1")
    torn = TornStorage(storage)
    loop = SyncLoop(server, torn, world, allowed=lambda _: False, wake=lambda: woken.append(1), report=reports)
    server.answers.append(some_news("s2", [raw_message("$1")]))
    with pytest.raises(OSError, match="disk full"):
        await loop.step()
    assert (await token(storage), await kept_ids(storage), woken) == ("s1", [], [])
    torn.torn = False
    server.answers.append(some_news("s2", [raw_message("$1")]))
    await loop.step()
    assert (server.asked, await kept_ids(storage), woken) == (["s1", "s1"], ["$1"], [1])


async def test_a_malformed_event_spoils_no_other(loop: SyncLoop, server: ScriptedServer, storage: SqlStorage) -> None:
    """Not even one that is no object."""
    await start_at(storage, "s1")
    bad: list[object] = [None, "text", 5, raw_message("$bad", **{"m.relates_to": "x"})]
    server.answers.append(some_news("s2", [raw_message("$1"), *bad, raw_message("$2")]))
    await loop.step()
    assert await kept_ids(storage) == ["$1", "$2"]


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
