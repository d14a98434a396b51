"""The time to meet on a drill: one of the three aims of its standard time, or the chef's own."""

from dataclasses import replace
from typing import Literal

from bot.domain.bests import whole_s
from bot.domain.pace import clock_text
from bot.domain.readiness import target_s
from bot.domain.standard_time import standard_s, targets
from bot.errors import UserError
from bot.replies.coaching import aims_line
from bot.services.meant import Meant, drill_as_told_now, show_as_told
from bot.services.said import Said

Aim = Literal["opening", "house", "brisk"]

FASTEST, SLOWEST = 1 / 3, 3.0
"""Times of standard time that a target may be: a faster clock would be doubted in a run too."""


async def show_target(said: Said, label: str) -> None:
    """Answer with the three aims of the drill and the target that it has."""
    meant = await drill_as_told_now(said, label)
    standard, target = _standard_s(said, meant), target_s(meant.drill, said.house.seconds)
    await said.answer(aims_line(said.phrases, meant.drill, standard, target), meant.live, {"target_s": target})


async def set_target(said: Said, label: str, aim: Aim | int) -> None:
    """Make one of the three aims, or a time in seconds, the drill's target: a new wording, so every best stays."""
    meant = await drill_as_told_now(said, label)
    standard = _standard_s(said, meant)
    aims = targets(standard)
    seconds: dict[Aim, float] = {"opening": aims.opening_s, "house": aims.house_s, "brisk": aims.brisk_s}
    target = aim if isinstance(aim, int) else whole_s(seconds[aim])
    if not FASTEST * standard <= target <= SLOWEST * standard:
        raise UserError("target-out-of-range", target=clock_text(target), house=clock_text(standard))
    await _reword(said, meant, target)
    text = said.phrases("target-set", drill=meant.drill.wording.name, target=clock_text(target))
    await said.answer(text, meant.live, {"target_s": target})


async def _reword(said: Said, meant: Meant, target: int) -> None:
    """Store the wording, and show it on the card of every posting that somebody may still mean."""
    known = await said.work.drills.get(meant.set_up_id)
    if known is None:
        raise UserError("no-such-drill", label=meant.drill.label)
    wording = replace(known.drill.wording, target_s=target)
    if wording == known.drill.wording:
        return
    await said.work.drills.reword(known, wording, said.now)
    await show_as_told(said, known.spec_id)


def _standard_s(said: Said, meant: Meant) -> float:
    return standard_s(meant.drill.spec, meant.drill.set_up, said.house.seconds)
