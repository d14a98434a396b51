"""The words of a result line by language; a further language is a further list."""

from collections.abc import Mapping

NUMBERED = frozenset({"redo", "left", "rebuilt", "fixed", "wipes", "stopped"})
REASONS = frozenset({"rim", "size", "flat", "air", "place", "edge", "face", "count", "tall", "fell", "torn", "mark"})
ENGLISH: Mapping[str, str] = {
    **{reason: reason for reason in REASONS},
    **dict.fromkeys(("redo", "redos"), "redo"),
    **dict.fromkeys(("rebuilt", "rebuild", "rebuilds"), "rebuilt"),
    **dict.fromkeys(("fix", "fixes", "fixed"), "fixed"),
    **dict.fromkeys(("wipe", "wipes", "wiped"), "wipes"),
    **dict.fromkeys(("steps", "splits"), "steps"),
    **{word: word for word in ("left", "stopped", "of", "all", "at", "yesterday", "for", "with", "am", "pm")},
}
"""What each word means: a detail with a number, a redo reason, or a part of the line's own grammar."""

MEANINGS = ENGLISH
"""The words of every language that is understood, from everybody."""


def meaning_of(word: str) -> str:
    """What a word means, in any case of letters; empty where it means nothing."""
    return MEANINGS.get(word.casefold(), "")
