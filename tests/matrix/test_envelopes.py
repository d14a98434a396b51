"""What comes sealed reaches the inbox once its key is there, in order; what was deleted meanwhile never does."""

from dataclasses import dataclass, field
from typing import Any

import pytest

from bot.matrix.secrecy import InTheClear
from bot.matrix.sync import SyncLoop
from bot.matrix.wire import News
from bot.matrix.world import World
from bot.services.ports.events import Message, Sealed
from bot.storage.storage import SqlStorage
from tests.matrix.fakes import Reports, ScriptedServer, raw_event, raw_member, raw_message, some_news
from tests.matrix.inbox import kept

MEGOLM = "m.megolm.v1.aes-sha2"


@dataclass
class Locksmith(InTheClear):
    """Opens what is sealed with the sessions that it ``holds``; the ciphertext is the text itself."""

    holds: set[str] = field(default_factory=set)
    missed: list[str] = field(default_factory=list)
    tended: int = 0

    def receive(self, news: News) -> bool:
        """A to-device message is the name of a session."""
        came = {str(event) for event in news.to_device.events}
        self.holds |= came
        return bool(came)

    def unseal(self, event: Sealed) -> object | None:
        """The text, if the session is held."""
        if event.session_id not in self.holds:
            return None
        content: Any = event.raw["content"]
        return raw_message(event.event_id, content["ciphertext"], event.sender)

    def miss(self, event: Sealed) -> None:
        """Take note."""
        self.missed.append(event.event_id)

    async def tend(self) -> None:
        """Take note."""
        self.tended += 1


@pytest.fixture
def locksmith() -> Locksmith:
    """One who holds no key."""
    return Locksmith()


@pytest.fixture
def loop(server: ScriptedServer, storage: SqlStorage, world: World, reports: Reports, locksmith: Locksmith) -> SyncLoop:
    """A loop that has had its first sync."""
    server.answers.append(some_news("s1", [raw_member("$in")]))
    return SyncLoop(
        server, storage, world, allowed=lambda _: False, wake=lambda: None, report=reports, secrecy=locksmith
    )


def raw_sealed(event_id: str, text: str, session_id: str = "k1") -> dict[str, Any]:
    """An encrypted event that says this."""
    content = {"algorithm": MEGOLM, "ciphertext": text, "session_id": session_id}
    return raw_event(event_id, "m.room.encrypted", content=content)


def with_keys(news: News, *sessions: str) -> News:
    """The same, and these keys."""
    return News.model_validate(news.model_dump() | {"to_device": {"events": list(sessions)}})


async def texts(storage: SqlStorage) -> list[str]:
    """What reached the inbox since the last look."""
    return [event.text for event in await kept(storage) if isinstance(event, Message)]


async def steps(loop: SyncLoop, server: ScriptedServer, *answers: News) -> None:
    """Let the loop take these answers, the first sync apart."""
    server.answers.extend(answers)
    for _ in range(len(server.answers)):
        await loop.step()


async def test_a_key_in_the_same_sync_opens_what_it_came_for(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Between what is open, in the room's order."""
    events = [raw_message("$1", "a"), raw_sealed("$2", "b"), raw_message("$3", "c")]
    await steps(loop, server, with_keys(some_news("s2", events), "k1"))
    assert await texts(storage) == ["a", "b", "c"]


async def test_what_has_no_key_waits_and_is_read_in_order_when_it_comes(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage, locksmith: Locksmith
) -> None:
    """Before what comes with the key; what another key is needed for goes on waiting, over a restart too."""
    events = [raw_sealed("$1", "a"), raw_sealed("$2", "b", "k2"), raw_sealed("$3", "c")]
    await steps(loop, server, some_news("s2", events))
    assert (await texts(storage), locksmith.missed) == ([], ["$1", "$2", "$3"])
    await steps(loop, server, with_keys(some_news("s3", [raw_message("$4", "d")]), "k1"))
    assert await texts(storage) == ["a", "c", "d"]
    async with storage.begin() as work:
        assert [event.event_id for event in await work.sealed.waiting()] == ["$2"]
    locksmith.holds.add("k2")  # the key was stored, and the process killed before the event was
    loop._envelopes.keys_came = True  # as of a loop just made
    await steps(loop, server, some_news("s4"))
    assert await texts(storage) == ["b"]
    assert locksmith.tended == 4


async def test_what_was_deleted_unread_is_never_read(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Its key changes nothing any more."""
    deletion = raw_event("$2", "m.room.redaction", redacts="$1", content={"redacts": "$1"})
    await steps(
        loop,
        server,
        some_news("s2", [raw_sealed("$1", "a")]),
        some_news("s3", [deletion]),
        with_keys(some_news("s4"), "k1"),
    )
    assert await texts(storage) == []


async def test_what_was_said_before_the_bot_came_is_not_waited_for(
    loop: SyncLoop, server: ScriptedServer, storage: SqlStorage
) -> None:
    """Nor what the bot said itself, nor what is sealed in another way."""
    odd = raw_event("$3", "m.room.encrypted", content={"algorithm": "m.other", "ciphertext": "x", "session_id": "k"})
    events = [raw_sealed("$1", "a"), raw_member("$in2"), odd]
    await steps(loop, server, some_news("s2", events, room_id="!new:x"))
    async with storage.begin() as work:
        assert await work.sealed.waiting() == []


async def test_without_encryption_what_is_sealed_is_let_go(
    server: ScriptedServer, storage: SqlStorage, world: World, reports: Reports
) -> None:
    """Nobody is told of messages that the operator does not want read."""
    loop = SyncLoop(server, storage, world, allowed=lambda _: False, wake=lambda: None, report=reports)
    await steps(loop, server, some_news("s1"), some_news("s2", [raw_sealed("$1", "a"), raw_message("$2", "b")]))
    assert await texts(storage) == ["b"]
    async with storage.begin() as work:
        assert await work.sealed.waiting() == []
