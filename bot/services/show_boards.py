"""The word `board`: the boards of the drill that is meant, or the one named; in private with the asker's own place."""

from zoneinfo import ZoneInfo

from bot.domain.places import Board
from bot.errors import UserError
from bot.replies.boards import (
    HOUSE,
    board_line,
    figures_of,
    house_line,
    no_board_line,
    own_figures,
    own_lines,
    standing_head,
)
from bot.replies.dates import weekday_text
from bot.services.boards import RANKINGS, Boards, boards_for, is_light, names_on_boards
from bot.services.meant import drill_meant
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.messages import Figure
from bot.services.said import Said


async def show_board(said: Said, kind: str) -> None:
    """Answer with every board, or the one named."""
    if kind not in ("", HOUSE, *RANKINGS):
        raise UserError("which-board")
    live = (await drill_meant(said)).live
    if live is None:
        raise UserError("no-live-drill")
    boards = await boards_for(said.work, live)
    lines = [] if kind == HOUSE else await _lines(said, kind, live, boards)
    if kind in ("", HOUSE):
        lines.append(house_line(said.phrases, boards.together))
    head = standing_head(said.phrases, live.drill.wording.name, live.week, _until(said, live))
    await said.answer("\n".join([head, *lines]), figures=_figures(said, kind, boards))


async def _lines(said: Said, kind: str, live: LiveDrill, boards: Boards) -> list[str]:
    """The lines of the boards asked for, or why there are none."""
    say, names = said.phrases, await names_on_boards(said.work, live.room_id)
    lines = [
        line
        for each, board in boards.placed.items()
        if kind in ("", each)
        for line in _board_lines(said, each, board, board_line(say, each, board, names), whole=bool(kind))
    ]
    if lines:
        return lines
    light = await is_light(said.work, live)
    return [no_board_line(say, kind, light=light, closed=live.closed_at is not None)]


def _board_lines(said: Said, kind: str, board: Board, line: str, *, whole: bool) -> list[str]:
    """A board for everybody and in private one's own place; where all are told, the one stands for the other."""
    row = board.row_of(said.user_id) if said.private else None
    if row is None or (row in board.public and not whole):
        return [line] if line else []
    return [*([line] if line and whole else []), *own_lines(said.phrases, kind, row, whole=whole)]


def _figures(said: Said, kind: str, boards: Boards) -> dict[str, Figure]:
    """The numbers behind what is shown."""
    figures: dict[str, Figure] = {}
    for each, board in boards.placed.items():
        if kind in ("", each):
            figures |= figures_of(each, board.public)
            row = board.row_of(said.user_id) if said.private else None
            figures |= own_figures(each, row) if row else {}
    return figures


def _until(said: Said, live: LiveDrill) -> str:
    """Weekday and time at which the board closes; empty of a closed one."""
    if live.closed_at:
        return ""
    closes = live.closes_at.astimezone(ZoneInfo(said.kitchen.zone))
    return f"{weekday_text(said.phrases, closes.date())} {closes:%H:%M}"
