"""Rooms come and go: a kitchen opens when the bot joins it, people and their names are kept, private rooms noted."""

from dataclasses import replace

from bot.replies.phrases import phrases_in
from bot.services import upgrades
from bot.services.house import House
from bot.services.languages import own_language
from bot.services.ports.events import Membership, RoomState
from bot.services.ports.messages import Outgoing
from bot.services.ports.records import Kitchen, Member
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker

GONE = ("leave", "ban")
PRESENT = ("join", "invite")


async def note_state(house: House, work: UnitOfWork, speaker: Speaker, event: RoomState) -> None:
    """Keep what decides authority, and the kitchen's name; follow it to another room."""
    await work.kitchens.save_state(event.room_id, event.type, event.content, event.sender)
    if event.type == upgrades.TOMBSTONE:
        await upgrades.follow(house, work, speaker, event.room_id)
    kitchen = await work.kitchens.get(event.room_id)
    if kitchen and event.type == "m.room.name":
        await work.kitchens.save(replace(kitchen, name=str(event.content.get("name") or kitchen.name)))


async def note_membership(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    """Keep who is in the room; of the bot itself, open or close the kitchen."""
    if event.person == house.bot_id:
        await _note_own(house, work, speaker, event)
        return
    known = await work.kitchens.member(event.room_id, event.person)
    member = known or await _newcomer(work, event)
    await work.kitchens.save_member(replace(member, name=event.name or member.name, state=event.state))
    if event.state not in GONE:
        return
    if await work.kitchens.private_person(event.room_id) == event.person:
        await work.kitchens.save_private(event.person, None)
    if known and known.state in PRESENT and await upgrades.is_in(work, event.room_id):
        await _leave_if_alone(work, speaker, event.room_id)


async def _newcomer(work: UnitOfWork, event: Membership) -> Member:
    """Somebody new here, spoken to in the language that they have set elsewhere."""
    language = await own_language(work, event.person)
    return Member(room_id=event.room_id, user_id=event.person, name=event.name, state=event.state, language=language)


async def _leave_if_alone(work: UnitOfWork, speaker: Speaker, room_id: str) -> None:
    """Go out of a room in which nobody is left; the homeserver is asked once more before."""
    if not any(member.state in PRESENT for member in await work.kitchens.members(room_id)):
        await speaker.say(Outgoing(to=room_id, style="leave_if_empty"))


async def _note_own(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    person = await work.kitchens.private_person(event.room_id)
    if event.state in ("join", *GONE):
        await upgrades.note_own(house, work, event.room_id, event.state)
    if event.state == "invite" and event.direct:
        await work.kitchens.save_private(event.sender, event.room_id)
    elif event.state == "invite":
        await upgrades.follow_invitation(work, speaker, event.room_id)
    elif event.state == "join" and person is None and not event.direct:
        await _come_in(house, work, speaker, event)
    elif event.state in GONE:
        await _leave_room(work, event.room_id, person)


async def _come_in(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    """Open the room's kitchen: the one known before, the one whose room this replaces, or a new one."""
    known = await work.kitchens.get(event.room_id)
    if known:
        await work.kitchens.save(known)
    elif not (
        await upgrades.move_in(house, work, speaker, event.room_id)
        or await upgrades.turn_away(house, work, speaker, event.room_id)
    ) and await upgrades.may_open(work, event.room_id):
        await _open_kitchen(house, work, speaker, event)


async def _leave_room(work: UnitOfWork, room_id: str, person: str | None) -> None:
    if person:
        await work.kitchens.save_private(person, None)
    else:
        await work.kitchens.close(room_id)


async def _open_kitchen(house: House, work: UnitOfWork, speaker: Speaker, event: Membership) -> None:
    state = await work.kitchens.state(event.room_id, "m.room.name")
    name = str(state[0].get("name") or "") if state else ""
    kitchen = Kitchen(
        room_id=event.room_id,
        name=name or "the kitchen",
        opened_at=event.sent_at,
        zone=house.zone,
        language=house.language,
    )
    await work.kitchens.save(kitchen)
    for drill in house.course():
        await work.drills.publish(event.room_id, drill, None, event.sent_at, seeded=True)
    say = phrases_in(kitchen.language)
    await speaker.post(event.room_id, say("first-message", zone=kitchen.zone))
