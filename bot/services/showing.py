"""Showing a drill's card, on the phone and on paper, and the list of drills."""

from bot.domain.drill import NOT_CALLED
from bot.domain.pace import clock_text
from bot.domain.standard_time import standard_s, touches
from bot.errors import UserError
from bot.replies.card import posted_card
from bot.replies.pictures.paper import paper
from bot.replies.pictures.plate_card import plate_card
from bot.services.meant import drill_meant
from bot.services.pictures import page, picture
from bot.services.said import Said


async def show_card(said: Said, label: str) -> None:
    """Answer with the card of the drill named, or of the one that is live."""
    drill, say, seconds = (await drill_meant(said, label)).drill, said.phrases, said.house.seconds
    card = picture(f"drill-{drill.label}", plate_card(say, drill, seconds))
    await said.answer(posted_card(say, drill, seconds), attachment=card)


async def print_card(said: Said, label: str) -> None:
    """Answer with a page to print: the card of the drill named or meant, and a table to write the runs into."""
    drill, say, seconds = (await drill_meant(said, label)).drill, said.phrases, said.house.seconds
    printed = page(f"drill-{drill.label}", paper(say, drill, seconds))
    await said.answer(say("paper-here", drill=drill.wording.name), attachment=printed)


async def list_drills(said: Said) -> None:
    """Answer with every drill of the kitchen, a line each; what call sheets made of one is left out."""
    published = await said.work.drills.every(said.kitchen.room_id)
    every = [p.drill for p in published if not p.retired and p.drill.set_up.called == NOT_CALLED]
    if not every:
        raise UserError("drills-none")
    lines = [
        said.phrases(
            "drill-line",
            label=drill.label,
            name=drill.wording.name,
            plates=drill.set_up.plates,
            touches=touches(drill.spec),
            standard=clock_text(standard_s(drill.spec, drill.set_up, said.house.seconds)),
        )
        for drill in every
    ]
    await said.answer("\n".join(lines))
