"""The composition root: builds the storage, the client, the workers and the ticker, joins them and runs them."""

import asyncio
import logging
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, AbstractContextManager, aclosing, asynccontextmanager, nullcontext
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from random import SystemRandom
from typing import NoReturn

from bot.errors import NO_HOMESERVER, OperatorError
from bot.fitting import FittingProcess
from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.matrix.client import Account, Client
from bot.matrix.faults import Report
from bot.matrix.invitations import Allowed
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import OnDead, Sender
from bot.matrix.pace import Pace
from bot.matrix.secrecy import InTheClear, Secrecy
from bot.matrix.sync import SyncLoop
from bot.matrix.uploads import Uploads
from bot.matrix.world import World
from bot.rendering import RenderingProcess
from bot.safe_mode import MOST_BROKEN, SafeMode, Starts
from bot.services.faults import AdminRoom, Alarm, Faults
from bot.services.house import Group, House
from bot.services.inbox import InboxWorker
from bot.services.planner import Planner
from bot.services.ports.attachments import Renderer
from bot.services.ports.fitting import Fitter
from bot.services.ports.messages import SendRefused, TryLater
from bot.services.ports.records import Session
from bot.services.ports.world import Clock, Wake
from bot.services.refits import Refits
from bot.services.unreadable import Unreadable
from bot.settings import Secrets, Settings
from bot.storage.storage import SqlStorage
from bot.words import vocabulary
from bot.words.interpreter import Interpreter

log = logging.getLogger(__name__)


MakeClient = Callable[[str, Account], Client]
"""Makes the client for a homeserver's address and an account."""

MakeStorage = Callable[[str, Clock], SqlStorage]
"""Makes the storage for a database's URL."""


def utc_now() -> datetime:
    """The time, in UTC."""
    return datetime.now(UTC)


def build_house(
    *,
    clock: Clock,
    bot_id: str,
    zone: str = "UTC",
    language: str = "en",
    chefs: frozenset[str] = frozenset(),
    admin_room: str | None = None,
    groups: tuple[Group, ...] = (),
) -> House:
    """The house as every use case is given it."""
    return House(
        seconds=load_seconds(),
        course=load_course,
        clock=clock,
        bot_id=bot_id,
        chefs=chefs,
        admin_room=admin_room,
        zone=zone,
        language=language,
        groups=groups,
    )


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


@dataclass(frozen=True)
class Line:
    """A storage brought up to date and a client signed in, with what seals and opens what goes between them."""

    settings: Settings
    storage: SqlStorage
    client: Client
    secrecy: Secrecy
    clock: Clock


@asynccontextmanager
async def _signed_in_line(
    settings: Settings, secrets: Secrets, clock: Clock, make_client: MakeClient, make_storage: MakeStorage
) -> AsyncIterator[Line]:
    """The line to the homeserver; an OperatorError says what stands in its way."""
    storage = make_storage(settings.storage.url, clock)
    try:
        await storage.migrate()
        client, device_id = await _signed_in(settings, secrets, storage, make_client)
        try:
            async with _secrecy(settings, secrets, client, device_id, clock) as secrecy:
                yield Line(settings, storage, client, secrecy, clock)
        finally:
            await client.close()
    finally:
        await storage.close()


@asynccontextmanager
async def _join(line: Line) -> AsyncIterator[Bot]:
    async with aclosing(FittingProcess()) as fitting, aclosing(RenderingProcess()) as rendering:
        yield _joined(line, fitting, rendering)


Join = Callable[[Line], AbstractAsyncContextManager[Bot]]
"""Puts the whole bot on a line."""


@asynccontextmanager
async def open_bot(
    settings: Settings,
    secrets: Secrets,
    clock: Clock = utc_now,
    *,
    make_client: MakeClient = Client,
    make_storage: MakeStorage = SqlStorage,
) -> AsyncIterator[Bot]:
    """A bot signed in and ready to run; an OperatorError says what stands in its way."""
    async with _signed_in_line(settings, secrets, clock, make_client, make_storage) as line, _join(line) as bot:
        yield bot


async def run_bot(
    settings: Settings,
    secrets: Secrets,
    clock: Clock = utc_now,
    *,
    make_client: MakeClient = Client,
    make_storage: MakeStorage = SqlStorage,
    join: Join = _join,
) -> None:
    """Work until cancelled: in safe mode where the starts before have broken."""
    async with _signed_in_line(settings, secrets, clock, make_client, make_storage) as line:
        starts = Starts(line.storage, settings.matrix.user, clock)
        if (await starts.broken())[0] >= MOST_BROKEN:
            async with aclosing(RenderingProcess()) as rendering:
                await _safe(line, starts, rendering).run()
        async with starts.counted(), join(line) as bot:
            with _measured(line, bot):
                await bot.run()


