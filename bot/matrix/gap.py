"""The past of a room that a sync left out: paged back to where the last sync ended, or to what is known already."""

from collections.abc import Awaitable, Callable, Mapping
from typing import Protocol

from bot.errors import OperatorError
from bot.matrix.events import SPOKEN
from bot.matrix.faults import Report
from bot.matrix.wire import Page, RoomNews
from bot.services.ports.messages import SendRefused

MOST_EVENTS = 4000
"""How far back a gap is filled; beyond that the admins are told."""

Known = Callable[[list[str]], Awaitable[set[str]]]
"""Which of these events were kept before."""


class Past(Protocol):
    """Where a room's past is read."""

    async def past(self, room_id: str, start: str | None, end: str | None = None) -> Page:
        """A page of what came before ``start``, the newest first, back to ``end``."""


class Gaps:
    """Fills what limited timelines leave out; at most ``most`` events a room."""

    def __init__(self, rooms: Past, report: Report, most: int = MOST_EVENTS) -> None:
        self._rooms = rooms
        self._report = report
        self._most = most

    async def before(self, room_id: str, news: RoomNews, since: str) -> list[object]:
        """The events between the last sync and a limited timeline, the oldest first."""
        start = news.timeline.prev_batch if news.timeline.limited else None
        found: list[object] = []
        while start is not None and len(found) < self._most:
            page = await self._page(room_id, start, since)
            found += page.chunk
            start = _further(page, start)
        if start is not None:
            await self._report(OperatorError(f"More was said in {room_id} than {self._most} events: the rest is lost."))
        return found[::-1]

    async def since_known(self, room_id: str, news: RoomNews, known: Known) -> list[object]:
        """Of a room whose last sync is forgotten, everything that follows the newest event kept before.

        Only what was said tells: how a room stands is kept at the first sync, long after it came to be so. Where
        nothing known turns up, what is old cannot be told from what is new: nothing is read, and the admins are told.
        """
        found = news.timeline.events[::-1]
        start = news.timeline.prev_batch
        while True:
            ids = [_spoken_id(event) for event in found]
            kept = await known([event_id for event_id in ids if event_id])
            if kept:
                newest = next(place for place, event_id in enumerate(ids) if event_id in kept)
                return found[:newest][::-1]
            if start is None or len(found) >= self._most:
                await self._admit_unknown(room_id, ids)
                return []
            page = await self._page(room_id, start, None)
            found += page.chunk
            start = _further(page, start)

    async def _page(self, room_id: str, start: str, end: str | None) -> Page:
        try:
            return await self._rooms.past(room_id, start, end)
        except SendRefused as problem:
            await self._report(OperatorError(f"The past of {room_id} cannot be read: {problem}"))
            return Page()

    async def _admit_unknown(self, room_id: str, ids: list[str | None]) -> None:
        if any(ids):
            await self._report(
                OperatorError(f"The server forgot where {room_id} was; what was said there lately was not read.")
            )


def _further(page: Page, start: str) -> str | None:
    """Where the next page starts; None where there is none, whether the server says so or only repeats itself."""
    return page.end if page.end != start else None


def _spoken_id(event: object) -> str | None:
    if isinstance(event, Mapping) and event.get("type") in SPOKEN and isinstance(event.get("event_id"), str):
        return str(event["event_id"])
    return None
