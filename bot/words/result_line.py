"""One line of a result, read word by word: clock and count in any order, with details.

A line is understood only if every word of it is; so talk that happens to hold a time or a fraction stays talk.
"""

import re
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from typing import Any
from urllib.parse import unquote

from bot.domain.durations import fold_digits, is_clocklike, read_clock
from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.words.result_words import NUMBERED, REASONS, meaning_of

COUNT = re.compile(r"(\d{1,9})/(\d{1,9})")
_NUMBER = re.compile(r"\d{1,9}")
_CIVIL_TIME = re.compile(r"([01]?\d|2[0-3]):([0-5]\d)")
_LETTERED_DRILL = re.compile(r"\d{1,4}[a-z]", re.IGNORECASE)
_LEADING_DRILL = re.compile(r"\s*(\d{1,4}[a-z]?)\s+(\S.*)", re.IGNORECASE)
_LINKED_NAME = re.compile(r"\[[^\]]{1,255}\]\(https://matrix\.to/#/((?:@|%40)[^)\s]{1,255})\)")
_LONGEST_LINE = 500
_MOST_WORDS_OF_A_CLOCK = 6


@dataclass(frozen=True)
class Reading:
    """A line that was understood to the last word; ``fault`` is what is wrong with it all the same."""

    sent: Sent
    has_clock: bool
    has_count: bool
    fault: UserError | None = None

    @property
    def whole(self) -> bool:
        """Whether it holds, or was meant to hold, a clock and a count."""
        return self.has_clock and self.has_count

    def taken(self) -> Sent:
        """What was sent; raises the fault where there is one."""
        if self.fault:
            raise self.fault
        return self.sent


def words_of(line: str) -> list[str]:
    """The line's words, digits plain, the punctuation that ends them gone, a linked name as the id it links to."""
    if len(line) > _LONGEST_LINE:
        return []
    plain = _LINKED_NAME.sub(lambda link: unquote(link[1]), fold_digits(line)).replace("`", " ")
    return [word for typed in plain.split() if (word := typed.rstrip(".,;!"))]


def read_line(line: str, names: Collection[str] = ()) -> Reading | None:
    """The line as understood, with the drill that it may begin by naming; None where a word of it is not understood.

    ``names`` are display names that may follow ``for`` and ``with``: so one of several words is read whole.
    """
    words = words_of(line)
    reading = _Walk(words, names).read()
    named = _LEADING_DRILL.fullmatch(" ".join(words))
    if named is None or (reading and reading.whole and not reading.fault):
        return reading
    of_drill = _Walk(named[2].split(), names, drill=named[1].upper()).read()
    return of_drill if of_drill and (reading is None or of_drill.whole) else reading


