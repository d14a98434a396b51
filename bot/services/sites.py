"""`board group`: sister kitchens side by side, where they have common ground, and nobody named."""

from datetime import timedelta

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.sites import apart, met_own_line, same_set_ups
from bot.domain.kitchen_day import kitchen_day
from bot.domain.standard_time import standard_s
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.replies.sites import MOST_LINES, SameDrill, Site, drill_line, group_figures, group_head, site_line
from bot.services.fairness import Compared, compared_runs, fit_of, quarter_at
from bot.services.house import Group
from bot.services.said import Said

LATELY = timedelta(weeks=2)


async def show_group(said: Said) -> None:
    """Compare the kitchens of this one's group over the quarter; a UserError where it is in none."""
    group = next((group for group in said.house.groups if said.kitchen.room_id in group.rooms), None)
    if group is None:
        raise UserError("no-group")
    quarter, say = quarter_at(said.kitchen, said.now), said.phrases
    compared = await compared_runs(said.work, said.house.seconds, group.rooms, quarter)
    cells = await _by_site(said, group, compared)
    if len(cells) < 2:  # noqa: PLR2004 - one site has nothing to stand beside
        await said.answer(say("group-one-site", group=group.name))
        return
    divided = apart(cells, compared.spec_of)
    if divided:
        await said.answer(say("group-apart", one=divided[0], other=divided[1]))
        return
    sites = await _sites(said, group, quarter, compared)
    drills = _drills(said, cells, compared)[: MOST_LINES - 1 - len(sites)]
    lines = [*(site_line(say, site) for site in sites), *(drill_line(say, drill) for drill in drills)]
    await said.answer("\n".join([group_head(say, group.name, quarter), *lines]), figures=group_figures(sites, drills))


async def _by_site(said: Said, group: Group, compared: Compared) -> dict[str, list[Cell]]:
    """The cells of each site that has compared runs, by its name, in the group's order."""
    names = await _names(said, group)
    found = {name: [row.cell for row in compared.gathered if row.room_id == room] for room, name in names.items()}
    return {name: cells for name, cells in found.items() if cells}


async def _names(said: Said, group: Group) -> dict[str, str]:
    kitchens = [await said.work.kitchens.get(room) for room in group.rooms]
    return {kitchen.room_id: plain_name(kitchen.name) for kitchen in kitchens if kitchen}


async def _sites(said: Said, group: Group, quarter: str, compared: Compared) -> list[Site]:
    """Each site by its cooks' own lines in the last two weeks, and by first time right over the quarter."""
    since = kitchen_day(said.now, said.kitchen.zone, said.kitchen.day_turn) - LATELY
    lately = compared.known(await said.work.fits.gather(group.rooms, quarter, since.toordinal()))
    fit = await fit_of(said.work, group.key, quarter)
    sites = []
    for room, name in (await _names(said, group)).items():
        rows = [row for row in compared.gathered if row.room_id == room]
        if rows:
            met = met_own_line(fit, [row.cell for row in lately if row.room_id == room]) if fit else None
            sites.append(Site(name, met, sum(row.clean for row in rows), sum(row.attempted for row in rows)))
    return sites


def _drills(said: Said, cells: dict[str, list[Cell]], compared: Compared) -> list[SameDrill]:
    """The set-ups that are the same at several sites, by the clock."""
    found = []
    for same in same_set_ups(cells):
        drill = compared.drills[same.set_up].drill
        standard = standard_s(drill.spec, drill.set_up, said.house.seconds)
        times_s = {site: standard * ratio for site, ratio in same.ratios.items()}
        found.append(SameDrill(drill.wording.name, drill.set_up.plates, times_s, same.close))
    return found
