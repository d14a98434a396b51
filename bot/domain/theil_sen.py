"""The steady line through scattered values, which one wild value hardly moves (Theil 1950, Sen 1968)."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from statistics import median


@dataclass(frozen=True)
class Line:
    """A straight line: its level at 0 and its slope."""

    level: float
    slope: float

    def at(self, x: float) -> float:
        """Its height at x."""
        return self.level + self.slope * x


def theil_sen(xs: Sequence[float], ys: Sequence[float]) -> Line:
    """The line with the median of the slopes between all pairs, through the medians of places and values."""
    points = zip(xs, ys, strict=True)
    slope = median((y2 - y1) / (x2 - x1) for (x1, y1), (x2, y2) in combinations(points, 2) if x1 != x2)
    return Line(median(ys) - slope * median(xs), slope)
