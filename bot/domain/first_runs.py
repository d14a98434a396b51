"""The first run of each kitchen day on one spec: what progress is looked for in."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import median

from bot.domain.run import Count, Kind

LAST = 10
"""So many first runs are looked at, so that an old beginning does not pass for progress now."""


@dataclass(frozen=True)
class DayRun:
    """A run by its kitchen day.

    ``carried_from`` is the letter of the set-up where it was run, empty where that is the one asked about; ``onto`` is
    the standard time asked about over the standard time there, which carries its time over by levelled pace.
    """

    day: date
    net_s: float | None
    count: Count
    kind: Kind = "counted"
    carried_from: str = ""
    onto: float = 1.0


@dataclass(frozen=True)
class FirstRun:
    """The first run of a kitchen day, in seconds for all plates of the set-up asked about; None where it has no time.

    A ``short`` run is scaled to all plates by its touches, one ``carried_from`` another set-up by levelled pace.
    """

    day: date
    net_s: float | None
    built: int
    redo: int
    short: bool = False
    carried_from: str = ""


@dataclass(frozen=True)
class FirstRuns:
    """The last first runs in order: ten with a time, and the days without one that lie among and after them."""

    days: tuple[FirstRun, ...]

    @property
    def timed(self) -> tuple[FirstRun, ...]:
        """Those with a time."""
        return tuple(run for run in self.days if run.net_s is not None)

    @property
    def nets_s(self) -> tuple[float, ...]:
        """Their net times."""
        return tuple(run.net_s for run in self.days if run.net_s is not None)

    @property
    def median_s(self) -> float | None:
        """The median of their net times; None where there is none."""
        return median(self.nets_s) if self.nets_s else None


def first_runs(runs: Iterable[DayRun]) -> tuple[FirstRun, ...]:
    """The first run of each day, of runs given in the order in which they were run.

    It stands for its day, so that warming up looks like no progress; a stopped run is not one. A day whose first run
    has no time keeps none rather than being given a later, better run.
    """
    firsts: dict[date, DayRun] = {}
    for run in runs:
        if run.kind != "stopped":
            firsts.setdefault(run.day, run)
    return tuple(_for_all_plates(run) for run in firsts.values())


def last_of(firsts: Sequence[FirstRun]) -> FirstRuns:
    """The last of them, from the tenth with a time from the end."""
    timed = [nth for nth, run in enumerate(firsts) if run.net_s is not None]
    return FirstRuns(tuple(firsts[timed[-LAST:][0] :]) if timed else ())


def _for_all_plates(run: DayRun) -> FirstRun:
    count = run.count
    net_s = None if run.net_s is None else run.net_s * count.plates / count.attempted * run.onto
    return FirstRun(run.day, net_s, count.attempted, count.redo, run.kind == "short", run.carried_from)
