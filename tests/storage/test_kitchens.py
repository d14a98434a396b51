"""Kitchens, the people in them, room state and private rooms come back as they were saved."""

from dataclasses import replace
from datetime import time, timedelta

from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, LIO, MONDAY, NOOR, a_kitchen, a_member

UPPER_LOCK = "!lock:tern.example"


async def test_a_kitchen_is_kept_with_its_settings(storage: SqlStorage) -> None:
    """Every setting comes back, changed or not; an unknown room is none."""
    changed = a_kitchen(
        zone="Asia/Kathmandu", day_turn=time(7), quiet_from=time(23, 30), quiet_to=time(8), replies="short"
    )
    async with storage.begin() as work:
        await work.kitchens.save(a_kitchen())
        assert await work.kitchens.get(KITCHEN_ROOM) == a_kitchen()
        await work.kitchens.save(changed)
        assert await work.kitchens.get(KITCHEN_ROOM) == changed
        assert await work.kitchens.get(UPPER_LOCK) is None
        assert await work.kitchens.all() == [changed]


async def test_a_person_is_in_the_kitchens_that_they_have_joined(storage: SqlStorage) -> None:
    """The longest opened first; one that they left, or that the bot left, is not among them."""
    older = a_kitchen(room_id=UPPER_LOCK, name="Upper Lock", opened_at=MONDAY - timedelta(days=90))
    third = a_kitchen(room_id="!third:tern.example", name="Weir")
    async with storage.begin() as work:
        for kitchen in (a_kitchen(), older, third):
            await work.kitchens.save(kitchen)
            await work.kitchens.save_member(a_member(room_id=kitchen.room_id))
        await work.kitchens.save_member(a_member(room_id=third.room_id, state="leave"))
        assert await work.kitchens.of(NOOR) == [older, a_kitchen()]
        assert await work.kitchens.of(LIO) == []
        await work.kitchens.close(UPPER_LOCK)
        assert await work.kitchens.of(NOOR) == [a_kitchen()]
        assert await work.kitchens.all() == [a_kitchen(), third]
        assert await work.kitchens.get(UPPER_LOCK) == older
        await work.kitchens.save(older)
        assert await work.kitchens.of(NOOR) == [older, a_kitchen()]


async def test_members_stay_known_after_they_leave(storage: SqlStorage) -> None:
    """A person's state, consent, first counted moment and what they are ready for are replaced by the newest."""
    counted = a_member(consent="in", counted_since=MONDAY, ready=(1, 12))
    gone = replace(counted, state="leave")
    async with storage.begin() as work:
        await work.kitchens.save_member(a_member(user_id=LIO, name="Lio"))
        for member in (a_member(), counted, gone):
            await work.kitchens.save_member(member)
            assert await work.kitchens.member(KITCHEN_ROOM, NOOR) == member
        assert await work.kitchens.members(KITCHEN_ROOM) == [a_member(user_id=LIO, name="Lio"), gone]
        assert await work.kitchens.member(UPPER_LOCK, NOOR) is None


async def test_raw_room_state_is_the_newest(storage: SqlStorage) -> None:
    """Content comes back exactly, whatever is in it, with its sender."""
    levels: dict[str, object] = {"users": {NOOR: 50, "odd": "100"}, "events_default": 0, "notifications": {"room": 50}}
    async with storage.begin() as work:
        assert await work.kitchens.state(KITCHEN_ROOM, "m.room.power_levels") is None
        await work.kitchens.save_state(KITCHEN_ROOM, "m.room.power_levels", {}, LIO)
        await work.kitchens.save_state(KITCHEN_ROOM, "m.room.power_levels", levels, NOOR)
        assert await work.kitchens.state(KITCHEN_ROOM, "m.room.power_levels") == (levels, NOOR)
        assert await work.kitchens.state(KITCHEN_ROOM, "m.room.create") is None


async def test_a_private_room_is_noted_before_it_is_opened(storage: SqlStorage) -> None:
    """Only the first note is new; a room that is gone may be opened afresh."""
    async with storage.begin() as work:
        assert await work.kitchens.private_room(NOOR) is None
        assert await work.kitchens.start_private(NOOR)
        assert not await work.kitchens.start_private(NOOR)
        assert await work.kitchens.private_room(NOOR) is None
        await work.kitchens.save_private(NOOR, "!two:tern.example")
        assert await work.kitchens.private_room(NOOR) == "!two:tern.example"
        assert await work.kitchens.private_person("!two:tern.example") == NOOR
        assert await work.kitchens.private_person(KITCHEN_ROOM) is None
        await work.kitchens.save_private(NOOR, None)
        assert await work.kitchens.private_person("!two:tern.example") is None
        assert await work.kitchens.start_private(NOOR)
