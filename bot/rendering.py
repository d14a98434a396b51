"""Drawings rendered in a process of their own, so that the bot's never loads what it takes, and kept for a while.

Run as a program, this module is that process: a drawing in and a picture or a page out, as JSON, a line each.
"""

import json
import sys
from base64 import b64decode, b64encode
from collections import OrderedDict
from collections.abc import Sequence
from hashlib import sha256
from importlib.resources import as_file, files
from io import BytesIO

from bot.services.ports.attachments import Attachment, Rendered, RenderFailed
from bot.worker import Worker, WorkerFailed, answer_all, program

PATIENCE_S, IDLE_S = 30.0, 60.0
KEPT = 8
"""Pictures of a tenth of a megabyte: a kitchen asks for the same few again and again."""

PNG, PDF = "image/png", "application/pdf"
THUMBNAIL_PX = 300
A4_MM = (210.0, 297.0)
PAPER_PX = 2480
"""The width of A4 at 300 dots an inch."""


class RenderingProcess:
    """A worker started when a drawing is to be rendered, and ended when none was for a minute, or with the bot."""

    def __init__(
        self, command: Sequence[str] = program("bot.rendering"), patience_s: float = PATIENCE_S, idle_s: float = IDLE_S
    ) -> None:
        self._worker = Worker(command, patience_s, idle_s=idle_s)
        self._kept: OrderedDict[str, Rendered] = OrderedDict()

    async def render(self, attachment: Attachment, alt: str) -> Rendered:
        """The picture or page, the same one again from what is kept; of other files their own text.

        A RenderFailed where the drawing is no drawing, or the worker ended, took too long or could not be started.
        """
        if attachment.media not in (PNG, PDF):
            return Rendered(attachment.source.encode())
        question = _question(attachment, alt)
        key = sha256(question.encode()).hexdigest()
        if key not in self._kept:
            self._kept[key] = _rendered_in(await self._ask(question), attachment)
        self._kept.move_to_end(key)
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return self._kept[key]

    async def aclose(self) -> None:
        """End the worker, at once and whatever it does."""
        await self._worker.aclose()

    async def _ask(self, question: str) -> str:
        try:
            return await self._worker.ask(question)
        except WorkerFailed as fault:
            raise RenderFailed(str(fault)) from fault


def render_png(svg: str, width_px: int) -> bytes:
    """The drawing as PNG so many pixels wide, set in the fonts that come along alone."""
    import resvg_py  # noqa: PLC0415 - loaded where a drawing is rendered

    with as_file(files("bot.replies.pictures") / "fonts") as fonts:
        faces = [str(font) for font in sorted(fonts.glob("*.ttf"))]
        return bytes(resvg_py.svg_to_bytes(svg_string=svg, width=width_px, skip_system_fonts=True, font_files=faces))


def render_pdf(svg: str, alt: str) -> bytes:
    """An A4 page with the drawing on all of it, at 300 dots an inch: what lays pages out shapes not every script."""
    from fpdf import FPDF  # noqa: PLC0415 - as above

    page = FPDF(format="A4")
    page.set_auto_page_break(False)
    page.add_page()
    width_mm, height_mm = A4_MM
    picture = BytesIO(render_png(svg, PAPER_PX))
    page.image(picture, x=0, y=0, w=width_mm, h=height_mm, keep_aspect_ratio=True, alt_text=alt)
    return bytes(page.output())


def answer(question: str) -> str:
    """The picture or page that is asked for, and of a picture a thumbnail; or what is wrong with the drawing."""
    asked = json.loads(question)
    try:
        if asked["media"] == PDF:
            return json.dumps({"content": _text(render_pdf(asked["svg"], asked["alt"]))})
        content, thumbnail = (render_png(asked["svg"], wide) for wide in (asked["width_px"], THUMBNAIL_PX))
    except ValueError as problem:
        return json.dumps({"problem": str(problem)})
    return json.dumps({"content": _text(content), "thumbnail": _text(thumbnail)})


def _question(attachment: Attachment, alt: str) -> str:
    """What a worker is asked; the words go along where the file itself has them."""
    asked = {"media": attachment.media, "svg": attachment.source, "width_px": attachment.width_px}
    return json.dumps({**asked, "alt": alt if attachment.media == PDF else ""})


def _rendered_in(line: str, attachment: Attachment) -> Rendered:
    answered = json.loads(line)
    if "problem" in answered:
        raise RenderFailed(answered["problem"])
    content = b64decode(answered["content"])
    if "thumbnail" not in answered:
        return Rendered(content)
    high = round(THUMBNAIL_PX * attachment.height_px / attachment.width_px)
    return Rendered(content, b64decode(answered["thumbnail"]), (THUMBNAIL_PX, high))


def _text(content: bytes) -> str:
    return b64encode(content).decode()


if __name__ == "__main__":
    answer_all(sys.stdin, sys.stdout, answer)
