"""The people of the Tern & Lantern, each with a client of their own."""

from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass, field
from itertools import count
from zoneinfo import ZoneInfo

from bot.demo.fast_time import FastClock, FastTimeClient
from bot.homeserver import Homeserver
from bot.matrix.client import Account
from bot.matrix.wire import News

ZONE = ZoneInfo("Europe/London")
"""Where the kitchen is."""

CAST = ("Ime", "Bastian", "Noor", "Kwabena", "Lio", "Petra", "Anselm")
"""The chef first."""

_TXN_IDS = count()


class PersonalClient(FastTimeClient):
    """A client that can also take things back, which the bot never does."""

    async def redact(self, room_id: str, event_id: str, txn_id: str) -> str:
        """Take an event back; the redaction's event id."""
        told = await self._call("PUT", "v3/rooms/{}/redact/{}/{}", room_id, event_id, txn_id, body={})
        return str(told["event_id"])


@dataclass
class Person:
    """Somebody at a client."""

    client: PersonalClient
    since: str | None = field(default=None)

    async def say(self, room_id: str, text: str, *, thread: str | None = None) -> str:
        """Say something, in a thread where one is given; its event id."""
        content: dict[str, object] = {"msgtype": "m.text", "body": text}
        if thread:
            content["m.relates_to"] = {
                "rel_type": "m.thread",
                "event_id": thread,
                "m.in_reply_to": {"event_id": thread},
                "is_falling_back": True,
            }
        return await self._send(room_id, "m.room.message", content)

    async def edit(self, room_id: str, event_id: str, text: str) -> str:
        """Say something anew."""
        new = {"msgtype": "m.text", "body": text}
        relation = {"rel_type": "m.replace", "event_id": event_id}
        content: dict[str, object] = {
            "msgtype": "m.text",
            "body": f"* {text}",
            "m.new_content": new,
            "m.relates_to": relation,
        }
        return await self._send(room_id, "m.room.message", content)

    async def react(self, room_id: str, event_id: str, key: str) -> str:
        """Put an emoji on something."""
        relation = {"rel_type": "m.annotation", "event_id": event_id, "key": key}
        return await self._send(room_id, "m.reaction", {"m.relates_to": relation})

    async def delete(self, room_id: str, event_id: str) -> str:
        """Take something back."""
        return await self.client.redact(room_id, event_id, f"demo{next(_TXN_IDS)}")

    async def _send(self, room_id: str, event_type: str, content: dict[str, object]) -> str:
        return await self.client.send(room_id, event_type, content, f"demo{next(_TXN_IDS)}")

    async def read(self) -> News:
        """What is new since the last time; open invitations are accepted."""
        news = await self.client.sync(self.since, wait_s=0)
        self.since = news.next_batch
        for room_id in news.rooms.invite:
            await self.client.join(room_id)
        return news if not news.rooms.invite else _joined(news, await self.read())


def _joined(first: News, second: News) -> News:
    """Two answers as one."""
    rooms = first.rooms.model_copy(update={"join": {**first.rooms.join, **second.rooms.join}})
    return first.model_copy(update={"rooms": rooms, "next_batch": second.next_batch})


@dataclass
class Cast:
    """Everybody, by name."""

    people: dict[str, Person]
    server_name: str

    def __getitem__(self, name: str) -> Person:
        return self.people[name]

    def user_id(self, name: str) -> str:
        """The account of somebody."""
        return f"@{name.lower()}:{self.server_name}"


@asynccontextmanager
async def sign_in_all(server: Homeserver, password: str, clock: FastClock) -> AsyncIterator[Cast]:
    """Accounts for the whole cast, and clients until the end."""
    cast = Cast({}, server.name)
    async with AsyncExitStack() as clients:
        for name in CAST:
            user_id = await server.register(name.lower(), password, display_name=name)
            client = PersonalClient(server.url, Account(user_id, password=password), clock)
            clients.push_async_callback(client.close)
            await client.sign_in()
            cast.people[name] = Person(client)
        yield cast
