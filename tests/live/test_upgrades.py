"""A kitchen moves to the room that replaces its own, as servers and clients make it: on a real Synapse."""

import asyncio

import pytest

from bot.app.bot import Bot
from tests.live.whole_bot import Team, at_work

pytestmark = pytest.mark.live

MOVED = "The kitchen has moved here"


async def upgrade(team: Team, room_id: str, version: str = "12") -> str:
    """The chef's client upgrades the room; the new one's id."""
    told = await team.chef.ask("POST", f"rooms/{room_id}/upgrade", {"new_version": version})
    return str(told["replacement_room"])


async def invite_all(team: Team, room_id: str) -> None:
    """As clients do after an upgrade, which by itself brings nobody along."""
    for user_id in (team.bot.user_id, team.bastian.user_id, team.noor.user_id):
        await team.chef.invite(room_id, user_id)
    await team.noor.join(room_id)


async def until_in(whole: Bot, room_id: str) -> None:
    """Wait until the bot is in this room."""
    async with asyncio.timeout(30):
        while room_id not in await whole.client.joined_rooms():  # noqa: ASYNC110 - only the server knows
            await asyncio.sleep(0.1)


async def check_moved(team: Team, old: str, new: str) -> None:
    """The kitchen is in the new room alone, said so once, and goes on where it was."""
    await team.bot.until("SELECT 1 FROM kitchen WHERE room_id = ?", new)
    told = await team.answered(new, team.noor, "3:02 8/8")
    assert any(line.startswith("Heard. 3:02") for line in told)
    assert team.bot.ask("SELECT room_id FROM kitchen WHERE NOT closed") == [(new,)]
    lines = await team.answers(new)
    assert [line.startswith(MOVED) for line in lines].count(True) == 1
    assert not any(line.startswith("I am Platepace") for line in lines)
    assert not any(line.startswith("Heard. 3:02") for line in await team.answers(old))


@pytest.mark.parametrize("version", ["11", "12"])
async def test_an_upgrade_is_followed_once_the_bot_is_let_in(team: Team, version: str) -> None:
    """At first the new room refuses it (403), for invitations come later; a version 12 room becomes another one."""
    async with at_work(team.bot):
        old = await team.open_kitchen(room_version=version)
        new = await upgrade(team, old)
        await team.bot.until("SELECT 1 FROM outbox WHERE lane = ? AND attempts > 0", new)
        await invite_all(team, new)
        await check_moved(team, old, new)


async def test_two_upgrades_missed_while_the_bot_was_away_are_followed(team: Team) -> None:
    """Its kitchen is in the last room, and nothing is said in the one between."""
    async with at_work(team.bot):
        old = await team.open_kitchen(room_version="11")
    between = await upgrade(team, old)
    await team.chef.invite(between, team.bot.user_id)
    new = await upgrade(team, between)
    await invite_all(team, new)
    async with at_work(team.bot):
        await check_moved(team, old, new)
    assert await team.answers(between) == []


async def test_neither_a_claim_nor_a_tombstone_alone_moves_a_kitchen(team: Team) -> None:
    """Not a room that names the kitchen's as its predecessor, nor one that the tombstone names and that does not."""
    async with at_work(team.bot) as whole:
        old = await team.open_kitchen(room_version="11")
        named = {"predecessor": {"room_id": old, "event_id": "$none"}}
        claim = await team.noor.open_room(creation_content=named, invite=[team.chef.user_id])
        await team.chef.join(claim)
        await team.chef.invite(claim, team.bot.user_id)
        await until_in(whole, claim)
        trap = await team.noor.open_room(invite=[team.bot.user_id])
        tombstone = {"body": "This room has been replaced", "replacement_room": trap}
        assert (await team.chef.ask("PUT", f"rooms/{old}/state/m.room.tombstone/", tombstone))["event_id"]
        await team.bot.until(
            "SELECT 1 FROM outbox WHERE lane = ? AND event_id = ? AND state = 'sent'", trap, f"left:{trap}"
        )
        assert trap not in await whole.client.joined_rooms()
        assert await team.answers(claim) == []
        assert any(line.startswith("Heard. 3:02") for line in await team.answered(old, team.noor, "3:02 8/8"))
    assert team.bot.ask("SELECT room_id FROM kitchen WHERE NOT closed") == [(old,)]


async def test_a_room_in_which_nobody_is_left_is_left(team: Team) -> None:
    """With the last one out."""
    async with at_work(team.bot) as whole:
        room_id = await team.open_kitchen()
        for person in (team.chef, team.bastian):
            await person.ask("POST", f"rooms/{room_id}/leave", {})
        assert room_id in await whole.client.joined_rooms()
        await team.noor.ask("POST", f"rooms/{room_id}/leave", {})
        await team.bot.until("SELECT 1 FROM outbox WHERE event_id = ? AND state = 'sent'", f"left:{room_id}")
        assert room_id not in await whole.client.joined_rooms()
