"""Answers how many honest runs fit in a slot: by standard time, in private by the cook's own median."""

from statistics import median

from bot.domain.slot import fit_slot
from bot.replies.slot import slot_lines
from bot.services.meant import Meant, drill_meant
from bot.services.said import Said

FEWEST_OWN_RUNS = 3
"""Whole runs from which a cook's own median stands in the place of standard time."""


async def answer_slot(said: Said, length_s: int, label: str) -> None:
    """Say how many runs of the drill named or meant fit, or the shortest slot that holds one."""
    meant = await drill_meant(said, label)
    own_s = await _own_clocks_s(said, meant) if said.private else []
    drill = meant.drill
    slot = fit_slot(drill.spec, drill.set_up, said.house.seconds, length_s, median(own_s) if own_s else None)
    lines = slot_lines(said.phrases, drill.wording.name, slot, len(own_s))
    figures = {
        "runs": slot.runs,
        "run_s": slot.run_s,
        "each_s": slot.each_s,
        "taken_s": slot.taken_s(max(slot.runs, 1)),
    }
    await said.answer("\n".join(lines), figures={**figures, "own_runs": len(own_s)})


async def _own_clocks_s(said: Said, meant: Meant) -> list[int]:
    """The clocks of the cook's whole runs on this set-up; none where they are too few for a median."""
    runs = await said.work.runs.on_set_up(said.user_id, meant.set_up_id)
    clocks_s = [run.result.clock_s for run in runs if run.result.kind in ("counted", "settling")]
    return clocks_s if len(clocks_s) >= FEWEST_OWN_RUNS else []
