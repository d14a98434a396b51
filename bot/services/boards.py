"""The boards of a posting: worked out while it is open, read from the frozen copy once it is closed."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime

from bot.domain.boards import Week, rank_clean, rank_fast, rank_steady
from bot.domain.own_board import Together, rank_own, together
from bot.domain.places import Board
from bot.replies.boards import HOUSE, board_line, house_line
from bot.replies.markup import plain_name
from bot.replies.phrases import Phrases
from bot.services.light_weeks import is_light_week
from bot.services.ports.drill_records import FrozenBoard, LiveDrill
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.week import week_of_posting

RANKINGS: Mapping[str, Callable[[Week], Board]] = {
    "own": rank_own,
    "fast": rank_fast,
    "steady": rank_steady,
    "clean": rank_clean,
}
"""The boards with places, in the order in which they are told: the headline first."""


@dataclass(frozen=True)
class Boards:
    """Every board of one posting; in a light week there are none with places."""

    placed: Mapping[str, Board]
    together: Together

    def lines(self, say: Phrases, names: Mapping[str, str]) -> list[str]:
        """The boards with places as everybody may see them, a line each; those with nothing to show are left out."""
        lines = (board_line(say, kind, board, names) for kind, board in self.placed.items())
        return [line for line in lines if line]


def boards_of(week: Week, *, light: bool = False) -> Boards:
    """The boards that a week makes."""
    return Boards({} if light else {kind: rank(week) for kind, rank in RANKINGS.items()}, together(week))


def with_forgotten(week: Week, frozen: Boards) -> Week:
    """The week as it was frozen, of whose runs those are gone of everybody who has been forgotten since."""
    theirs = {
        kind: [row.figure for row in (*board.rows, *board.apart) if not row.figure.user_id.startswith("@")]
        for kind, board in frozen.placed.items()
    }
    return replace(week, forgotten=theirs, forgotten_plates=frozen.together.clean_plates - together(week).clean_plates)


def carried_over(before: Week, now: Week) -> Week:
    """The week as it is now with what was known of the forgotten before."""
    return replace(now, forgotten=before.forgotten, forgotten_plates=before.forgotten_plates)


async def boards_for(work: UnitOfWork, live: LiveDrill) -> Boards:
    """The boards of a posting: as they stand while it is open, as they were frozen once it is closed."""
    if live.closed_at is None:
        week = await week_of_posting(work, live, await work.runs.on_board(live.id))
        return boards_of(week, light=await is_light(work, live))
    frozen = {kept.kind: kept.board for kept in await work.drills.frozen(live.id)}
    house = frozen.get(HOUSE)
    placed = {kind: board for kind in RANKINGS if isinstance(board := frozen.get(kind), Board)}
    return Boards(placed, house if isinstance(house, Together) else Together(0, 0, 0))


async def is_light(work: UnitOfWork, live: LiveDrill) -> bool:
    """Whether this posting is of a light week, which has no board but the house's."""
    kitchen = await work.kitchens.get(live.room_id)
    return kitchen is not None and is_light_week(kitchen, live.week)


async def freeze(work: UnitOfWork, live: LiveDrill, boards: Boards, now: datetime) -> None:
    """Keep the boards as they stand, in the place of those kept before."""
    for kind, board in boards.placed.items():
        await work.drills.freeze(FrozenBoard(live_id=live.id, kind=kind, closed_at=now, board=board))
    await work.drills.freeze(FrozenBoard(live_id=live.id, kind=HOUSE, closed_at=now, board=boards.together))


async def names_of(work: UnitOfWork, room_id: str) -> dict[str, str]:
    """What everybody in the room is called."""
    return {member.user_id: plain_name(member.name) for member in await work.kitchens.members(room_id)}


async def names_on_boards(work: UnitOfWork, room_id: str) -> dict[str, str]:
    """What those are called who may be named on a public board; the others read as a cook on one closed before."""
    members = await work.kitchens.members(room_id)
    return {member.user_id: plain_name(member.name) for member in members if member.on_boards}


async def closing_lines(work: UnitOfWork, say: Phrases, live: LiveDrill, boards: Boards) -> list[str]:
    """What a closed board came to, the house's line last."""
    lines = boards.lines(say, await names_on_boards(work, live.room_id))
    none = [] if lines else [say("light-no-board" if await is_light(work, live) else "closed-no-board")]
    return [*lines, *none, house_line(say, boards.together)]


async def go_off_boards(said: Said) -> None:
    """Take the person off public boards; their history, and what they see of it in private, stay as they are."""
    await said.work.kitchens.save_member(replace(said.member, on_boards=False))
    await said.tell(said.phrases("boards-are-off"))


async def go_on_boards(said: Said) -> None:
    """Put the person on public boards again, from now on."""
    await said.work.kitchens.save_member(replace(said.member, on_boards=True))
    await said.tell(said.phrases("boards-are-on"))
