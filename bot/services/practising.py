"""What to practise next, told in private: the course for a newcomer, else what costs the most time again and again."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, timedelta
from statistics import median

from bot.domain.kitchen_day import kitchen_day
from bot.domain.next_drill import COURSE, NextDrill, PractisedRun, course_drill, next_drill
from bot.domain.splits import MOST_OFF_S, RUNS_TO_REPEAT, SplitRun, StepTime, quickest_quarter_s, step_times
from bot.errors import UserError
from bot.replies.coaching import StepPaces, course_line, figures_of_next, next_lines
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.run_records import Run
from bot.services.said import Said
from bot.services.working_out import is_newcomer

QUARTER = timedelta(weeks=13)
"""How far back a run still tells what to practise."""

SetUps = dict[int, PublishedDrill]
"""Every set-up of the kitchen that is not retired, by stored id."""


async def tell_next(said: Said) -> None:
    """One drill and one reason, or what it would need to say one."""
    set_ups = {published.set_up_id: published for published in await said.work.drills.every(said.kitchen.room_id)}
    today = kitchen_day(said.now, said.kitchen.zone, said.kitchen.day_turn)
    ever = await said.work.runs.in_days(said.kitchen.room_id, said.user_id, date.min, today)
    runs = [run for run in ever if run.result.kind != "stopped" and run.set_up_id in set_ups]
    if (not runs or is_newcomer(said.kitchen, said.member)) and await _tell_course(said, runs, set_ups):
        return
    recent = [run for run in runs if run.kitchen_day > today - QUARTER]
    drills = [published.drill for published in set_ups.values() if published.drill.set_up.cooks == 1]
    practised = [_practised(run, set_ups) for run in recent]
    advice = next_drill(drills, practised, said.house.seconds, today)
    if advice is None:
        raise _nothing_to_say(recent)
    paces = await _paces(said, advice, recent, set_ups)
    await said.tell("\n".join(next_lines(said.phrases, advice, paces)), figures_of_next(advice, paces))


def _nothing_to_say(runs: Sequence[Run]) -> UserError:
    """What it would need, or that what there is singles nothing out."""
    with_steps = sum(bool(run.splits_s) for run in runs)
    if with_steps >= RUNS_TO_REPEAT:
        return UserError("next-nothing-lost", most=MOST_OFF_S)
    return UserError("next-needs", runs=with_steps, of=RUNS_TO_REPEAT)


async def _tell_course(said: Said, runs: Sequence[Run], set_ups: SetUps) -> bool:
    """Tell the drill that the course comes to; False where the course is through or the kitchen has it no more."""
    weeks: dict[int, set[str]] = defaultdict(set)
    for run in runs:
        weeks[set_ups[run.set_up_id].drill.number].add(run.week)
    number = course_drill({number: len(those) for number, those in weeks.items()})
    drill = next((published.drill for published in set_ups.values() if published.drill.number == number), None)
    if number is None or drill is None:
        return False
    week, of = len(weeks[number]) + 1, COURSE[number]
    await said.tell(course_line(said.phrases, drill, week, of), {"week": week, "weeks": of})
    return True


def _practised(run: Run, set_ups: SetUps) -> PractisedRun:
    drill = set_ups[run.set_up_id].drill
    return PractisedRun(run.kitchen_day, drill, run.result.count.attempted, run.splits_s, run.reasons)


async def _paces(said: Said, advice: NextDrill, runs: Sequence[Run], set_ups: SetUps) -> StepPaces | None:
    """The technique's step in the last run with splits, beside one's own usual, standard time and the house."""
    steps = [(run, step) for run in runs if (step := _step(said, run, set_ups, advice.technique))]
    if not steps:
        return None
    last, step = steps[-1]
    everybody = [run for run in await said.work.runs.of_spec(last.spec_id) if run.set_up_id == last.set_up_id]
    by_cook: dict[str, list[float]] = defaultdict(list)
    for run in everybody:
        if run.result.kind != "stopped" and (theirs := _step(said, run, set_ups, advice.technique)):
            by_cook[run.user_id].append(theirs.pace_s)
    return StepPaces(
        drill=set_ups[last.set_up_id].drill.wording.name,
        technique=advice.technique,
        last=step,
        usual_s=median(by_cook[said.user_id]),
        quarter_s=quickest_quarter_s(list(by_cook.values())),
    )


def _step(said: Said, run: Run, set_ups: SetUps, technique: str) -> StepTime | None:
    """The first step of this technique in a run with splits."""
    drill = set_ups[run.set_up_id].drill
    split = SplitRun(run.splits_s, run.result.count.attempted)
    times = step_times(drill.spec, drill.set_up, said.house.seconds, split)
    named = zip(drill.spec.steps, times, strict=False)
    return next((time for step, time in named if step.technique == technique), None)
