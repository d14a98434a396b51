"""Plain text to the few HTML tags that rooms allow, and names made safe to print."""

import html
import re
import unicodedata

_CODE = re.compile(r"`([^`\n]+)`")
_TAG = re.compile(r"<[^<>]*>")
_LONGEST_NAME = 40
_UNSEEN = {"Cc", "Cf", "Cs", "Zl", "Zp"}


def to_html(text: str) -> str:
    """Escaped text with `code` marked and lines kept; empty where the plain text says it all."""
    if "`" not in text:
        return ""
    return _CODE.sub(r"<code>\1</code>", html.escape(text, quote=False)).replace("\n", "<br>")


def harmless(text: str) -> str:
    """What somebody typed, to be said back: without markup, direction overrides and other characters unseen."""
    return "".join(c for c in _TAG.sub(" ", text) if c == "\n" or unicodedata.category(c) not in _UNSEEN)


def link_to(room_id: str, event_id: str) -> str:
    """Where a message of a room is found (Matrix specification, appendices, matrix.to navigation)."""
    return f"https://matrix.to/#/{room_id}/{event_id}"


def plain_name(name: str) -> str:
    """A display name as one short, harmless run of text.

    Direction overrides, zero-width characters and other controls are dropped, back-ticks and line ends too, so that
    a name can neither dress itself as markup nor turn the line around.
    """
    one_line = " ".join(name.replace("`", "'").split())
    kept = "".join(c for c in one_line if unicodedata.category(c) not in _UNSEEN)
    return " ".join(kept.split())[:_LONGEST_NAME].strip() or "somebody"
