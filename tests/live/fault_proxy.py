"""A proxy of the tests' own between the bot and a real homeserver: it passes everything on, or misbehaves as told."""

import asyncio
import re
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass, field

import aiohttp
from aiohttp import web

SYNC = r"GET .*/sync"
SEND = r"PUT .*/send/m\.room\.message/"
SENDING_ANYTHING = r"PUT .*/send/"
ANYTHING = r".*"

_ENDLESS = 10**9
_PASSED_ON = ("Content-Type", "Retry-After")

Forward = Callable[[], Awaitable[web.StreamResponse]]
"""Asks the homeserver."""

Answer = Callable[[web.BaseRequest, Forward], Awaitable[web.StreamResponse]]
"""How a fault answers a request."""


@dataclass
class Fault:
    """Answers so many of the requests whose method and path match; ``met`` counts them."""

    where: str
    answer: Answer
    times: int = _ENDLESS
    met: int = 0


@dataclass
class FaultProxy:
    """Where the bot is to look for its homeserver: ``url``. ``asked`` are the requests so far, each with its time."""

    homeserver: str
    url: str = ""
    faults: list[Fault] = field(default_factory=list)
    asked: list[tuple[float, str]] = field(default_factory=list)
    addresses: list[str] = field(default_factory=list)
    """Their whole addresses, queries too."""

    def asked_since(self, moment_s: float) -> list[str]:
        """The requests from then on."""
        return [what for when_s, what in self.asked if when_s >= moment_s]


@asynccontextmanager
async def fault_proxy(homeserver: str) -> AsyncIterator[FaultProxy]:
    """A proxy that is there until the block ends."""
    proxy = FaultProxy(homeserver)
    async with aiohttp.ClientSession(timeout=aiohttp.ClientTimeout(total=None)) as session:

        async def handle(request: web.BaseRequest) -> web.StreamResponse:
            what = f"{request.method} {request.path}"
            proxy.asked.append((time.monotonic(), what))
            proxy.addresses.append(request.raw_path)
            body = await request.read()

            async def forward() -> web.StreamResponse:
                return await _forward(session, homeserver, request, body)

            for fault in proxy.faults:
                if fault.met < fault.times and re.match(fault.where, what):
                    fault.met += 1
                    return await fault.answer(request, forward)
            return await forward()

        runner = web.ServerRunner(web.Server(handle), shutdown_timeout=0.1)
        await runner.setup()
        site = web.TCPSite(runner, "127.0.0.1", 0)
        await site.start()
        (address,) = runner.addresses
        proxy.url = f"http://127.0.0.1:{address[1]}"
        try:
            yield proxy
        finally:
            await runner.cleanup()


async def _forward(
    session: aiohttp.ClientSession, homeserver: str, request: web.BaseRequest, body: bytes
) -> web.StreamResponse:
    kept = {name: value for name, value in request.headers.items() if name in ("Authorization", "Content-Type")}
    try:
        async with session.request(request.method, homeserver + request.raw_path, data=body, headers=kept) as answer:
            passed_on = {name: answer.headers[name] for name in _PASSED_ON if name in answer.headers}
            return web.Response(status=answer.status, body=await answer.read(), headers=passed_on)
    except aiohttp.ClientError:
        return web.Response(status=502, text="<html><h1>502 Bad Gateway</h1></html>", content_type="text/html")


def refusal(status: int, told: Mapping[str, object] | None = None, headers: Mapping[str, str] | None = None) -> Answer:
    """An answer of this status, with JSON or with nothing."""

    async def answer(_: web.BaseRequest, __: Forward) -> web.StreamResponse:
        if told is None:
            return web.Response(status=status, headers=headers)
        return web.json_response(dict(told), status=status, headers=headers)

    return answer


async def page_502(_: web.BaseRequest, __: Forward) -> web.StreamResponse:
    """What a proxy says whose server is gone."""
    return web.Response(status=502, text="<html><h1>502 Bad Gateway</h1></html>", content_type="text/html")


async def reset_in_mid_answer(request: web.BaseRequest, _: Forward) -> web.StreamResponse:
    """Half of a JSON object, and the connection is gone."""
    answer = web.StreamResponse(headers={"Content-Type": "application/json", "Content-Length": "1000"})
    await answer.prepare(request)
    await answer.write(b'{"next_batch": "')
    _hang_up(request)
    return answer


async def unheard(request: web.BaseRequest, forward: Forward) -> web.StreamResponse:
    """The homeserver does it, and the bot does not hear of it."""
    answer = await forward()
    _hang_up(request)
    return answer


def late(seconds: float) -> Answer:
    """The true answer, but later."""

    async def answer(_: web.BaseRequest, forward: Forward) -> web.StreamResponse:
        await asyncio.sleep(seconds)
        return await forward()

    return answer


def _hang_up(request: web.BaseRequest) -> None:
    if request.transport:
        request.transport.abort()
