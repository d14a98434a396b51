"""Several short answers waiting for one thread go out as one message, a line each, in order."""

from collections.abc import Sequence
from dataclasses import replace
from html import escape

from bot.matrix.compose import MOST_BYTES
from bot.services.ports.messages import Outgoing, Waiting

MOST_LINES = 12
LEAST_NOTES = 4


def merge(head: Sequence[Waiting]) -> tuple[Outgoing, tuple[int, ...]]:
    """What to send for the head of a lane, and the rows after it that this makes needless."""
    first, *rest = _together(head)
    if len(rest) + 1 < LEAST_NOTES:
        return head[0].note, ()
    notes = [row.note for row in (first, *rest)]
    merged = replace(
        first.note,
        text="\n".join(map(_named, notes)),
        html="<br>".join(_line(note) for note in notes) if any(note.html for note in notes) else "",
        reply_to=None,
        about="",
        mentions=tuple(dict.fromkeys(person for note in notes for person in note.mentions)),
    )
    return merged, tuple(row.id for row in rest)


def _together(head: Sequence[Waiting]) -> list[Waiting]:
    """The first rows that can share a message; the first alone where it can share none."""
    rows = [head[0]]
    text = _named(head[0].note)
    if _may_merge(head[0]):
        for row in head[1:]:
            text += "\n" + _named(row.note)
            if not (_fits(text) and _may_merge(row) and row.note.thread == head[0].note.thread):
                break
            rows.append(row)
    return rows


def _may_merge(row: Waiting) -> bool:
    note = row.note
    alone = note.style != "notice" or note.target or note.attachment or note.uploaded or row.first_try_at_s is not None
    return not alone


def _fits(text: str) -> bool:
    """What one message cannot hold would be cut off there, so it goes in the next."""
    return text.count("\n") < MOST_LINES and len(text.encode()) <= MOST_BYTES


def _named(note: Outgoing) -> str:
    return f"{note.about}: {note.text}" if note.about else note.text


def _line(note: Outgoing) -> str:
    body = note.html or escape(note.text).replace("\n", "<br>")
    return f"{escape(note.about)}: {body}" if note.about else body
