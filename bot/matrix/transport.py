"""Requests to the homeserver through nio: a plain answer or one of our own exceptions, nothing of nio's beyond here.

nio carries the requests; what it makes of the answers is not used. It turns errors into values, waits and retries by
itself, writes whole answers (tokens and words) to its debug log, and raises on a sync that the specification allows.
The contract tests of nio say which of these are still so.
"""

import json
from collections.abc import Mapping
from urllib.parse import quote, urlencode

import aiohttp
from nio import AsyncClient, AsyncClientConfig

from bot.matrix.faults import fault
from bot.services.ports.messages import TryLater


class Transport:
    """One account's line to its homeserver; ``patience_s`` is how long any request may take."""

    def __init__(self, homeserver: str, user_id: str, *, patience_s: float) -> None:
        self._patience_s = patience_s
        settings = AsyncClientConfig(max_limit_exceeded=0, max_timeouts=0, encryption_enabled=False)
        self._nio = AsyncClient(homeserver.rstrip("/"), user_id, config=settings)

    @property
    def token(self) -> str:
        """The access token that requests are signed with; empty before signing in."""
        return str(self._nio.access_token)

    def use_token(self, token: str) -> None:
        """Sign every request from now on with this access token; an empty one signs none."""
        self._nio.access_token = token

    async def call(
        self,
        method: str,
        path: str,
        *parts: str,
        query: Mapping[str, str] | None = None,
        body: Mapping[str, object] | None = None,
        wait_s: float = 0.0,
    ) -> dict[str, object]:
        """The server's answer, for which it may wait so long; ``SendRefused`` or ``TryLater`` if it is no success.

        The ``{}`` in the path stand for the parts, quoted here.
        """
        address = f"/_matrix/client/{path}".format(*(quote(part, safe="") for part in parts))
        if query:
            address += f"?{urlencode(query)}"
        data = None if body is None else json.dumps(body)
        return await self._ask(method, address, data, "application/json", wait_s)

    async def upload(self, content: bytes, media: str, name: str = "") -> dict[str, object]:
        """The server's answer to a file of this media type and name; errors as above."""
        address = "/_matrix/media/v3/upload" + (f"?{urlencode({'filename': name})}" if name else "")
        return await self._ask("POST", address, content, media, self._patience_s)

    async def _ask(
        self, method: str, address: str, data: str | bytes | None, media: str, wait_s: float
    ) -> dict[str, object]:
        """One request, its body of this media type."""
        try:
            answer = await self._nio.send(
                method, address, data, self._headers(media), timeout=self._patience_s + wait_s
            )
            async with answer:
                told = _object(await answer.read())
        except (aiohttp.ClientError, OSError) as problem:  # a timeout is an OSError too
            raise TryLater(f"{type(problem).__name__}: {problem}") from problem
        if answer.ok and told is not None:
            return told
        raise fault(answer.status, answer.headers, told or {})

    def _headers(self, media: str) -> dict[str, str]:
        headers = {"Content-Type": media}
        if self._nio.access_token:
            headers["Authorization"] = f"Bearer {self._nio.access_token}"
        return headers

    async def close(self) -> None:
        """Let the connections go."""
        await self._nio.close()


def _object(body: bytes) -> dict[str, object] | None:
    """The JSON object in an answer; None where there is something else, such as a proxy's page."""
    try:
        told = json.loads(body)
    except (ValueError, RecursionError):
        return None
    return told if isinstance(told, dict) else None
