"""One's own numbers, told in private: bests, the trend of first runs, and the whole sum of a run."""

from bot.domain.pace import clock_text
from bot.domain.progress import DayRun, trend_of
from bot.errors import UserError
from bot.replies.dates import day_text
from bot.replies.sums import figures_of_result, sum_lines
from bot.services.meant import Meant, drill_meant, meant_by
from bot.services.ports.messages import Figure
from bot.services.ports.records import Run
from bot.services.said import Said
from bot.services.standing import Mark, mark_of


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


async def tell_trend(said: Said, label: str) -> None:
    """The first run of each day on the drill named or last run, with its median; nothing is called progress yet."""
    meant = await _own_drill(said, label)
    runs = await said.work.runs.on_set_up(said.user_id, meant.set_up_id)
    trend = trend_of(_day_run(run) for run in runs if not run.over_limit)
    if trend.median_s is None:
        raise UserError("no-trend")
    say, name = said.phrases, meant.drill.wording.name
    shown = ", ".join(clock_text(run.net_s) + ("*" if run.short else "") for run in trend.runs)
    lines = [say("trend-runs", drill=name, runs=shown), say("trend-median", median=clock_text(trend.median_s))]
    if any(run.short for run in trend.runs):
        lines.append(say("trend-short"))
    if not trend.enough:
        lines.insert(0, say("trend-few", count=len(trend.runs), needed=trend.needed))
    figures = {f"run.{nth}.net_s": run.net_s for nth, run in enumerate(trend.runs, 1)}
    await said.tell("\n".join(lines), {**figures, "median_s": trend.median_s, "needed": trend.needed})


def _day_run(run: Run) -> DayRun:
    count = run.result.count
    return DayRun(run.kitchen_day, run.result.net_s, count.attempted, count.plates, run.result.kind)


async def tell_why(said: Said) -> None:
    """The whole sum of the run that is answered, or else of the person's last run."""
    run = await _run_meant(said)
    published = await said.work.drills.get(run.set_up_id) if run else None
    if run is None or published is None or run.user_id != said.user_id:
        raise UserError("no-why")
    lines = sum_lines(said.phrases, published.drill, run.result)
    await said.tell("\n".join(lines), figures_of_result(run.result))


async def _run_meant(said: Said) -> Run | None:
    if said.reply_to:
        answered = [run for run in await said.work.runs.of_event(said.reply_to) if run.status == "kept"]
        if answered:
            return answered[0]
    return await said.work.runs.last(said.kitchen.room_id, said.user_id)


async def _own_drill(said: Said, label: str) -> Meant:
    """The drill named, or else the one the person ran last."""
    last = None if label else await said.work.runs.last(said.kitchen.room_id, said.user_id)
    published = await said.work.drills.get(last.set_up_id) if last else None
    return meant_by(published) if published else await drill_meant(said, label)
