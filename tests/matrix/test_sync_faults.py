"""Whatever fails, the sync loop loses nothing, storms nobody and goes on; examples are constructed."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

import pytest

from bot.matrix.faults import Locked, LoggedOut, SignedOut, TokenRefused
from bot.matrix.sync import SyncLoop
from bot.matrix.wire import Page
from bot.matrix.world import World
from bot.services.ports.messages import TryLater
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, NOOR
from tests.matrix.fakes import (
    BOT,
    Reports,
    Rests,
    ScriptedServer,
    raw_member,
    raw_message,
    some_news,
)
from tests.matrix.inbox import kept_ids, run_out, start_at, token


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
