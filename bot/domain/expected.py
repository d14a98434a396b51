"""What a cook may be expected to take in a week, from earlier runs of their own.

Like is compared with like: a middle of earlier runs, or a fitted value, with the middle of the week's, never a best
with a middle. A run with no time is slower than any, before as now.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from math import exp, inf, isinf, log
from statistics import median

LAST_RUNS = 10
"""Earlier runs that are looked at: so many that a slow week does not fill them all, so few that they follow a cook."""

RISE_A_WEEK = 1.02
"""An expected time may grow by this much a week: who runs slowly on purpose gains no more."""

FEWEST_OTHERS = 2


@dataclass(frozen=True)
class Earlier:
    """An earlier counted run with the standard time of its set-up; ``net_s`` is None where it has no time."""

    set_up_id: int
    net_s: float | None
    standard_s: float


@dataclass(frozen=True)
class Fitted:
    """What the fit of the weeks before says of a cook's next run, as ratios to standard time.

    ``usual`` is on any set-up, ``on_it`` on the one in question, None where the fit does not know that one. ``runs``
    is how many the cook had in the quarter, ``learning`` the crew's change in log time for each unit of its log.
    """

    usual: float
    on_it: float | None
    runs: int = 0
    learning: float = 0.0

    def at_middle_of(self, runs: int) -> "Fitted":
        """The same of the middle one of so many next runs: practice that the whole crew shows is no surprise."""
        practice = ((self.runs + (runs + 1) / 2) / (self.runs + 1)) ** self.learning
        return replace(self, usual=self.usual * practice, on_it=self.on_it and self.on_it * practice)


@dataclass(frozen=True)
class Expected:
    """What a cook was expected to take.

    ``fitted``, or the middle of ``runs`` earlier runs on this set-up, where there are any; else standard time x the
    cook's ``usual`` ratio to it x ``drill``, what this one took the others beside their own usual, None where too few
    others ran. ``held`` where it would have risen faster than it may.
    """

    net_s: float
    standard_s: float
    usual: float
    runs: int = 0
    fitted: bool = False
    drill: float | None = None
    held: bool = False

    @property
    def knows_drill(self) -> bool:
        """Whether the set-up's own difficulty is in it, by this cook's runs, the fit or others' runs."""
        return self.fitted or self.runs > 0 or self.drill is not None


@dataclass(frozen=True)
class Formerly:
    """What the same cook was expected to take so many ``weeks`` before, as that week's closed board keeps it."""

    weeks: int
    set_up_id: int
    expected: Expected


def expect(
    earlier: Sequence[Earlier],
    formerly: Sequence[Formerly],
    set_up_id: int,
    standard_s: float,
    fitted: Fitted | None = None,
) -> Expected | None:
    """What the cook is expected to take, from runs of earlier weeks in order; None where they give no middle."""
    raw = fitted.usual if fitted else middle_s([_ratio(run) for run in earlier[-LAST_RUNS:]])
    if isinf(raw):
        return None
    usual = min([raw, *(then.expected.usual * _rise(then) for then in formerly)])
    on_it = [run.net_s or inf for run in earlier if run.set_up_id == set_up_id][-LAST_RUNS:]
    by_fit = fitted is not None and fitted.on_it is not None
    own_s = standard_s * fitted.on_it if fitted and fitted.on_it else middle_s(on_it)
    if isinf(own_s):
        return Expected(standard_s * usual, standard_s, usual, held=usual < raw)
    same = [then for then in formerly if then.set_up_id == set_up_id and then.expected.knows_drill]
    net_s = min([own_s, *(then.expected.net_s * _rise(then) for then in same)])
    return Expected(net_s, standard_s, usual, len(on_it), by_fit, held=net_s < own_s)


def middle_s(times_s: Sequence[float]) -> float:
    """The time whose log is the median of the logs; infinite where there is none or the median has no time."""
    return exp(median(log(time_s) for time_s in times_s)) if times_s else inf


def level(expected: Mapping[str, Expected], actual_s: Mapping[str, float]) -> dict[str, Expected]:
    """The same with what a set-up new to a cook took the others, each beside their own usual, by their middle.

    A written standard may be wrong by more than a cook's progress: without this a new drill would judge the standard.
    """
    ratios = {cook: actual_s[cook] / (of.standard_s * of.usual) for cook, of in expected.items()}
    return {cook: of if of.knows_drill else _levelled(of, _but(ratios, cook)) for cook, of in expected.items()}


def _levelled(expected: Expected, others: Sequence[float]) -> Expected:
    if len(others) < FEWEST_OTHERS:
        return expected
    drill = middle_s(others)
    return replace(expected, net_s=expected.standard_s * expected.usual * drill, drill=drill)


def _but(ratios: Mapping[str, float], cook: str) -> list[float]:
    return [ratio for other, ratio in ratios.items() if other != cook]


def _ratio(run: Earlier) -> float:
    return (run.net_s or inf) / run.standard_s


def _rise(then: Formerly) -> float:
    """By how much what was expected then may have grown since."""
    return float(RISE_A_WEEK**then.weeks)
