"""Closing a week: the boards are frozen at the day turn and told to the room once its quiet hours are over."""

from dataclasses import replace

from bot.domain.kitchen_day import quiet_until
from bot.services.boards import boards_for, closing_lines, freeze
from bot.services.house import House
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.messages import Cause
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker


async def close_board(house: House, work: UnitOfWork, live: LiveDrill) -> LiveDrill:
    """Freeze the boards as they stand."""
    now = house.clock()
    await freeze(work, live, await boards_for(work, live), now)
    kitchen = await work.kitchens.get(live.room_id)
    if kitchen and kitchen.first_closing is None:
        await work.kitchens.save(replace(kitchen, first_closing=now))
    return await work.drills.save_live(replace(live, closed_at=now))


async def announce_closing(house: House, work: UnitOfWork, live: LiveDrill) -> bool:
    """Tell the room what a closed board came to; nothing yet in quiet hours, nor where nobody ran. Whether it did."""
    kitchen = await work.kitchens.get(live.room_id)
    now = house.clock()
    if kitchen is None or quiet_until(now, kitchen.zone, kitchen.quiet_from, kitchen.quiet_to):
        return False
    ran = bool(await work.runs.on_board(live.id))
    if ran:
        head = house.phrases("closed", drill=live.drill.wording.name)
        lines = await closing_lines(work, house.phrases, live, await boards_for(work, live))
        await Speaker(work, Cause(event_id=f"close:{live.id}")).post(live.room_id, "\n".join([head, *lines]))
    await work.drills.save_live(replace(live, announced=True))
    return ran
