"""The clock on the plate: where an hour lies, seen from above with six at the guest's side, and what ``at`` names."""

import math
import re
from dataclasses import dataclass

HOURS = 12
WELL_SHARE = 0.62
"""How far out, of the plate's radius, a piece at an hour is drawn: inside the well (the project's own choice)."""

HALF_RADIUS = 0.5

_HOUR = r"(1[0-2]|[1-9])"
_ARC = re.compile(rf"^{_HOUR} to {_HOUR}$")
_LISTED = re.compile(rf"^{_HOUR}(?:(?:-|, | and ){_HOUR})*$")
_NAMED_HOUR = re.compile(rf"\b{_HOUR}\b")
_EDGES = {"right edge": 3, "left edge": 9, "top edge": 12, "bottom edge": 6}
_CENTRE_WORDS = {"centre", "center", "middle"}


@dataclass(frozen=True)
class Spot:
    """A point of the plate in shares of its radius, the centre being the origin, ``x`` to the right, ``y`` up."""

    x: float
    y: float


CENTRE = Spot(0.0, 0.0)


def hour_spot(hour: float, out: float = 1.0) -> Spot:
    """Where an hour lies, ``out`` of the radius from the centre: 12 straight up, 3 to the right."""
    turn = math.tau * hour / HOURS
    return Spot(out * math.sin(turn), out * math.cos(turn))


def spots(at: str, pieces: int) -> tuple[Spot, ...] | None:
    """Where that many pieces go by the words of ``at`` alone; nothing where they name no place on the clock."""
    words = " ".join(at.casefold().split())
    if words in _CENTRE_WORDS:
        return (CENTRE,) * pieces
    if arc := _ARC.match(words):
        return _along(int(arc[1]), int(arc[2]), pieces)
    if words in _EDGES:
        return _along(_EDGES[words] - 1, _EDGES[words] + 1, pieces)
    if words.startswith("ring"):
        return ring(CENTRE, HALF_RADIUS, pieces)
    if _LISTED.match(words):
        hours = [int(hour) for hour in _NAMED_HOUR.findall(words)]
        return tuple(hour_spot(hours[nth % len(hours)], WELL_SHARE) for nth in range(pieces))
    return None


def ring(about: Spot, out: float, pieces: int) -> tuple[Spot, ...]:
    """So many spots evenly round another, the first straight above it."""
    hours = (hour_spot(HOURS * nth / pieces, out) for nth in range(pieces))
    return tuple(Spot(about.x + spot.x, about.y + spot.y) for spot in hours)


def apart(one: Spot, other: Spot) -> float:
    """How far two spots lie from each other."""
    return math.hypot(one.x - other.x, one.y - other.y)


def _along(first: int, last: int, pieces: int) -> tuple[Spot, ...]:
    """So many spots evenly along the arc, the shorter way round (clockwise where equal); one alone in its middle."""
    way = (last - first + HOURS // 2 - 1) % HOURS - (HOURS // 2 - 1)
    if pieces == 1:
        return (hour_spot(first + way / 2, WELL_SHARE),)
    return tuple(hour_spot(first + way * nth / (pieces - 1), WELL_SHARE) for nth in range(pieces))
