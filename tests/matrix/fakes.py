"""A homeserver that answers as scripted, a messenger that remembers, a world whose time passes only in rests."""

import asyncio
from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any, TypeVar

from bot.errors import OperatorError
from bot.matrix.wire import News, Page
from bot.matrix.world import World
from bot.services.ports.messages import Outgoing, Waiting
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR, FixedClock

_Answer = TypeVar("_Answer")

BOT = "@platepace:tern.example"


class Rests:
    """Time that passes only while somebody rests; ``taken`` are the rests, in seconds."""

    def __init__(self, clock: FixedClock) -> None:
        self.clock = clock
        self.taken: list[float] = []

    async def __call__(self, seconds: float) -> None:
        """Let so many seconds pass at once, giving the others their turn."""
        self.taken.append(seconds)
        self.clock.advance(seconds)
        await asyncio.sleep(0)


def a_world(rests: Rests, chance: float = 0.0) -> World:
    """A world whose chance is always the same."""
    return World(clock=rests.clock, rest=rests, chance=lambda: chance)


@dataclass
class Reports:
    """What the admins were told."""

    told: list[str] = field(default_factory=list)

    async def __call__(self, problem: OperatorError) -> None:
        """Take note."""
        self.told.append(str(problem))


@dataclass
class ScriptedServer:
    """Answers each sync with the next of ``answers``, and then is ``silent``; an exception is raised.

    ``pages`` are pages of the past by room and starting token; ``joins`` are what the next attempts to join come to.
    """

    answers: deque[News | Exception] = field(default_factory=deque)
    pages: dict[tuple[str, str | None], Page | Exception] = field(default_factory=dict)
    joins: deque[Exception | None] = field(default_factory=deque)
    open_invitations: News = field(default_factory=lambda: News(next_batch="ignored"))
    sign_ins: deque[Exception | None] = field(default_factory=deque)
    user_id: str = BOT
    asked: list[str | None] = field(default_factory=list)
    paged: list[tuple[str, str | None, str | None]] = field(default_factory=list)
    joined: list[str] = field(default_factory=list)
    signed_in: int = 0
    silent: asyncio.Event = field(default_factory=asyncio.Event)

    async def sync(self, since: str | None, *, wait_s: float) -> News:
        """The next answer."""
        self.asked.append(since)
        if not self.answers:
            self.silent.set()
            await asyncio.Event().wait()
        return _given(self.answers.popleft())

    async def past(self, room_id: str, start: str | None, end: str | None = None) -> Page:
        """The page that starts there."""
        self.paged.append((room_id, start, end))
        return _given(self.pages[room_id, start])

    async def join(self, room_id: str) -> None:
        """Come to what is scripted, or to nothing bad."""
        self.joined.append(room_id)
        problem = self.joins.popleft() if self.joins else None
        if problem:
            raise problem

    async def invitations(self) -> News:
        """Those that are open."""
        return self.open_invitations

    async def sign_in(self) -> str:
        """Come to what is scripted, or to the device."""
        self.signed_in += 1
        problem = self.sign_ins.popleft() if self.sign_ins else None
        if problem:
            raise problem
        return "DEVICE"


def _given(answer: _Answer | Exception) -> _Answer:
    if isinstance(answer, Exception):
        raise answer
    return answer


