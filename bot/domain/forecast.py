"""The next first run, one step ahead and no further, as a band that four runs in five should fall into."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log, sqrt
from statistics import linear_regression, mean

from bot.domain.first_runs import LAST
from bot.domain.progress import NEEDED

TAIL_T = {6: 1.4398, 7: 1.4149, 8: 1.3968}
"""Student's t with 10 % above it, by degrees of freedom: the runs looked at less two (any table; tested on scipy)."""


@dataclass(frozen=True)
class Fit:
    """The least-squares line through some points, with what is needed to say how far from it the next may lie."""

    level: float
    slope: float
    points: int
    middle_x: float
    squares_x: float
    residual_sd: float

    def at(self, x: float) -> float:
        """Its height at x."""
        return self.level + self.slope * x

    def spread_at(self, x: float) -> float:
        """The standard error of a new value at x: its own scatter and what is not known of the line."""
        return self.residual_sd * sqrt(1 + 1 / self.points + (x - self.middle_x) ** 2 / self.squares_x)


@dataclass(frozen=True)
class Band:
    """Where the next net time is expected, in seconds."""

    low_s: float
    middle_s: float
    high_s: float


def next_run(nets_s: Sequence[float]) -> Band | None:
    """The band for the first run after these, which are all those with a time, in order; None where they are too few.

    The textbook's prediction interval about the least-squares line through the last log nets. It goes along with a
    trend that cannot yet be told from luck, since a band that stayed behind would miss most runs of who has one.
    """
    if len(nets_s) < NEEDED:
        return None
    logs = [log(net_s) for net_s in nets_s[-LAST:]]
    fit, ahead = least_squares(range(len(logs)), logs), len(logs)
    reach = TAIL_T[len(logs) - 2] * fit.spread_at(ahead)
    return Band(exp(fit.at(ahead) - reach), exp(fit.at(ahead)), exp(fit.at(ahead) + reach))


def least_squares(xs: Sequence[float], ys: Sequence[float]) -> Fit:
    """The line of least squares through three points or more."""
    line, middle_x = linear_regression(xs, ys), mean(xs)
    missed = sum((y - line.intercept - line.slope * x) ** 2 for x, y in zip(xs, ys, strict=True))
    return Fit(
        level=line.intercept,
        slope=line.slope,
        points=len(xs),
        middle_x=middle_x,
        squares_x=sum((x - middle_x) ** 2 for x in xs),
        residual_sd=sqrt(missed / (len(xs) - 2)),
    )
