"""Schedules come back as saved, and a slot can be claimed once."""

from dataclasses import replace
from datetime import time

from bot.services.ports.records import Occurrence
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, MONDAY, a_drill, a_kitchen, a_schedule


async def test_a_schedule_is_kept_and_changed(storage: SqlStorage) -> None:
    """Every field comes back, a set-up of its own and a week left out too."""
    async with storage.begin() as work:
        drill = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        saved = await work.schedules.save(a_schedule(set_up_id=drill.set_up_id))
        assert saved == a_schedule(set_up_id=drill.set_up_id, id=saved.id)
        assert await work.schedules.get(saved.id) == saved
        changed = replace(saved, weekday=6, at=time(23, 59), zone="Pacific/Apia", skip_slot="2026-W53", version=2)
        assert await work.schedules.save(changed) == changed
        assert await work.schedules.get(saved.id) == changed
        assert await work.schedules.get(saved.id + 1) is None


async def test_a_room_lists_its_schedules_by_weekday_and_time(storage: SqlStorage) -> None:
    """Cancelled ones and other rooms' are left out; one on hold is listed."""
    async with storage.begin() as work:
        late, early, tuesday, _, _ = [
            await work.schedules.save(schedule)
            for schedule in (
                a_schedule(at=time(15, 30)),
                a_schedule(at=time(9, 45), hold=True),
                a_schedule(weekday=1, at=time(8)),
                a_schedule(enabled=False),
                a_schedule(room_id="!lock:tern.example"),
            )
        ]
        assert await work.schedules.of(KITCHEN_ROOM) == [early, late, tuesday]


async def test_schedules_rest_while_the_bot_is_out_of_the_room(storage: SqlStorage) -> None:
    """What may come due leaves out cancelled schedules and those of kitchens that the bot has left."""
    async with storage.begin() as work:
        await work.kitchens.save(a_kitchen())
        await work.kitchens.save(a_kitchen(room_id="!lock:tern.example"))
        here = await work.schedules.save(a_schedule())
        there = await work.schedules.save(a_schedule(room_id="!lock:tern.example"))
        await work.schedules.save(a_schedule(enabled=False))
        assert await work.schedules.enabled() == [here, there]
        await work.kitchens.close("!lock:tern.example")
        assert await work.schedules.enabled() == [here]
        await work.kitchens.save(a_kitchen(room_id="!lock:tern.example"))
        assert await work.schedules.enabled() == [here, there]


async def test_a_slot_is_claimed_once(storage: SqlStorage) -> None:
    """The second claim changes nothing; another slot of the same schedule is free."""
    async with storage.begin() as work:
        schedule = await work.schedules.save(a_schedule())
        slot = Occurrence(schedule_id=schedule.id, slot="2026-W53", due_at=MONDAY, state="posted")
        assert await work.schedules.occurrence(schedule.id, "2026-W53") is None
        assert await work.schedules.deal(slot)
        assert not await work.schedules.deal(replace(slot, state="skipped"))
        assert await work.schedules.occurrence(schedule.id, "2026-W53") == slot
        assert await work.schedules.deal(replace(slot, slot="2027-W01"))
