"""Two bots on one database, each with a planner at work: a slot is still posted once."""

import asyncio
from dataclasses import replace
from datetime import timedelta

from sqlalchemy import select

from bot.app.house import build_house
from bot.services.planner import Planner
from bot.storage.storage import SqlStorage
from bot.storage.tables import live_drills, occurrences, outbox
from tests.fakes import KITCHEN_ROOM, MONDAY, FixedClock, a_drill, a_kitchen, a_schedule
from tests.storage.conftest import Raw

TICKS = 12


async def test_two_planners_in_a_storm_of_ticks_post_each_slot_once(
    url: str, storage: SqlStorage, clock: FixedClock, raw: Raw
) -> None:
    """From a minute before three to a minute after, on three Mondays, two planners tick at the same moments."""
    async with storage.begin() as work:
        await work.kitchens.save(a_kitchen())
        published = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        weekly = a_schedule(set_up_id=published.set_up_id, since=MONDAY - timedelta(hours=1))
        await work.schedules.save(replace(weekly, zone="UTC"))
    other = SqlStorage(url, clock)
    house = build_house(clock=clock, bot_id="@platepace:tern.example")
    planners = [Planner(each, house, wake_sender=lambda: None) for each in (storage, other)]
    for week in range(3):
        for tick in range(TICKS):
            clock.set(MONDAY + timedelta(weeks=week, seconds=10 * tick - 60))
            await asyncio.gather(*(planner.tick() for planner in planners))
    await other.close()
    slots = [row["slot"] for row in await raw(select(occurrences.c.slot).order_by(occurrences.c.slot))]
    assert slots == ["2026-W48", "2026-W49", "2026-W50"]
    posts = await raw(select(outbox.c.slot, outbox.c.part).where(outbox.c.event_type == "m.room.message"))
    weekly_posts = [row["slot"] for row in posts if row["slot"]]
    assert sorted(weekly_posts) == slots
    assert len(await raw(select(live_drills.c.id))) == len(slots)
