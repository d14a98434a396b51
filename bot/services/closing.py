"""Closing a week: the boards are frozen at the day turn and told to the room once its quiet hours are over."""

from dataclasses import replace

from bot.domain.kitchen_day import quiet_until
from bot.replies.boards import BOARD_KINDS, figures_text
from bot.services.boards import Boards, boards_of, public_lines
from bot.services.house import House
from bot.services.ports.messages import Cause
from bot.services.ports.records import FrozenBoard, LiveDrill
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker


async def close_board(house: House, work: UnitOfWork, live: LiveDrill) -> LiveDrill:
    """Freeze the boards as they stand."""
    now = house.clock()
    boards = boards_of(await work.runs.on_board(live.id))
    for kind in BOARD_KINDS:
        rows = tuple(
            (row.figure.user_id, row.place, figures_text(house.phrases, kind, row)) for row in boards.rows[kind]
        )
        await work.drills.freeze(FrozenBoard(live_id=live.id, kind=kind, closed_at=now, rows=rows))
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
    boards = boards_of(await work.runs.on_board(live.id))
    if boards.ran:
        speaker = Speaker(work, Cause(event_id=f"close:{live.id}"))
        await speaker.post(live.room_id, await _closing_text(house, work, live, boards))
    await work.drills.save_live(replace(live, announced=True))
    return boards.ran > 0


async def _closing_text(house: House, work: UnitOfWork, live: LiveDrill, boards: Boards) -> str:
    say = house.phrases
    lines = await public_lines(work, say, live, boards) or [say("closed-no-board")]
    head = say("closed", drill=live.drill.wording.name)
    return "\n".join([head, *lines, say("closed-house", plates=boards.good_plates)])
