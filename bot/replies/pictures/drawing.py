"""The pen: a sheet of light paper with a margin, and the few strokes that every picture is made of."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from bot.replies.phrases import Phrases, is_right_to_left
from bot.replies.pictures.lettering import broken, set_line

PHONE_PX = 390
"""As wide as a narrow phone; rendered at twice that."""

MARGIN_PX = 16
LEADING = 1.32
INK, SOFT, FAINT, PAPER, CHINA = "#1d2b33", "#55656f", "#ccd3d6", "#fbf8f1", "#ffffff"
BAND, MARK = "#bcd7ea", "#0b5a8f"
"""Dark on light whatever the client's theme, with a margin of its own; nothing is told by colour alone."""

Point = tuple[float, float]


@dataclass(frozen=True)
class Drawing:
    """A picture as SVG text and how large it is drawn, in pixels."""

    svg: str
    width: int
    height: int


@dataclass
class Sheet:
    """One picture being drawn from the top down; ``below`` is where what comes next begins.

    In a right-to-left language lines begin on the right, and ``across`` turns what is laid out from the other side.
    """

    language: str
    width: int = PHONE_PX
    margin: float = MARGIN_PX
    below: float = MARGIN_PX
    ground: str = PAPER
    _parts: list[str] = field(default_factory=list)

    @property
    def right_to_left(self) -> bool:
        """Whether the language is written from right to left."""
        return is_right_to_left(self.language)

    @property
    def room(self) -> float:
        """The width between the margins."""
        return self.width - 2 * self.margin

    def across(self, x: float) -> float:
        """A place so far from the side on which a line begins."""
        return self.width - x if self.right_to_left else x

    def circle(self, at: Point, radius: float, *, fill: str = "none", stroke: str = INK, broad: float = 1.2) -> None:
        """A circle about a point."""
        self._parts.append(f'<circle cx="{at[0]:.1f}" cy="{at[1]:.1f}" r="{radius:.1f}"{_ink(fill, stroke, broad)}/>')

    def rectangle(
        self, at: Point, size: Point, *, fill: str = "none", stroke: str = INK, broad: float = 1.2, corner: float = 0
    ) -> None:
        """A rectangle by its upper left corner."""
        self._parts.append(
            f'<rect x="{at[0]:.1f}" y="{at[1]:.1f}" width="{size[0]:.1f}" height="{size[1]:.1f}" rx="{corner}"'
            f"{_ink(fill, stroke, broad)}/>"
        )

    def line(self, points: Sequence[Point], *, stroke: str = INK, broad: float = 1.2, dashes: str = "") -> None:
        """A line through the points."""
        through = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
        dashed = f' stroke-dasharray="{dashes}"' if dashes else ""
        self._parts.append(f'<polyline points="{through}"{_ink("none", stroke, broad)}{dashed}/>')

    def path(self, shape: str, *, fill: str = "none", stroke: str = INK, broad: float = 1.2, turn: str = "") -> None:
        """A shape of SVG path commands, moved and turned where ``turn`` says so."""
        moved = f' transform="{turn}"' if turn else ""
        self._parts.append(f'<path d="{shape}"{_ink(fill, stroke, broad)}{moved}/>')

    def words(
        self, at: Point, words: str, size: float, *, bold: bool = False, ink: str = INK, anchor: str = "middle"
    ) -> None:
        """One line of words on a base line; ``anchor`` is which end of them the point is (``start`` on the left)."""
        weight = ' font-weight="bold"' if bold else ""
        self._parts.append(
            f'<text x="{at[0]:.1f}" y="{at[1]:.1f}" font-size="{size}"{weight} fill="{ink}" text-anchor="{anchor}">'
            f"{set_line(words, right_to_left=self.right_to_left)}</text>"
        )

    def paragraph(
        self, words: str, size: float = 14, *, bold: bool = False, ink: str = INK, left: float = 0.0, room: float = 0.0
    ) -> None:
        """Words in lines from the side on which a line begins, ``left`` further in and no wider than ``room``."""
        begin, anchor = self.across(self.margin + left), "end" if self.right_to_left else "start"
        for line in broken(words, size, room or self.room - left, bold=bold):
            self.below += LEADING * size
            self.words((begin, self.below - 0.26 * size), line, size, bold=bold, ink=ink, anchor=anchor)

    def gap(self, px: float) -> None:
        """Leave some paper free."""
        self.below += px

    def finished(self, height: float | None = None) -> Drawing:
        """The picture, as high as what is on it."""
        high = round(height or self.below + self.margin)
        svg = (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{self.width}" height="{high}" font-family="Noto Sans"'
            f' stroke-linejoin="round" stroke-linecap="round"><rect width="100%" height="100%" fill="{self.ground}"/>'
            f"{''.join(self._parts)}</svg>"
        )
        return Drawing(svg, self.width, high)


def new_sheet(say: Phrases) -> Sheet:
    """A sheet for a phone in the language of the catalogue."""
    return Sheet(say.language)


def _ink(fill: str, stroke: str, broad: float) -> str:
    return f' fill="{fill}" stroke="{stroke}" stroke-width="{broad}"'
