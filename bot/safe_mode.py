"""Safe mode: a bot that broke at its start again and again keeps what comes in, does nothing with it, and says so.

Counted are starts that ended by an unforeseen fault of the bot's own within a minute. A fault with an exit code of its
own, a kill and an orderly stop are none: those say what they are, or are meant.
"""

import asyncio
import logging
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path
from traceback import extract_tb
from typing import NoReturn

from bot.errors import OperatorError
from bot.matrix.outbox import Sender
from bot.matrix.sync import SyncLoop
from bot.services.faults import AdminRoom
from bot.services.ports.world import Clock, Rest, Storage

log = logging.getLogger(__name__)

MOST_BROKEN = 3
YOUNG = timedelta(minutes=1)

TOLD = (
    "Safe mode: {starts} starts in a row broke within a minute, the last by {fault}. The log of those starts has it in "
    "full. What is said in the rooms is stored and nothing of it is lost, but nothing is answered, posted or closed. "
    "When the fault is mended, stop me and start me again: an orderly stop ends safe mode, and all that waits is then "
    "worked off in order."
)


class Starts:
    """The starts of one account's bot that broke in a row, counted with its session."""

    def __init__(self, storage: Storage, user_id: str, clock: Clock, rest: Rest = asyncio.sleep) -> None:
        self._storage = storage
        self._user_id = user_id
        self._clock = clock
        self._rest = rest

    async def broken(self) -> tuple[int, str]:
        """How many broke in a row, and by what the last did."""
        async with self._storage.begin() as work:
            session = await work.sessions.get(self._user_id)
        return (session.broken_starts, session.broken_by) if session else (0, "")

    async def forget(self) -> None:
        """The bot has started well, or its operator has seen to it."""
        await self._keep(0, "")

    async def _keep(self, broken_starts: int, broken_by: str) -> None:
        async with self._storage.begin() as work:
            session = await work.sessions.get(self._user_id)
            if session:
                await work.sessions.save(replace(session, broken_starts=broken_starts, broken_by=broken_by))

    @asynccontextmanager
    async def counted(self) -> AsyncIterator[None]:
        """A start and the work after it; if it breaks while young it is one more, else none is left."""
        before, begun = (await self.broken())[0], self._clock()
        settling = asyncio.create_task(self._settle()) if before else None
        try:
            yield
        except Exception as fault:
            is_broken = _is_unforeseen(fault) and self._clock() - begun < YOUNG
            with suppress(Exception):  # what broke may be the storage itself, and is told instead
                await (self._keep(before + 1, _named(fault)) if is_broken else self.forget())
            raise
        except asyncio.CancelledError:
            if before:
                await self.forget()
            raise
        finally:
            if settling:
                settling.cancel()

    async def _settle(self) -> None:
        await self._rest(YOUNG.total_seconds())
        await self.forget()


def _is_unforeseen(fault: BaseException) -> bool:
    """Whether none of it is a fault that says itself what is to be done."""
    if isinstance(fault, BaseExceptionGroup):
        return fault.subgroup(OperatorError) is None
    return not isinstance(fault, OperatorError)


def _named(fault: BaseException) -> str:
    """The kind of the fault and where it was raised, without its message, which may quote what was said."""
    while isinstance(fault, BaseExceptionGroup):
        fault = fault.exceptions[0]
    frames = extract_tb(fault.__traceback__)
    where = f" at {Path(frames[-1].filename).name}:{frames[-1].lineno}" if frames else ""
    return f"{type(fault).__name__}{where}"


@dataclass(frozen=True)
class SafeMode:
    """The way in as far as the inbox, and the way out for what was said before and for the admin room."""

    starts: Starts
    sync: SyncLoop
    sender: Sender
    admin: AdminRoom

    async def run(self) -> NoReturn:
        """Tell the admin room, keep what comes in until cancelled, and then count no broken starts any more."""
        starts, fault = await self.starts.broken()
        await self.admin.report(OperatorError(TOLD.format(starts=starts, fault=fault)))
        try:
            async with asyncio.TaskGroup() as workers:
                workers.create_task(self.sync.run())
                workers.create_task(self.sender.run())
        except asyncio.CancelledError:
            await self.starts.forget()
            raise
        raise AssertionError("the workers never end by themselves")
