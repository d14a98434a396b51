"""A homeserver of a few lines on a loopback port, which answers as told and remembers what it was asked."""

from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from typing import Any

from aiohttp import web
from aiohttp.test_utils import TestServer

Answer = Callable[[web.Request], Awaitable[web.StreamResponse]]


@dataclass
class Asked:
    """One request: its path with the query as it came, its headers and its body."""

    method: str
    path: str
    headers: dict[str, str]
    body: str


@dataclass
class StubHomeserver:
    """Answers whatever comes with the next of ``answers``; what came is in ``asked``."""

    answers: list[Answer] = field(default_factory=list)
    asked: list[Asked] = field(default_factory=list)
    url: str = ""

    async def handle(self, request: web.Request) -> web.StreamResponse:
        """Remember, and answer."""
        self.asked.append(Asked(request.method, request.path_qs, dict(request.headers), await request.text()))
        return await self.answers.pop(0)(request)


def says(told: Any, status: int = 200, **headers: str) -> Answer:
    """An answer in JSON."""

    async def answer(_: web.Request) -> web.StreamResponse:
        return web.json_response(told, status=status, headers=headers)

    return answer


def says_page(status: int) -> Answer:
    """A page of some proxy's."""

    async def answer(_: web.Request) -> web.StreamResponse:
        return web.Response(status=status, text="<html>Bad Gateway</html>", content_type="text/html")

    return answer


def refuses(status: int, errcode: str) -> Answer:
    """A refusal as the specification has it."""
    return says({"errcode": errcode, "error": "because"}, status)


@asynccontextmanager
async def stub_homeserver(*answers: Answer) -> AsyncIterator[StubHomeserver]:
    """One that gives these answers in turn."""
    stub = StubHomeserver(list(answers))
    app = web.Application()
    app.router.add_route("*", "/{any:.*}", stub.handle)
    async with TestServer(app) as server:
        stub.url = str(server.make_url("")).rstrip("/")
        yield stub
