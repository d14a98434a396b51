"""Weekly posts put into a bot's database while it is down."""

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta

from bot.services.ports.records import Schedule
from bot.storage.storage import SqlStorage


async def schedule_due_now(url: str, room_id: str, number: int) -> tuple[int, str]:
    """A weekly post of this drill that came due a minute ago; its id and the drill's name."""
    now = datetime.now(UTC)
    due = now - timedelta(minutes=1)
    storage = SqlStorage(url, lambda: now)
    async with storage.begin() as work:
        room = await work.kitchens.get(room_id)
        drill = await work.drills.find(room_id, str(number))
        assert room is not None
        assert drill is not None
        await work.kitchens.save(replace(room, quiet_from=time(0), quiet_to=time(0)))
        schedule = Schedule(
            room_id=room_id,
            weekday=due.weekday(),
            at=due.time().replace(second=0, microsecond=0),
            zone="UTC",
            set_up_id=drill.set_up_id,
            since=now - timedelta(days=1),
        )
        schedule_id = (await work.schedules.save(schedule)).id
    await storage.close()
    return schedule_id, drill.drill.wording.name
