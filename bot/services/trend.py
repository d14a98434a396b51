"""The trend of one's own first runs on a drill, told in private."""

from collections.abc import Sequence
from dataclasses import replace

from bot.domain.drill import Drill
from bot.domain.first_runs import DayRun
from bot.domain.splits import SplitRun, slowest_step
from bot.domain.standard_time import standard_s
from bot.domain.trend import Trend, trend_of
from bot.errors import UserError
from bot.replies.pictures.trend import trend_picture
from bot.replies.trend import figures_of_trend, level_question, trend_lines
from bot.services.advice import advise
from bot.services.meant import Meant, own_drill
from bot.services.pictures import picture
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.run_records import Past, Run
from bot.services.said import Said
from bot.services.standing import days_of_bests

ENOUGH_TO_BE_LEVEL = 100
"""Runs that hold the first ones of the last dozen days, however many were made on each."""

SetUps = dict[int, PublishedDrill]
"""Set-ups of one spec by stored id."""


async def tell_trend(said: Said, label: str) -> None:
    """Whether the first run of each day on the drill named or last run grows faster, and what to expect of the next."""
    meant = await own_drill(said, label)
    runs, set_ups = await _runs_to_compare(said, meant)
    trend = _trend_of(said, meant, runs, set_ups)
    if not trend.last.timed:
        raise UserError("no-trend")
    name = meant.drill.wording.name
    lines = trend_lines(said.phrases, name, trend, _standards_s(said, meant, set_ups), _slowest(said, meant, runs))
    bests = days_of_bests(await said.work.runs.on_set_up(said.user_id, meant.set_up_id))
    drawn = picture(f"trend-{meant.drill.label}", trend_picture(said.phrases, lines, trend, bests))
    await said.tell("\n".join(lines), figures_of_trend(trend), drawn)
    if trend.level:
        await _ask_what_to_change(said, meant, trend)


async def ask_when_level(said: Said, run: Run, meant: Meant) -> None:
    """Ask the person what to change when this run is the first of its day and the one that makes them level."""
    if await said.work.runs.count_on_spec(run.room_id, run.user_id, run.spec_id, run.kitchen_day) != 1:
        return
    trend = _trend_of(said, meant, *await _runs_to_compare(said, meant, most=ENOUGH_TO_BE_LEVEL))
    if trend.newly_level:
        await _ask_what_to_change(said, meant, trend)


async def _ask_what_to_change(said: Said, meant: Meant, trend: Trend) -> None:
    question = level_question(said.own_phrases, meant.drill.wording.name, trend)
    await advise(said, said.user_id, question, figures_of_trend(trend))


def _trend_of(said: Said, meant: Meant, runs: Sequence[Past], set_ups: SetUps) -> Trend:
    return trend_of(_day_run(said, meant, run, set_ups[run.set_up_id]) for run in runs)


async def _runs_to_compare(said: Said, meant: Meant, most: int | None = None) -> tuple[list[Past], SetUps]:
    """The person's runs on the spec, at most so many, the last; and the set-ups that may stand beside this one."""
    runs = await said.work.runs.on_spec(said.user_id, meant.spec_id, most)
    known = [await said.work.drills.get(set_up_id) for set_up_id in dict.fromkeys(run.set_up_id for run in runs)]
    set_ups = {drill.set_up_id: drill for drill in known if drill and _alike(drill, meant)}
    return [run for run in runs if run.set_up_id in set_ups], set_ups


def _alike(published: PublishedDrill, meant: Meant) -> bool:
    """Whether levelled pace may carry runs over: from other plates and rows, and from nothing else.

    With all technique seconds wrong by 30 % it then errs by up to 3 % on the course, less than a cook's noise; between
    working orders it would by up to 17 %, which would pass for progress. A pair and a pressure round are other work.
    """
    there, here = published.drill.set_up, meant.drill.set_up
    return replace(there, plates=here.plates, rows=here.rows, gap_cm=here.gap_cm, edge_cm=here.edge_cm) == here


def _day_run(said: Said, meant: Meant, run: Past, ran_on: PublishedDrill) -> DayRun:
    result, elsewhere = run.result, run.set_up_id != meant.set_up_id
    onto = _standard_s(said, meant.drill) / _standard_s(said, ran_on.drill) if elsewhere else 1.0
    return DayRun(
        run.kitchen_day, result.net_s, result.count, result.kind, ran_on.drill.letter if elsewhere else "", onto
    )


def _standards_s(said: Said, meant: Meant, set_ups: SetUps) -> dict[str, float]:
    """The standard time by letter, of the set-up asked about under none."""
    there = {drill.drill.letter: _standard_s(said, drill.drill) for drill in set_ups.values()}
    return {**there, "": _standard_s(said, meant.drill)}


def _standard_s(said: Said, drill: Drill) -> float:
    return standard_s(drill.spec, drill.set_up, said.house.seconds)


def _slowest(said: Said, meant: Meant, runs: Sequence[Past]) -> str:
    """The technique of the step that costs most beside standard in each of the last runs with splits, if any does."""
    split = [
        SplitRun(run.splits_s, run.result.count.attempted)
        for run in runs
        if run.splits_s and run.set_up_id == meant.set_up_id
    ]
    step = slowest_step(meant.drill.spec, meant.drill.set_up, said.house.seconds, split)
    return step.technique if step else ""
