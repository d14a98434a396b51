"""Whether a drill is ready for a harder version: what a cook's last runs have to show, and how many cooks it takes."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction
from statistics import median
from typing import Literal

from bot.domain.bests import whole_s
from bot.domain.drill import Drill
from bot.domain.run import Kind
from bot.domain.standard_time import standard_s, targets
from bot.domain.techniques import Seconds

LOOKED_AT = 3
GOOD_IN_ALL = Fraction(11, 12)
GOOD_IN_EACH = Fraction(10, 12)
DAYS_AT_A_LEVEL = 7
FEWEST_COOKS = 2
LEAST_SHARE_OF_COOKS = Fraction(1, 2)

Lack = Literal["runs", "stopped", "good", "each", "redo", "target", "days"]
"""What is still missing: three counted runs, none of the last three stopped, plates good in all and in each of them,
redo not rising, the target, a week at this level."""


@dataclass(frozen=True)
class LevelRun:
    """What of a run on one set-up speaks for a harder one; ``net_s`` is None where there is no time."""

    day: date
    kind: Kind
    accepted: int
    attempted: int
    net_s: float | None


@dataclass(frozen=True)
class Standing:
    """Where a cook stands on a set-up: plates and median of the last counted runs, three at most, and what is lacking.

    ``days`` are those since the first counted run.
    """

    runs: int
    accepted: int
    attempted: int
    median_s: int | None
    days: int
    lacks: tuple[Lack, ...]

    @property
    def ready(self) -> bool:
        """Whether nothing is lacking."""
        return not self.lacks


def target_s(drill: Drill, seconds: Seconds) -> int:
    """The time to meet, in whole seconds: the one that the chef set, else the house's."""
    house_s = targets(standard_s(drill.spec, drill.set_up, seconds)).house_s
    return whole_s(house_s) if drill.wording.target_s is None else drill.wording.target_s


def standing_of(runs: Sequence[LevelRun], target: int, today: date) -> Standing:
    """Where a cook stands after these runs, given in the order in which they were run, those of every kind."""
    counted = [run for run in runs if run.kind == "counted"]
    last = counted[-LOOKED_AT:]
    nets_s = [run.net_s for run in last if run.net_s is not None]
    middle_s = whole_s(median(nets_s)) if nets_s and len(nets_s) == len(last) else None
    days = (today - counted[0].day).days if counted else 0
    tests: dict[Lack, bool] = {
        "runs": len(last) == LOOKED_AT,
        "stopped": all(run.kind != "stopped" for run in runs[-LOOKED_AT:]),
        "good": _good(last) >= GOOD_IN_ALL,
        "each": all(_good([run]) >= GOOD_IN_EACH for run in last),
        "redo": not _rises(counted[-2 * LOOKED_AT : -LOOKED_AT], last),
        "target": middle_s is not None and middle_s <= target,
        "days": days >= DAYS_AT_A_LEVEL,
    }
    return Standing(
        runs=len(last),
        accepted=sum(run.accepted for run in last),
        attempted=sum(run.attempted for run in last),
        median_s=middle_s,
        days=days,
        lacks=tuple(lack for lack, met in tests.items() if not met),
    )


def is_room_ready(standings: Sequence[Standing]) -> bool:
    """Whether a drill is offered for raising: at least half of the month's cooks, and two or more, lack nothing."""
    ready = sum(standing.ready for standing in standings)
    return ready >= FEWEST_COOKS and ready >= LEAST_SHARE_OF_COOKS * len(standings)


def _good(runs: Sequence[LevelRun]) -> Fraction:
    """The share of plates accepted; of none built, none."""
    attempted = sum(run.attempted for run in runs)
    return Fraction(sum(run.accepted for run in runs), attempted) if attempted else Fraction(0)


def _rises(before: Sequence[LevelRun], last: Sequence[LevelRun]) -> bool:
    """Whether more is redone than in the three runs before, or, where there are none, in the last than in the first."""
    if not last:
        return False
    return _good(last) < _good(before) if before else _good(last[-1:]) < _good(last[:1])
