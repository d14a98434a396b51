"""References to messages of the bot's own become the events that these were sent as."""

from dataclasses import replace

from bot.services.ports.messages import EventRef, Outgoing
from bot.services.ports.world import UnitOfWork


async def resolved(work: UnitOfWork, note: Outgoing) -> Outgoing:
    """The note with event ids for references; one to something never sent is dropped."""

    async def event_of(ref: EventRef | None) -> EventRef | None:
        event_id = await work.outbox.event_of(ref) if ref else None
        return EventRef(event_id) if event_id else None

    return replace(
        note,
        thread=await event_of(note.thread),
        reply_to=await event_of(note.reply_to),
        target=await event_of(note.target),
        replaces=await event_of(note.replaces),
    )
