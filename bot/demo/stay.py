"""After the week the room stays open: for any Matrix client, and for lines typed here as Noor."""

import asyncio
import sys
from contextlib import suppress

from bot.demo.people import CAST
from bot.demo.stage import Stage
from bot.errors import OperatorError
from bot.homeserver import Homeserver

_LOOK_EVERY_S = 0.5


async def stay(stage: Stage, server: Homeserver, password: str) -> None:
    """Take lines until the end of input; meanwhile print what others do in their own clients."""
    sys.stdout.write(_GREETING.format(url=server.url, names=", ".join(CAST), password=password))
    watching = asyncio.create_task(_watch(stage))
    try:
        lines = await _lines_typed()
        while line := await lines.readline():
            await _say(stage, line.decode(errors="replace").strip())
    finally:
        watching.cancel()
        with suppress(asyncio.CancelledError):
            await watching


async def _lines_typed() -> asyncio.StreamReader:
    """What is typed, without a thread that would have to be waited for."""
    lines = asyncio.StreamReader()
    loop = asyncio.get_running_loop()
    await loop.connect_read_pipe(lambda: asyncio.StreamReaderProtocol(lines), sys.stdin)
    return lines


async def _say(stage: Stage, line: str) -> None:
    """A line as Noor: one that begins with a digit goes to the drill's thread, one with > to her private room."""
    if not line:
        return
    try:
        if line.startswith(">"):
            await stage.say_privately("Noor", line[1:].strip())
        else:
            await stage.say("Noor", line, in_thread=line[0].isdecimal())
    except OperatorError as fault:
        sys.stdout.write(f"{fault}\n")


async def _watch(stage: Stage) -> None:
    while True:
        await asyncio.sleep(_LOOK_EVERY_S)
        await stage.show()


_GREETING = """
The week is over; the room stays open. You are Noor: type `3:20 7/8` or `!board`, or `> trend` to say it in private.
Any Matrix client on this machine can join in at {url} as one of
{names} (in small letters), password {password}
Ctrl-D ends the demo and everything it started.

"""
