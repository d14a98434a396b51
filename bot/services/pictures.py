"""Drawings as what a message carries: pictures for the phone, pages for paper."""

from bot.replies.pictures.drawing import Drawing
from bot.services.ports.attachments import Attachment

PIXELS_EACH = 2
"""Of the picture for each of the drawing, so that it is sharp on a phone."""


def picture(name: str, drawing: Drawing) -> Attachment:
    """A drawing as a picture under this name."""
    return Attachment(
        name=f"{name}.png",
        media="image/png",
        source=drawing.svg,
        width_px=PIXELS_EACH * drawing.width,
        height_px=PIXELS_EACH * drawing.height,
    )


def page(name: str, drawing: Drawing) -> Attachment:
    """A drawing as a page to print under this name."""
    return Attachment(name=f"{name}.pdf", media="application/pdf", source=drawing.svg)
