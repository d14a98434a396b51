"""Whoever's message could not be read is asked, once a key, to send it again."""

from datetime import timedelta
from typing import Any

import pytest

from bot.app.house import build_house
from bot.services.ports.events import Sealed
from bot.services.ports.messages import Outgoing
from bot.services.unreadable import Unreadable
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR, FixedClock


@pytest.fixture
def unreadable(storage: SqlStorage, clock: FixedClock) -> Unreadable:
    """The service."""
    return Unreadable(storage, build_house(clock=clock, bot_id="@bot:x"), wake_sender=lambda: None)


async def keep(storage: SqlStorage, *events: tuple[str, str]) -> None:
    """Keep events sealed with these keys."""
    common: Any = {"room_id": KITCHEN_ROOM, "sender": NOOR, "sent_at": MONDAY}
    async with storage.begin() as work:
        await work.sealed.keep([Sealed(event_id=e, session_id=key, raw={"type": "x"}, **common) for e, key in events])


async def said(storage: SqlStorage) -> list[Outgoing]:
    """What waits to be sent in the kitchen."""
    async with storage.begin() as work:
        return [row.note for row in await work.outbox.head(KITCHEN_ROOM, 50)]


async def test_after_a_minute_once_a_key(storage: SqlStorage, clock: FixedClock, unreadable: Unreadable) -> None:
    """Under the first message of each; not sooner, not again, not for one that comes later with the same key."""
    await keep(storage, ("$1", "k1"), ("$2", "k1"), ("$3", "k2"))
    clock.advance(59)
    await unreadable.tick()
    assert await said(storage) == []
    clock.advance(1)
    await unreadable.tick()
    await keep(storage, ("$4", "k1"))
    clock.advance(60)
    await unreadable.tick()
    notes = await said(storage)
    assert [(note.reply_to, note.style) for note in notes] == [("$1", "notice"), ("$3", "notice")]
    assert "Please send it again" in notes[0].text


async def test_one_that_was_opened_in_time_is_not_asked_for(
    storage: SqlStorage, clock: FixedClock, unreadable: Unreadable
) -> None:
    """A key may come a little after its message."""
    await keep(storage, ("$1", "k1"))
    async with storage.begin() as work:
        await work.sealed.drop(["$1"])
    clock.advance(60)
    await unreadable.tick()
    assert await said(storage) == []


async def test_after_a_week_it_is_dropped(storage: SqlStorage, clock: FixedClock, unreadable: Unreadable) -> None:
    """Not sooner."""
    await keep(storage, ("$1", "k1"))
    for after, left in ((timedelta(days=7), 1), (timedelta(seconds=1), 0)):
        clock.advance(after.total_seconds())
        await unreadable.tick()
        async with storage.begin() as work:
            assert len(await work.sealed.waiting()) == left
