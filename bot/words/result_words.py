"""The words of a line of a result: the English ones, and those of every language that stand for them."""

from collections.abc import Mapping

from bot.replies.accepted_words import accepted, folded

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


def meaning_of(word: str) -> str:
    """What a word means, in any case of letters; empty where it means nothing."""
    plain = folded(word)
    return ENGLISH.get(plain) or accepted("line").get(plain, "")
