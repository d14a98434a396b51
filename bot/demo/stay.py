"""After the week the room stays open: for any Matrix client, and for lines typed here as Noor."""

import asyncio
import os
import sys
from collections.abc import AsyncIterator
from contextlib import suppress

from bot.demo.people import CAST
from bot.demo.stage import Stage
from bot.homeserver import Homeserver

_LOOK_EVERY_S = 0.5
_LONGEST_LINE_BYTES = 4096
"""A terminal hands over no more at a time."""


async def stay(stage: Stage, server: Homeserver, password: str) -> None:
    """Take lines until the end of input; meanwhile print what others do in their own clients."""
    sys.stdout.write(_GREETING.format(url=server.url, names=", ".join(CAST), password=password))
    async with asyncio.TaskGroup() as group:
        watching = group.create_task(_watch(stage))
        async for line in _lines_typed():
            await _say(stage, line.strip())
        watching.cancel()


async def _lines_typed() -> AsyncIterator[str]:
    """Each line when it is typed, without a thread that would have to be waited for.

    The terminal is read when it has something and left as it is, for output and shell share it.
    """
    loop, terminal = asyncio.get_running_loop(), sys.stdin.fileno()
    lines: asyncio.Queue[bytes] = asyncio.Queue()

    def take() -> None:
        line = b""
        with suppress(OSError):  # the terminal is gone, which ends the input too
            line = os.read(terminal, _LONGEST_LINE_BYTES)
        if not line:
            loop.remove_reader(terminal)
        lines.put_nowait(line)

    loop.add_reader(terminal, take)
    try:
        while line := await lines.get():
            yield line.decode(errors="replace")
    finally:
        loop.remove_reader(terminal)


async def _say(stage: Stage, line: str) -> None:
    """A line as Noor: one that begins with a digit goes to the drill's thread, one with > to her private room."""
    if line.startswith(">"):
        await stage.say_privately("Noor", line[1:].strip())
    elif line:
        await stage.say("Noor", line, in_thread=line[0].isdecimal())


async def _watch(stage: Stage) -> None:
    while True:
        await asyncio.sleep(_LOOK_EVERY_S)
        await stage.show()


_GREETING = """
The room stays open, and you are Noor: type `3:05 8/8` or `!board`, or `> trend` to say it in private.
Any Matrix client on this machine can come in at {url} as one of
{names} (in small letters), password {password}
Ctrl-D ends the demo and everything that it started.

"""
