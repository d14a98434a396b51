"""Closing a week: the boards are frozen at the day turn and told to the room once its quiet hours are over."""

from dataclasses import replace

from bot.domain.kitchen_day import quiet_until
from bot.domain.places import Board
from bot.replies.phrases import Phrases, phrases_in
from bot.replies.pictures.week_close import OWN, week_close
from bot.services.boards import boards_for, closing_lines, freeze, names_on_boards
from bot.services.house import House
from bot.services.pictures import picture
from bot.services.ports.attachments import Attachment
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
        text, drawn = await _closing(work, phrases_in(kitchen.language), live)
        await Speaker(work, Cause(event_id=f"close:{live.id}")).post(live.room_id, text, drawn)
    await work.drills.save_live(replace(live, announced=True))
    return ran


async def _closing(work: UnitOfWork, say: Phrases, live: LiveDrill) -> tuple[str, Attachment]:
    """What a closed board came to, in words and drawn."""
    boards = await boards_for(work, live)
    lines = await closing_lines(work, say, live, boards)
    own, names = boards.placed.get(OWN, Board(())), await names_on_boards(work, live.room_id)
    drawing = week_close(say, live.drill, live.week, own, names, boards.together, lines)
    head = say("closed", drill=live.drill.wording.name)
    return "\n".join([head, *lines]), picture(f"week-{live.drill.label}", drawing)
