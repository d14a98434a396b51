"""The kitchen's list of drills: one is taken off it, put back, or called otherwise; its history stays."""

from collections.abc import Sequence
from dataclasses import replace

from bot.domain.drill import Drill
from bot.errors import UserError
from bot.services.meant import show_as_told
from bot.services.ports.drill_records import PublishedDrill
from bot.services.said import Said


async def retire(said: Said, label: str) -> None:
    """Take the drill of this number, or the one set-up of this label, off the list; a posted one has to end first."""
    meant = await _meant(said, label, retired=False)
    for schedule in await said.work.schedules.of(said.kitchen.room_id):
        if schedule.set_up_id in {one.set_up_id for one in meant}:
            raise UserError("retire-scheduled", label=label)
    for live in await said.work.drills.live_in(said.kitchen.room_id):
        if live.set_up_id in {one.set_up_id for one in meant}:
            raise UserError("retire-live", label=live.drill.label)
    for one in meant:
        await said.work.drills.retire(one.set_up_id)
    await said.answer(said.phrases("retired", label=label, name=meant[0].drill.wording.name))


async def bring_back(said: Said, label: str) -> None:
    """Put it on the list again."""
    meant = await _meant(said, label, retired=True)
    for one in meant:
        await said.work.drills.retire(one.set_up_id, back=True)
    await said.answer(said.phrases("brought-back", label=label, name=meant[0].drill.wording.name))


async def rename(said: Said, label: str, name: str) -> None:
    """Call the drill of this number, or the one set-up of this label, by another name from now on."""
    meant = await _meant(said, label, retired=False)
    for one in meant:
        if one.drill.wording.name != name:
            await said.work.drills.reword(one, replace(one.drill.wording, name=name), said.now)
    await show_as_told(said, meant[0].spec_id)
    await said.answer(said.phrases("renamed", label=label, name=name))


async def _meant(said: Said, label: str, *, retired: bool) -> Sequence[PublishedDrill]:
    """The set-ups that the label names and that are, or are not, on the list."""
    known = await said.work.drills.every(said.kitchen.room_id, retired=retired)
    meant = [one for one in known if label.upper() in _labels(one.drill)]
    if not meant:
        raise UserError("not-retired" if retired else "no-such-drill", label=label)
    return meant


def _labels(drill: Drill) -> tuple[str, str]:
    return str(drill.number), f"{drill.number}{drill.letter}"
