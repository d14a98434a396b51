"""From drill to pickup: how the steps of a plate are shared out among hands, and how long so many plates take.

A line of hands: each pair takes a run of neighbouring steps and keeps its tools in reach, and the plates go from one to
the next. The first plate takes all its touches; after it one plate leaves for every largest share. Plating only.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache
from math import inf
from statistics import median

from bot.domain.drill import Spec
from bot.domain.techniques import Seconds

MOST_HANDS = 20
"""As many as find room at one pass (common practice, no source)."""

FEWEST_PEOPLE = 5
"""Below this a median would tell of somebody."""

Shares = tuple[float, ...]
"""What every step takes of one plate, in standard seconds."""


@dataclass(frozen=True)
class Station:
    """What stands together on the line: the steps ``first`` up to, not with, ``end`` of every plate, counted from 0.

    More than one pair of hands at a station take the plates in turn; ``share_s`` is what it needs for each plate.
    """

    first: int
    end: int
    hands: int
    share_s: float


@dataclass(frozen=True)
class Line:
    """The stations in the order of the steps, and how long they take for the plates asked for."""

    stations: tuple[Station, ...]
    time_s: float

    @property
    def hands(self) -> int:
        """Pairs of hands on the whole line."""
        return sum(station.hands for station in self.stations)

    @property
    def largest_s(self) -> float:
        """The largest share: a plate leaves the line as often as this."""
        return max(station.share_s for station in self.stations)

    def within(self, limit_s: int) -> bool:
        """Whether its time, as shown to the second, is within the limit."""
        return round(self.time_s) <= limit_s


@dataclass(frozen=True)
class Fewer:
    """So few pieces in the narrowest step, and the line that then is quick enough."""

    pieces: int
    line: Line


@dataclass(frozen=True)
class Pickup:
    """The answer: ``line`` has the fewest hands that are quick enough, or else as quick as undivided steps allow.

    Where it is not quick enough, ``narrowest`` is the step that holds it up, counted from 0; ``divided`` the smallest
    line that is quick enough once hands may share a step; ``fewer`` what fewer pieces in the narrowest step would do.
    """

    line: Line
    narrowest: int
    divided: Line | None = None
    fewer: Fewer | None = None


def shares_of(spec: Spec, seconds: Seconds) -> Shares:
    """What every step takes of one plate."""
    return tuple(step.pieces * seconds.techniques[step.technique].seconds for step in spec.steps)


def share_out(shares_s: Shares, plates: int, hands: int, *, divide: bool = False) -> Line:
    """The line of at most so many hands whose largest share is smallest, by dynamic programming over the steps.

    Every station is a run of neighbouring steps for one pair of hands; with ``divide`` a single step may have more.
    """

    @cache
    def best(first: int, left: int) -> tuple[float, tuple[Station, ...]]:
        if first == len(shares_s):
            return 0.0, ()
        found: tuple[float, tuple[Station, ...]] = (inf, ())
        for station in _openings(shares_s, first, left, divide):
            largest, after = best(station.end, left - station.hands)
            if max(station.share_s, largest) < found[0]:
                found = max(station.share_s, largest), (station, *after)
        return found

    _, stations = best(0, hands)
    largest_s = max(station.share_s for station in stations)
    return Line(stations, sum(shares_s) + (plates - 1) * largest_s)


def plan_pickup(spec: Spec, seconds: Seconds, plates: int, limit_s: int) -> Pickup:
    """The fewest hands that plate so many within the limit; else how near they come, and what would do it."""
    shares_s = shares_of(spec, seconds)
    narrowest = shares_s.index(max(shares_s))
    line = _fewest(shares_s, plates, limit_s)
    if line:
        return Pickup(line, narrowest)
    line = _quickest(shares_s, plates, len(shares_s))
    divided = _fewest(shares_s, plates, limit_s, divide=True)
    return Pickup(line, narrowest, divided, _with_fewer(spec, seconds, plates, limit_s, narrowest))


def plan_with(spec: Spec, seconds: Seconds, plates: int, hands: int) -> Line:
    """The quickest line of at most so many hands, who may share a step; no more hands than quicken it."""
    return _quickest(shares_of(spec, seconds), plates, hands, divide=True)


def own_ratio(ratios: Iterable[Sequence[float]]) -> float | None:
    """How long a kitchen takes for an hour of standard time: the median of its people's medians; None of too few."""
    own = [median(each) for each in ratios if each]
    return median(own) if len(own) >= FEWEST_PEOPLE else None


def _quickest(shares_s: Shares, plates: int, hands: int, *, divide: bool = False) -> Line:
    lines = (share_out(shares_s, plates, many, divide=divide) for many in range(1, hands + 1))
    return min(lines, key=lambda line: line.largest_s)


def _openings(shares_s: Shares, first: int, left: int, divide: bool) -> Iterator[Station]:
    """The stations that may come next with so many hands left, each leaving hands for the steps after it."""
    for end in range(first + 1, len(shares_s) + 1):
        if left >= (2 if end < len(shares_s) else 1):
            yield Station(first, end, 1, sum(shares_s[first:end]))
    spare = 1 if first + 1 < len(shares_s) else 0
    for hands in range(2, left - spare + 1) if divide else ():
        yield Station(first, first + 1, hands, shares_s[first] / hands)


def _fewest(shares_s: Shares, plates: int, limit_s: int, *, divide: bool = False) -> Line | None:
    """The smallest line within the limit; None where none is."""
    if not divide and not Line((), sum(shares_s) + (plates - 1) * max(shares_s)).within(limit_s):
        return None
    lines = (share_out(shares_s, plates, hands, divide=divide) for hands in range(1, MOST_HANDS + 1))
    return next((line for line in lines if line.within(limit_s)), None)


def _with_fewer(spec: Spec, seconds: Seconds, plates: int, limit_s: int, narrowest: int) -> Fewer | None:
    """The most pieces of the narrowest step with which undivided steps are quick enough; None where none are."""
    step = spec.steps[narrowest]
    for pieces in range(step.pieces - 1, 0, -1):
        steps = (*spec.steps[:narrowest], replace(step, pieces=pieces), *spec.steps[narrowest + 1 :])
        line = _fewest(shares_of(replace(spec, steps=steps), seconds), plates, limit_s)
        if line:
            return Fewer(pieces, line)
    return None
