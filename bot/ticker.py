"""Wakes the planner at a steady beat; what is due, and whether it was done, is known to the storage alone."""

from collections.abc import Awaitable, Callable
from datetime import UTC

from apscheduler.schedulers.asyncio import AsyncIOScheduler

EVERY_S = 30.0


class Ticker:
    """Awaits ``tick`` every so many seconds; beats missed while the machine was busy are made up for by one."""

    def __init__(self, tick: Callable[[], Awaitable[None]], every_s: float = EVERY_S) -> None:
        self._tick = tick
        self._scheduler = AsyncIOScheduler(timezone=UTC)
        self._scheduler.add_job(self._beat, "interval", seconds=every_s, misfire_grace_time=None, coalesce=True)

    async def _beat(self) -> None:
        await self._tick()

    def start(self) -> None:
        """Begin; the first beat comes after one interval."""
        self._scheduler.start()

    def stop(self) -> None:
        """End; a beat under way is cancelled, so what it had begun is rolled back."""
        self._scheduler.shutdown(wait=False)
