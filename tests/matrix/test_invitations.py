"""Invitations are accepted from listed people, patiently, and never in anything's way; examples are constructed."""

import asyncio
from collections import deque
from collections.abc import AsyncIterator

import pytest

from bot.matrix.faults import Refused
from bot.matrix.invitations import Invitations
from bot.services.ports.messages import TryLater
from tests.fakes import IME, KITCHEN_ROOM, NOOR
from tests.matrix.fakes import Reports, Rests, ScriptedServer

FORBIDDEN = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")


@pytest.fixture
def server() -> ScriptedServer:
    """A homeserver whose joins are scripted."""
    return ScriptedServer()


@pytest.fixture
async def invitations(server: ScriptedServer, rests: Rests, reports: Reports) -> AsyncIterator[Invitations]:
    """Only the chef may invite."""
    invitations = Invitations(server.join, lambda who: who == IME, rests, reports)
    yield invitations
    await invitations.close()


async def settle() -> None:
    """Let the attempts have all the turns that they need."""
    for _ in range(50):
        await asyncio.sleep(0)


async def test_the_chefs_invitation_is_accepted_and_a_cooks_is_left_alone(
    invitations: Invitations, server: ScriptedServer
) -> None:
    """The cook is told nothing, for the bot is not in the room."""
    invitations.accept(KITCHEN_ROOM, IME)
    invitations.accept("!other:tern.example", NOOR)
    await settle()
    assert server.joined == [KITCHEN_ROOM]


async def test_a_refused_joining_is_tried_again_at_growing_intervals(
    invitations: Invitations, server: ScriptedServer, rests: Rests, reports: Reports
) -> None:
    """After 1, 5, 30, 120 and 600 seconds, or later if the server says so."""
    server.joins = deque([FORBIDDEN, TryLater("429", 9.0), FORBIDDEN, None])
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    assert (rests.taken, len(server.joined), reports.told) == ([1.0, 9.0, 30.0], 4, [])


async def test_after_the_last_interval_the_admins_are_told(
    invitations: Invitations, server: ScriptedServer, rests: Rests, reports: Reports
) -> None:
    """And a later invitation starts anew."""
    server.joins = deque([FORBIDDEN] * 6)
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    assert (rests.taken, len(reports.told)) == ([1.0, 5.0, 30.0, 120.0, 600.0], 1)
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    assert len(server.joined) == 7


async def test_an_unforeseen_fault_ends_one_attempt_and_not_the_bot(
    server: ScriptedServer, rests: Rests, caplog: pytest.LogCaptureFixture
) -> None:
    """The database was full when the admins were to be told; the next invitation is tried as if it were the first."""

    async def report(_: Exception) -> None:
        raise OSError("disk full")

    invitations = Invitations(server.join, lambda _: True, rests, report)
    server.joins = deque([FORBIDDEN] * 6)
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    assert "disk full" in caplog.text
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    await invitations.close()
    assert len(server.joined) == 7


async def test_one_invitation_seen_twice_is_one_attempt(invitations: Invitations, server: ScriptedServer) -> None:
    """The start looks invitations up that the sync may bring too."""
    invitations.accept(KITCHEN_ROOM, IME)
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    assert server.joined == [KITCHEN_ROOM]


async def test_an_invitation_taken_back_is_not_tried_again(server: ScriptedServer, reports: Reports) -> None:
    """Also while it rests between attempts."""

    async def rest(_: float) -> None:
        await asyncio.Event().wait()

    invitations = Invitations(server.join, lambda _: True, rest, reports)
    server.joins = deque([FORBIDDEN])
    invitations.accept(KITCHEN_ROOM, IME)
    await settle()
    invitations.withdraw(KITCHEN_ROOM)
    await settle()
    await invitations.close()
    assert (len(server.joined), reports.told) == (1, [])
