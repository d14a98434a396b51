"""Rooms come and go: a kitchen opens when the bot joins it, people and their names are kept, private rooms noted."""

from dataclasses import replace

from bot.services.house import House
from bot.services.ports.events import Membership, RoomState
from bot.services.ports.records import Kitchen, Member
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker

GONE = ("leave", "ban")


async def note_state(work: UnitOfWork, event: RoomState) -> None:
    """Keep what decides authority, and the kitchen's name."""
    await work.kitchens.save_state(event.room_id, event.type, event.content, event.sender)
    kitchen = await work.kitchens.get(event.room_id)
    if kitchen and event.type == "m.room.name":
        await work.kitchens.save(replace(kitchen, name=str(event.content.get("name") or kitchen.name)))


async def note_membership(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    """Keep who is in the room; of the bot itself, open or close the kitchen."""
    if event.person == house.bot_id:
        await _note_own(house, work, speaker, event)
        return
    known = await work.kitchens.member(event.room_id, event.person)
    fresh = Member(room_id=event.room_id, user_id=event.person, name=event.name, state=event.state)
    await work.kitchens.save_member(
        replace(known, name=event.name or known.name, state=event.state) if known else fresh
    )
    if event.state in GONE and await work.kitchens.private_person(event.room_id) == event.person:
        await work.kitchens.save_private(event.person, None)


async def _note_own(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    person = await work.kitchens.private_person(event.room_id)
    if event.state == "invite" and event.direct:
        await work.kitchens.save_private(event.sender, event.room_id)
    elif event.state == "join" and person is None and not event.direct:
        await _open_kitchen(house, work, speaker, event)
    elif event.state in GONE:
        await _leave_room(work, event.room_id, person)


async def _leave_room(work: UnitOfWork, room_id: str, person: str | None) -> None:
    if person:
        await work.kitchens.save_private(person, None)
    else:
        await work.kitchens.close(room_id)


async def _open_kitchen(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    known = await work.kitchens.get(event.room_id)
    if known:
        await work.kitchens.save(known)
        return
    state = await work.kitchens.state(event.room_id, "m.room.name")
    name = str(state[0].get("name") or "") if state else ""
    kitchen = Kitchen(room_id=event.room_id, name=name or "the kitchen", opened_at=event.sent_at, zone=house.zone)
    await work.kitchens.save(kitchen)
    for drill in house.course():
        await work.drills.publish(event.room_id, drill, None, event.sent_at, seeded=True)
    await speaker.post(event.room_id, house.phrases("first-message", zone=kitchen.zone))
