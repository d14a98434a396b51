"""Whatever a server, a proxy or the network does becomes one of our exceptions, at once; examples are constructed."""

import asyncio
import logging
import socket
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

import pytest
from aiohttp import web

from bot.matrix.faults import Locked, Refused, SignedOut
from bot.matrix.transport import Transport
from bot.services.ports.messages import TryLater
from tests.matrix.fakes import BOT
from tests.matrix.stub import Answer, refuses, says, says_page, stub_homeserver

TOKEN = "syt_secret_and_long"


@asynccontextmanager
async def transport_to(url: str, patience_s: float = 5.0) -> AsyncIterator[Transport]:
    """A transport signed in with the secret token."""
    transport = Transport(url, BOT, patience_s=patience_s)
    transport.use_token(TOKEN)
    try:
        yield transport
    finally:
        await transport.close()


async def test_an_answer_is_plain_and_its_parts_are_quoted() -> None:
    """A room id may hold anything (in version 12 no server's name), a slash or a question mark too."""
    async with stub_homeserver(says({"event_id": "$1"})) as stub, transport_to(stub.url) as transport:
        told = await transport.call(
            "PUT", "v3/rooms/{}/send/{}/{}", "!a/b?c:x", "m.room.message", "t1", query={"q": "ü&"}, body={"a": "ü"}
        )
    assert told == {"event_id": "$1"}
    (asked,) = stub.asked
    assert asked.path == "/_matrix/client/v3/rooms/!a%2Fb%3Fc:x/send/m.room.message/t1?q=%C3%BC%26"
    assert (asked.method, asked.body) == ("PUT", '{"a": "\\u00fc"}')


async def reset_in_mid_answer(request: web.Request) -> web.StreamResponse:
    """Half an answer, and then the line is cut."""
    answer = web.StreamResponse(headers={"Content-Length": "1000"})
    await answer.prepare(request)
    await answer.write(b'{"half":')
    assert request.transport is not None
    request.transport.abort()
    return answer


async def too_slow(_: web.Request) -> web.StreamResponse:
    """An answer that comes after all patience."""
    await asyncio.sleep(0.5)
    return web.json_response({})


@pytest.mark.parametrize(
    ("answer", "kind"),
    [
        (says_page(502), TryLater),
        (says_page(404), TryLater),
        (says_page(200), TryLater),
        (says([1, 2]), TryLater),
        (reset_in_mid_answer, TryLater),
        (too_slow, TryLater),
        (says_page(413), Refused),
        (refuses(403, "M_FORBIDDEN"), Refused),
        (refuses(401, "M_UNKNOWN_TOKEN"), SignedOut),
        (says({"errcode": "M_UNKNOWN_TOKEN", "error": "x", "soft_logout": True}, 401), SignedOut),
        (refuses(401, "M_USER_LOCKED"), Locked),
    ],
)
async def test_each_misfortune_is_one_exception_after_one_request(answer: Answer, kind: type[Exception]) -> None:
    """The library would wait and try again by itself, for ever; here whoever asked decides."""
    async with stub_homeserver(answer) as stub, transport_to(stub.url, patience_s=0.3) as transport:
        with pytest.raises(kind) as caught:
            await transport.call("GET", "v3/sync")
    assert type(caught.value) is kind
    assert len(stub.asked) == 1


async def test_a_limit_told_in_the_header_alone_is_passed_on_and_not_slept_through() -> None:
    """Source: T, specification v1.10, "Rate limiting": the header takes the place of retry_after_ms."""
    answer = says({"errcode": "M_LIMIT_EXCEEDED", "error": "slow down"}, 429, **{"Retry-After": "7"})
    async with stub_homeserver(answer) as stub, transport_to(stub.url) as transport:
        with pytest.raises(TryLater) as caught:
            await transport.call("GET", "v3/sync")
    assert caught.value.after_s == 7.0


async def test_a_server_that_is_not_there_is_a_reason_to_try_later() -> None:
    """The port is closed."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    async with transport_to(f"http://127.0.0.1:{port}") as transport:
        with pytest.raises(TryLater):
            await transport.call("GET", "v3/sync")


async def test_the_token_goes_in_the_header_and_nowhere_else(caplog: pytest.LogCaptureFixture) -> None:
    """Not in an address, which proxies log; not in our log, not even when everything is logged."""
    caplog.set_level(logging.DEBUG)
    answers = (says({"access_token": TOKEN}), refuses(403, "M_FORBIDDEN"), says_page(502))
    async with stub_homeserver(*answers) as stub, transport_to(stub.url) as transport:
        await transport.call("POST", "v3/login", body={"password": "throwaway"})
        with pytest.raises(Refused) as refused:
            await transport.call("GET", "v3/sync")
        with pytest.raises(TryLater) as later:
            await transport.call("GET", "v3/sync")
    assert all(asked.headers["Authorization"] == f"Bearer {TOKEN}" for asked in stub.asked)
    assert not any(TOKEN in asked.path for asked in stub.asked)
    assert TOKEN not in caplog.text
    assert "throwaway" not in caplog.text
    assert TOKEN not in f"{refused.value!r}{later.value!r}"
