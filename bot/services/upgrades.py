"""A kitchen's room is replaced by another: followed only with authority, and moved once, whatever arrives first.

The old room has to say so by the word of somebody who may (its tombstone), and the new one has to name the old as its
predecessor and let that person invite: whoever makes a room can name any other as its predecessor.
"""

from collections.abc import Mapping
from dataclasses import replace
from typing import TypeVar

from bot.replies.phrases import phrases_in
from bot.services.authority import may_invite, may_replace
from bot.services.house import House
from bot.services.ports.events import Edit, Message, Reaction, Redaction
from bot.services.ports.messages import EventRef, Outgoing
from bot.services.ports.records import Kitchen
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker

TOMBSTONE = "m.room.tombstone"
_CREATE = "m.room.create"
_OWN = "m.room.member"
"""Under this type the bot's own membership is kept among a room's state."""

Spoken = TypeVar("Spoken", bound=Message | Edit | Reaction | Redaction)


async def note_own(house: House, work: UnitOfWork, room_id: str, state: str) -> None:
    """Keep whether the bot is in the room."""
    await work.kitchens.save_state(room_id, _OWN, {"membership": state}, house.bot_id)


async def is_in(work: UnitOfWork, room_id: str) -> bool:
    """Whether the bot is in the room."""
    kept = await work.kitchens.state(room_id, _OWN)
    return kept is not None and kept[0].get("membership") == "join"


async def is_replaced(work: UnitOfWork, room_id: str) -> bool:
    """Whether somebody has declared the room replaced, with authority or not."""
    return await work.kitchens.state(room_id, TOMBSTONE) is not None


async def replacement_of(work: UnitOfWork, room_id: str) -> str | None:
    """The room that replaces this one by the word of somebody who may say so."""
    kept = await work.kitchens.state(room_id, TOMBSTONE)
    stated = kept[0].get("replacement_room") if kept else None
    if kept is None or not isinstance(stated, str) or not stated.startswith("!") or stated == room_id:
        return None
    return stated if await may_replace(work, room_id, kept[1]) else None


async def predecessor_of(work: UnitOfWork, room_id: str) -> str | None:
    """The room that this one says it replaces."""
    create = await work.kitchens.state(room_id, _CREATE)
    named = create[0].get("predecessor") if create else None
    stated = named.get("room_id") if isinstance(named, Mapping) else None
    return stated if isinstance(stated, str) else None


async def follow(house: House, work: UnitOfWork, speaker: Speaker, room_id: str) -> None:
    """After a tombstone in a kitchen's room: come to the room that it names, and move if the bot is there already."""
    if await work.kitchens.get(room_id) is None:
        return
    new = await replacement_of(work, room_id)
    if new is None:
        await _tell(house, speaker, house.phrases("not-replaced", room=room_id))
        return
    await _come(work, speaker, room_id, new)
    if await is_in(work, new) and not await move_in(house, work, speaker, new):
        await _tell(house, speaker, house.phrases("names-no-predecessor", old=room_id, new=new))


async def follow_invitation(work: UnitOfWork, speaker: Speaker, room_id: str) -> None:
    """Accept an invitation, whosever it is, to the room that replaces a kitchen's."""
    old = await _declared_by(work, room_id)
    if old:
        await _come(work, speaker, old, room_id)


async def _come(work: UnitOfWork, speaker: Speaker, old: str, new: str) -> None:
    said_by = (await work.kitchens.state(old, TOMBSTONE) or ({}, ""))[1]
    await speaker.say(Outgoing(to=new, style="join", key=said_by.partition(":")[2]))


async def move_in(house: House, work: UnitOfWork, speaker: Speaker, room_id: str) -> bool:
    """Move the kitchen that this room replaces here, if all is proven and the bot is here; whether it moved."""
    old = await predecessor_of(work, room_id)
    kitchen = await work.kitchens.get(old) if old else None
    if old is None or kitchen is None or not await is_in(work, room_id) or await work.kitchens.get(room_id):
        return False
    said_by = (await work.kitchens.state(old, TOMBSTONE) or ({}, ""))[1]
    if await replacement_of(work, old) != room_id or not await may_invite(work, room_id, said_by):
        return False
    await _move(house, work, speaker, kitchen, room_id)
    return True


async def _move(house: House, work: UnitOfWork, speaker: Speaker, kitchen: Kitchen, new: str) -> None:
    goes_on = await replacement_of(work, new)  # once more, while the bot was away: there nobody would hear it
    line = None if goes_on else await _say_moved(work, speaker, kitchen, new)
    await work.moves.carry_over(kitchen.room_id, new, line)
    await _tell(house, speaker, house.phrases("kitchen-moved", old=kitchen.room_id, new=new))
    if await is_replaced(work, new):
        await follow(house, work, speaker, new)


async def _say_moved(work: UnitOfWork, speaker: Speaker, kitchen: Kitchen, new: str) -> EventRef:
    live = [one.drill.label for one in reversed(await work.drills.live_in(kitchen.room_id))]
    say = phrases_in(kitchen.language)
    return await speaker.notice(new, say("moved-here-live", drills=", ".join(live)) if live else say("moved-here"))


async def moved_to(work: UnitOfWork, room_id: str) -> str | None:
    """Where the kitchen is now that was once in this room."""
    new = await replacement_of(work, room_id)
    while new and await predecessor_of(work, new) == room_id and not await work.kitchens.get(new):
        room_id, new = new, await replacement_of(work, new)
    return new if new and await predecessor_of(work, new) == room_id else None


async def brought_over(work: UnitOfWork, event: Spoken) -> Spoken:
    """The event as if it came from where its kitchen is now: said in the old room late, or readable only now."""
    new = None if await work.kitchens.get(event.room_id) else await moved_to(work, event.room_id)
    if new is None:
        return event
    moved = replace(event, room_id=new)
    return replace(moved, thread=None) if isinstance(moved, Message) else moved


async def may_open(work: UnitOfWork, room_id: str) -> bool:
    """Whether a kitchen may be opened: not in a room given up, nor in place of another that has not said so (yet)."""
    if await is_replaced(work, room_id):
        return False
    old = await predecessor_of(work, room_id)
    return old not in {kitchen.room_id for kitchen in await work.kitchens.all()}


async def turn_away(house: House, work: UnitOfWork, speaker: Speaker, room_id: str) -> bool:
    """Leave a room that a kitchen's tombstone led to and that does not name the kitchen's; whether it is one."""
    old = await _declared_by(work, room_id)
    if old is None or await predecessor_of(work, room_id) == old:
        return False
    await speaker.say(Outgoing(to=room_id, style="leave"))
    await _tell(house, speaker, house.phrases("names-no-predecessor", old=old, new=room_id))
    return True


async def _declared_by(work: UnitOfWork, room_id: str) -> str | None:
    """The kitchen's room that is replaced by this one, by the word of somebody who may say so."""
    for old, content, _ in await work.kitchens.states(TOMBSTONE):
        is_meant = content.get("replacement_room") == room_id and await replacement_of(work, old) == room_id
        if is_meant and await work.kitchens.get(old):
            return old
    return None


async def _tell(house: House, speaker: Speaker, text: str) -> None:
    if house.admin_room:
        await speaker.notice(house.admin_room, text)
