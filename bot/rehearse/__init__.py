"""``platepace rehearse FILE``: plays a scripted chat, one JSON object a line, and prints what the bot says.

    {"time": "2026-11-23T15:04+00:00", "sender": "noor", "text": "3:20 7/8", "thread": "drill", "id": "noor-1"}

Whoever speaks first in a room makes it and is its chef; the others come by themselves when they first speak. ``room``
is ``kitchen`` unless another is named; ``private`` is the sender's room of two with the bot. A line may ``edit``,
``delete`` or ``react`` to the line of an ``id``, or hang in a ``thread`` or be a ``reply``, where ``drill`` is the
newest drill posted. A line that only has a time and a sender lets time pass.
"""

import asyncio
import json
from collections.abc import Callable, Sequence
from datetime import UTC
from pathlib import Path

from bot.rehearsal import Heard, rehearsal
from bot.rehearse.players import Players
from bot.rehearse.script import Line, read_script

Write = Callable[[str], None]
"""Takes one line of what is printed."""


def rehearse(path: Path, *, as_json: bool, write: Write) -> None:
    """Play the script and print every reply as it comes; an OperatorError names the line that cannot be played."""
    asyncio.run(_play(read_script(path), as_json=as_json, write=write))


async def _play(script: Sequence[tuple[str, Line]], *, as_json: bool, write: Write) -> None:
    if not script:
        return
    async with rehearsal(script[0][1].time.astimezone(UTC)) as stage:
        players = Players(stage)
        for where, line in script:
            for heard in await players.play(where, line):
                write(_as_json(heard) if as_json else _as_text(heard))


def _as_text(heard: Heard) -> str:
    """When and where in a line's beginning, then what was said, its further lines set in."""
    note, place = heard.note, _place(heard.room_id) + (", thread" if heard.note.thread else "")
    said = {"reaction": note.key, "pin": "(pinned)"}.get(note.style, note.text)
    said += f"\n[{note.attachment.name}]" if note.attachment else ""
    return f"{heard.at:%a %d %b %H:%M}, {place}: {said}".replace("\n", "\n    ")


def _as_json(heard: Heard) -> str:
    note = heard.note
    told = {
        "time": heard.at.isoformat(),
        "room": _place(heard.room_id),
        "thread": note.thread,
        "style": note.style,
        "text": note.key or note.text,
        "attachment": note.attachment.name if note.attachment else None,
        "figures": note.figures,
    }
    return json.dumps(told, ensure_ascii=False)


def _place(room_id: str) -> str:
    """The room as a script calls it."""
    name, _, _ = room_id.removeprefix("!").partition(":")
    return name.replace("@", " @")
