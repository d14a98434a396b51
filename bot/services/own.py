"""One's own numbers, told in private: bests and the whole sum of a run."""

from bot.domain.drill import Drill
from bot.domain.fairness.grounds import may_compare
from bot.domain.pace import clock_text
from bot.domain.quarter import quarter_of
from bot.domain.standard_time import standard_s
from bot.errors import UserError
from bot.replies.dates import day_text
from bot.replies.judging import own_count_line
from bot.replies.sums import Difficulty, Fitted, difficulty_line, figures_of_difficulty, figures_of_result, sum_lines
from bot.services.declared import is_declared
from bot.services.fairness import compared_runs
from bot.services.meant import Meant, drill_meant, meant_by
from bot.services.ports.messages import Figure
from bot.services.ports.run_records import Run
from bot.services.said import Said
from bot.services.standing import Mark, mark_of
from bot.services.verdicts import own_count_of


async def tell_best(said: Said, label: str) -> None:
    """The person's best on the drill named, or on every drill they have run."""
    if label:
        drills = [await drill_meant(said, label)]
    else:
        drills = [meant_by(published) for published in await said.work.drills.every(said.kitchen.room_id)]
    lines: list[str] = []
    figures: dict[str, Figure] = {}
    for meant in drills:
        mark = mark_of(await said.work.runs.on_set_up(said.user_id, meant.set_up_id))
        if mark:
            lines.append(_best_line(said, meant, mark))
            figures[f"{meant.drill.label}.net_s"] = mark.run.result.net_s
    if not lines:
        raise UserError("no-best")
    await said.tell("\n".join(lines), figures)


def _best_line(said: Said, meant: Meant, mark: Mark) -> str:
    count = mark.run.result.count
    return said.phrases(
        "best-line" if mark.witnessed else "best-unwitnessed",
        drill=meant.drill.wording.name,
        time=clock_text(mark.net_s),
        day=day_text(said.phrases, mark.run.kitchen_day),
        accepted=count.accepted,
        plates=count.plates,
    )


async def tell_why(said: Said) -> None:
    """The whole sum of the run that is answered, or else of the person's last run."""
    run = await _run_meant(said)
    published = await said.work.drills.get(run.set_up_id) if run else None
    if run is None or published is None or said.user_id not in (run.user_id, run.partner):
        raise UserError("no-why")
    if is_declared(run):
        raise UserError("declared-already")
    lines = sum_lines(said.phrases, published.drill, run.result)
    if run.chat_timed:
        lines.append(said.phrases("chat-timed"))
    figures = figures_of_result(run.result)
    if run.result.net_s is not None:
        drill = published.drill
        standard = standard_s(drill.spec, drill.set_up, said.house.seconds)
        difficulty = await _difficulty(said, run, drill)
        lines.append(difficulty_line(said.phrases, standard, difficulty))
        figures |= figures_of_difficulty(difficulty)
    own = await own_count_of(said)
    if own:
        lines.append(own_count_line(said.phrases, own))
        figures |= {"judged_runs": own.runs, "sent_good": own.sent, "found_good": own.found}
    await said.tell("\n".join(lines), figures)


async def _difficulty(said: Said, run: Run, drill: Drill) -> Difficulty:
    """What the fit of the run's quarter says of its set-up; else what of runs there is."""
    quarter, room_id = quarter_of(run.week), said.kitchen.room_id
    fitted = await said.work.fits.get(room_id, quarter)
    factor = fitted.fit.difficulty(run.set_up_id) if fitted and fitted.fit else None
    if fitted and factor and run.set_up_id in fitted.ready:
        of_it = [cell for cell in fitted.cells if cell.set_up == run.set_up_id]
        return Fitted(factor, sum(cell.runs for cell in of_it), len(of_it))
    if not may_compare(drill.spec, drill.set_up, said.house.seconds):
        return None
    return (await compared_runs(said.work, said.house.seconds, [room_id], quarter)).ground(run.set_up_id)


async def _run_meant(said: Said) -> Run | None:
    if said.reply_to:
        answered = [run for run in await said.work.runs.of_event(said.reply_to) if run.status == "kept"]
        if answered:
            return answered[0]
    return await said.work.runs.last(said.kitchen.room_id, said.user_id)
