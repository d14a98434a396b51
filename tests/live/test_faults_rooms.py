"""Authority on a real Synapse (version 12 creators, demotion), and a bug that one of many messages meets.

What a room version 12 is: T, specification, room version 12 (creators above every level, room ids without a domain).
"""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any

import pytest

from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.live.people import Person
from tests.live.whole_bot import Team, at_work

pytestmark = pytest.mark.live

LEVELS = "m.room.power_levels"
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
