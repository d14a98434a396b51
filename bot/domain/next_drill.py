"""What a cook practises next: the drill at their level that trains most of what costs them time, run after run."""

from collections import Counter, defaultdict
from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from statistics import median

from bot.domain.drill import Drill
from bot.domain.redo_reasons import techniques_behind
from bot.domain.splits import SplitRun, repeated_s, step_times
from bot.domain.standard_time import alone_s, standard_s
from bot.domain.techniques import Seconds

COURSE: Mapping[int, int] = {1: 1, 2: 1, 3: 1, 4: 1, 5: 2, 6: 2, 7: 2}
"""How many weeks a newcomer gives to each of the first drills, by number and in this order."""

LEVEL_RUNS = 3
EASIEST, HARDEST = 0.8, 1.3
"""A drill is within reach where its standard time is so many times that of the present level."""

REASON_RUNS = 5
FEWEST_MENTIONS = 2
RESTED_DAYS = 21
RESTED_S = 5.0
"""What three weeks without a technique are worth beside seconds lost (common practice, no source)."""


@dataclass(frozen=True)
class PractisedRun:
    """What of a run tells what to practise; ``splits_s`` and ``reasons`` may be empty."""

    day: date
    drill: Drill
    attempted: int
    splits_s: tuple[int, ...] = ()
    reasons: tuple[str, ...] = ()


@dataclass(frozen=True)
class Mentions:
    """A redo reason that was given in so many of the last runs."""

    reason: str
    times: int
    of_runs: int


@dataclass(frozen=True)
class Costs:
    """What a technique costs: seconds over standard in each of the last three runs, and what its redos cost a run."""

    lost_s: float = 0.0
    redo_s: float = 0.0
    mentions: Mentions | None = None

    @property
    def total_s(self) -> float:
        """Both together."""
        return self.lost_s + self.redo_s


@dataclass(frozen=True)
class NextDrill:
    """The technique to train and the drill to do it on; no drill where none within reach of ``level_s`` has it."""

    technique: str
    costs: Costs
    level_s: float
    drill: Drill | None


def course_drill(weeks: Mapping[int, int]) -> int | None:
    """The number of the drill that the course comes to after so many weeks on each; None once it is through."""
    return next((number for number, wanted in COURSE.items() if weeks.get(number, 0) < wanted), None)


def next_drill(
    drills: Sequence[Drill], runs: Sequence[PractisedRun], seconds: Seconds, today: date
) -> NextDrill | None:
    """What to practise next after these runs, given in the order in which they were run; None where nothing tells.

    A drill's worth is the sum over its techniques of the technique's share of the drill x what the technique costs,
    with a little more for one rested for three weeks. Only drills within reach of the present level are looked at.
    """
    costs = costs_of(runs, seconds)
    if not costs:
        return None
    level_s = present_level_s(runs, seconds)
    recent = {step.technique for run in runs if (today - run.day).days < RESTED_DAYS for step in run.drill.spec.steps}
    worth = [
        (sum(share * _worth_s(name, costs, recent) for name, share in shares.items()), drill, shares)
        for drill in drills
        if EASIEST * level_s <= standard_s(drill.spec, drill.set_up, seconds) <= HARDEST * level_s
        if not costs.keys().isdisjoint(shares := shares_of(drill, seconds))
    ]
    if not worth:
        dearest = max(costs, key=lambda name: costs[name].total_s)
        return NextDrill(dearest, costs[dearest], level_s, None)
    _, drill, shares = max(worth, key=lambda each: each[0])
    trained = max(costs.keys() & shares.keys(), key=lambda name: (shares[name] * costs[name].total_s, name))
    return NextDrill(trained, costs[trained], level_s, drill)


def costs_of(runs: Sequence[PractisedRun], seconds: Seconds) -> dict[str, Costs]:
    """What each technique costs by splits and by redo reasons; those that cost nothing again and again are left out."""
    lost = {name: repeated_s(lost_s) for name, lost_s in _lost_by_technique(runs, seconds).items()}
    redone = _redone(runs[-REASON_RUNS:], seconds)
    return {
        name: replace(redone.get(name, Costs()), lost_s=lost.get(name) or 0.0)
        for name in (lost | redone)
        if lost.get(name) or name in redone
    }


def present_level_s(runs: Sequence[PractisedRun], seconds: Seconds) -> float:
    """The standard time that the cook is at: the median of the set-ups of the last three runs."""
    return median(standard_s(run.drill.spec, run.drill.set_up, seconds) for run in runs[-LEVEL_RUNS:])


def shares_of(drill: Drill, seconds: Seconds) -> dict[str, float]:
    """What part of a drill's standard time is touches of each technique."""
    whole_s = standard_s(drill.spec, drill.set_up, seconds)
    shares: dict[str, float] = defaultdict(float)
    for step in drill.spec.steps:
        touching_s = drill.set_up.plates * step.pieces * seconds.techniques[step.technique].seconds
        shares[step.technique] += touching_s / whole_s
    return shares


def _worth_s(name: str, costs: Mapping[str, Costs], recent: Container[str]) -> float:
    return costs.get(name, Costs()).total_s + (0.0 if name in recent else RESTED_S)


def _lost_by_technique(runs: Iterable[PractisedRun], seconds: Seconds) -> dict[str, list[float]]:
    """Seconds over standard by technique, one figure for each run with splits that had it."""
    lost: dict[str, list[float]] = defaultdict(list)
    for run in runs:
        spec, set_up = run.drill.spec, run.drill.set_up
        times = step_times(spec, set_up, seconds, SplitRun(run.splits_s, run.attempted))
        in_run: dict[str, float] = defaultdict(float)
        for step, time in zip(spec.steps, times, strict=False):
            in_run[step.technique] += time.lost_s
        for name, lost_s in in_run.items():
            lost[name].append(lost_s)
    return lost


def _redone(runs: Sequence[PractisedRun], seconds: Seconds) -> dict[str, Costs]:
    """What the redo reasons of these runs cost a run, by technique; a reason is heard from its second run on.

    Each run that gives a reason pays for one plate built again alone, shared by the techniques that it may be of.
    """
    paid_s: dict[str, float] = defaultdict(float)
    given: dict[str, Counter[str]] = defaultdict(Counter)
    for run in runs:
        one_s = seconds.change_plate_s + alone_s(run.drill.spec, seconds)
        for reason in run.reasons:
            behind = techniques_behind(reason, run.drill.spec)
            for name in behind:
                paid_s[name] += one_s / len(behind)
                given[name][reason] += 1
    most = {name: reasons.most_common(1)[0] for name, reasons in given.items()}
    return {
        name: Costs(redo_s=paid_s[name] / len(runs), mentions=Mentions(reason, times, len(runs)))
        for name, (reason, times) in most.items()
        if times >= FEWEST_MENTIONS
    }
