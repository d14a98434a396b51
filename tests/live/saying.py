"""A sender on a real homeserver, and what was said there."""

import re
from collections.abc import Awaitable, Callable, Iterable
from typing import Any

from bot.matrix.client import Client
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.world import World
from bot.services.ports.messages import EventRef, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.matrix.fakes import Reports

Say = Callable[..., Awaitable[EventRef]]
"""Puts a note into the outbox, for a cause of its own."""


def new_sender(storage: SqlStorage, client: Client, world: World, reports: Reports, dead: list[str]) -> Sender:
    """A sender as the bot has it."""

    async def on_dead(_: UnitOfWork, __: Waiting, problem: str) -> None:
        dead.append(problem)

    pace = Pace(world, rate_per_s=1e6, burst=1e6)
    return Sender(storage, RoomMessenger(client, reports), world, pace, on_dead=on_dead)


def texts(events: list[dict[str, Any]]) -> list[str]:
    """What these messages say."""
    return [event["content"]["body"] for event in events]


def clocks_heard(said: Iterable[str]) -> list[str]:
    """The clocks of the runs that the bot has answered for in these words, in order, however often."""
    return [clock for words in said for clock in re.findall(r"Heard\. (\d+:\d\d)", words)]
