"""The quarter's board: levelled paces across drills while the quarter runs, and as they closed once it is over."""

from collections import defaultdict

from bot.domain.fairness.grounds import Ground, ground_of, in_common, work_of
from bot.domain.fairness.ranking import Cook, QuarterBoard, largest_group, rank_quarter
from bot.domain.quarter import quarter_before
from bot.domain.techniques import Seconds
from bot.replies.quarter import ground_line, own_figures, own_quarter_line, quarter_figures, quarter_head, quarter_lines
from bot.services.boards import names_on_boards
from bot.services.fairness import Compared, compared_runs, quarter_at
from bot.services.ports.fitting import FittedQuarter
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said


async def show_quarter(said: Said) -> None:
    """Answer `board quarter`: the running quarter's board, or why there is none; in private the asker's own too.

    While the running quarter has no board, the last one is shown as it closed.
    """
    quarter = quarter_at(said.kitchen, said.now)
    fitted = await said.work.fits.get(said.kitchen.room_id, quarter)
    compared = await compared_runs(said.work, said.house.seconds, [said.kitchen.room_id], quarter)
    board = await rank_kitchen(said.work, said.house.seconds, fitted, compared) if fitted else None
    if board:
        await _show(said, board, quarter, closed=False)
        return
    last = await said.work.fits.get(said.kitchen.room_id, quarter_before(quarter))
    if last and last.closed_at and last.board:
        await _show(said, last.board, last.quarter, closed=True)
        return
    await said.answer(ground_line(said.phrases, compared.ground()))


async def rank_kitchen(
    work: UnitOfWork, seconds: Seconds, fitted: FittedQuarter, compared: Compared
) -> QuarterBoard | None:
    """The board by this fit and these runs; None while the computed standard stands."""
    if fitted.fit is None or not _ground(fitted, compared).enough:
        return None
    works = {
        set_up: work_of(published.drill.spec, published.drill.set_up, seconds)
        for set_up, published in compared.drills.items()
    }
    alike = in_common(compared.cells, works)
    runs, witnessed = defaultdict[str, int](int), defaultdict[str, int](int)
    for row in compared.gathered:
        runs[row.cell.cook] += row.cell.runs
        witnessed[row.cell.cook] += row.witnessed
    members = await work.kitchens.members(fitted.whose)
    off = frozenset(member.user_id for member in members if not member.on_boards)
    return rank_quarter(fitted.fit, {cook: Cook(runs[cook], witnessed[cook], cook in alike) for cook in runs}, off)


def _ground(fitted: FittedQuarter, compared: Compared) -> Ground:
    """What the group to be ranked stands on; where no group is the largest, what all do."""
    group = largest_group(fitted.fit) if fitted.fit else frozenset()
    cells = [cell for cell in compared.cells if not group or cell.cook in group]
    return ground_of(cells, compared.spec_of)


async def _show(said: Said, board: QuarterBoard, quarter: str, *, closed: bool) -> None:
    names = await names_on_boards(said.work, said.kitchen.room_id)
    say = said.phrases
    lines, figures = quarter_lines(say, board, names), quarter_figures(board)
    if said.private and said.user_id in board.bands:
        lines.append(own_quarter_line(say, board, said.user_id))
        figures |= own_figures(board, said.user_id)
    await said.answer("\n".join([quarter_head(say, quarter, closed=closed), *lines]), figures=figures)
