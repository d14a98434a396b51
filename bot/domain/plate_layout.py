"""The plate as laid out: where each step of a spec goes on the clock.

What a step's place names is read, by hours or by what an earlier step put down; what it does not name is laid calmly
where there is room, and said to be free.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from bot.domain.drill import Spec, Step
from bot.domain.plate_clock import CENTRE, WELL_SHARE, Spot, apart, hour_spot, ring, spots

STROKES = ("line", "pull", "brush", "crumb")
"""Techniques of which one touch reaches from one place to another."""

INSIDE_SHARE, BESIDE_SHARE, ROUND_SHARE = 0.38, 0.24, 0.3

_HOUR = r"(1[0-2]|[1-9])"
_TOWARDS = re.compile(rf"^to {_HOUR}$")
_BY_ANOTHER = re.compile(rf"^(on|inside|beside|round|around) (?:(?:the|a|an|each) )?(?:{_HOUR} )?(.+)$")
_PARTS = {"tail": "pull", "egg": "quenelle"}
"""Parts of what a technique leaves, by the technique."""

_A_DOZEN = 12
_OF_THE_ONE_BEFORE = ("press", "lift")

_STROKE_POINTS = 25
_FREE_PLACES = tuple(Spot(x, y) for y in (0.0, -0.24, 0.24, -0.5, 0.46) for x in (0.0, 0.3, -0.3, 0.45, -0.45))
_FREE_APART, _FREE_STROKE, _LONGEST_ROW = 0.17, 0.24, 0.62


@dataclass(frozen=True)
class Laid:
    """Where the pieces of the step of this number go; of a stroke, the points that it passes.

    Where the place is not ``said`` it is the chef's to show, and this is only where there is room.
    """

    nth: int
    step: Step
    spots: tuple[Spot, ...]
    said: bool = True

    @property
    def some(self) -> tuple[Spot, ...]:
        """A dozen of its spots at most, evenly: enough to keep clear of it."""
        return _some(self.spots)


def laid_out_plate(spec: Spec) -> tuple[Laid, ...]:
    """Every step with its spots, in order; a wipe leaves nothing behind and is left out."""
    laid: list[Laid] = []
    for nth, step in enumerate(spec.steps, 1):
        if step.technique != "wipe":
            laid.append(_laid(nth, step, laid))
    return tuple(laid)


def _laid(nth: int, step: Step, before: Sequence[Laid]) -> Laid:
    points = _STROKE_POINTS if step.technique in STROKES and step.pieces == 1 else step.pieces
    if found := spots(step.at, points) or _towards(step, before):
        return Laid(nth, step, found)
    if by := _by_another(step, before):
        there, found = by
        return Laid(nth, step, found, said=there.said)
    return Laid(nth, step, _free(step, points, before), said=False)


def _towards(step: Step, before: Sequence[Laid]) -> tuple[Spot, ...] | None:
    """A stroke from where the step before ended to the hour named."""
    found = _TOWARDS.match(step.at.casefold())
    if not found or not before:
        return None
    return _straight(before[-1].spots[-1], hour_spot(int(found[1]), WELL_SHARE))


def _by_another(step: Step, before: Sequence[Laid]) -> tuple[Laid, tuple[Spot, ...]] | None:
    """What an earlier step put down, as its component or technique is named, and where this goes by it.

    A press and a lift are of what was filled just before.
    """
    if before and step.technique in _OF_THE_ONE_BEFORE:
        return before[-1], before[-1].spots
    found = _BY_ANOTHER.match(" ".join(step.at.casefold().split()))
    there = _named(found[3], before) if found else None
    return (there, _by(there, step.pieces, *found.groups(""))) if found and there else None


def _by(there: Laid, pieces: int, way: str, at_hour: str, words: str) -> tuple[Spot, ...]:
    where = (_nearest(there.spots, hour_spot(int(at_hour))),) if at_hour else there.spots
    if way in ("round", "around"):
        return ring(_middle(where), ROUND_SHARE, pieces)
    if way == "beside":
        beside = _middle(where)
        return _row(Spot(beside.x + BESIDE_SHARE, beside.y), pieces)
    if way == "inside":
        return tuple(_pulled_in(spot) for spot in _shared(where, pieces))
    return _shared(where[len(where) // 2 :] if words in _PARTS else _ground(where), pieces)


def _named(words: str, before: Iterable[Laid]) -> Laid | None:
    """The last earlier step whose component or technique has these words, or the part that they are."""
    wanted = _PARTS.get(words, words)
    return next(
        (
            laid
            for laid in reversed(tuple(before))
            if wanted in f"{laid.step.component} {laid.step.technique}".casefold()
        ),
        None,
    )


def _shared(along: Sequence[Spot], pieces: int) -> tuple[Spot, ...]:
    """So many spots of those of a stroke, evenly; on pieces that lie apart each gets its small row."""
    if not _is_path(along):
        shares = [len(range(nth, pieces, len(along))) for nth in range(len(along))]
        return tuple(spot for there, share in zip(along, shares, strict=True) for spot in _row(there, share))
    if pieces == 1:
        return (along[len(along) // 2],)
    return tuple(along[round(nth * (len(along) - 1) / (pieces - 1))] for nth in range(pieces))


def _row(middle: Spot, pieces: int) -> tuple[Spot, ...]:
    step = min(_FREE_APART, _LONGEST_ROW / pieces) if pieces else 0.0
    return tuple(Spot(middle.x + step * (nth - (pieces - 1) / 2), middle.y) for nth in range(pieces))


def _pulled_in(spot: Spot) -> Spot:
    out = INSIDE_SHARE / (hypot(spot.x, spot.y) or 1.0)
    return Spot(spot.x * out, spot.y * out)


def _free(step: Step, points: int, before: Sequence[Laid]) -> tuple[Spot, ...]:
    """A small row, or a short stroke, where most room is left."""
    taken = [spot for laid in before for spot in laid.some]
    tried = [row for place in _FREE_PLACES if _in_the_well(row := _lying(step, place, points))]
    return max(tried, key=lambda row: round(_room(_some(row), taken), 3))


def _room(row: Sequence[Spot], taken: Sequence[Spot]) -> float:
    return min((apart(one, other) for one in row for other in taken), default=1.0)


def _some(row: tuple[Spot, ...]) -> tuple[Spot, ...]:
    return row[:: -(-len(row) // _A_DOZEN)]


def _in_the_well(row: Sequence[Spot]) -> bool:
    return all(apart(CENTRE, spot) <= WELL_SHARE + _FREE_APART / 2 for spot in row)


def _lying(step: Step, middle: Spot, points: int) -> tuple[Spot, ...]:
    if step.technique in STROKES:
        return _straight(Spot(middle.x - _FREE_STROKE, middle.y), Spot(middle.x + _FREE_STROKE, middle.y))
    return _row(middle, points)


def _straight(start: Spot, end: Spot) -> tuple[Spot, ...]:
    shares = (nth / (_STROKE_POINTS - 1) for nth in range(_STROKE_POINTS))
    return tuple(Spot(start.x + share * (end.x - start.x), start.y + share * (end.y - start.y)) for share in shares)


def _nearest(among: Sequence[Spot], to: Spot) -> Spot:
    return min(among, key=lambda spot: apart(spot, to))


def _middle(among: Sequence[Spot]) -> Spot:
    """The spot in the middle of a stroke; the first of pieces that lie apart."""
    return among[len(among) // 2] if _is_path(among) else among[0]


def _ground(among: Sequence[Spot]) -> Sequence[Spot]:
    """What a piece stands on: the middle of a stroke, or every piece."""
    return (_middle(among),) if _is_path(among) else among


def _is_path(among: Sequence[Spot]) -> bool:
    return len(among) > 1 and all(apart(one, other) < BESIDE_SHARE for one, other in pairwise(among))
