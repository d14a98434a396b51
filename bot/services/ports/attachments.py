"""Files that messages carry: kept by what they are made from, rendered and uploaded when they are sent."""

from dataclasses import dataclass
from typing import Literal, Protocol

Media = Literal["image/png", "application/pdf", "application/json", "text/csv"]


@dataclass(frozen=True, kw_only=True)
class Attachment:
    """A file under a name; ``source`` is SVG for a picture or a page, and the file's own text for data.

    A picture is rendered ``width_px`` wide and ``height_px`` high. The text of its message says the same as it.
    """

    name: str
    media: Media
    source: str
    width_px: int = 0
    height_px: int = 0


@dataclass(frozen=True)
class Rendered:
    """A file's bytes, and of a picture those of a small one, ``thumbnail_px`` wide and high, to be shown first."""

    content: bytes
    thumbnail: bytes | None = None
    thumbnail_px: tuple[int, int] = (0, 0)


class RenderFailed(Exception):  # noqa: N818 - it says what happened, as SendRefused does
    """The file cannot be made of its source, or what makes it does not answer."""


class Renderer(Protocol):
    """Makes files of their sources, away from the loop that the rooms wait for."""

    async def render(self, attachment: Attachment, alt: str) -> Rendered:
        """The file, ``alt`` saying the same in words; a RenderFailed where there is none."""
