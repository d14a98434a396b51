"""One's own numbers, told in private: bests and the whole sum of a run."""

from bot.domain.pace import clock_text
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
