"""The words about when: the chef's post, skip, hold, close, zone, dayturn, quiet, replies, and everybody's rest."""

import re
from datetime import time

from bot.errors import UserError
from bot.services import kitchen_settings, quiet, scheduling
from bot.services.said import Said
from bot.services.scheduling import WEEKDAYS, Slot
from bot.words.registry import Word

_WEEKDAY = re.compile(r"(mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?", re.IGNORECASE)
_TIME = re.compile(r"([01]?\d|2[0-3])[:.]([0-5]\d)")
_HOURS = re.compile(r"(\S+?)\s*(?:-|\N{EN DASH}|to)\s*(\S+)", re.IGNORECASE)
_NTH = re.compile(r"[0-9]{1,3}")


async def _post(said: Said, rest: str) -> None:
    """``post``, ``post now 6``, ``post 6 mon 15:00``, ``post move 1 tue 14:30``, ``post 1 off``."""
    match rest.casefold().split():
        case []:
            await scheduling.list_schedules(said)
        case ["now", *label] if len(label) <= 1:
            await scheduling.post_now(said, *label)
        case [*nth, "off"] if len(nth) <= 1:
            await scheduling.cancel(said, _whole(nth[0]) if nth else None)
        case ["move", nth, day, at]:
            await scheduling.move(said, _whole(nth), _slot(day, at))
        case [*label, day, at] if len(label) <= 1:
            await scheduling.set_schedule(said, _slot(day, at), *label)
        case _:
            raise UserError("post-when")


async def _skip(said: Said, rest: str) -> None:
    await scheduling.skip(said, _whole(rest) if rest else None)


async def _hold(said: Said, rest: str) -> None:
    await scheduling.hold_posting(said, _whole(rest) if rest else None)


async def _close(said: Said, label: str) -> None:
    await scheduling.close_now(said, label)


async def _zone(said: Said, name: str) -> None:
    await kitchen_settings.set_zone(said, name)


async def _dayturn(said: Said, rest: str) -> None:
    await kitchen_settings.set_day_turn(said, read_time(rest, "which-time"))


async def _quiet(said: Said, rest: str) -> None:
    """``quiet 22:00-09:00``, ``quiet off``; alone it says which."""
    if rest:
        await quiet.set_quiet(said, _hours(rest, "quiet-how"))
    else:
        await quiet.tell_quiet(said)


async def _rest(said: Said, rest: str) -> None:
    """``rest 15:00-17:00``, ``rest off``; alone it says which."""
    if rest:
        await quiet.set_rest(said, _hours(rest, "rest-how"))
    else:
        await quiet.tell_rest(said)


def _hours(text: str, problem: str) -> tuple[time, time] | None:
    """Hours like ``15:00-17:00``; None for ``off``; a UserError of this key otherwise."""
    if text.casefold() == "off":
        return None
    found = _HOURS.fullmatch(text)
    if not found:
        raise UserError(problem)
    start, end = (read_time(at, problem) for at in found.groups())
    if start == end:
        raise UserError(problem)
    return start, end


async def _replies(said: Said, rest: str) -> None:
    match rest.casefold():
        case "full" | "short" as length:
            await kitchen_settings.set_replies(said, length)
        case _:
            raise UserError("which-replies")


def read_time(text: str, problem: str) -> time:
    """A wall time like ``15:00``; a UserError of this key otherwise."""
    found = _TIME.fullmatch(text.strip())
    if not found:
        raise UserError(problem)
    return time(int(found[1]), int(found[2]))


def _slot(day: str, at: str) -> Slot:
    found = _WEEKDAY.fullmatch(day)
    if not found:
        raise UserError("post-when")
    return Slot(WEEKDAYS.index(found[1].casefold()), read_time(at, "post-when"))


def _whole(text: str) -> int:
    """A place in the list of schedules."""
    if not _NTH.fullmatch(text):
        raise UserError("post-when")
    return int(text)


WORDS = (
    Word("post", _post, chef=True),
    Word("skip", _skip, chef=True),
    Word("hold", _hold, chef=True),
    Word("close", _close, chef=True),
    Word("zone", _zone, chef=True),
    Word("dayturn", _dayturn, chef=True),
    Word("quiet", _quiet, chef=True),
    Word("replies", _replies, chef=True),
    Word("rest", _rest, "privacy", private=True),
)
