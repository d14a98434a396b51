"""A homeserver in memory, just enough for one bot in one room: what a bot takes by itself, the server apart."""

import asyncio
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass, field
from typing import Any

from aiohttp import web

ROOM = "!stub:tern.example"
NOOR, IME = "@noor:tern.example", "@ime:tern.example"


@dataclass
class StubHomeserver:
    """Answers at once; ``sent`` are the bot's texts, each with the moment at which it came."""

    bot_id: str
    url: str = ""
    sent: list[tuple[float, str]] = field(default_factory=list)
    _stream: list[dict[str, Any]] = field(default_factory=list)
    _news: asyncio.Condition = field(default_factory=asyncio.Condition)

    def __post_init__(self) -> None:
        self._add(IME, "m.room.create", {"room_version": "11"}, state_key="")
        self._add(IME, "m.room.power_levels", {"users": {IME: 100, self.bot_id: 50}}, state_key="")
        for person in (IME, NOOR, self.bot_id):
            self._add(person, "m.room.member", {"membership": "join", "displayname": person[1:5]}, state_key=person)

    async def say(self, sender: str, body: str) -> float:
        """Let somebody say something; the moment."""
        self._add(sender, "m.room.message", {"msgtype": "m.text", "body": body})
        async with self._news:
            self._news.notify_all()
        return time.perf_counter()

    async def answer(self, seen: int) -> float:
        """The moment of the bot's first text beyond the first ``seen``."""
        async with asyncio.timeout(20), self._news:
            await self._news.wait_for(lambda: len(self.sent) > seen)
        return self.sent[seen][0]

    def _add(self, sender: str, kind: str, content: dict[str, Any], **state: str) -> str:
        event_id = f"$stub{len(self._stream)}"
        event = {"event_id": event_id, "sender": sender, "type": kind, "content": content, "unsigned": {}} | state
        self._stream.append(event | {"origin_server_ts": round(time.time() * 1000), "room_id": ROOM})
        return event_id

    async def _login(self, _request: web.Request) -> web.Response:
        session = {"user_id": self.bot_id, "device_id": "STUB", "access_token": "stub", "home_server": "tern.example"}
        return web.json_response(session)

    async def _sync(self, request: web.Request) -> web.Response:
        since, wait_s = int(request.query.get("since", 0)), int(request.query.get("timeout", 0)) / 1000
        if since == len(self._stream) and wait_s:
            async with self._news:
                with suppress(TimeoutError):
                    await asyncio.wait_for(self._news.wait_for(lambda: len(self._stream) > since), wait_s)
        timeline = {"events": self._stream[since:], "limited": False, "prev_batch": str(since)}
        room = {
            "timeline": timeline,
            "state": {"events": []},
            "ephemeral": {"events": []},
            "account_data": {"events": []},
        }
        rooms = {"join": {ROOM: room} if since < len(self._stream) else {}, "invite": {}, "leave": {}}
        return web.json_response({"next_batch": str(len(self._stream)), "rooms": rooms})

    async def _send(self, request: web.Request) -> web.Response:
        content = await request.json()
        event_id = self._add(self.bot_id, request.match_info["kind"], content)
        async with self._news:
            if "body" in content:
                self.sent.append((time.perf_counter(), str(content["body"])))
            self._news.notify_all()
        return web.json_response({"event_id": event_id})

    async def _put_state(self, request: web.Request) -> web.Response:
        event_id = self._add(self.bot_id, request.match_info["kind"], await request.json(), state_key="")
        return web.json_response({"event_id": event_id})

    async def _no_state(self, _request: web.Request) -> web.Response:
        return web.json_response({"errcode": "M_NOT_FOUND", "error": "none"}, status=404)

    def routes(self) -> list[web.RouteDef]:
        """What it answers."""
        base = "/_matrix/client/v3"
        return [
            web.post(f"{base}/login", self._login),
            web.get(f"{base}/account/whoami", self._login),
            web.get(f"{base}/sync", self._sync),
            web.put(f"{base}/rooms/{{room}}/send/{{kind}}/{{txn}}", self._send),
            web.get(f"{base}/rooms/{{room}}/state/{{kind}}/{{key:.*}}", self._no_state),
            web.put(f"{base}/rooms/{{room}}/state/{{kind}}/{{key:.*}}", self._put_state),
        ]


@asynccontextmanager
async def stub_homeserver(bot_id: str) -> AsyncIterator[StubHomeserver]:
    """The stub, listening on a free loopback port."""
    stub = StubHomeserver(bot_id)
    application = web.Application()
    application.add_routes(stub.routes())
    runner = web.AppRunner(application, shutdown_timeout=0.1)
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", 0)
    await site.start()
    port = runner.addresses[0][1]
    stub.url = f"http://127.0.0.1:{port}"
    try:
        yield stub
    finally:
        await runner.cleanup()