class _Walk:
    """Goes along the words of one line and keeps what it finds, by the names of Sent's fields."""

    def __init__(self, words: list[str], names: Collection[str], drill: str = "") -> None:
        self._rest = words
        self._names = {tuple(words_of(name.casefold())): name for name in names}
        self._found: dict[str, Any] = {"drill": drill} if drill else {}
        self._faults: list[UserError] = []
        self._has_bare_word = False
        self._grammar: Mapping[str, Callable[[], bool]] = {
            "all": lambda: self._keep("all_good", True, 1),
            "at": self._at,
            "steps": self._steps,
            "yesterday": lambda: self._keep("yesterday", True, 1),
            "for": lambda: self._name("mate"),
            "with": lambda: self._name("partner"),
        }

    def read(self) -> Reading | None:
        """The whole line; None where a word is not understood or where there are none."""
        if not self._rest:
            return None
        while self._rest:
            if not (self._count() or self._clock() or self._word() or self._lettered_drill()):
                return None
        found = self._found
        if self._has_bare_word and "accepted" not in found:
            return None
        if "all_good" in found and "accepted" in found:
            self._faults.append(UserError("one-run-a-line"))
        has_count = not found.keys().isdisjoint({"accepted", "redo", "all_good", "stopped"})
        sent = Sent(**{"clock_s": None, **found})
        return Reading(sent, "clock_s" in found, has_count, self._faults[0] if self._faults else None)

    def _keep(self, field: str, value: object, words: int) -> bool:
        if field in self._found:
            twice = field in {"clock_s", "accepted"}
            self._faults.append(UserError("one-run-a-line") if twice else UserError("said-twice", word=self._rest[0]))
        self._found[field] = value
        self._rest = self._rest[words:]
        return True

    def _count_at(self, place: int) -> re.Match[str] | None:
        """``11/12``, ``11 / 12`` or ``11 of 12`` beginning at this place."""
        match self._rest[place : place + 3]:
            case [good, of, plates] if of == "/" or meaning_of(of) == "of":
                return COUNT.fullmatch(f"{good}/{plates}")
            case [alone, *_]:
                return COUNT.fullmatch(alone)
        return None

    def _count(self) -> bool:
        found = self._count_at(0)
        if not found:
            return False
        self._keep("accepted", int(found[1]), 1 if COUNT.fullmatch(self._rest[0]) else 3)
        self._found["plates"] = int(found[2])
        return True

    def _clock(self) -> bool:
        """The longest run of words that is a clock, but for one that would eat into a count (``8 min 11 of 12``)."""
        for length in range(min(_MOST_WORDS_OF_A_CLOCK, len(self._rest)), 0, -1):
            typed = " ".join(self._rest[:length])
            if is_clocklike(typed) and not self._count_at(length - 1):
                return self._keep("clock_s", self._seconds(typed), length)
        return False

    def _seconds(self, typed: str) -> int | None:
        try:
            return read_clock(typed)
        except UserError as fault:
            self._faults.append(fault)
            return None

    def _word(self) -> bool:
        meaning = meaning_of(self._rest[0])
        if meaning in REASONS:
            reasons = (*self._found.pop("reasons", ()), meaning)
            return self._keep("reasons", tuple(dict.fromkeys(reasons)), 1)
        if meaning in NUMBERED:
            return self._numbered(meaning)
        return meaning in self._grammar and self._grammar[meaning]()

    def _numbered(self, field: str) -> bool:
        """``rebuilt 1``; its number is asked for beside 11/12, without one the line is talk (``all left``)."""
        match self._rest:
            case [_, number, *_] if _NUMBER.fullmatch(number):
                return self._keep(field, int(number), 2)
            case [word, *after]:
                self._faults.append(UserError("how-many", word=word))
                self._has_bare_word, self._rest = True, after
        return True

    def _at(self) -> bool:
        match self._rest:
            case [_, typed, half_day, *_] if typed[0].isdigit() and meaning_of(half_day) in {"am", "pm"}:
                return self._civil_time(f"{typed} {half_day}", 3)
            case [_, typed, *_] if typed[0].isdigit():
                return self._civil_time(typed, 2)
        return False

    def _civil_time(self, typed: str, words: int) -> bool:
        civil = _CIVIL_TIME.fullmatch(typed)
        if not civil:
            self._faults.append(UserError("at-unreadable", typed=plain_name(typed)))
        return self._keep("at", f"{int(civil[1]):02d}:{civil[2]}" if civil else "", words)

    def _steps(self) -> bool:
        length = 1
        while length < len(self._rest) and self._is_split(length):
            length += 1
        splits = tuple(self._seconds(typed) or 0 for typed in self._rest[1:length])
        return bool(splits) and self._keep("splits_s", splits, length)

    def _is_split(self, place: int) -> bool:
        typed = self._rest[place]
        return (is_clocklike(typed) or typed.isdigit()) and not self._count_at(place)

    def _name(self, field: str) -> bool:
        told = tuple(word.casefold() for word in self._rest[1:])
        known = max((name for name in self._names if name and told[: len(name)] == name), key=len, default=told[:1])
        typed = self._names.get(known, " ".join(self._rest[1:2]).rstrip(":"))
        return bool(typed) and self._keep(field, typed, len(known) + 1)

    def _lettered_drill(self) -> bool:
        return bool(_LETTERED_DRILL.fullmatch(self._rest[0])) and self._keep("drill", self._rest[0].upper(), 1)
