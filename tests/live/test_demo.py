"""The demo as somebody would run it: read to the end, typed into in a terminal, broken off; it never leaves a thing."""

import asyncio
import os
import pty
import signal
import subprocess
import sys
import time
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager, suppress
from pathlib import Path

import pytest

pytestmark = pytest.mark.live

COMMAND = [sys.executable, "-m", "bot", "demo"]
PATIENCE_S = 90.0

MOMENTS = (
    "Ime        opens the room “Tern & Lantern, plating”",
    "Ime        invites Platepace",
    "Results are for practice, never for pay, rota, promotion or discipline.",
    "Times are read and shown in Europe/London.",
    "Set. Monday 15:00 (Europe/London): drill 6, Rope coil. Next: Monday 23",
    "The chef sets drills. Send yours as an idea?",
    "- 1 x 8: 236 x 30 cm, 56 cm short.",
    "- noodle: 211 g (24 g a plate)",
    "15:00  Platepace  Rope coil (drill 6), 8 plates, one row.",
    "7 touches a plate, 56 in the run. Standard 2:44.",
    "Local food-safety, employment and safety rules, and your chef, come first.",
    "(pinned)",
    "Held, not kept yet.",
    "Counted in, Noor.",
    "Bastian    raises a hand ✋ on Noor's “3:24 8/8”",
    "First mark for Noor on Rope coil: 3:24.",
    "Is that 3 min 20 s or 3.2 minutes? Send `3:20` or `3:12`.",
    "Lio        changes “3:20 8/8” to “3:20 7/8 fell”",
    "Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)",
    "(in private with Lio)",
    "249.1 s / 56 touches = 4.45 s a touch.",
    "Drill 6 has 8 plates. If you rebuilt one: `3:46 8/8 rebuilt 1`.",
    "Five clean plates kept. No time this run; try for six.",
    "First mark for Petra on Rope coil: 4:40.",
    "(in private with Noor)",
    "0:48 is under a third of standard time. Is it right? `yes`, or the time",
    "New best for Noor on Rope coil: 3:10, by 14 s.",
    "Same as your 14:49 run. A second run? `again`. Otherwise do nothing.",
    "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled.",
    "New best by 8 s. Your runs usually differ by about 11 s: two more near",
    "Bastian    takes back the ✋ on Kwabena's “3:18 8/8”",
    "Corrected: Kwabena's best on Rope coil is 3:46.",
    "Kwabena    takes back “3:18 8/8”",
    "New best for Kwabena on Rope coil: 3:37, by 9 s.",
    "That changes the work by +17.0 %, so it is a new drill (12), not 6.",
    "Short run, 6 of 6 built. 3.10 s a touch. Kept for your trend.",
    "Fast: 1 Noor 3:02 (3 tries); 2 Lio 3:16 (2 tries)\n",
    "Clean: 1 Noor 24/24; 1 Lio 15/16, too close to call\n",
    "In 15:00: two hands, 10:07. Plating only: add your own heat, carry and check.",
    "Rope coil: 3:02, Thursday 26 November, 8 of 8.",
    "3 of 8 first runs. Too early to call.",
    "Sunday night's kitchen",
    "09:00  Platepace  Rope coil: the week is closed.",
    "15:00  Platepace  Rope coil (drill 12), 8 plates, one row.",
)


def test_the_week_is_played_to_its_end_without_a_terminal(tmp_path: Path, record_property: Callable[..., None]) -> None:
    """It exits with 0; its moments come in order, posts and close once each, and ordinary talk is not answered."""
    began = time.monotonic()
    ended = subprocess.run(
        COMMAND,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
        timeout=PATIENCE_S,
        env=_environment(tmp_path),
    )
    record_property("seconds", time.monotonic() - began)
    assert ended.returncode == 0, ended.stderr
    assert ended.stderr == ""
    assert _first_missing(ended.stdout) is None
    for once in ("Rope coil (drill 6), 8 plates, one", "Rope coil (drill 12), 8 plates, one", "the week is closed"):
        assert ended.stdout.count(once) == 1
    for talk in ("when I lifted the plates", "table 12?", "86 the trout", "the timer of the other row"):
        after = ended.stdout.partition(f"{talk}\n")[2]
        assert after
        assert "Platepace" not in after.split("\n", 1)[0]
    assert max(map(len, ended.stdout.splitlines())) <= 96
    assert list(tmp_path.iterdir()) == []


def _first_missing(transcript: str) -> str | None:
    """The first moment that does not come after those before it."""
    place = 0
    for moment in MOMENTS:
        place = transcript.find(moment, place)
        if place < 0:
            return moment
    return None


