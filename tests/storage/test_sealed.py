"""The contract of what cannot be read yet, on SQLite and PostgreSQL: kept once, in order, until its key or its end."""

from datetime import timedelta
from typing import Any

from bot.services.ports.events import Sealed
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR, FixedClock

A_MINUTE = timedelta(seconds=60)


def sealed(event_id: str, session_id: str = "k1") -> Sealed:
    """An event sealed with this key, as it came."""
    raw: dict[str, Any] = {"type": "m.room.encrypted", "content": {"ciphertext": "ÅÄ🔪", "nested": [1, None]}}
    return Sealed(event_id=event_id, room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, session_id=session_id, raw=raw)


async def keep(storage: SqlStorage, *events: Sealed) -> None:
    """Keep these."""
    async with storage.begin() as work:
        await work.sealed.keep(events)


async def waiting(storage: SqlStorage) -> list[Sealed]:
    """What waits for its key."""
    async with storage.begin() as work:
        return await work.sealed.waiting()


async def test_each_is_kept_once_and_whole_in_stream_order(storage: SqlStorage) -> None:
    """Also where a sync brings it a second time; those opened are forgotten."""
    await keep(storage, sealed("$b"), sealed("$a", "k2"))
    await keep(storage, sealed("$a", "k2"), sealed("$c"))
    assert await waiting(storage) == [sealed("$b"), sealed("$a", "k2"), sealed("$c")]
    async with storage.begin() as work:
        await work.sealed.drop(["$b", "$c"])
        await work.sealed.drop([])
    assert await waiting(storage) == [sealed("$a", "k2")]


async def test_people_are_told_once_a_key_under_its_first_event(storage: SqlStorage, clock: FixedClock) -> None:
    """From a minute on, and no more once that is noted."""
    await keep(storage, sealed("$1"), sealed("$2"), sealed("$3", "k2"))
    async with storage.begin() as work:
        assert await work.sealed.untold(clock() - A_MINUTE) == []
        clock.advance(60)
        assert await work.sealed.untold(clock() - A_MINUTE) == [sealed("$1"), sealed("$3", "k2")]
        await work.sealed.mark_told("k1")
        assert await work.sealed.untold(clock() - A_MINUTE) == [sealed("$3", "k2")]


async def test_what_is_too_old_lapses(storage: SqlStorage, clock: FixedClock) -> None:
    """What came since stays."""
    await keep(storage, sealed("$1"))
    clock.advance(60)
    await keep(storage, sealed("$2"))
    async with storage.begin() as work:
        await work.sealed.lapse(clock())
    assert await waiting(storage) == [sealed("$2")]
