"""Answers how many hands plate so many in so long: by standard time, and by the kitchen's own pace where it has one."""

from collections import defaultdict
from dataclasses import dataclass

from bot.domain.pickup import Line, own_ratio, plan_pickup, plan_with
from bot.domain.standard_time import touch_s
from bot.replies.pickup import own_pace_line, pickup_lines, sum_line, with_lines
from bot.services.meant import Meant, drill_meant
from bot.services.ports.messages import Figure
from bot.services.said import Said


@dataclass(frozen=True)
class Wanted:
    """So many plates within the limit, of the drill named or meant; by so many hands where they are said."""

    plates: int
    limit_s: int
    label: str = ""
    hands: int | None = None


async def answer_pickup(said: Said, wanted: Wanted) -> None:
    """Say whether it can be done, by how many hands with which tasks, and what would do it if not."""
    meant = await drill_meant(said, wanted.label)
    spec, seconds, say = meant.drill.spec, said.house.seconds, said.phrases
    touch = touch_s(spec, seconds)
    figures: dict[str, Figure] = {}
    if wanted.hands:
        line = plan_with(spec, seconds, wanted.plates, wanted.hands)
        lines = with_lines(say, spec, wanted.limit_s, line, wanted.hands)
    else:
        plan = plan_pickup(spec, seconds, wanted.plates, wanted.limit_s)
        line = plan.line
        lines = pickup_lines(say, spec, wanted.limit_s, touch, plan)
        figures = _figures("divided", plan.divided)
        if plan.fewer:
            figures |= {**_figures("fewer", plan.fewer.line), "fewer.pieces": plan.fewer.pieces}
    lines.append(sum_line(say, wanted.plates, wanted.limit_s, touch, line))
    ratio = await _own_ratio(said, meant)
    if ratio:
        lines.append(own_pace_line(say, line, ratio))
    figures |= {**_figures("line", line), "touch_s": touch, "takt_s": wanted.limit_s / wanted.plates, "ratio": ratio}
    await said.answer("\n".join(lines), figures=figures)


async def _own_ratio(said: Said, meant: Meant) -> float | None:
    """The kitchen's own pace on this plate against standard time, pressure rounds apart; None of too few people."""
    every = await said.work.drills.every(said.kitchen.room_id)
    under_pressure = {published.set_up_id for published in every if published.drill.set_up.pressure}
    by_person: dict[str, list[float]] = defaultdict(list)
    for run in await said.work.runs.of_spec(meant.spec_id):
        result = run.result
        counts = result.kind == "counted" and not run.over_limit and run.set_up_id not in under_pressure
        if counts and result.net_s is not None:
            by_person[run.user_id].append(result.net_s / result.standard_s)
    return own_ratio(by_person.values())


def _figures(name: str, line: Line | None) -> dict[str, Figure]:
    if line is None:
        return {}
    return {f"{name}.hands": line.hands, f"{name}.largest_s": line.largest_s, f"{name}.time_s": line.time_s}