async def test_in_a_terminal_it_stays_and_takes_lines_as_noor(tmp_path: Path) -> None:
    """A run typed into the new week is answered, in private too; the end of input ends it with 0, nothing left."""
    async with _in_a_terminal(tmp_path) as demo:
        await demo.until("Ctrl-D ends the demo")
        demo.type(b"3:05 8/8\n")
        await demo.until("Heard. 3:05, 8 of 8. 2.89 s a touch")
        demo.type(b"> best\n")
        await demo.until("Noor       best\r\n")
        await demo.until("Rope coil: first mark 3:05, Monday 30 November.")
        demo.type(b"\x04")
        assert await demo.ended() == 0


@pytest.mark.parametrize("how", [signal.SIGINT, signal.SIGTERM, signal.SIGHUP])
async def test_broken_off_it_ends_in_good_order(tmp_path: Path, how: signal.Signals) -> None:
    """In the middle of the week, asked twice by somebody impatient: no process and no file stays behind.

    The second signal may find everything cleared away and end the process itself.
    """
    async with _in_a_terminal(tmp_path) as demo:
        await demo.until("First mark for Noor")
        demo.process.send_signal(how)
        await asyncio.sleep(0.03)
        with suppress(ProcessLookupError):
            demo.process.send_signal(how)
        assert await demo.ended() in (0, -how)


def test_a_reader_who_has_seen_enough_ends_it_with_one_sentence(tmp_path: Path) -> None:
    """As with ``make demo | head``."""
    with subprocess.Popen(
        COMMAND, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=_environment(tmp_path)
    ) as demo:
        assert demo.stdout
        assert demo.stderr
        demo.stdout.readline()
        demo.stdout.close()
        assert demo.stderr.read() == b"platepace: the demo broke off: nobody reads it any more\n"
    assert demo.returncode == 74
    assert list(tmp_path.iterdir()) == []


async def test_a_server_that_dies_breaks_it_off_with_one_sentence(tmp_path: Path) -> None:
    """And with the code of a homeserver that cannot be used."""
    async with _in_a_terminal(tmp_path) as demo:
        await demo.until("First mark for Noor")
        for child in _children_of(demo.process.pid):
            os.kill(child, signal.SIGKILL)
        await demo.until("platepace: the demo broke off: its homeserver does not answer any more\r\n")
        assert await demo.ended() == 69
        assert "Traceback" not in demo.read


class _Terminal:
    """The demo at a terminal of its own: ``read`` is what it has shown so far."""

    def __init__(self, process: asyncio.subprocess.Process, ours: int) -> None:
        self.process = process
        self.read = ""
        self._ours = ours
        self._children: set[int] = set()

    def type(self, keys: bytes) -> None:
        """Press these keys."""
        os.write(self._ours, keys)

    async def until(self, words: str) -> None:
        """Read on until it shows these words."""
        await asyncio.to_thread(self._read_until, words)
        self._children |= set(_children_of(self.process.pid))

    async def ended(self) -> int:
        """Its exit code; whatever it had started is gone too."""
        code = await asyncio.wait_for(self.process.wait(), PATIENCE_S)
        assert self._children
        assert not any(map(_is_alive, self._children))
        return code

    def _read_until(self, words: str) -> None:
        deadline = time.monotonic() + PATIENCE_S
        while words not in self.read:
            assert time.monotonic() < deadline, self.read[-2000:]
            self.read += os.read(self._ours, 65_536).decode(errors="replace")


@asynccontextmanager
async def _in_a_terminal(directory: Path) -> AsyncIterator[_Terminal]:
    """The demo, started; at the end its directory for temporary files has to be empty."""
    ours, theirs = pty.openpty()
    process = await asyncio.create_subprocess_exec(
        *COMMAND, stdin=theirs, stdout=theirs, stderr=theirs, env=_environment(directory)
    )
    os.close(theirs)
    try:
        yield _Terminal(process, ours)
        assert os.listdir(directory) == []
    finally:
        if process.returncode is None:
            process.kill()
            await process.wait()
        os.close(ours)


def _environment(directory: Path) -> dict[str, str]:
    """This one, with a place of its own for temporary files."""
    return dict(os.environ) | {"TMPDIR": str(directory)}


def _children_of(pid: int) -> list[int]:
    """The processes that this one has started."""
    listed = Path(f"/proc/{pid}/task/{pid}/children")
    return [int(child) for child in listed.read_text("utf-8").split()]


def _is_alive(pid: int) -> bool:
    """Whether there still is such a process."""
    return Path(f"/proc/{pid}").exists()
