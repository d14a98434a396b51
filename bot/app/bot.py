"""The whole bot on a line, its parts joined; and as much of it as safe mode needs."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import aclosing, asynccontextmanager
from dataclasses import dataclass
from random import SystemRandom
from typing import NoReturn

from bot.app.house import house_of
from bot.app.line import Line
from bot.fitting import FittingProcess
from bot.matrix.client import Client
from bot.matrix.faults import Report
from bot.matrix.invitations import Allowed
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import OnDead, Sender
from bot.matrix.pace import Pace
from bot.matrix.sync import SyncLoop
from bot.matrix.uploads import Uploads
from bot.matrix.world import World
from bot.rendering import RenderingProcess
from bot.safe_mode import SafeMode, Starts
from bot.services.faults import AdminRoom, Alarm, Faults
from bot.services.inbox import InboxWorker
from bot.services.planner import Planner
from bot.services.ports.attachments import Renderer
from bot.services.ports.fitting import Fitter
from bot.services.ports.world import Clock, Wake
from bot.services.refits import Refits
from bot.services.unreadable import Unreadable
from bot.storage.storage import SqlStorage
from bot.words import vocabulary
from bot.words.interpreter import Interpreter


@dataclass(frozen=True)
class Bot:
    """Everything at work, joined: what comes in wakes the inbox worker, what it says wakes the sender."""

    storage: SqlStorage
    client: Client
    sync: SyncLoop
    inbox: InboxWorker
    sender: Sender
    planner: Planner
    unreadable: Unreadable
    refits: Refits
    faults: Faults

    async def run(self) -> NoReturn:
        """Work until cancelled, or until something fails that only the operator can mend."""
        alarm = Alarm(self.faults)
        async with asyncio.TaskGroup() as workers:
            for work in (alarm.run(), self.sync.run(), self.inbox.run(), self.sender.run(), self._tick()):
                workers.create_task(work)
        raise AssertionError("the workers never end by themselves")

    async def _tick(self) -> None:
        """Let the planner look once the bot knows what happened while it was away, and then at a steady beat."""
        await self.sync.caught_up.wait()
        await self._beat()
        from bot.ticker import Ticker  # noqa: PLC0415 - a tenth of a second that the first answer need not wait for

        tickers = [Ticker(self._beat), Ticker(self.refits.look)]  # two, so that no post waits for a fit
        for ticker in tickers:
            ticker.start()
        try:
            await asyncio.Event().wait()
        finally:
            for ticker in tickers:
                ticker.stop()

    async def _beat(self) -> None:
        await self.planner.tick()
        await self.unreadable.tick()


@asynccontextmanager
async def join(line: Line) -> AsyncIterator[Bot]:
    """The whole bot, with the workers that it keeps beside it."""
    async with aclosing(FittingProcess()) as fitting, aclosing(RenderingProcess()) as rendering:
        yield _joined(line, fitting, rendering)


@asynccontextmanager
async def join_safely(line: Line, starts: Starts) -> AsyncIterator[SafeMode]:
    """What safe mode needs, and nothing of the house, which may be what is broken."""
    async with aclosing(RenderingProcess()) as rendering:
        yield _safe(line, starts, rendering)


def _joined(line: Line, fitter: Fitter, renderer: Renderer) -> Bot:
    settings, storage, world = line.settings, line.storage, _world(line.clock)
    house = house_of(settings, line.clock)
    faults = Faults(house, storage)
    sender = _way_out(line, world, renderer, faults.report, faults.tell_dead)
    faults.wake_sender = sender.wake
    inbox = InboxWorker(storage, house, Interpreter(house, vocabulary()), wake_sender=sender.wake)
    return Bot(
        storage=storage,
        client=line.client,
        sync=_way_in(line, world, faults.report, allowed=settings.people.may_invite.__contains__, wake=inbox.wake),
        inbox=inbox,
        sender=sender,
        planner=Planner(storage, house, wake_sender=sender.wake),
        unreadable=Unreadable(storage, house, wake_sender=sender.wake),
        refits=Refits(storage, house, fitter, faults.report),
        faults=faults,
    )


def _safe(line: Line, starts: Starts, renderer: Renderer) -> SafeMode:
    """The way in as far as the inbox, where invitations wait, and the way out."""
    world, admin = _world(line.clock), AdminRoom(line.settings.admin.room, line.clock, line.storage)
    sender = _way_out(line, world, renderer, admin.report, admin.log_dead)
    admin.wake_sender = sender.wake
    sync = _way_in(line, world, admin.report, allowed=lambda _: False, wake=lambda: None)
    return SafeMode(starts, sync, sender, admin)


def _way_out(line: Line, world: World, renderer: Renderer, report: Report, on_dead: OnDead) -> Sender:
    matrix = line.settings.matrix
    pace = Pace(world, rate_per_s=matrix.messages_per_second, burst=matrix.burst)
    messenger = RoomMessenger(line.client, report, line.secrecy, Uploads(line.client, line.secrecy, renderer))
    return Sender(line.storage, messenger, world, pace, on_dead=on_dead)


def _way_in(line: Line, world: World, report: Report, *, allowed: Allowed, wake: Wake) -> SyncLoop:
    return SyncLoop(line.client, line.storage, world, allowed=allowed, wake=wake, report=report, secrecy=line.secrecy)


def _world(clock: Clock) -> World:
    return World(clock, asyncio.sleep, SystemRandom().random)
