"""Drawings rendered in a process of their own, so that the bot's never loads what it takes.

Run as a program, this module is that process: a drawing in and a picture or a page out, as JSON, a line each.
"""

import json
import sys
from base64 import b64encode
from importlib.resources import as_file, files
from io import BytesIO

from bot.worker import answer_all

PNG, PDF = "image/png", "application/pdf"
THUMBNAIL_PX = 300
A4_MM = (210.0, 297.0)
PAPER_PX = 2480
"""The width of A4 at 300 dots an inch."""


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
    page.image(BytesIO(render_png(svg, PAPER_PX)), x=0, y=0, w=A4_MM[0], h=A4_MM[1], alt_text=alt)
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


def _text(content: bytes) -> str:
    return b64encode(content).decode()


if __name__ == "__main__":
    answer_all(sys.stdin, sys.stdout, answer)
