"""How fast a scripted season is played, and whether its end costs more than its beginning."""

import json
import tempfile
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count, islice
from pathlib import Path
from statistics import median

from bot.rehearse import rehearse

LINES = 2_000
ROUNDS = 5
COOKS = 16
MONDAY = datetime(2026, 1, 5, 9, 0, tzinfo=UTC)


def measure() -> list[str]:
    """Lines a second over a season, and the last quarter's time over the first's: medians of the rounds."""
    lines = list(islice(season(), LINES))
    with tempfile.TemporaryDirectory() as directory:
        script = Path(directory) / "season.jsonl"
        script.write_text("\n".join(map(json.dumps, lines)), "utf-8")
        rounds = [_play(script, [line["time"] for line in lines]) for _ in range(ROUNDS)]
    rates = [LINES / (took[-1] - took[0]) for took in rounds]
    growths = [(took[4] - took[3]) / (took[1] - took[0]) for took in rounds]
    return [
        f"rehearse: {median(rates):.0f} lines/s on {LINES} lines (median of {ROUNDS})",
        f"rehearse: last quarter / first quarter {median(growths):.2f} ({min(growths):.2f} to {max(growths):.2f})",
    ]


def season() -> Iterator[dict[str, str]]:
    """A kitchen of sixteen that posts one drill every week, as lines of a script: every week has the same mix."""
    cooks = [f"cook{nth}" for nth in range(COOKS)]
    yield from _at(MONDAY, [("ime", "!zone Europe/London"), ("ime", "!post 6 mon 09:30")])
    yield from _at(MONDAY + timedelta(minutes=10), [(cook, "!join") for cook in cooks])
    for day in count():
        yield from _a_day(MONDAY + timedelta(days=day, hours=5), day, cooks)


def _a_day(begins: datetime, day: int, cooks: list[str]) -> Iterator[dict[str, str]]:
    """Two thirds of the cooks run; most are watched; one edits, one takes a run off, some ask, and there is talk."""
    moment = begins
    for nth, cook in enumerate(cooks):
        if (nth + day) % 3 == 0:
            continue
        moment += timedelta(minutes=3)
        run = f"{cook}-{day}"
        clock, good = 170 + (7 * nth + 11 * day) % 60, 8 - (nth + day) % 2
        line = f"{clock // 60}:{clock % 60:02d} {good}/8"
        yield {"time": moment.isoformat(), "sender": cook, "text": line, "thread": "drill", "id": run}
        if nth % 4:
            witness = cooks[(nth + 1) % len(cooks)]
            yield {"time": moment.isoformat(), "sender": witness, "react": run, "key": "\N{RAISED HAND}"}
        if nth == day % len(cooks):
            yield {"time": moment.isoformat(), "sender": cook, "edit": run, "text": f"{line} rim"}
            yield {"time": moment.isoformat(), "sender": cook, "text": "!trend"}
    asked = cooks[day % len(cooks)]
    yield from _at(moment, [("ime", "!board"), (asked, "!why"), (asked, "!best"), (asked, "table 12 is waiting")])


def _at(moment: datetime, said: list[tuple[str, str]]) -> Iterator[dict[str, str]]:
    return ({"time": moment.isoformat(), "sender": sender, "text": text} for sender, text in said)


def _play(script: Path, times: list[str]) -> list[float]:
    """Play it once; the clock at its first reply, which the start is not part of, and at the end of each quarter."""
    begins = [datetime.fromisoformat(times[quarter * len(times) // 4]) for quarter in range(4)]
    clocks: list[float] = []

    def hear(told: str) -> None:
        if len(clocks) < len(begins) and datetime.fromisoformat(json.loads(told)["time"]) >= begins[len(clocks)]:
            clocks.append(time.perf_counter())

    rehearse(script, as_json=True, write=hear)
    return [*clocks, time.perf_counter()]
