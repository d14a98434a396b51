"""People with ordinary Matrix clients, written on plain HTTP so that they share no code with the bot."""

import itertools
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

import aiohttp

from bot.homeserver import Homeserver

PASSWORD = "throwaway"
_TXN_IDS = itertools.count()


@dataclass
class Person:
    """Somebody signed in on a device of their own."""

    user_id: str
    name: str
    _url: str
    _token: str
    _session: aiohttp.ClientSession

    @property
    def headers(self) -> dict[str, str]:
        """What their requests carry."""
        return {"Authorization": f"Bearer {self._token}"}

    async def ask(self, method: str, path: str, body: object = None, **query: str) -> dict[str, Any]:
        """One request below /_matrix/client/v3/; anything but a success raises."""
        address = f"{self._url}/_matrix/client/v3/{path}"
        async with self._session.request(method, address, json=body, params=query, headers=self.headers) as answer:
            told: dict[str, Any] = await answer.json()
            assert answer.ok, f"{answer.status} {told}"
            return told

    async def open_room(self, name: str = "Tern & Lantern", **order: Any) -> str:
        """Make a private room; its id."""
        made = await self.ask("POST", "createRoom", {"preset": "private_chat", "name": name} | order)
        return str(made["room_id"])

    async def invite(self, room_id: str, user_id: str) -> None:
        """Ask somebody in."""
        await self.ask("POST", f"rooms/{quote(room_id)}/invite", {"user_id": user_id})

    async def join(self, room_id: str) -> None:
        """Come in."""
        await self.ask("POST", f"rooms/{quote(room_id)}/join", {})

    async def kick(self, room_id: str, user_id: str) -> None:
        """Put somebody out, or take their invitation back."""
        await self.ask("POST", f"rooms/{quote(room_id)}/kick", {"user_id": user_id})

    async def say(self, room_id: str, text: str, **content: Any) -> str:
        """Say something; its event id."""
        return await self.send(room_id, "m.room.message", {"msgtype": "m.text", "body": text} | content)

    async def react(self, room_id: str, event_id: str, key: str) -> str:
        """Put an emoji on something; its event id."""
        relation = {"rel_type": "m.annotation", "event_id": event_id, "key": key}
        return await self.send(room_id, "m.reaction", {"m.relates_to": relation})

    async def edit(self, room_id: str, event_id: str, text: str) -> str:
        """Say something anew; the edit's event id."""
        relation = {"rel_type": "m.replace", "event_id": event_id}
        return await self.say(
            room_id, f"* {text}", **{"m.new_content": {"msgtype": "m.text", "body": text}, "m.relates_to": relation}
        )

    async def delete(self, room_id: str, event_id: str) -> str:
        """Take something back; the redaction's event id."""
        path = f"rooms/{quote(room_id)}/redact/{quote(event_id)}/t{next(_TXN_IDS)}"
        return str((await self.ask("PUT", path, {}))["event_id"])

    async def send(self, room_id: str, event_type: str, content: dict[str, Any]) -> str:
        """Send any event; its id."""
        path = f"rooms/{quote(room_id)}/send/{event_type}/t{next(_TXN_IDS)}"
        return str((await self.ask("PUT", path, content))["event_id"])

    async def read(self, room_id: str, event_type: str = "m.room.message") -> list[dict[str, Any]]:
        """Every event of a type in the room, the oldest first."""
        path = f"rooms/{quote(room_id)}/messages"
        events: list[dict[str, Any]] = []
        page: dict[str, Any] = {"end": ""}
        while "end" in page:
            start = {"from": page["end"]} if page["end"] else {}
            page = await self.ask("GET", path, dir="b", limit="500", **start)
            events += page["chunk"]
        return [event for event in reversed(events) if event["type"] == event_type]

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> dict[str, Any]:
        """The content of a state event."""
        return await self.ask("GET", f"rooms/{quote(room_id)}/state/{event_type}/{quote(state_key)}")


async def sign_in(server: Homeserver, session: aiohttp.ClientSession, user_id: str, name: str) -> Person:
    """Somebody with an account, on a new device."""
    order = {"type": "m.login.password", "identifier": {"type": "m.id.user", "user": user_id}, "password": PASSWORD}
    async with session.post(f"{server.url}/_matrix/client/v3/login", json=order) as answer:
        told = await answer.json()
    return Person(user_id, name, server.url, told["access_token"], session)
