"""The requests about keys that the bot makes of its homeserver."""

from collections.abc import Awaitable, Iterable, Mapping
from typing import Any, Protocol, TypeVar
from uuid import uuid4

from pydantic import BaseModel

from bot.matrix.crypto.wire import Claimed, Members, Queried
from bot.matrix.faults import Unproven
from bot.matrix.wire import parsed
from bot.services.ports.messages import TryLater

_T = TypeVar("_T")
_Model = TypeVar("_Model", bound=BaseModel)

Messages = Mapping[str, Mapping[str, object]]
"""What goes to devices, by person and device."""


class Call(Protocol):
    """One request, as the transport makes it."""

    def __call__(
        self, method: str, path: str, *parts: str, query: Mapping[str, str] | None = None, body: Any = None
    ) -> Awaitable[dict[str, object]]:
        """The server's answer; ``SendRefused`` or ``TryLater`` if it is no success."""


class KeyServer:
    """The homeserver as far as it keeps and hands on keys; the password, if known, proves who asks."""

    def __init__(self, call: Call, user_id: str, password: str | None = None) -> None:
        self._call = call
        self._user_id = user_id
        self._password = password

    async def upload(self, keys: Mapping[str, object]) -> None:
        """Publish keys of this device."""
        await self._call("POST", "v3/keys/upload", body=keys)

    async def query(self, users: Iterable[str]) -> Queried:
        """The devices and signing keys of these people."""
        body: dict[str, dict[str, list[str]]] = {"device_keys": {user: [] for user in users}}
        return _understood(Queried, await self._call("POST", "v3/keys/query", body=body))

    async def claim(self, devices: Mapping[str, Iterable[str]]) -> Claimed:
        """A one-time key of each of these devices, where there is one left."""
        wanted = {user: dict.fromkeys(ids, "signed_curve25519") for user, ids in devices.items()}
        return _understood(Claimed, await self._call("POST", "v3/keys/claim", body={"one_time_keys": wanted}))

    async def to_devices(self, event_type: str, messages: Messages) -> None:
        """Send something to devices rather than to a room."""
        await self._call("PUT", "v3/sendToDevice/{}/{}", event_type, uuid4().hex, body={"messages": messages})

    async def members(self, room_id: str) -> list[object]:
        """The membership events of everybody who has not left the room."""
        told = await self._call("GET", "v3/rooms/{}/members", room_id, query={"not_membership": "leave"})
        return _understood(Members, told).chunk

    async def publish_signing_keys(self, keys: Mapping[str, object]) -> None:
        """Publish the three signing keys, proving with the password that it is really us where that is asked."""
        path = "v3/keys/device_signing/upload"
        try:
            await self._call("POST", path, body=keys)
        except Unproven as asked:
            if self._password is None:
                raise
            proof = {
                "type": "m.login.password",
                "identifier": {"type": "m.id.user", "user": self._user_id},
                "password": self._password,
                "session": asked.session,
            }
            await self._call("POST", path, body={**keys, "auth": proof})

    async def publish_signatures(self, signed: Mapping[str, object]) -> object:
        """Publish signatures on keys; what failed, by person and key."""
        told = await self._call("POST", "v3/keys/signatures/upload", body=signed)
        return told.get("failures") or {}


class Patience:
    """Lets a kind of request fail twice in a row as ``TryLater``; from the third time on it is done without.

    What it is needed for can wait a little, not for ever.
    """

    def __init__(self) -> None:
        self._failures = 0

    async def ask(self, request: Awaitable[_T]) -> _T | None:
        """The answer; None where there has been none too often."""
        try:
            answer = await request
        except Exception as problem:
            self._failures += 1
            if self._failures < _TOO_OFTEN:
                raise TryLater(str(problem), getattr(problem, "after_s", None)) from problem
            return None
        self._failures = 0
        return answer


_TOO_OFTEN = 3


def _understood(model: type[_Model], told: Mapping[str, object]) -> _Model:
    answer = parsed(model, told)
    if answer is None:
        raise TryLater(f"an answer that is no {model.__name__}")
    return answer
