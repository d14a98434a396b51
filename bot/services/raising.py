"""Whether the room's drill is ready for a harder version, by numbers and by the cooks' own word, and its draft."""

from collections import defaultdict
from dataclasses import replace
from datetime import date, datetime, timedelta

from bot.domain.harder import Harder, harder
from bot.domain.kitchen_day import kitchen_day
from bot.domain.readiness import LevelRun, Standing, is_room_ready, standing_of, target_s
from bot.errors import UserError
from bot.replies.coaching import figures_of_raise, hold_line, ready_lines, standing_line, too_much, way_lines
from bot.replies.markup import plain_name
from bot.services.drafting import draft_like
from bot.services.meant import Meant, drill_as_told_now
from bot.services.ports.run_records import Run
from bot.services.said import Said

MONTH = timedelta(days=28)
"""The month's cooks are those with a counted run on the drill in the last four weeks."""


async def tell_raise(said: Said, label: str) -> None:
    """Tell the chef in private whether to hold or raise, and where it is raise, the ways up with their true size."""
    meant = await drill_as_told_now(said, label)
    standings = await _standings_of_the_month(said, meant)
    ready = sum(standing.ready for standing in standings)
    target = target_s(meant.drill, said.house.seconds)
    if not is_room_ready(standings):
        text = hold_line(said.phrases, meant.drill, ready, len(standings), target)
        await said.tell(text, figures_of_raise(ready, len(standings), target, ()))
        return
    ways = harder(meant.drill, said.house.seconds)
    lines = [
        *ready_lines(said.phrases, meant.drill, ready, len(standings), target, await _said_ready(said, meant)),
        *way_lines(said.phrases, meant.drill, ways),
    ]
    await said.tell("\n".join(lines), figures_of_raise(ready, len(standings), target, ways))


async def draft_raise(said: Said, label: str, nth: int) -> None:
    """Begin a draft of the nth way up; one that is too much at once is refused with its size."""
    meant = await drill_as_told_now(said, label)
    ways = harder(meant.drill, said.house.seconds)
    if not 1 <= nth <= len(ways):
        raise UserError("which-raise", most=len(ways))
    way: Harder = ways[nth - 1]
    if way.fit == "refused":
        raise too_much(said.phrases, meant.drill, way)
    original = await said.work.drills.get(meant.set_up_id)
    await draft_like(replace(said, aside=False), way.drill, original)


async def say_ready(said: Said, label: str) -> None:
    """Keep that the person is ready for a harder version, and tell them in private where their runs stand."""
    if said.member.consent != "in":
        raise UserError("ready-when-joined")
    meant = await drill_as_told_now(said, label)
    ready = tuple(dict.fromkeys((*said.member.ready, meant.set_up_id)))
    await said.work.kitchens.save_member(replace(said.member, ready=ready))
    runs = await said.work.runs.on_set_up(said.user_id, meant.set_up_id)
    target = target_s(meant.drill, said.house.seconds)
    standing = standing_of(_level_runs(runs), target, _today(said))
    kept = said.phrases("ready-kept", drill=meant.drill.wording.name)
    await said.tell(f"{kept}\n{standing_line(said.phrases, standing, target)}", {"median_s": standing.median_s})


async def take_back_ready(said: Said, label: str) -> None:
    """Forget that the person said so."""
    meant = await drill_as_told_now(said, label)
    ready = tuple(set_up_id for set_up_id in said.member.ready if set_up_id != meant.set_up_id)
    await said.work.kitchens.save_member(replace(said.member, ready=ready))
    await said.tell(said.phrases("ready-off", drill=meant.drill.wording.name))


async def _standings_of_the_month(said: Said, meant: Meant) -> list[Standing]:
    """Where every one of the month's cooks stands."""
    by_cook: dict[str, list[Run]] = defaultdict(list)
    for run in sorted(await said.work.runs.of_spec(meant.spec_id), key=_when_run):
        if run.set_up_id == meant.set_up_id:
            by_cook[run.user_id].append(run)
    today, target = _today(said), target_s(meant.drill, said.house.seconds)
    theirs = [_level_runs(runs) for runs in by_cook.values()]
    return [standing_of(runs, target, today) for runs in theirs if _ran_since(runs, today - MONTH)]


def _ran_since(runs: list[LevelRun], day: date) -> bool:
    return any(run.kind == "counted" and run.day > day for run in runs)


def _level_runs(runs: list[Run]) -> list[LevelRun]:
    """What speaks for a harder version; a run beyond the day's safe number does not."""
    return [
        LevelRun(
            day=run.kitchen_day,
            kind=run.result.kind,
            accepted=run.result.count.accepted,
            attempted=run.result.count.attempted,
            net_s=run.result.net_s,
        )
        for run in runs
        if not run.over_limit
    ]


async def _said_ready(said: Said, meant: Meant) -> list[str]:
    """The names of those who said that they are ready, and are here and counted in."""
    members = await said.work.kitchens.members(said.kitchen.room_id)
    here = [member for member in members if (member.state, member.consent) == ("join", "in")]
    return [plain_name(member.name) for member in here if meant.set_up_id in member.ready]


def _today(said: Said) -> date:
    return kitchen_day(said.now, said.kitchen.zone, said.kitchen.day_turn)


def _when_run(run: Run) -> tuple[datetime, int, int]:
    return run.ran_at, run.arrived, run.line
