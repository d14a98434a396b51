"""What it takes to run a drill: its mise, the tables that it fits, and the order to work in."""

from bot.domain.drill import Drill, plate_cm
from bot.domain.mise import mise_of
from bot.domain.table import Table, most_that_fit, pattern_of, patterns_on
from bot.domain.working_order import best_order, orders_of
from bot.errors import UserError
from bot.replies.mise import figures_of_mise, mise_lines
from bot.replies.order import figures_of_orders, order_lines
from bot.replies.pictures.table_plan import table_plan
from bot.replies.table import figures_of_patterns, own_table_lines, table_lines
from bot.services.meant import drill_meant
from bot.services.pictures import picture
from bot.services.said import Said


async def tell_mise(said: Said, runs: int, label: str) -> None:
    """Everything for so many runs of the drill named or meant."""
    drill = (await drill_meant(said, label)).drill
    mise = mise_of(drill, runs, said.house.seconds)
    await said.answer("\n".join(mise_lines(said.phrases, drill, mise)), figures=figures_of_mise(mise))


async def tell_table(said: Said, table: Table, label: str) -> None:
    """Which patterns of the drill fit this table, by how much the others do not, and how the plates lie."""
    drill = (await drill_meant(said, label)).drill
    wide = _plate_cm(drill)
    patterns = patterns_on(drill.set_up, wide, table)
    fewer = None if any(p.fits for p in patterns) else most_that_fit(drill.set_up, wide, table)
    lines = table_lines(said.phrases, drill, table, patterns, fewer)
    figures = figures_of_patterns((*patterns, *([fewer] if fewer else [])))
    fitting = [pattern for pattern in (*patterns, fewer) if pattern and pattern.fits]
    plan = table_plan(said.phrases, lines[0], drill, fitting, table) if fitting else None
    drawn = picture(f"table-{drill.label}", plan) if plan else None
    await said.answer("\n".join(lines), figures=figures, attachment=drawn)


async def tell_own_table(said: Said, label: str) -> None:
    """The table that the drill's own pattern takes, and how the plates lie on it."""
    drill = (await drill_meant(said, label)).drill
    pattern = pattern_of(drill.set_up, _plate_cm(drill))
    lines = own_table_lines(said.phrases, drill, pattern)
    plan = picture(f"table-{drill.label}", table_plan(said.phrases, lines[0], drill, [pattern]))
    await said.answer("\n".join(lines), figures=figures_of_patterns([pattern]), attachment=plan)


async def tell_orders(said: Said, label: str) -> None:
    """The working orders of the drill compared, and the one to take."""
    drill = (await drill_meant(said, label)).drill
    orders = orders_of(drill, said.house.seconds)
    lines = order_lines(said.phrases, drill, orders, best_order(orders))
    await said.answer("\n".join(lines), figures=figures_of_orders(orders))


def _plate_cm(drill: Drill) -> float:
    wide = plate_cm(drill.spec)
    if wide is None:
        raise UserError("table-plate-unknown", plate=drill.spec.plate)
    return wide
