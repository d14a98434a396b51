"""Words at the pass: hands for a pickup, what fits in a slot, a sheet of calls, and whether dots are even."""

import re

from bot.domain.durations import DAY_S, fold_digits, read_clock
from bot.domain.pickup import MOST_HANDS
from bot.errors import UserError
from bot.services.calls import tell_sheet
from bot.services.judging import answer_dots
from bot.services.pickup import Wanted, answer_pickup
from bot.services.said import Said
from bot.services.slot import answer_slot
from bot.words.registry import Word

MOST_PLATES = 2000
MOST_DOTS = 50
WIDEST_MM = 100.0
FEWEST_DOTS = 2

_LABEL = r"(?:(?P<label>\d{1,4}[a-z]{0,2})\s+(?=\d))?"
_PICKUP = re.compile(
    _LABEL + r"(?P<plates>\d{1,6})(?:\s+plates?)?\s+in\s+(?P<limit>.+?)(?:\s+with\s+(?P<hands>\d{1,4})(?:\s+hands?)?)?",
    re.IGNORECASE,
)
_SLOT = re.compile(_LABEL + r"(?P<length>.+)", re.IGNORECASE)
_CALLS = re.compile(
    r"(?:(?P<label>\d{1,4}[a-z]{1,2}|\d{1,4}(?=\s+[1-3]\b)))?\s*(?P<level>[1-3])?(?:\s*sheet\s+(?P<number>\d{1,6}))?",
    re.IGNORECASE,
)
_MINUTES = re.compile(r"\d{1,4}")
_WIDTH = re.compile(r"\d{1,4}(?:\.\d{1,2})?")


async def _pickup(said: Said, rest: str) -> None:
    found = _PICKUP.fullmatch(fold_digits(rest))
    if not found:
        raise UserError("pickup-how")
    plates, limit_s, hands = int(found["plates"]), _length_s(found["limit"]), int(found["hands"] or 1)
    if not (1 <= plates <= MOST_PLATES and 1 <= hands <= MOST_HANDS and 1 <= limit_s <= DAY_S // 2):
        raise UserError("pickup-out-of-range", plates=str(MOST_PLATES), hands=MOST_HANDS)
    await answer_pickup(said, Wanted(plates, limit_s, found["label"] or "", hands if found["hands"] else None))


async def _slot(said: Said, rest: str) -> None:
    found = _SLOT.fullmatch(fold_digits(rest))
    length_s = _length_s(found["length"]) if found else 0
    if not found or not length_s:
        raise UserError("slot-how")
    await answer_slot(said, length_s, found["label"] or "")


async def _calls(said: Said, rest: str) -> None:
    found = _CALLS.fullmatch(fold_digits(rest))
    if not found:
        raise UserError("calls-which-level")
    level, number = (int(found[part]) if found[part] else None for part in ("level", "number"))
    await tell_sheet(said, found["label"] or "", level, number)


async def _dots(said: Said, rest: str) -> None:
    measured, _, called = fold_digits(rest).casefold().partition(" of ")
    widths_mm = _widths_mm(measured)
    if len(widths_mm) < FEWEST_DOTS:
        raise UserError("dots-too-few")
    await answer_dots(said, widths_mm, _widths_mm(called.replace("-", " ")))


def _length_s(typed: str) -> int:
    """A number alone is minutes; a clock is a clock."""
    return 60 * int(typed) if _MINUTES.fullmatch(typed) else read_clock(typed)


def _widths_mm(typed: str) -> list[float]:
    """Widths as typed, with or without ``mm``; a UserError for anything else."""
    words = [word for part in typed.split() if (word := part.rstrip(".,;").removesuffix("mm"))]
    if len(words) > MOST_DOTS:
        raise UserError("dots-too-many", most=MOST_DOTS)
    for word in words:
        if not _WIDTH.fullmatch(word):
            raise UserError("dots-unreadable", typed=word.replace("`", "'")[:20])
    widths_mm = [float(word) for word in words]
    if any(not 0 < width <= WIDEST_MM for width in widths_mm):
        raise UserError("dots-out-of-range", most=f"{WIDEST_MM:.0f}")
    return widths_mm


WORDS = (
    Word("pickup", _pickup, "practise"),
    Word("slot", _slot, "practise"),
    Word("calls", _calls, "practise", private=True),
    Word("dots", _dots, "practise"),
)
