"""Words of coaching: the chef's raise and target, and everybody's own ready and next."""

import re

from bot.domain.durations import is_clocklike, read_clock
from bot.errors import UserError
from bot.services import aiming, practising, raising
from bot.services.said import Said
from bot.words.registry import Word

_LABEL = r"\d{1,4}[a-z]{0,2}"
_WAY = re.compile(rf"(?:({_LABEL})\s+)?(\d{{1,3}})", re.IGNORECASE)
_LETTERED = re.compile(r"\d{1,4}[a-z]{1,2}", re.IGNORECASE)
_READY = re.compile(rf"({_LABEL})?\s*(off)?", re.IGNORECASE)
_TARGET = re.compile(rf"(?:({_LABEL})\b)?\s*(.*)", re.IGNORECASE)
_AIMS: dict[str, aiming.Aim] = {"opening": "opening", "house": "house", "brisk": "brisk"}


async def _raise(said: Said, rest: str) -> None:
    """``raise`` and ``raise 6B`` tell, ``raise 2`` and ``raise 6 2`` begin a draft of a way up."""
    way = _WAY.fullmatch(rest)
    if way:
        await raising.draft_raise(said, way[1] or "", int(way[2]))
    elif not rest or _LETTERED.fullmatch(rest):
        await raising.tell_raise(said, rest)
    else:
        raise UserError("raise-unreadable")


async def _target(said: Said, rest: str) -> None:
    """``target`` and ``target 6`` tell, ``target brisk``, ``target 2:40`` and ``target 6 2:40`` set."""
    told = None if is_clocklike(rest) else _TARGET.fullmatch(rest)
    label, aim = (told[1] or "", told[2]) if told else ("", rest)
    if not aim:
        await aiming.show_target(said, label)
    elif aim.casefold() in _AIMS or is_clocklike(aim):
        await aiming.set_target(said, label, _AIMS.get(aim.casefold()) or read_clock(aim))
    else:
        raise UserError("which-target")


async def _ready(said: Said, rest: str) -> None:
    told = _READY.fullmatch(rest)
    if told is None:
        raise UserError("which-ready")
    await (raising.take_back_ready if told[2] else raising.say_ready)(said, told[1] or "")


async def _next(said: Said, _: str) -> None:
    await practising.tell_next(said)


WORDS = (
    Word("next", _next, "practise", private=True),
    Word("ready", _ready, "practise", private=True),
    Word("raise", _raise, chef=True, private=True),
    Word("target", _target, chef=True),
)
