"""Where something was said, and of which kitchen: the kitchen's own room, or a private room of two."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.durations import western_digits
from bot.replies.accepted_words import accepted, folded
from bot.replies.markup import plain_name
from bot.services.house import House
from bot.services.ports.events import Edit, Message
from bot.services.ports.records import Kitchen, Member
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.upgrades import brought_over

CHOSEN_WITHIN = timedelta(hours=12)


async def place_of(
    house: House, work: UnitOfWork, speaker: Speaker, event: Message | Edit, arrived: int
) -> Said | None:
    """What was said as the services take it; None where the bot has no business: an unknown room or person.

    What comes late from a room that the kitchen has left counts as said where the kitchen is now.
    """
    kitchen = await work.kitchens.get(event.room_id)
    if kitchen is not None:
        return await _in_kitchen(house, work, speaker, event, arrived, kitchen)
    if await work.kitchens.private_person(event.room_id) != event.sender:
        moved = await brought_over(work, event)
        return await place_of(house, work, speaker, moved, arrived) if moved is not event else None
    kitchens = await work.kitchens.of(event.sender)
    if not kitchens:
        return None
    said = await _in_kitchen(house, work, speaker, event, arrived, kitchens[0])
    return said if len(kitchens) == 1 or _of_no_kitchen(said.text) else await _of_several(said, kitchens)


def _of_no_kitchen(text: str) -> bool:
    """Whether it is all one of which kitchen it is said, so that it is not kept in a question either."""
    plain = folded(text).lstrip("! ")
    return accepted("words").get(plain, plain) == "sore"


async def _in_kitchen(
    house: House, work: UnitOfWork, speaker: Speaker, event: Message | Edit, arrived: int, kitchen: Kitchen
) -> Said:
    known = await work.kitchens.member(kitchen.room_id, event.sender)
    message = event if isinstance(event, Message) else None
    return Said(
        house=house,
        work=work,
        speaker=speaker,
        kitchen=kitchen,
        user_id=event.sender,
        member=known or Member(room_id=kitchen.room_id, user_id=event.sender, name="", state="join"),
        private=event.room_id != kitchen.room_id,
        room_id=event.room_id,
        event_id=event.target if isinstance(event, Edit) else event.event_id,
        sent_at=event.sent_at,
        arrived=arrived,
        text=western_digits(event.text),
        thread=message.thread if message else None,
        reply_to=message.reply_to if message else None,
        mentions=event.mentions,
        picture=message.picture if message else False,
    )


async def _of_several(said: Said, kitchens: list[Kitchen]) -> Said | None:
    """A person of several kitchens is taken to mean the one that waits for an answer, else is asked which."""
    waiting = await said.work.questions.open(said.user_id, said.now)
    for question in waiting:
        if question.kind != "kitchen":
            meant = [k for k in kitchens if k.room_id == question.room_id]
            return await _of(said, meant[0]) if meant else None
    chosen = said.text.strip()
    for question in waiting:
        await said.work.questions.close(question.id)
        if chosen.isdecimal() and 1 <= int(chosen[:3]) <= len(kitchens):
            return await _of(replace(said, text=question.about), kitchens[int(chosen[:3]) - 1])
    await _ask_which(said, kitchens)
    return None


async def _of(said: Said, kitchen: Kitchen) -> Said:
    """The same said of this kitchen."""
    known = await said.work.kitchens.member(kitchen.room_id, said.user_id)
    return replace(said, kitchen=kitchen, member=known or said.member)


async def _ask_which(said: Said, kitchens: list[Kitchen]) -> None:
    await said.ask("kitchen", CHOSEN_WITHIN, about=said.text)
    listed = ", ".join(f"`{nth}` {plain_name(kitchen.name)}" for nth, kitchen in enumerate(kitchens, 1))
    await said.tell(said.phrases("which-kitchen", count=len(kitchens), list=listed))
