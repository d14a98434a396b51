"""The trend of one's own first runs on a drill, told in private."""

from bot.domain.pace import clock_text
from bot.domain.progress import DayRun, trend_of
from bot.errors import UserError
from bot.services.meant import own_drill
from bot.services.ports.records import Run
from bot.services.said import Said


async def tell_trend(said: Said, label: str) -> None:
    """The first run of each day on the drill named or last run, with its median; nothing is called progress yet."""
    meant = await own_drill(said, label)
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
