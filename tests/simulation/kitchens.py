"""Kitchens with known truth, each from its seed: how quick everybody is, how hard each drill is, and what was timed."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import exp, log
from random import Random
from statistics import fmean

from scipy.stats import kendalltau

from bot.domain.drill import SetUp, Spec, Step
from bot.domain.fairness.cells import TimedRun, cells_of
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.reml import fit_cells
from bot.domain.standard_time import standard_s, touches
from bot.domain.techniques import Seconds
from bot.library.seconds import load_seconds

COOKS = 14
DRILLS = 13
SECONDS_WRONG = 0.30
DRILL_EFFECT = 0.10
SKILL = 0.18
COOK_AT_TECHNIQUE = 0.08
NOISE = 0.06
FEWEST_RUNS = 3
"""A cook with fewer is not compared."""

WRITTEN = load_seconds()


@dataclass(frozen=True)
class Drill:
    """A week's drill: what is written, and its true standard seconds for the crew."""

    spec: Spec
    set_up: SetUp
    effect: float
    true_s: float

    @property
    def written_s(self) -> float:
        """Its computed standard time."""
        return standard_s(self.spec, self.set_up, WRITTEN)

    @property
    def touches(self) -> int:
        """The touches of a run."""
        return self.set_up.plates * touches(self.spec)


@dataclass(frozen=True)
class Cook:
    """A cook's own seconds for every technique, skill, learning exponent and share of weeks present."""

    seconds: Seconds
    skill: float
    exponent: float
    present: float

    def log_s(self, drill: Drill, nth: float) -> float:
        """The logarithm of the expected seconds of the ``nth`` run."""
        work_s = standard_s(drill.spec, drill.set_up, self.seconds)
        return log(work_s) + drill.effect + self.skill - self.exponent * log(nth)


@dataclass(frozen=True)
class Timed:
    """One run: which drill, in which week, ln of its seconds."""

    cook: str
    drill: int
    week: float
    log_s: float


@dataclass(frozen=True)
class Kitchen:
    """A quarter of thirteen weeks, a drill in each."""

    drills: tuple[Drill, ...]
    cooks: dict[str, Cook]
    runs: tuple[Timed, ...]

    def truth(self) -> dict[str, float]:
        """Mean over all drills of ln of the expected seconds at half the own run count, of cooks with three or more."""
        counts = {name: sum(run.cook == name for run in self.runs) for name in self.cooks}
        return {
            name: fmean(self.cooks[name].log_s(drill, count / 2) for drill in self.drills)
            for name, count in counts.items()
            if count >= FEWEST_RUNS
        }

    def means(self, against: Sequence[float]) -> dict[str, float]:
        """Each cook's mean of ln(seconds / what is given for the drill)."""
        return {
            name: fmean(run.log_s - log(against[run.drill]) for run in self.runs if run.cook == name)
            for name in self.truth()
        }

    def timed_runs(self) -> list[TimedRun]:
        """The runs as the bot would see them: against computed standard time."""
        written = [log(drill.written_s) for drill in self.drills]
        return [TimedRun(run.cook, run.drill, run.log_s - written[run.drill], run.week) for run in self.runs]


def kitchen(seed: int) -> Kitchen:
    """The kitchen of this seed."""
    draw = Random(seed)  # noqa: S311 - a simulation, nothing secret
    true = _wrong(WRITTEN, draw, SECONDS_WRONG)
    drills = tuple(_drill(draw, true) for _ in range(DRILLS))
    cooks = {f"cook{nth}": _cook(draw, true) for nth in range(COOKS)}
    return Kitchen(drills, cooks, tuple(_season(draw, drills, cooks)))


def agreement(of: Kitchen) -> dict[str, float]:
    """Kendall's tau between the true order and the order that each way of comparing gives."""
    truth = of.truth()
    fit = fitted(of)
    orders = {
        "quarter board": {name: pace(fit, name) for name in truth},
        "oracle": of.means([drill.true_s * exp(drill.effect) for drill in of.drills]),
        "computed standard": of.means([drill.written_s for drill in of.drills]),
        "seconds per touch": of.means([drill.touches for drill in of.drills]),
        "raw time": of.means([1.0] * len(of.drills)),
    }
    return {way: tau([order[name] for name in truth], list(truth.values())) for way, order in orders.items()}


def fitted(of: Kitchen) -> Fit:
    """The mixed model fitted to the kitchen's quarter."""
    fit = fit_cells(cells_of(of.timed_runs()))
    assert fit is not None
    return fit


def pace(fit: Fit, cook: str) -> float:
    """A fitted cook's pace."""
    found = fit.pace(cook)
    assert found is not None
    return found


def tau(one: list[float], other: list[float]) -> float:
    """Kendall's tau-b."""
    return float(kendalltau(one, other).statistic)


def _wrong(seconds: Seconds, draw: Random, by: float) -> Seconds:
    """The same techniques, each quicker or slower by its own log-normal factor."""
    return replace(
        seconds,
        techniques={
            name: replace(technique, seconds=technique.seconds * exp(draw.gauss(0, by)))
            for name, technique in seconds.techniques.items()
        },
    )


def _cook(draw: Random, true: Seconds) -> Cook:
    own = _wrong(true, draw, COOK_AT_TECHNIQUE)
    return Cook(own, draw.gauss(0, SKILL), draw.uniform(0.02, 0.12), draw.uniform(0.35, 0.95))


def _drill(draw: Random, true: Seconds) -> Drill:
    """Two to five techniques, one to seven pieces of each on six to twelve plates."""
    names = draw.sample(sorted(WRITTEN.techniques), draw.randint(2, 5))
    steps = tuple(
        Step(draw.randint(1, 7), name, name, WRITTEN.techniques[name].tool, WRITTEN.techniques[name].stand_in)
        for name in names
    )
    spec, set_up = Spec(steps), SetUp(draw.randint(6, 12))
    return Drill(spec, set_up, draw.gauss(0, DRILL_EFFECT), standard_s(spec, set_up, true))


def _season(draw: Random, drills: tuple[Drill, ...], cooks: dict[str, Cook]) -> Iterator[Timed]:
    """Each week those who are there run its drill one to five times."""
    so_far = dict.fromkeys(cooks, 0)
    for week, drill in enumerate(drills):
        for name, cook in cooks.items():
            if draw.random() >= cook.present:
                continue
            for nth in range(draw.randint(1, 5)):
                so_far[name] += 1
                log_s = cook.log_s(drill, so_far[name]) + draw.gauss(0, NOISE)
                yield Timed(name, week, week + nth / 5, log_s)