def _measured(line: Line, bot: Bot) -> AbstractContextManager[None]:
    """The bot's figures at the address that the settings name, or nothing."""
    if line.settings.admin.metrics is None:
        return nullcontext()
    from bot.metrics import served  # noqa: PLC0415 - only if it is wanted

    return served(line.settings.admin.metrics, lambda: line.secrecy.is_signed, lambda: bot.sync.last_good_s)


@asynccontextmanager
async def _secrecy(
    settings: Settings, secrets: Secrets, client: Client, device_id: str, clock: Clock
) -> AsyncIterator[Secrecy]:
    """Encryption for this device, or none where the settings say so."""
    if not settings.encryption.enabled:
        yield InTheClear()
        return
    from bot.matrix.crypto.encryption import open_encryption  # noqa: PLC0415 - only if it is wanted

    key = secrets.pickle_key.get_secret_value() if secrets.pickle_key else None
    async with open_encryption(client, device_id, settings.encryption, key, clock) as encryption:
        yield encryption


async def _signed_in(
    settings: Settings, secrets: Secrets, storage: SqlStorage, make_client: MakeClient
) -> tuple[Client, str]:
    """The client on the session of an earlier start, or on a new one, and its device, which is kept for life."""
    user_id = settings.matrix.user
    async with storage.begin() as work:
        kept = await work.sessions.get(user_id)
    given = secrets.token.get_secret_value() if secrets.token else None
    account = Account(
        user_id=user_id,
        device_id=kept.device_id if kept else None,
        password=secrets.password.get_secret_value() if secrets.password else None,
        token=given or (kept.token if kept else None),
        device_name=settings.matrix.device_name,
    )
    client = make_client(settings.matrix.homeserver, account)
    try:
        device_id = await _sign_in(client, settings.matrix.homeserver)
        async with storage.begin() as work:
            session = kept or Session(user_id=user_id, device_id=device_id, token="")
            await work.sessions.save(replace(session, device_id=device_id, token=client.token))
            await work.outbox.release()
    except BaseException:
        await client.close()
        raise
    return client, device_id


async def _sign_in(client: Client, homeserver: str) -> str:
    try:
        return await client.sign_in()
    except (TryLater, SendRefused) as problem:
        raise OperatorError(f"{homeserver} cannot be used now: {problem}", NO_HOMESERVER) from problem


def _house(settings: Settings, clock: Clock) -> House:
    return build_house(
        clock=clock,
        bot_id=settings.matrix.user,
        zone=settings.kitchen.zone,
        language=settings.kitchen.language,
        chefs=settings.people.chefs,
        admin_room=settings.admin.room,
        groups=tuple(Group(group.name, group.rooms) for group in settings.groups),
    )


def _way_out(line: Line, world: World, renderer: Renderer, report: Report, on_dead: OnDead) -> Sender:
    matrix = line.settings.matrix
    pace = Pace(world, rate_per_s=matrix.messages_per_second, burst=matrix.burst)
    messenger = RoomMessenger(line.client, report, line.secrecy, Uploads(line.client, line.secrecy, renderer))
    return Sender(line.storage, messenger, world, pace, on_dead=on_dead)


def _way_in(line: Line, world: World, report: Report, *, allowed: Allowed, wake: Wake) -> SyncLoop:
    return SyncLoop(line.client, line.storage, world, allowed=allowed, wake=wake, report=report, secrecy=line.secrecy)


def _world(clock: Clock) -> World:
    return World(clock, asyncio.sleep, SystemRandom().random)


def _joined(line: Line, fitter: Fitter, renderer: Renderer) -> Bot:
    settings, storage, world = line.settings, line.storage, _world(line.clock)
    house = _house(settings, line.clock)
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
    """What safe mode needs, and nothing of the house, which may be what is broken. Invitations wait."""
    world, admin = _world(line.clock), AdminRoom(line.settings.admin.room, line.clock, line.storage)
    sender = _way_out(line, world, renderer, admin.report, admin.log_dead)
    admin.wake_sender = sender.wake
    sync = _way_in(line, world, admin.report, allowed=lambda _: False, wake=lambda: None)
    return SafeMode(starts, sync, sender, admin)
