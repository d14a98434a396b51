"""The pen: lines of words, circles and strokes on one sheet of SVG, and its rendering in the fonts beside it."""

import textwrap
from dataclasses import dataclass, field
from html import escape
from importlib.resources import as_file, files

WIDTH_PX = 390
MARGIN_PX = 16
INK, SOFT, PAPER, CHINA = "#1c2b33", "#61707a", "#f7f4ec", "#ffffff"
"""Dark on light whatever the client's theme; nothing is told by colour alone."""

_WIDEST_LETTER_EM = 0.56
"""A line breaks as if its letters were this wide on average, so that no line runs off the sheet (the project's own)."""


@dataclass
class Sheet:
    """One picture being drawn from the top down; ``below_px`` is where the next line of words goes."""

    below_px: float = MARGIN_PX
    _parts: list[str] = field(default_factory=list)

    def circle(self, x: float, y: float, radius: float, *, fill: str = "none", stroke: str = INK) -> None:
        """A circle about a point."""
        self._parts.append(f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:.1f}" fill="{fill}" stroke="{stroke}"/>')

    def stroke(self, points: list[tuple[float, float]]) -> None:
        """A broad stroke through the points."""
        through = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
        self._parts.append(f'<polyline points="{through}" fill="none" stroke="{SOFT}" stroke-width="5"/>')

    def words_at(self, x: float, y: float, words: str, size: float, *, ink: str = INK) -> None:
        """A few words in the middle of a point."""
        self._parts.append(
            f'<text x="{x:.1f}" y="{y + 0.36 * size:.1f}" font-size="{size}" font-weight="bold" fill="{ink}"'
            f' text-anchor="middle">{escape(words)}</text>'
        )

    def paragraph(self, words: str, size: float = 15, *, bold: bool = False) -> None:
        """Words broken into lines over the width of the sheet."""
        letters = int((WIDTH_PX - 2 * MARGIN_PX) / (size * _WIDEST_LETTER_EM))
        weight = "bold" if bold else "normal"
        for line in textwrap.wrap(words, letters):
            self.below_px += 1.3 * size
            self._parts.append(
                f'<text x="{MARGIN_PX}" y="{self.below_px:.1f}" font-size="{size}" font-weight="{weight}"'
                f' fill="{INK}">{escape(line)}</text>'
            )
        self.below_px += 0.35 * size

    def svg(self) -> str:
        """The sheet as SVG, on its own paper."""
        high = self.below_px + MARGIN_PX
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH_PX}" height="{high:.0f}" stroke-width="1.5"'
            f' font-family="Noto Sans, Noto Sans Arabic, Noto Sans Bengali">'
            f'<rect width="100%" height="100%" fill="{PAPER}"/>{"".join(self._parts)}</svg>'
        )


def png(svg: str, zoom: float = 2.0) -> bytes:
    """The sheet as PNG, in the fonts that come along alone; slow, so it is called off the event loop."""
    import resvg_py  # noqa: PLC0415 -- loaded when the first picture is drawn, not when the bot starts

    with as_file(files("bot.replies.pictures") / "fonts") as fonts:
        # where a script is not in the first family the first font with it is taken, so the regular ones come first
        faces = [str(font) for weight in ("Regular", "Bold") for font in sorted(fonts.glob(f"*-{weight}.ttf"))]
        return bytes(resvg_py.svg_to_bytes(svg_string=svg, zoom=zoom, skip_system_fonts=True, font_files=faces))
