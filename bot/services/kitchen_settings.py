"""What the chef sets for the kitchen in the chat: time zone, day-turn hour, length of replies."""

from dataclasses import replace
from datetime import time
from typing import Literal

from bot.domain.kitchen_day import check_zone
from bot.services.ports.records import Kitchen
from bot.services.posting import closes_at
from bot.services.said import Said


async def set_zone(said: Said, name: str) -> None:
    """Read and show times in this IANA time zone, and move the weekly postings with it."""
    zone = check_zone(name)
    await _save(said, replace(said.kitchen, zone=zone))
    for schedule in await said.work.schedules.of(said.kitchen.room_id):
        await said.work.schedules.save(replace(schedule, zone=zone, version=schedule.version + 1))
    await said.answer(said.phrases("zone-set", zone=zone))


async def set_day_turn(said: Said, at: time) -> None:
    """Let the kitchen day turn at this local hour from now on."""
    await _save(said, replace(said.kitchen, day_turn=at))
    await said.answer(said.phrases("day-turn-set", at=f"{at:%H:%M}"))


async def set_replies(said: Said, length: Literal["full", "short"]) -> None:
    """Answer a submission with its line, or with the memo pad alone."""
    await said.work.kitchens.save(replace(said.kitchen, replies=length))
    await said.answer(said.phrases(f"replies-{length}"))


async def _save(said: Said, kitchen: Kitchen) -> None:
    """Keep the kitchen's new clock, and let the boards that are open close by it."""
    await said.work.kitchens.save(kitchen)
    for live in await said.work.drills.live_in(kitchen.room_id):
        await said.work.drills.save_live(replace(live, closes_at=closes_at(kitchen, live.week)))
