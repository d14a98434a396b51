"""Authority and rooms on a real Synapse: version 12 creators, demotion, invitations taken back or refused, a bug.

What a room version 12 is: T, specification, room version 12 (creators above every level, room ids without a domain).
"""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from typing import Any

import pytest

from bot.homeserver import Homeserver
from bot.matrix.client import Account, Client
from bot.services.ports.events import Membership
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.live.fault_proxy import Fault, fault_proxy, refusal
from tests.live.listening import joins, new_loop, running, until_kept
from tests.live.people import Person
from tests.live.whole_bot import Team, at_work
from tests.matrix.fakes import Reports

pytestmark = pytest.mark.live

LEVELS = "m.room.power_levels"
JOIN = r"POST .*/join"
FORBIDDEN = {"errcode": "M_FORBIDDEN", "error": "You are not invited to this room"}
ODD_S = 172
"""A time of 2:52, at which the bug below strikes."""


async def may_set_drills(team: Team, room_id: str, person: Person) -> bool:
    """Whether a chef's word of theirs is taken."""
    (told,) = await team.answered(room_id, person, "!post 6 mon 15:00")
    return told.startswith("Set.")


async def test_a_version_12_creator_directs_and_a_sous_only_while_named(team: Team) -> None:
    """The creator stands in no levels event; Bastian's key is put in, and taken out again."""
    async with at_work(team.bot):
        room_id = await team.open_kitchen(room_version="12")
        assert ":" not in room_id
        levels = await team.chef.state(room_id, LEVELS)
        assert team.chef.user_id not in levels["users"]
        assert await may_set_drills(team, room_id, team.chef)
        assert not await may_set_drills(team, room_id, team.bastian)
        await set_levels(team, room_id, levels | {"users": {team.bastian.user_id: 50}})
        assert await may_set_drills(team, room_id, team.bastian)
        await set_levels(team, room_id, levels | {"users": {}})
        assert not await may_set_drills(team, room_id, team.bastian)
        assert await may_set_drills(team, room_id, team.chef)


async def set_levels(team: Team, room_id: str, levels: dict[str, Any]) -> None:
    """The creator sets the room's power levels, and the bot has seen it."""
    told = await team.chef.ask("PUT", f"rooms/{room_id}/state/{LEVELS}/", levels)
    await team.bot.until_settled(told["event_id"])


async def test_an_invitation_refused_for_a_while_is_accepted_in_the_end(
    server: Homeserver, bot_account: Account, storage: SqlStorage, reports: Reports, chef: Person
) -> None:
    """A server may not know yet of the invitation that it has just passed on."""
    async with fault_proxy(server.url) as proxy, listening(proxy.url, bot_account) as client:
        proxy.faults.append(Fault(JOIN, refusal(403, FORBIDDEN), times=2))
        async with running(new_loop(client, storage, reports, chef)):
            room_id = await chef.open_room(invite=[client.user_id])
            await until_kept(storage, joins(client, room_id))
        assert len([what for _, what in proxy.asked if "/join" in what]) == 3
    assert reports.told == []


async def test_an_invitation_taken_back_is_let_go(
    server: Homeserver, bot_account: Account, storage: SqlStorage, reports: Reports, chef: Person
) -> None:
    """No further attempt is made; the next invitation counts."""
    async with fault_proxy(server.url) as proxy, listening(proxy.url, bot_account) as client:
        refused = Fault(JOIN, refusal(403, FORBIDDEN))
        proxy.faults.append(refused)
        async with running(new_loop(client, storage, reports, chef)):
            room_id = await chef.open_room(invite=[client.user_id])
            await until(lambda: refused.met > 0)
            await chef.kick(room_id, client.user_id)
            await until_kept(storage, lambda event: isinstance(event, Membership) and event.state == "leave")
            tries = refused.met
            await asyncio.sleep(0.6)  # the next two attempts would be 0.05 and 0.25 s later
            assert refused.met == tries
            proxy.faults.clear()
            await chef.invite(room_id, client.user_id)
            await until_kept(storage, joins(client, room_id))
    assert reports.told == []


async def until(condition: Callable[[], bool]) -> None:
    """Wait until this holds."""
    async with asyncio.timeout(20):
        while not condition():  # noqa: ASYNC110 - the proxy only counts
            await asyncio.sleep(0.01)


@asynccontextmanager
async def listening(url: str, account: Account) -> AsyncIterator[Client]:
    """The bot's client, signed in at this address."""
    client = Client(url, account)
    await client.sign_in()
    try:
        yield client
    finally:
        await client.close()


class _FailingRuns:
    """Runs among which one of a certain time cannot be stored."""

    def __init__(self, runs: Any) -> None:
        self._runs = runs

    def __getattr__(self, name: str) -> Any:
        return getattr(self._runs, name)

    async def save(self, run: Any) -> Any:
        """Store it, but for the odd one."""
        if run.result.clock_s == ODD_S:
            raise ZeroDivisionError("a bug")
        return await self._runs.save(run)


class FailingStorage(SqlStorage):
    """A storage with a bug in it."""

    @asynccontextmanager
    async def begin(self) -> AsyncIterator[UnitOfWork]:
        """A transaction in which storing may fail."""
        async with super().begin() as work:
            runs: Any = _FailingRuns(work.runs)
            work.runs = runs
            yield work


async def test_a_bug_met_by_one_of_many_messages_spares_the_others(team: Team) -> None:
    """The third of five: its row is dead and erased, its sender asked to come again; the others are answered."""
    async with at_work(team.bot, FailingStorage):
        room_id = await team.open_kitchen()
        before = len(await team.answers(room_id))
        sent = [await team.noor.say(room_id, f"2:{seconds} 8/8") for seconds in range(50, 55)]
        await team.bot.until_settled(*(one for place, one in enumerate(sent) if place != 2))
        heads = [line.split(",")[0] for line in (await team.answers(room_id))[before:]]
    heard = [line for line in heads if line.startswith(("Heard", "Something went wrong on my side"))]
    assert [line[:11] for line in heard] == ["Heard. 2:50", "Heard. 2:51", "Something w", "Heard. 2:53", "Heard. 2:54"]
    assert team.bot.ask("SELECT state, body FROM inbox WHERE event_id = ?", sent[2]) == [("dead", None)]
    stored = [team.bot.ask("SELECT count(*) FROM run WHERE event_id = ?", one)[0][0] for one in sent]
    assert stored == [1, 1, 0, 1, 1]
