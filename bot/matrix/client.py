"""The requests that the bot makes of its homeserver, each a few lines over the transport."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from bot.errors import OperatorError
from bot.matrix.crypto.server import KeyServer
from bot.matrix.faults import LoggedOut, Refused, SignedOut, TokenRefused
from bot.matrix.filters import INVITATIONS, NEWS, PAST
from bot.matrix.transport import Transport
from bot.matrix.wire import News, Page, RawEvent, parsed
from bot.services.ports.messages import TryLater

_PAGE_LIMIT = 200

_Model = TypeVar("_Model", bound=BaseModel)


@dataclass(frozen=True)
class Account:
    """Who the bot is: ``device_id`` is kept for life, None until the server has given the first one."""

    user_id: str
    device_id: str | None = None
    password: str | None = field(default=None, repr=False)
    token: str | None = field(default=None, repr=False)
    device_name: str = "Platepace"


class Client:
    """The bot's account on its homeserver; ``patience_s`` is how long any request may take."""

    def __init__(self, homeserver: str, account: Account, *, patience_s: float = 30.0) -> None:
        self._account = account
        self._device_id = account.device_id
        self._transport = Transport(homeserver, account.user_id, patience_s=patience_s)
        self._call = self._transport.call

    @property
    def user_id(self) -> str:
        """Who the bot is."""
        return self._account.user_id

    @property
    def token(self) -> str:
        """The access token that the session goes on with."""
        return self._transport.token

    @property
    def keys(self) -> KeyServer:
        """The requests about keys."""
        return KeyServer(self._call, self.user_id, self._account.password)

    async def sign_in(self) -> str:
        """Sign in with the token or, where that is not good any more, the password; the device id to keep for life."""
        if not await self.resume():
            await self._log_in()
        if self._device_id is None:
            raise OperatorError(f"The access token of {self.user_id} belongs to no device.")
        return self._device_id

    async def answers(self) -> None:
        """Ask for what anybody may ask for; an error says why the homeserver cannot be used."""
        await self._call("GET", "versions")

    async def resume(self) -> bool:
        """Go on with the token that there is; False where there is none, or it is not good any more."""
        if not self._account.token:
            return False
        self._transport.use_token(self._account.token)
        try:
            self._recognise(await self._call("GET", "v3/account/whoami"))
        except SignedOut:
            return False
        return True

    async def _log_in(self) -> None:
        if not self._account.password:
            raise LoggedOut(f"The access token of {self.user_id} is not valid and no password is known.")
        order = {
            "type": "m.login.password",
            "identifier": {"type": "m.id.user", "user": self.user_id},
            "password": self._account.password,
            "initial_device_display_name": self._account.device_name,
        }
        self._transport.use_token("")
        try:
            told = await self._call(
                "POST", "v3/login", body=order | ({"device_id": self._device_id} if self._device_id else {})
            )
        except (Refused, SignedOut) as problem:
            raise LoggedOut(f"{self.user_id} cannot sign in: {problem}") from problem
        self._recognise(told)
        self._transport.use_token(_stated(told, "access_token"))

    def _recognise(self, told: Mapping[str, object]) -> None:
        user_id, device_id = told.get("user_id"), told.get("device_id")
        if user_id != self.user_id:
            raise OperatorError(f"The homeserver takes the bot for {user_id}, the settings say {self.user_id}.")
        if self._device_id and device_id != self._device_id:
            raise OperatorError(f"Signed in on device {device_id}, but this bot has always been {self._device_id}.")
        self._device_id = str(device_id) if device_id else None

    async def sync(self, since: str | None, *, wait_s: float) -> News:
        """What is new since that token, waiting so long for something; without a token, how everything stands."""
        query = {"filter": json.dumps(NEWS), "timeout": str(int(wait_s * 1000))}
        try:
            told = await self._call("GET", "v3/sync", query=query | ({"since": since} if since else {}), wait_s=wait_s)
        except Refused as problem:
            raise (TokenRefused(str(problem)) if since else TryLater(str(problem))) from problem
        return _understood(News, told)

    async def invitations(self) -> News:
        """The invitations that are open, however old, and nothing else."""
        query = {"filter": json.dumps(INVITATIONS), "timeout": "0"}
        return _understood(News, await self._call("GET", "v3/sync", query=query))

    async def past(
        self, room_id: str, start: str | None, end: str | None = None, *, only: Mapping[str, object] = PAST
    ) -> Page:
        """A page of what came before ``start`` (None: the newest), back to ``end``."""
        query = {"dir": "b", "limit": str(_PAGE_LIMIT), "filter": json.dumps(only)}
        stated = {key: token for key, token in (("from", start), ("to", end)) if token}
        return _understood(Page, await self._call("GET", "v3/rooms/{}/messages", room_id, query=query | stated))

    async def send(self, room_id: str, event_type: str, content: Mapping[str, object], txn_id: str) -> str:
        """Send an event under a transaction id; its event id, the same however often it is sent."""
        told = await self._call("PUT", "v3/rooms/{}/send/{}/{}", room_id, event_type, txn_id, body=content)
        return _stated(told, "event_id")

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> dict[str, object] | None:
        """The content of a state event; None if there is none."""
        try:
            return await self._call("GET", "v3/rooms/{}/state/{}/{}", room_id, event_type, state_key)
        except Refused as problem:
            if problem.errcode == "M_NOT_FOUND":
                return None
            raise

    async def creation(self, room_id: str) -> RawEvent | None:
        """The event that made the room, with its sender; None from a server that gives contents only."""
        path = "v3/rooms/{}/state/m.room.create/"
        return parsed(RawEvent, await self._call("GET", path, room_id, query={"format": "event"}))

    async def put_state(self, room_id: str, event_type: str, content: Mapping[str, object]) -> str:
        """Set a state event; its event id."""
        told = await self._call("PUT", "v3/rooms/{}/state/{}/", room_id, event_type, body=content)
        return _stated(told, "event_id")

    async def create_room(self, order: Mapping[str, object]) -> str:
        """Make a room; its id."""
        return _stated(await self._call("POST", "v3/createRoom", body=order), "room_id")

    async def join(self, room_id: str, through: str = "") -> None:
        """Accept an invitation or come in uninvited, through this server where the room is only elsewhere."""
        query = {"via": through, "server_name": through} if through else None  # the second before version 1.12
        await self._call("POST", "v3/join/{}", room_id, query=query, body={})

    async def leave(self, room_id: str) -> None:
        """Leave a room or turn an invitation down."""
        await self._call("POST", "v3/rooms/{}/leave", room_id, body={})

    async def people_in(self, room_id: str) -> list[str]:
        """Who is in the room."""
        people = (await self._call("GET", "v3/rooms/{}/joined_members", room_id)).get("joined")
        return list(people) if isinstance(people, dict) else []

    async def joined_rooms(self) -> list[str]:
        """The rooms that the bot is in."""
        rooms = (await self._call("GET", "v3/joined_rooms")).get("joined_rooms")
        return [str(room) for room in rooms] if isinstance(rooms, list) else []

    async def reactions_to(self, room_id: str, event_id: str) -> Page:
        """The newest reactions to an event."""
        path = "v1/rooms/{}/relations/{}/m.annotation/m.reaction"
        return _understood(Page, await self._call("GET", path, room_id, event_id))

    async def upload(self, content: bytes, media: str, name: str = "") -> str:
        """Keep these bytes on the homeserver; the address by which messages name them (``mxc://...``)."""
        return _stated(await self._transport.upload(content, media, name), "content_uri")

    async def close(self) -> None:
        """Let the connections go."""
        await self._transport.close()


def _understood(model: type[_Model], told: Mapping[str, object]) -> _Model:
    try:
        return model.model_validate(told)
    except ValidationError as problem:
        raise TryLater(f"an answer that is no {model.__name__}: {problem.error_count()} faults") from problem


def _stated(told: Mapping[str, object], key: str) -> str:
    value = told.get(key)
    if not isinstance(value, str):
        raise TryLater(f"an answer without {key}")
    return value
