"""Clocks as people type them, in any script's digits, read to whole seconds."""

import re
import unicodedata
from decimal import Decimal
from typing import NoReturn

from bot.domain.pace import clock_text
from bot.errors import UserError

DAY_S = 86_400
_FULL = 60
_TWO_FIGURES = 2
_LONGEST = 40
_SECONDS = {"w": 604_800, "d": DAY_S, "h": 3_600, "m": 60, "s": 1}

_MARKS = {
    **dict.fromkeys("\uff1a\ufe55\u2236\ua789\u02d0", ":"),
    **dict.fromkeys("\u2018\u2019\u201b\u2032\u02b9\u02bc\u00b4\uff07", "'"),
    **dict.fromkeys("\u201c\u201d\u201e\u201f\u2033\u02ba\uff02", '"'),
    **dict.fromkeys("\u2044\u2215\uff0f", "/"),
    **dict.fromkeys("\uff0e\u066b", "."),
    **dict.fromkeys("\uff0c\u060c", ","),
    **dict.fromkeys("\u2212\uff0d", "-"),
}
_UNSEEN = frozenset("\u061c\u200b\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\ufeff")

_HOURS, _MINUTES, _SECS = "(?:hours?|hrs?|h)", "(?:minutes?|mins?|m)", "(?:seconds?|secs?|s)"
_PART = r"\d+(?:[.,]\d+)?"
_FORMS = tuple(
    re.compile(form)
    for form in (
        r"(?:(?P<h>\d+):(?=\d\d:))?(?P<m>\d+):(?P<s>\d\d)",
        r"(?P<m>\d+) (?P<s>[0-5]\d)",
        r"(?P<m>\d+)' ?(?:(?P<s>\d{1,2})(?:\"|'')?)?",
        r"(?P<s>\d+)(?:\"|'')",
        rf"(?:(?P<h>\d+) ?{_HOURS} ?)?(?P<m>\d+) ?{_MINUTES} ?(?P<s>\d{{1,2}})",
        rf"(?=\d)(?:(?P<h>\d+) ?{_HOURS} ?)?(?:(?P<m>\d+) ?{_MINUTES} ?)?(?:(?P<s>\d+) ?{_SECS})?",
        rf"p(?=[\dt])(?:(?P<w>{_PART})w)?(?:(?P<d>{_PART})d)?"
        rf"(?:t(?=\d)(?:(?P<h>{_PART})h)?(?:(?P<m>{_PART})m)?(?:(?P<s>{_PART})s)?)?",
    )
)
_DECIMAL = re.compile(r"(?P<minutes>\d+)[.,](?P<part>\d+)")
_ALMOST = re.compile(r"[-+]?\d[\d:.,'\"]*")


def fold_digits(text: str) -> str:
    """The text with every script's decimal digits, colons, quotes and slashes plain, unseen direction marks gone."""
    return text if text.isascii() else "".join(map(_plain, text))


def western_digits(text: str) -> str:
    """The text with every script's digits as Western ones and without unseen direction marks, otherwise as typed."""
    return text if text.isascii() else "".join(map(_western, text))


def is_clocklike(text: str) -> bool:
    """Whether this was meant as a clock, rightly written or not: ``8:05``, ``8 min 5``, but also ``8.05``, ``8:65``."""
    typed = _tidy(text)
    almost = _ALMOST.fullmatch(typed) and not typed.lstrip("+-").isdigit()
    return bool(almost) or _parts(typed.lstrip("+-")) is not None


def read_clock(text: str) -> int:
    """Whole seconds of a clock, at least one and at most a day; a UserError says what to send instead.

    ``8:05``, ``8m05``, ``8'05"``, ``485s``, ``8 min 5``, ``8 05``, ``1:02:03`` and ISO 8601 durations; a fraction
    of a second goes to the even one beside it.
    """
    typed = _tidy(text)
    if len(typed) <= _LONGEST and (decimal := _DECIMAL.fullmatch(typed)):
        return _agreed_or_asked(typed, decimal["minutes"], decimal["part"])
    parts = _parts(typed)
    if parts is None:
        _refuse("clock-unreadable", typed)
    if any(parts[unit] >= _FULL for unit in list(parts)[1:] if unit in "ms"):
        _refuse("clock-past-59", typed)
    return _whole(typed, sum((_SECONDS[unit] * amount for unit, amount in parts.items()), Decimal()))


def _plain(character: str) -> str:
    plain = _western(character)
    return _MARKS.get(plain, plain)


def _western(character: str) -> str:
    if character in _UNSEEN:
        return ""
    digit = unicodedata.decimal(character, None)
    return character if digit is None else str(digit)


def _tidy(text: str) -> str:
    """Folded, in small letters, single spaces; of what is far too long to be a clock a beginning that still is."""
    if len(text) > 4 * _LONGEST:
        return text[: _LONGEST + 1]
    return " ".join(fold_digits(text).casefold().split())


def _parts(typed: str) -> dict[str, Decimal] | None:
    """The amounts by unit, the largest unit first; None where no way of writing a clock fits."""
    if len(typed) > _LONGEST:
        return None
    fits = next((fit for form in _FORMS if (fit := form.fullmatch(typed))), None)
    if fits is None:
        return None
    given = {unit: amount for unit in _SECONDS if (amount := fits.groupdict().get(unit))}
    return {unit: Decimal(amount.replace(",", ".")) for unit, amount in given.items()}


def _whole(typed: str, seconds: Decimal) -> int:
    if seconds > DAY_S:
        _refuse("clock-over-a-day", typed)
    return round(seconds) or _refuse("clock-unreadable", typed)


def _agreed_or_asked(typed: str, minutes: str, part: str) -> int:
    """``8.05`` may be 8 min 5 s or 8.05 minutes: asked, unless both are the same second."""
    meant = _whole(typed, _FULL * Decimal(f"{minutes}.{part}"))
    decimal = f"{minutes}.{part}".rstrip("0").removesuffix(".")
    if len(part) > _TWO_FIGURES or int(part) >= _FULL:
        raise UserError("clock-in-decimals", decimal=decimal, converted=clock_text(meant))
    clock = _FULL * int(minutes) + int(part)
    if clock == meant:
        return clock
    raise UserError(
        "clock-or-decimal",
        minutes=int(minutes),
        seconds=int(part),
        decimal=decimal,
        clock=clock_text(clock),
        converted=clock_text(meant),
    )


def _refuse(key: str, typed: str) -> NoReturn:
    raise UserError(key, typed=typed.replace("`", "'")[:20])
