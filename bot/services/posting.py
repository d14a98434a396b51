"""Posting a drill: the card as a thread's root, pinned in the place of the one before, and the week's board opened."""

from datetime import date, datetime

from bot.domain.kitchen_day import week_closes
from bot.replies.card import posted_card
from bot.replies.phrases import phrases_in
from bot.replies.pictures.plate_card import plate_card
from bot.services.expectations import keep_fitted
from bot.services.house import House
from bot.services.light_weeks import is_light_week
from bot.services.pictures import picture
from bot.services.ports.drill_records import LiveDrill, PublishedDrill
from bot.services.ports.records import Kitchen
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker


async def post_drill(
    house: House,
    work: UnitOfWork,
    speaker: Speaker,
    kitchen: Kitchen,
    published: PublishedDrill,
    *,
    week: str,
    late: bool = False,
) -> LiveDrill | None:
    """Post the drill for this local ISO week; None, and nothing said, if it is live for that week already."""
    if await work.drills.live_for(kitchen.room_id, published.set_up_id, week):
        return None
    former = await work.drills.last_live(kitchen.room_id)
    say = phrases_in(kitchen.language)
    text = posted_card(say, published.drill, house.seconds, light=is_light_week(kitchen, week))
    card = picture(f"drill-{published.drill.label}", plate_card(say, published.drill, house.seconds))
    root = await speaker.post(kitchen.room_id, f"{say('late')} {text}" if late else text, card)
    await speaker.pin(kitchen.room_id, root, former.root if former else None)
    live = await work.drills.save_live(
        LiveDrill(
            room_id=kitchen.room_id,
            set_up_id=published.set_up_id,
            spec_id=published.spec_id,
            drill=published.drill,
            week=week,
            posted_at=house.clock(),
            closes_at=closes_at(kitchen, week),
            root=root,
        )
    )
    await keep_fitted(work, live)
    return live


def closes_at(kitchen: Kitchen, week: str) -> datetime:
    """When a board of this local ISO week closes: the day turn that ends it."""
    return week_closes(date.fromisocalendar(int(week[:4]), int(week[6:]), 1), kitchen.zone, kitchen.day_turn)
