"""Being counted in: by one's own word, with what is kept and why said first; names and mentions found."""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.services.lines import Line, as_held, hold
from bot.services.ports.records import Member
from bot.services.said import Said

HELD_FOR = timedelta(hours=48)

_NAMES_SOMEBODY = re.compile(r"\b(?:for|with)\b", re.IGNORECASE)


async def hold_until_joined(said: Said, lines: Sequence[Line]) -> None:
    """Hold a first submission and answer once with what is kept and why; unanswered in 48 h it is erased."""
    waiting = await said.work.questions.open(said.user_id, said.now)
    asked = [q for q in waiting if (q.kind, q.room_id) == ("join", said.kitchen.room_id)]
    for earlier in asked:
        await said.work.questions.close(earlier.id)
        others = [held for held in earlier.held if held.event_id != said.event_id]
        await said.work.questions.ask(replace(earlier, id=0, held=(*others, *as_held(said, lines))))
    if not asked:
        await hold(said, lines, "join", HELD_FOR)
        await said.answer(said.phrases("join-first"))


async def names_in(said: Said) -> list[str]:
    """The display names that a line may hold after ``for`` or ``with``."""
    if not _NAMES_SOMEBODY.search(said.text):
        return []
    return [plain_name(m.name) for m in await said.work.kitchens.members(said.kitchen.room_id) if m.state == "join"]


async def join(said: Said, *, told_why: bool = False) -> Member:
    """Count the person in from now on, saying what for unless it was just said; the member that they are by that."""
    member = replace(said.member, consent="in", counted_since=said.member.counted_since or said.now)
    if member != said.member:
        await said.work.kitchens.save_member(member)
    await said.answer(said.phrases("counted-in" if told_why else "joined", name=said.name))
    return member


async def leave(said: Said) -> None:
    """Count the person out: nothing more is kept, what was kept stays until they ask otherwise."""
    await said.work.kitchens.save_member(replace(said.member, consent="out"))
    await said.answer(said.phrases("left", name=said.name))


async def mate_named(said: Said, typed: str) -> Member:
    """The one person in the kitchen that ``@lio`` means: a mention, a user id, or a name that only one person has."""
    wanted = typed.lstrip("@").casefold()
    present = [m for m in await said.work.kitchens.members(said.kitchen.room_id) if m.state == "join"]
    found = [m for m in present if wanted in (m.user_id[1:].casefold(), plain_name(m.name).casefold())]
    if not found:
        found = [m for m in present if wanted == m.user_id[1:].split(":")[0].casefold()]
    if len(found) != 1:
        raise UserError("which-mate", name=plain_name(typed))
    if found[0].user_id == said.house.bot_id:
        raise UserError("which-mate", name=plain_name(typed))
    return found[0]
