"""A cook's run of first runs on one set-up; too few are shown, and nothing is called progress."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from statistics import median

from bot.domain.run import Kind

NEEDED = 8
MOST_SHOWN = 10


@dataclass(frozen=True)
class DayRun:
    """A run by its kitchen day; of a short run ``attempted`` is less than ``plates``."""

    day: date
    net_s: float | None
    attempted: int
    plates: int
    kind: Kind = "counted"


@dataclass(frozen=True)
class FirstRun:
    """The first run of a kitchen day, in seconds for the whole set-up; a short run is scaled to it by its plates."""

    day: date
    net_s: float
    short: bool


@dataclass(frozen=True)
class Trend:
    """The last ten first runs, in order, and their median."""

    runs: tuple[FirstRun, ...]
    median_s: float | None
    needed: int = NEEDED

    @property
    def enough(self) -> bool:
        """Whether there are so many that progress could be looked for."""
        return len(self.runs) >= self.needed


def trend_of(runs: Iterable[DayRun]) -> Trend:
    """The trend of one cook's runs on one set-up, given in the order in which they were run.

    The first run of a day stands for it, so that warming up looks like no progress; a stopped run is not one. A day
    whose first run has no time is left out rather than given a later, better run.
    """
    firsts: dict[date, DayRun] = {}
    for run in runs:
        if run.kind != "stopped":
            firsts.setdefault(run.day, run)
    timed = [_for_whole_set_up(run.day, run.net_s, run) for run in firsts.values() if run.net_s is not None]
    shown = tuple(timed[-MOST_SHOWN:])
    return Trend(shown, median(run.net_s for run in shown) if shown else None)


def _for_whole_set_up(day: date, net_s: float, run: DayRun) -> FirstRun:
    return FirstRun(day, net_s * run.plates / run.attempted, run.kind == "short")
