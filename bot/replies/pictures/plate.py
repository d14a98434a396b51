"""The plate from above with the hours on its rim, each step where the spec puts it, its numbers beside it."""

from collections.abc import Iterator, Sequence
from math import dist, hypot

from bot.domain.drill import Spec, plate_cm
from bot.domain.plate_clock import HOURS, Spot, apart, hour_spot
from bot.domain.plate_layout import STROKES, Laid, laid_out_plate
from bot.replies.pictures.drawing import CHINA, FAINT, INK, SOFT, Point, Sheet
from bot.replies.pictures.shapes import Pen

WELL, HOURS_OUT = 0.81, 0.905
BADGE_PX = 8.5
USUAL_PLATE_CM, LEAST_PLATE_CM = 27.0, 18.0
_BESIDE_PX, _CLEAR_PX, _RINGS = 11.0, 12.0, 60
_BADGES_APART = 0.55
"""A step's number stands at each of its places, but not again so near to itself."""


class Plate:
    """One plate on a sheet, by its middle and its radius in pixels."""

    def __init__(self, sheet: Sheet, middle: Point, radius: float, spec: Spec) -> None:
        self._sheet = sheet
        self._middle = middle
        self._radius = radius
        self._laid = laid_out_plate(spec)
        self._cm = 2 * radius / max(plate_cm(spec) or USUAL_PLATE_CM, LEAST_PLATE_CM)

    @property
    def is_all_said(self) -> bool:
        """Whether the spec says of every step where it goes."""
        return all(laid.said for laid in self._laid)

    def draw(self) -> None:
        """The plate with the hours on its rim, and over the pieces the numbers of their steps."""
        self.bare()
        for hour in range(1, HOURS + 1):
            x, y = self._at(hour_spot(hour, HOURS_OUT))
            guests = hour == HOURS / 2
            self._sheet.words((x, y + 4), str(hour), 11.5, bold=guests, ink=INK if guests else SOFT)
        for nth, at in badges(self._laid, self._radius):
            self._badge(nth, (self._middle[0] + at[0], self._middle[1] - at[1]))

    def bare(self) -> None:
        """The china, and the pieces in the order of the steps."""
        self._sheet.circle(self._middle, self._radius, fill=CHINA, stroke=SOFT, broad=1.4)
        self._sheet.circle(self._middle, self._radius * WELL, stroke=FAINT)
        for laid in self._laid:
            self._draw_step(laid)

    def _draw_step(self, laid: Laid) -> None:
        points = [self._at(spot) for spot in laid.spots]
        pen = Pen(self._sheet, laid.step, self._cm, laid.said)
        if laid.step.technique in STROKES and laid.step.pieces == 1:
            pen.stroke(points)
            return
        for nth, point in enumerate(points):
            pen.piece(point, nth)

    def _badge(self, nth: int, at: Point) -> None:
        self._sheet.circle(at, BADGE_PX, fill=INK, stroke=CHINA, broad=1.5)
        self._sheet.words((at[0], at[1] + 4), str(nth), 11.5, bold=True, ink=CHINA)

    def _at(self, spot: Spot) -> Point:
        return self._middle[0] + self._radius * spot.x, self._middle[1] - self._radius * spot.y


def badges(laid: Sequence[Laid], radius: float) -> list[tuple[int, Point]]:
    """Each step's number with where it stands, from the middle of the plate in pixels, none over another."""
    pieces = [(spot.x * radius, spot.y * radius) for step in laid for spot in step.some]
    placed: list[tuple[int, Point]] = []
    for step in laid:
        own: list[Spot] = []
        for spot in _marked(step):
            if all(apart(spot, there) >= _BADGES_APART for there in own):
                own.append(spot)
                placed.append((step.nth, _free_point(spot, radius, pieces, [at for _, at in placed])))
    return placed


def _marked(step: Laid) -> Sequence[Spot]:
    """A stroke is numbered where it begins."""
    return step.spots[:1] if step.step.technique in STROKES and step.step.pieces == 1 else step.spots


def _free_point(spot: Spot, radius: float, pieces: Sequence[Point], taken: Sequence[Point]) -> Point:
    """The point near the spot, in the well, that no other number covers, nor it a piece if that can be."""

    def is_open(point: Point) -> bool:
        apart_of_all = all(dist(point, there) >= 2 * BADGE_PX for there in taken)
        return apart_of_all and hypot(*point) + BADGE_PX <= radius * WELL

    def is_clear(point: Point) -> bool:
        return is_open(point) and all(dist(point, piece) >= _CLEAR_PX for piece in pieces)

    near = spot.x * radius, spot.y * radius
    return next(filter(is_clear, _about(near)), None) or next(filter(is_open, _about(near)), near)


def _about(point: Point) -> Iterator[Point]:
    """Points in rings of growing width round this one, beginning beside it, as far as the other side of the plate."""
    for out in range(_RINGS):
        for hour in range(0, 2 * HOURS, 3):
            aside = hour_spot((hour + 20) / 2, _BESIDE_PX + 3 * out)
            yield point[0] + aside.x, point[1] + aside.y
