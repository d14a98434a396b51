"""Lettering: how wide words come out, where a line breaks, and which of the shipped fonts each script is set in."""

import re
import unicodedata
from collections.abc import Iterator
from html import escape

_SCRIPTS = re.compile(
    r"(?P<Arabic>[\u0600-\u06ff]+(?: +[\u0600-\u06ff]+)*)"
    r"|(?P<Bengali>[\u0964-\u09ff\u200c\u200d]+(?: +[\u0980-\u09ff]+)*)"
)
"""Runs of letters that Noto Sans has not; what stands between two words of one script is set with them."""

_WIDTHS_EM = {
    **dict.fromkeys(" !'()*,-./:;I[]`fijlt|", 0.35),
    **dict.fromkeys('"Jrcsz?\\{}', 0.5),
    **dict.fromkeys("&ADGHNOQUw", 0.8),
    **dict.fromkeys("%@MWm", 1.0),
}
_USUAL_EM = 0.63
_ARABIC_EM, _BENGALI_EM, _SIGN_EM = 0.6, 0.68, 0.42
_REGULAR_OF_BOLD = 0.94
_OPEN, _CLOSE = "\u2067", "\u2069"
_UNSEEN = "Cf"


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
    return lines


def set_in_fonts(words: str, *, right_to_left: bool) -> str:
    """The inside of a ``text`` element: each script in its font, the whole line in its own direction.

    The renderer takes another font for letters that the first one lacks only where none of them join, and every line
    to begin on the left.
    """
    line = f"{_OPEN}{words}{_CLOSE}" if right_to_left else words
    return "".join(_spans(line))


def _spans(line: str) -> Iterator[str]:
    done = 0
    for found in _SCRIPTS.finditer(line):
        yield escape(line[done : found.start()])
        yield f'<tspan font-family="Noto Sans {found.lastgroup}">{escape(found[0])}</tspan>'
        done = found.end()
    yield escape(line[done:])


def _letter_em(letter: str) -> float:
    if letter < "\u0250":
        return _WIDTHS_EM.get(letter, _USUAL_EM)
    category = unicodedata.category(letter)
    if category in {"Mn", _UNSEEN}:
        return 0.0
    if category == "Mc":
        return _SIGN_EM
    return _ARABIC_EM if letter < "\u0900" else _BENGALI_EM


def _cut(word: str, size: float, room: float, *, bold: bool) -> Iterator[str]:
    while width_px(word, size, bold=bold) > room:
        fits = max(1, next(n for n in range(len(word), 0, -1) if n == 1 or width_px(word[:n], size, bold=bold) <= room))
        yield word[:fits]
        word = word[fits:]
    if word:
        yield word
