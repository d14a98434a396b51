"""The language of a kitchen's room and of a person: which sentences go where, and how each is chosen."""

from dataclasses import replace

from bot.replies.language_names import language_meant, names_known, own_name
from bot.replies.phrases import Phrases, phrases_in
from bot.services.house import House
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said


async def room_phrases(house: House, work: UnitOfWork, room_id: str) -> Phrases:
    """The sentences for what is said in this room: in its kitchen's language, in a private room the person's."""
    kitchen = await work.kitchens.get(room_id)
    if kitchen:
        return phrases_in(kitchen.language)
    person = await work.kitchens.private_person(room_id)
    kitchens = await work.kitchens.of(person) if person else []
    return await own_phrases(house, work, kitchens[0].room_id, person) if person and kitchens else house.phrases


async def own_phrases(house: House, work: UnitOfWork, room_id: str, user_id: str) -> Phrases:
    """The sentences for what somebody of this kitchen is told in private: in their own language, else the kitchen's."""
    member = await work.kitchens.member(room_id, user_id)
    return phrases_in(member.language) if member and member.language else await room_phrases(house, work, room_id)


async def own_language(work: UnitOfWork, user_id: str) -> str | None:
    """What the person has said in a kitchen before; None if nothing."""
    kitchens = await work.kitchens.of(user_id)
    members = [await work.kitchens.member(kitchen.room_id, user_id) for kitchen in kitchens]
    return next((member.language for member in members if member and member.language), None)


async def tell_languages(said: Said) -> None:
    """What is set for the room and for the person, and what there is."""
    own, room = said.member.language, own_name(said.kitchen.language)
    await said.tell(said.own_phrases("languages", room=room, own=own_name(own) if own else "none", known=names_known()))


async def set_language(said: Said, typed: str) -> None:
    """In the room a chef sets the room's language; in private, and from a cook in the room, it is the person's own."""
    language = language_meant(typed)
    say = phrases_in(language)
    if not said.private and await said.is_chef():
        await said.work.kitchens.save(replace(said.kitchen, language=language))
        await said.answer(say("room-language-set", language=own_name(language)))
    else:
        await _keep(said, language)
        await said.tell(say("own-language-set", language=own_name(language)))


async def follow_room(said: Said) -> None:
    """Tell the person what is private in the room's language again."""
    await _keep(said, None)
    say = phrases_in(said.kitchen.language)
    await said.tell(say("own-language-off", language=own_name(said.kitchen.language)))


async def _keep(said: Said, language: str | None) -> None:
    """Keep it in every kitchen of the person: they speak the same language in each."""
    for kitchen in await said.work.kitchens.of(said.user_id):
        member = await said.work.kitchens.member(kitchen.room_id, said.user_id)
        if member:
            await said.work.kitchens.save_member(replace(member, language=language))
