"""The boards of a posting: worked out from its runs, shown by their first places, in private with one's own."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from bot.domain.boards import Entry, Row, public, rank_clean, rank_fast, rank_steady
from bot.errors import UserError
from bot.replies.boards import BOARD_KINDS, board_line, figures_of, no_board_line, own_line, standing_head
from bot.replies.dates import weekday_text
from bot.replies.markup import plain_name
from bot.replies.phrases import Phrases
from bot.services.meant import drill_meant
from bot.services.ports.messages import Figure
from bot.services.ports.records import LiveDrill, Run
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said

_RANKINGS = {"fast": rank_fast, "steady": rank_steady, "clean": rank_clean}


@dataclass(frozen=True)
class Boards:
    """Every board of one posting in full, and how many cooks ran, which is never told."""

    rows: Mapping[str, tuple[Row, ...]]
    ran: int
    good_plates: int

    def public(self, kind: str) -> tuple[Row, ...]:
        """The rows of a board that everybody may see: of those who have a place, so that the last is never shown."""
        return public(self.rows[kind], len(self.rows[kind]))


def boards_of(runs: Sequence[Run]) -> Boards:
    """The boards that these runs make, given by cook in order of arrival."""
    entries = [_entry(run) for run in runs]
    return Boards(
        rows={kind: rank(entries) for kind, rank in _RANKINGS.items()},
        ran=len({run.user_id for run in runs}),
        good_plates=sum(run.result.count.accepted for run in runs),
    )


def _entry(run: Run) -> Entry:
    count = run.result.count
    return Entry(
        user_id=run.user_id,
        net_s=run.result.net_s,
        accepted=count.accepted,
        attempted=count.attempted,
        rebuilt=count.rebuilt,
        witnessed=bool(run.witnesses),
        kind=run.result.kind,
    )


async def public_lines(work: UnitOfWork, phrases: Phrases, live: LiveDrill, boards: Boards) -> list[str]:
    """The boards as everybody may see them, a line each; those with nothing to show are left out."""
    names = await names_of(work, live.room_id)
    shown = {kind: boards.public(kind) for kind in BOARD_KINDS}
    return [board_line(phrases, kind, rows, names) for kind, rows in shown.items() if rows]


async def names_of(work: UnitOfWork, room_id: str) -> dict[str, str]:
    """What everybody in the room is called."""
    return {member.user_id: plain_name(member.name) for member in await work.kitchens.members(room_id)}


async def show_board(said: Said, kind: str) -> None:
    """Answer with the boards, or the one named; in private with the asker's own place too."""
    if kind and kind not in BOARD_KINDS:
        raise UserError("which-board")
    live = (await drill_meant(said)).live
    if live is None:
        raise UserError("no-live-drill")
    boards = boards_of(await said.work.runs.on_board(live.id))
    names = await names_of(said.work, live.room_id)
    lines: list[str] = []
    figures: dict[str, Figure] = {}
    for each in [kind] if kind else BOARD_KINDS:
        if shown := boards.public(each):
            lines.append(board_line(said.phrases, each, shown, names))
            figures |= figures_of(each, shown)
        own = [row for row in boards.rows[each] if row.figure.user_id == said.user_id]
        if said.private and own:
            lines.append(own_line(said.phrases, each, own[0]))
    head = standing_head(said.phrases, live.drill.wording.name, live.week, _until(said, live))
    await said.answer(
        "\n".join([head, *(lines or [no_board_line(said.phrases, kind, closed=live.closed_at is not None)])]),
        figures=figures,
    )


def _until(said: Said, live: LiveDrill) -> str:
    """Weekday and time at which the board closes; empty of a closed one."""
    if live.closed_at:
        return ""
    closes = live.closes_at.astimezone(ZoneInfo(said.kitchen.zone))
    return f"{weekday_text(said.phrases, closes.date())} {closes:%H:%M}"
