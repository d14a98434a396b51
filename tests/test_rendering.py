"""Drawings are rendered beside the bot: in a process of their own, which may die or hang, and ends when idle."""

import asyncio
import os
import signal
import struct
import subprocess
import sys
import time
from collections.abc import AsyncIterator
from io import BytesIO

import pytest
from PIL import Image

from bot.rendering import THUMBNAIL_PX, RenderingProcess
from bot.services.ports.attachments import Attachment, RenderFailed

RED = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20" fill="#f00"/></svg>'
PICTURE = Attachment(name="red.png", media="image/png", source=RED, width_px=80, height_px=40)
PAGE = Attachment(name="red.pdf", media="application/pdf", source=RED)
ANSWER = "print(json.dumps({'content': base64.b64encode(str(told).encode()).decode()}), flush=True)"
PIDS = ("-c", f"import base64, json, os\ntold = os.getpid()\nwhile input(): {ANSWER}")
"""A worker that answers with its own process id."""
COUNTS = ("-c", f"import base64, json\ntold = 0\nwhile input():\n  told += 1\n  {ANSWER}")
"""A worker that counts what it is asked."""


@pytest.fixture
async def rendering() -> AsyncIterator[RenderingProcess]:
    """The bot's own way to render, ended after the test."""
    process = RenderingProcess()
    yield process
    await process.aclose()


async def test_a_picture_is_as_large_as_asked(rendering: RenderingProcess) -> None:
    """The PNG's own header says so (PNG specification, 11.2.2, IHDR), its thumbnail's too, and it is red."""
    rendered = await rendering.render(PICTURE, "red")
    assert rendered.content[:8] == b"\x89PNG\r\n\x1a\n"
    assert struct.unpack(">II", rendered.content[16:24]) == (80, 40)
    assert rendered.thumbnail is not None
    assert struct.unpack(">II", rendered.thumbnail[16:24]) == rendered.thumbnail_px == (THUMBNAIL_PX, 150)
    assert Image.open(BytesIO(rendered.content)).convert("RGB").getpixel((40, 20)) == (255, 0, 0)


async def test_a_page_is_a4(rendering: RenderingProcess) -> None:
    """The PDF has one page of 595.28 by 841.89 points (ISO 216) and the words for who cannot see it."""
    rendered = await rendering.render(PAGE, "a red page")
    assert rendered.content.startswith(b"%PDF-")
    assert rendered.content.count(b"/Type /Page\n") == 1
    assert b"/MediaBox [0 0 595.28 841.89]" in rendered.content
    assert rendered.thumbnail is None


async def test_data_is_its_own_text(rendering: RenderingProcess) -> None:
    """A file of data is given back as it is."""
    file = Attachment(name="a.csv", media="text/csv", source="clock;good\n3:02;8\n")
    assert (await rendering.render(file, "")).content == b"clock;good\n3:02;8\n"


async def test_what_is_no_drawing_is_told(rendering: RenderingProcess) -> None:
    """A source that is no SVG is a fault, and the worker still answers the next one."""
    with pytest.raises(RenderFailed):
        await rendering.render(Attachment(name="a", media="image/png", source="<svg", width_px=8, height_px=8), "")
    assert (await rendering.render(PICTURE, "red")).content


async def test_the_same_drawing_is_rendered_once() -> None:
    """The worker is asked once for a drawing however often it is sent, and again for another one."""
    rendering = RenderingProcess((sys.executable, *COUNTS))
    told = [(await rendering.render(file, "red")).content for file in (PAGE, PAGE, PICTURE, PAGE)]
    assert told == [b"1", b"1", b"2", b"1"]
    await rendering.aclose()


async def test_the_worker_ends_when_idle() -> None:
    """Nothing to render for so long, and its process is gone; the next drawing starts another."""
    rendering = RenderingProcess((sys.executable, *PIDS), idle_s=0.05)
    first = int((await rendering.render(PAGE, "red")).content)
    await asyncio.to_thread(_wait_until_gone, first)
    assert int((await rendering.render(PICTURE, "red")).content) != first
    await rendering.aclose()


async def test_a_worker_that_was_killed_is_started_again() -> None:
    """What ends the worker between two drawings costs none of them."""
    rendering = RenderingProcess((sys.executable, *PIDS))
    first = int((await rendering.render(PAGE, "red")).content)
    os.kill(first, signal.SIGKILL)
    await asyncio.to_thread(_wait_until_gone, first)
    await asyncio.sleep(0.1)  # until the loop has been told of it
    assert int((await rendering.render(PICTURE, "red")).content) != first
    await rendering.aclose()


async def test_closing_ends_the_worker() -> None:
    """With the bot its worker ends."""
    rendering = RenderingProcess((sys.executable, *PIDS))
    worker = int((await rendering.render(PAGE, "red")).content)
    await rendering.aclose()
    with pytest.raises(ProcessLookupError):
        os.kill(worker, 0)


def _wait_until_gone(pid: int) -> None:
    for _ in range(500):
        try:
            os.kill(pid, 0)
        except ProcessLookupError:
            return
        time.sleep(0.02)
    raise AssertionError(f"process {pid} is still there")


@pytest.mark.parametrize(
    ("program", "patience_s"), [("raise SystemExit(1)", 30.0), ("input(); input()", 0.5)], ids=["ends", "hangs"]
)
async def test_a_worker_that_fails(program: str, patience_s: float) -> None:
    """It is told as a fault of the rendering, each time anew."""
    rendering = RenderingProcess((sys.executable, "-c", program), patience_s)
    for _ in range(2):
        with pytest.raises(RenderFailed):
            await rendering.render(PICTURE, "red")


def test_the_bots_own_process_loads_nothing_that_renders() -> None:
    """In a fresh interpreter, after everything that a running bot imports."""
    modules = "('resvg_py', 'fpdf', 'PIL', 'fontTools')"
    program = f"import sys, bot.app, bot.rehearsal, bot.rendering; print([m for m in {modules} if m in sys.modules])"
    ended = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert ended.stdout == "[]\n"
