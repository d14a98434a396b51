"""Real progress or luck: whether a cook's first runs grow faster or slower, and whether they grow cleaner with it."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log
from typing import Literal

from bot.domain.first_runs import LAST, FirstRun
from bot.domain.kendall import chance_of, kendall_s
from bot.domain.theil_sen import Line, theil_sen

NEEDED = 8
"""First runs with a time below which nothing is called progress."""

MOST_CHANCE = 0.025
"""The largest one-sided p that still counts. An ordinary 0.1, looked at after every run, would be met by chance within
24 runs for six unchanged cooks of ten; this, on two looks running, for fewer than one (``make bench`` measures)."""

LEAST_CHANGE = 0.04
"""From the first to the last of the runs looked at the steady line must change by at least this share."""

LEAST_REDOS = 2
"""One redo more or less is no difference (common practice, no source)."""

Speed = Literal["faster", "slower"]
Redos = Literal["fewer", "more"]


@dataclass(frozen=True)
class Look:
    """One look at some first runs: the steady line through their log net times, and Kendall's S with its chance."""

    runs: int
    line: Line
    s: int
    chance: float

    @property
    def change(self) -> float:
        """By what share the steady line changes from the first run to the last; below zero it grows faster."""
        return exp(self.line.slope * (self.runs - 1)) - 1

    @property
    def shows(self) -> Speed | None:
        """What this look alone would say."""
        if self.chance > MOST_CHANCE or abs(self.change) < LEAST_CHANGE or self.s * self.change <= 0:
            return None
        return "faster" if self.change < 0 else "slower"


@dataclass(frozen=True)
class Progress:
    """Two looks running: as it is now, and as it was before the newest first run (None where those were too few)."""

    now: Look
    before: Look | None

    @property
    def speed(self) -> Speed | None:
        """What both looks say; None where it cannot be told from luck."""
        return self.now.shows if self.before and self.before.shows == self.now.shows else None


@dataclass(frozen=True)
class RedoChange:
    """Redos among the plates built, in the earlier half of some first runs and in the later half."""

    was: int
    was_built: int
    now: int
    now_built: int

    @property
    def redos(self) -> Redos | None:
        """Whether there are fewer or more; None where the shares lie less than two plates of a half apart."""
        further = self.now * self.was_built - self.was * self.now_built
        if further == 0 or abs(further) < LEAST_REDOS * max(self.was_built, self.now_built):
            return None
        return "fewer" if further < 0 else "more"


def progress_of(nets_s: Sequence[float]) -> Progress | None:
    """What the last two looks say of all the first runs with a time, in order; None where they are too few."""
    if len(nets_s) < NEEDED:
        return None
    earlier = nets_s[:-1]
    return Progress(_look_at(nets_s[-LAST:]), _look_at(earlier[-LAST:]) if len(earlier) >= NEEDED else None)


def redo_change(days: Sequence[FirstRun]) -> RedoChange:
    """The redos of first runs in order, those of days without a time too; the middle one of an odd number is left out.

    A day without a time has the most redos of all: to leave it out would call a cook cleaner than the plates were.
    """
    half = len(days) // 2
    was, now = days[:half], days[len(days) - half :]
    return RedoChange(_redo(was), _built(was), _redo(now), _built(now))


def _look_at(nets_s: Sequence[float]) -> Look:
    logs = [log(net_s) for net_s in nets_s]
    return Look(len(logs), theil_sen(range(len(logs)), logs), kendall_s(logs), chance_of(logs))


def _redo(days: Sequence[FirstRun]) -> int:
    return sum(run.redo for run in days)


def _built(days: Sequence[FirstRun]) -> int:
    return sum(run.built for run in days)