@dataclass
class KeepingMessenger:
    """Keeps what it sends; a transaction id seen before changes nothing. The next of ``faults`` is raised instead.

    ``lost_answers`` are sends that reach the room and whose answer is then lost. ``uploads`` are what the next uploads
    come to; where none is left a file is refused.
    """

    faults: deque[Exception] = field(default_factory=deque)
    lost_answers: deque[Exception] = field(default_factory=deque)
    sent: dict[str, tuple[str, Outgoing]] = field(default_factory=dict)
    tries: int = 0
    searches: int = 0
    forgetful: bool = False
    opened: list[tuple[str, bool]] = field(default_factory=list)
    uploads: deque[dict[str, object] | Exception] = field(default_factory=deque)
    uploaded: list[str] = field(default_factory=list)

    async def upload(self, room_id: str, note: Outgoing) -> dict[str, object] | None:
        """Come to what is scripted, or be refused."""
        self.uploaded.append(note.attachment.name if note.attachment else "")
        return _given(self.uploads.popleft()) if self.uploads else None

    async def send(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Keep it, once."""
        self.tries += 1
        await asyncio.sleep(0)
        if self.faults:
            raise self.faults.popleft()
        key = f"{waiting.txn_id}/{self.tries}" if self.forgetful else waiting.txn_id
        self.sent.setdefault(key, (room_id, note))
        if self.lost_answers:
            raise self.lost_answers.popleft()
        return f"$sent-{waiting.txn_id}"

    async def find_sent(self, waiting: Waiting, room_id: str) -> str | None:
        """Whether it was kept before."""
        self.searches += 1
        return f"$sent-{waiting.txn_id}" if any(key.startswith(waiting.txn_id) for key in self.sent) else None

    async def open_private(self, user_id: str, *, look_first: bool) -> str:
        """A room of two."""
        self.opened.append((user_id, look_first))
        if self.faults:
            raise self.faults.popleft()
        return f"!private-{len(self.opened)}:tern.example"

    @property
    def texts(self) -> list[str]:
        """What was said, in order."""
        return [note.text for _, note in self.sent.values()]


def raw_event(event_id: str, type_: str = "m.room.message", sender: str = NOOR, **fields: Any) -> dict[str, Any]:
    """An event as a server sends it."""
    event: dict[str, Any] = {
        "type": type_,
        "event_id": event_id,
        "sender": sender,
        "origin_server_ts": int(MONDAY.timestamp() * 1000),
        "content": {},
    }
    return event | fields


def raw_message(event_id: str, body: str = "8:05 11/12", sender: str = NOOR, /, **content: Any) -> dict[str, Any]:
    """A text as a server sends it."""
    return raw_event(event_id, sender=sender, content={"msgtype": "m.text", "body": body} | content)


def raw_member(
    event_id: str,
    person: str = BOT,
    membership: str = "join",
    *,
    before: str | None = None,
    sender: str | None = None,
    **fields: Any,
) -> dict[str, Any]:
    """A membership event as a server sends it, with what it takes the place of."""
    unsigned = {"prev_content": {"membership": before}} if before else {}
    content = {"membership": membership, "displayname": person[1:].partition(":")[0].title()}
    return raw_event(
        event_id,
        "m.room.member",
        sender or person,
        **({"state_key": person, "content": content, "unsigned": unsigned} | fields),
    )


def some_news(
    token: str,
    timeline: Sequence[object] = (),
    *,
    room_id: str = KITCHEN_ROOM,
    section: str = "join",
    state: Sequence[object] = (),
    limited: bool = False,
    prev_batch: str | None = None,
) -> News:
    """A sync's answer with one room in it."""
    room = {
        "timeline": {"events": list(timeline), "limited": limited, "prev_batch": prev_batch},
        "state": {"events": list(state)},
    }
    return News.model_validate({"next_batch": token, "rooms": {section: {room_id: room}}})


def an_invitation(token: str, inviter: str, *, room_id: str = KITCHEN_ROOM, direct: bool = False) -> News:
    """A sync's answer with an invitation of the bot in it."""
    content = {"membership": "invite"} | ({"is_direct": True} if direct else {})
    events = [
        {"type": "m.room.name", "sender": inviter, "state_key": "", "content": {"name": "Tern & Lantern"}},
        {"type": "m.room.member", "sender": inviter, "state_key": BOT, "content": content},
    ]
    return News.model_validate(
        {"next_batch": token, "rooms": {"invite": {room_id: {"invite_state": {"events": events}}}}}
    )
