"""Lettering: how wide words come out, where a line breaks, and how the renderer is told of scripts and directions."""

import re
import unicodedata
from collections.abc import Iterable, Iterator
from html import escape

_BENGALI = re.compile(
    "[\u0964-\u09ff\u200c\u200d]+(?:[^\u0964-\u09ffA-Za-z\u00c0-\u024f\u0600-\u06ff]+[\u0964-\u09ff\u200c\u200d]+)*"
)
"""Runs of Bengali with what stands between its words."""

_WIDTHS_EM = {
    **dict.fromkeys(" !'()*,-./:;I[]`fijlt|", 0.35),
    **dict.fromkeys('"Jrcsz?\\{}', 0.5),
    **dict.fromkeys("&ADGHNOQU", 0.8),
    "w": 0.86,
    **dict.fromkeys("%@MWm", 1.0),
}
_USUAL_EM = 0.65
_ARABIC_EM, _BENGALI_EM, _SIGN_EM = 0.6, 0.68, 0.42
_REGULAR_OF_BOLD = 0.95
_RIGHT_TO_LEFT, _LEFT_TO_RIGHT, _CLOSE = "\u2067", "\u2066", "\u2069"
_ISOLATES = (_LEFT_TO_RIGHT, _RIGHT_TO_LEFT, "\u2068")


def width_px(words: str, size: float, *, bold: bool = False) -> float:
    """At least as wide as the words come out in this size, by a coarse table of letters."""
    em = sum(_letter_em(letter) for letter in words)
    return em * size * (1.0 if bold else _REGULAR_OF_BOLD)


def broken(words: str, size: float, room: float, *, bold: bool = False) -> list[str]:
    """The words in lines that are no wider than the room; a word that alone is wider is cut."""
    lines = [""]
    for word in (part for given in words.split() for part in _cut(given, size, room, bold=bold)):
        tried = f"{lines[-1]} {word}".lstrip()
        if lines[-1] and width_px(tried, size, bold=bold) > room:
            lines.append(word)
        else:
            lines[-1] = tried
    return list(_balanced(lines))


def set_line(words: str, *, right_to_left: bool) -> str:
    """The inside of a ``text`` element, in its own direction and each script by its own rules.

    The renderer begins every line on the left, and joins the letters of a run by the rules of its first one: Bengali
    behind Latin letters would fall apart were it not isolated.
    """
    line = _BENGALI.sub(lambda run: left_to_right(run[0]), words)
    return escape(f"{_RIGHT_TO_LEFT}{line}{_CLOSE}" if right_to_left else line)


def left_to_right(words: str) -> str:
    """The words in their own order in a line of any direction: a measure, a name."""
    return f"{_LEFT_TO_RIGHT}{words}{_CLOSE}"


def _balanced(lines: Iterable[str]) -> Iterator[str]:
    """The lines, each isolate that reaches over the end of one closed there and opened again on the next."""
    open_ = ""
    for line in lines:
        begun = f"{open_}{line}"
        for letter in line:
            if letter in _ISOLATES:
                open_ += letter
            elif letter == _CLOSE:
                open_ = open_[:-1]
        yield begun + _CLOSE * len(open_)


def _letter_em(letter: str) -> float:
    if letter < "\u0250":
        return _WIDTHS_EM.get(letter, _USUAL_EM)
    category = unicodedata.category(letter)
    if category in {"Mn", "Cf"}:
        return 0.0
    if category == "Mc":
        return _SIGN_EM
    return _ARABIC_EM if letter < "\u0900" else _BENGALI_EM


def _cut(word: str, size: float, room: float, *, bold: bool) -> Iterator[str]:
    while word:
        fits = (n for n in range(len(word), 1, -1) if width_px(word[:n], size, bold=bold) <= room)
        end = next(fits, 1)
        yield word[:end]
        word = word[end:]
