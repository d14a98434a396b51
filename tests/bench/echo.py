"""A minimal echo bot on nio, to measure against: answers each text with the same text, one task a reply.

It fills limited timelines, since one that does not loses most of a burst; it stores nothing and checks nothing else.
"""

import asyncio
import sys
from typing import Any

from nio import AsyncClient, LoginResponse, RoomMessagesResponse, RoomMessageText, SyncResponse

_FILTER = {"room": {"timeline": {"limit": 100}}}


class Echo:
    """One account that answers everybody else."""

    def __init__(self, homeserver: str, user_id: str) -> None:
        self._client = AsyncClient(homeserver, user_id)
        self._replies: set[asyncio.Task[Any]] = set()

    async def run(self, password: str) -> None:
        """Answer for ever."""
        signed_in = await self._client.login(password)
        if not isinstance(signed_in, LoginResponse):
            raise SystemExit(str(signed_in))
        first = await self._client.sync(timeout=0, sync_filter=_FILTER)
        since = first.next_batch
        while True:
            news = await self._client.sync(timeout=30_000, since=since, sync_filter=_FILTER)
            if isinstance(news, SyncResponse):
                await self._answer(news, since)
                since = news.next_batch

    async def _answer(self, news: SyncResponse, since: str) -> None:
        for room_id, room in news.rooms.join.items():
            missed = await self._missed(room_id, room.timeline.prev_batch, since) if room.timeline.limited else []
            for event in [*missed, *room.timeline.events]:
                if isinstance(event, RoomMessageText) and event.sender != self._client.user_id:
                    reply = asyncio.create_task(self._reply(room_id, event.body))
                    self._replies.add(reply)
                    reply.add_done_callback(self._replies.discard)

    async def _missed(self, room_id: str, start: str | None, end: str) -> list[Any]:
        page = await self._client.room_messages(room_id, start=start or "", end=end, limit=1000)
        return list(reversed(page.chunk)) if isinstance(page, RoomMessagesResponse) else []

    async def _reply(self, room_id: str, body: str) -> None:
        await self._client.room_send(room_id, "m.room.message", {"msgtype": "m.notice", "body": body})


if __name__ == "__main__":
    asyncio.run(Echo(sys.argv[1], sys.argv[2]).run(sys.argv[3]))
