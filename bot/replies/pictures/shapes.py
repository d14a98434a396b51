"""What a touch of each technique looks like from above, in centimetres about its spot, as it is on a plate."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import atan2, degrees, hypot

from bot.domain.drill import Step
from bot.domain.techniques import StandIn
from bot.replies.pictures.drawing import CHINA, INK, SOFT, Point, Sheet

TINTS: Mapping[StandIn, str] = {
    "firm": "#9cc9e6",
    "soft": "#f2e2b0",
    "gel": "#cf86ad",
    "thin": "#eaa93a",
    "thick": "#b98d5e",
    "leaf": "#7cc3a2",
}
"""After Okabe and Ito's colours for all eyes, lightened; each step is numbered besides."""

_ROUND = "M{0} 0a{0} {0} 0 1 1 -{1} 0a{0} {0} 0 1 1 {1} 0Z"
_LEAF = "M0 -1.5C1.1 -.6 1.1 .6 0 1.5C-1.1 .6 -1.1 -.6 0 -1.5ZM0 -1.1V1.5"
_QUENELLE = "M-2.9 0C-1.6 -1.8 1.6 -1.8 2.9 0C1.6 1.8 -1.6 1.8 -2.9 0Z"
_THREE_FACES = f"{_QUENELLE}M-2.9 0C-1.2 -.55 1.2 -.55 2.9 0M-2.9 0C-1.2 .65 1.2 .65 2.9 0"
_TWIRL = "M2 0A2 2 0 1 1 -2 0A2 2 0 0 1 1.5 -.7A1.5 1.5 0 0 1 -1 .8A1.1 1.1 0 0 1 .6 -.7A.6 .6 0 0 1 .1 .4"
_POOL = "M-2.6 .2C-2.7 -1.6 -.9 -2.1 .4 -1.8C2.3 -1.9 2.9 .1 2.2 1.2C1.4 2.3 -2.3 2.2 -2.6 .2Z"
_MOUND = (
    "M-1.9 .3C-2 -1.5 -.4 -2.1 .8 -1.7C2.2 -1.2 2.2 1 1.2 1.7C.1 2.3 -1.8 1.8 -1.9 .3ZM-.9 .2C-.7 -.8 .3 -.9 .9 -.5"
)

_PIECES: Mapping[str, str] = {
    "set": _ROUND.format(2.25, 4.5),
    "place": "M-1.1 0C-1.1 -.9 1.1 -.9 1.1 0C1.1 .9 -1.1 .9 -1.1 0Z",
    "dot": _ROUND.format(0.62, 1.24),
    "bead": _ROUND.format(0.42, 0.84),
    "leaf": _LEAF,
    "mound": _MOUND,
    "sauce": _POOL,
    "twirl": _TWIRL,
    "quenelle": _QUENELLE,
    "two-spoon quenelle": _THREE_FACES,
    "lean": "M0 -2.6L2.3 1.9H-2.3ZM0 -2.6L.5 1.9",
    "shingle": _ROUND.format(1.75, 3.5),
    "ring fill": _ROUND.format(3.6, 7.2),
    "press": _ROUND.format(3.1, 6.2),
    "lift": _ROUND.format(4.0, 8.0),
}
_TURNED: Mapping[str, float] = {"quenelle": -25, "two-spoon quenelle": -25, "leaf": 30}
_BARE = ("press", "lift")
_LINE_CM, _BRUSH_CM, _BULB_CM, _CRUMB_CM = 0.55, 2.6, 1.3, 0.22


@dataclass(frozen=True)
class Pen:
    """Draws the pieces of a step at points of the sheet; ``cm`` is how many pixels one is.

    Of a step whose place is not ``said`` there is the outline alone.
    """

    sheet: Sheet
    step: Step
    cm: float
    said: bool

    @property
    def tint(self) -> str:
        """The colour of what the stand-in handles like."""
        return TINTS[self.step.stand_in] if self.said else CHINA

    @property
    def ink(self) -> str:
        """The colour of the outline."""
        return INK if self.said else SOFT

    def piece(self, at: Point, nth: int) -> None:
        """One piece, the ``nth`` of the step; two of a pair of leaves lie mirrored."""
        technique = "leaf" if self.step.stand_in == "leaf" else self.step.technique
        shape = _PIECES.get(technique, _PIECES["place"])
        turned = _TURNED.get(technique, 0.0) * (-1 if nth % 2 else 1)
        move = f"translate({at[0]:.1f} {at[1]:.1f}) rotate({turned:g}) scale({self.cm:.3f})"
        fill = "none" if technique in _BARE else self.tint
        self.sheet.path(shape, fill=fill, stroke=self.ink, broad=1.1 / self.cm, turn=move)

    def stroke(self, points: Sequence[Point]) -> None:
        """One stroke along the points."""
        match self.step.technique:
            case "pull":
                self._pull(points)
            case "crumb":
                self._crumb(points)
            case technique:
                broad = (_BRUSH_CM if technique == "brush" else _LINE_CM) * self.cm
                self.sheet.line(points, stroke=self.ink, broad=broad + 2)
                self.sheet.line(points, stroke=self.tint, broad=broad)

    def _pull(self, points: Sequence[Point]) -> None:
        """A bulb that thins out into a tail."""
        (x, y), (to_x, to_y) = points[0], points[-1]
        long = hypot(to_x - x, to_y - y) / self.cm
        shape = (
            f"M0 -{_BULB_CM}C{long / 3:.2f} -{_BULB_CM} {long / 2:.2f} -.5 {long:.2f} 0"
            f"C{long / 2:.2f} .5 {long / 3:.2f} {_BULB_CM} 0 {_BULB_CM}A{_BULB_CM} {_BULB_CM} 0 0 1 0 -{_BULB_CM}Z"
        )
        move = f"translate({x:.1f} {y:.1f}) rotate({degrees(atan2(to_y - y, to_x - x)):.1f}) scale({self.cm:.3f})"
        self.sheet.path(shape, fill=self.tint, stroke=self.ink, broad=1.1 / self.cm, turn=move)

    def _crumb(self, points: Sequence[Point]) -> None:
        """Grains scattered along, always the same."""
        for nth, (x, y) in enumerate(points):
            for grain in range(4):
                aside = ((nth * 5 + grain * 7) % 9 - 4) * 0.16 * self.cm
                along = ((nth * 3 + grain * 5) % 7 - 3) * 0.14 * self.cm
                self.sheet.circle(
                    (x + aside, y + along), _CRUMB_CM * self.cm, fill=self.tint, stroke=self.ink, broad=0.8
                )
