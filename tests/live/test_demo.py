"""The demo as somebody would run it: read to the end, and in a terminal typed into."""

import asyncio
import os
import pty
import subprocess
import sys
import time
from pathlib import Path

import pytest

pytestmark = pytest.mark.live

COMMAND = [sys.executable, "-m", "bot", "demo"]

MOMENTS = (
    "Platepace  comes in, invited by the chef",
    "Results are for practice, never for pay, rota, promotion or discipline.",
    "Set. Monday 15:00 (Europe/London): drill 6, Rope coil. Next: Monday 23",
    "The chef sets drills. Send yours as an idea?",
    "15:00  Platepace  Rope coil (drill 6), 8 plates, one row.",
    "7 touches a plate, 56 in the run. Standard 2:44.",
    "Local food-safety, employment and safety rules, and your chef, come first.",
    "Counted in, Noor.",
    "First mark for Noor on Rope coil: 3:52.",
    "Is that 3 min 40 s or 3.4 minutes? Send `3:40` or `3:24`.",
    "Net 4:33 (one redo cost 0:53). 4.87 s a touch.",
    "Drill 6 has 8 plates. If you rebuilt one: `3:31 8/8 rebuilt 1`.",
    "Five clean plates kept. No time this run; try for six.",
    "0:35 is under a third of standard time. Is it right? `yes`, or",
    "New best for Noor on Rope coil: 3:35, by 17 s.",
    "Net 4:16 (one redo cost 0:50). 4.58 s a touch. (corrected)",
    "Corrected: Noor's best on Rope coil is 3:35.",
    "That changes the work by +17.0 %, so it is a new drill (12), not 6.",
    "Fast: 1 Noor 3:28 (3 tries); 2 Kwabena 3:31 (1 try)",
    "3 of 8 first runs. Too early to call.",
    "Sunday night's kitchen",
    "09:00  Platepace  Rope coil: the week is closed.",
)


def test_the_week_is_played_to_its_end_without_a_terminal() -> None:
    """It exits with 0; its moments come in order, the post and the close once, and nothing of the talk is answered."""
    ended = subprocess.run(COMMAND, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False, timeout=120)
    assert ended.returncode == 0, ended.stderr
    assert ended.stderr == ""
    places = [ended.stdout.find(moment) for moment in MOMENTS]
    assert -1 not in places, MOMENTS[places.index(-1)]
    assert places == sorted(places)
    assert ended.stdout.count("Rope coil (drill 6), 8 plates, one row.") == 1
    assert ended.stdout.count("the week is closed") == 1
    after_talk = ended.stdout.partition("86 the trout\n")[2]
    assert after_talk.startswith("\nWednesday")


async def test_in_a_terminal_it_stays_and_takes_lines_as_noor() -> None:
    """A run typed at the end of the week is answered; the end of input ends it with 0 and nothing is left running."""
    ours, theirs = pty.openpty()
    process = await asyncio.create_subprocess_exec(*COMMAND, stdin=theirs, stdout=theirs, stderr=theirs)
    os.close(theirs)
    read = ""

    def until(words: str) -> None:
        nonlocal read
        deadline = time.monotonic() + 90
        while words not in read:
            assert time.monotonic() < deadline, read[-2000:]
            read += os.read(ours, 65_536).decode(errors="replace")

    await asyncio.to_thread(until, "Ctrl-D ends the demo")
    os.write(ours, b"6 3:05 8/8\n")
    await asyncio.to_thread(until, "Heard. 3:05, 8 of 8. 3.30 s a touch, 1.69 levelled.")
    os.write(ours, b"> best\n")
    await asyncio.to_thread(until, "(private, Noor) Platepace  Rope coil:")
    children = _children_of(process.pid)
    os.write(ours, b"\x04")
    assert await asyncio.wait_for(process.wait(), 30) == 0
    os.close(ours)
    assert children
    assert not any(map(_is_alive, children))


def _children_of(pid: int) -> list[int]:
    """The processes that this one has started."""
    listed = Path(f"/proc/{pid}/task/{pid}/children")
    return [int(child) for child in listed.read_text("utf-8").split()]


def _is_alive(pid: int) -> bool:
    """Whether there still is such a process."""
    return Path(f"/proc/{pid}").exists()
