"""Everything held about a person, as JSON and as CSV."""

import csv
import io
import json
from collections.abc import Iterator
from datetime import date, datetime, time
from typing import Any

from bot.services.ports.attachments import Attachment
from bot.services.ports.messages import Figure, Outgoing
from bot.services.ports.repositories import Holdings
from bot.services.said import Said

PART_LETTERS = 12_000
"""Of four bytes each at most, which leaves room within the 65,536 bytes of a Matrix event."""

_FORMULA = ("=", "+", "-", "@")
"""What a table program would take a cell that begins so for."""


async def tell_records(said: Said, *, as_table: bool) -> None:
    """Send everything in private, as a file."""
    held = await _held(said)
    if held:
        file = (
            Attachment(name="records.csv", media="text/csv", source=as_csv(held))
            if as_table
            else Attachment(name="records.json", media="application/json", source=as_json(held))
        )
        await said.tell(said.phrases("records", counts=_counts(held)), _figures(held), file)


async def spell_records(said: Said) -> None:
    """Send everything in private, in messages that follow on one another and are one file when put together."""
    held = await _held(said)
    if held:
        parts = list(in_parts(as_json(held)))
        await said.tell(said.phrases("records-spelt", counts=_counts(held), parts=len(parts)), _figures(held))
        for part in parts:
            await said.speaker.say(Outgoing(to=said.user_id, style="text", text=part))


async def _held(said: Said) -> Holdings:
    held = await said.work.persons.held(said.user_id)
    if not held:
        await said.tell(said.phrases("records-none"))
    return held


def _counts(held: Holdings) -> str:
    return ", ".join(f"{name} {len(rows)}" for name, rows in held.items())


def _figures(held: Holdings) -> dict[str, Figure]:
    return {f"{name}.rows": len(rows) for name, rows in held.items()}


def as_json(held: Holdings) -> str:
    """The tables with their rows; moments in ISO 8601."""
    return json.dumps(held, default=_plain, ensure_ascii=False, indent=1)


def as_csv(held: Holdings) -> str:
    """A line a value: its table, the number of its row, its field, and itself."""
    text = io.StringIO()
    lines = csv.writer(text, lineterminator="\n")
    lines.writerow(("table", "row", "field", "value"))
    lines.writerows(_lines(held))
    return text.getvalue()


def in_parts(text: str) -> Iterator[str]:
    """The text cut at line ends, each part short enough for one message; a longer line is a part of its own."""
    part = ""
    for line in text.splitlines(keepends=True):
        if part and len(part) + len(line) > PART_LETTERS:
            yield part
            part = ""
        part += line
    yield part


def _lines(held: Holdings) -> Iterator[tuple[str, int, str, str]]:
    for name, rows in held.items():
        for number, row in enumerate(rows, 1):
            for field, value in row.items():
                yield name, number, field, _cell(value)


def _cell(value: Any) -> str:
    """The value as text; words that a table program would run as a formula are marked as words."""
    if isinstance(value, dict | list):
        return json.dumps(value, default=_plain, ensure_ascii=False)
    if isinstance(value, str):
        return f"'{value}" if value.startswith(_FORMULA) else value
    return "" if value is None else str(_plain(value))


def _plain(value: Any) -> Any:
    return value.isoformat() if isinstance(value, date | datetime | time) else value
