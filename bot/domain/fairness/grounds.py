"""What a comparison across drills stands on: runs enough, work shared, and set-ups that may be compared at all."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from bot.domain.drill import SetUp, Spec
from bot.domain.fairness.cells import NEEDED_COOKS, NEEDED_LINKS, NEEDED_RUNS, Cell
from bot.domain.standard_time import standard_s
from bot.domain.techniques import Seconds

SHORTEST_S = 60.0
"""Standard time below which hand timing says too little across specs."""

FEWEST_EXAMPLES = 8
"""Timed runs with a technique below which its standard seconds carry no comparison."""

LEAST_SHARED = 0.5

Work = Mapping[tuple[str, str], float]
"""Standard seconds by technique and surface: what is done on another surface is other work."""


@dataclass(frozen=True)
class Ground:
    """How many counted runs by how many cooks there are, and how many of those cooks ran more than one spec."""

    runs: int
    cooks: int
    linked: int

    @property
    def enough(self) -> bool:
        """Whether a number across specs may be given; until then the computed standard stands (house rule)."""
        return self.runs >= NEEDED_RUNS and self.cooks >= NEEDED_COOKS and self.linked >= NEEDED_LINKS


def ground_of(cells: Iterable[Cell], spec_of: Mapping[int, int], set_up: int | None = None) -> Ground:
    """What there is of one set-up, or of all where none is given; ``spec_of`` gives the spec of each set-up."""
    cells = tuple(cells)
    looked_at = [cell for cell in cells if set_up in (None, cell.set_up)]
    return _ground(looked_at, _who_ran_several(cells, spec_of))


def ready(cells: Iterable[Cell], spec_of: Mapping[int, int]) -> frozenset[int]:
    """The set-ups with ground enough for their fitted difficulty; for the others the computed standard stands."""
    cells = tuple(cells)
    linked = _who_ran_several(cells, spec_of)
    by_set_up: dict[int, list[Cell]] = defaultdict(list)
    for cell in cells:
        by_set_up[cell.set_up].append(cell)
    return frozenset(set_up for set_up, of_it in by_set_up.items() if _ground(of_it, linked).enough)


def _who_ran_several(cells: Iterable[Cell], spec_of: Mapping[int, int]) -> frozenset[str]:
    """The cooks who ran more than one spec."""
    specs: dict[str, set[int]] = defaultdict(set)
    for cell in cells:
        specs[cell.cook].add(spec_of[cell.set_up])
    return frozenset(cook for cook, ran in specs.items() if len(ran) > 1)


def _ground(cells: Sequence[Cell], linked: frozenset[str]) -> Ground:
    cooks = {cell.cook for cell in cells}
    return Ground(sum(cell.runs for cell in cells), len(cooks), len(cooks & linked))


def may_compare(spec: Spec, set_up: SetUp, seconds: Seconds) -> bool:
    """Whether runs of this set-up may stand beside those of others: not a pair's, not under calls, not under 1:00."""
    return set_up.cooks == 1 and not set_up.pressure and standard_s(spec, set_up, seconds) >= SHORTEST_S


def work_of(spec: Spec, set_up: SetUp, seconds: Seconds) -> Work:
    """The work of one run."""
    work: dict[tuple[str, str], float] = defaultdict(float)
    for step in spec.steps:
        of_touches_s = step.pieces * seconds.techniques[step.technique].seconds
        work[step.technique, " ".join(spec.plate.casefold().split())] += set_up.plates * of_touches_s
    return work


def in_common(cells: Iterable[Cell], works: Mapping[int, Work]) -> frozenset[str]:
    """The cooks of whose work at least half is like the crew's, by technique and surface.

    The shares of their own runs and of all runs are laid over each other; a technique timed fewer than eight times on
    a surface is shared with nobody.
    """
    cells = tuple(cells)
    whole, timed = _shares(cells, works), _times(cells, works)
    known = {kind: share for kind, share in whole.items() if timed[kind] >= FEWEST_EXAMPLES}
    cooks = {cell.cook: _shares([own for own in cells if own.cook == cell.cook], works) for cell in cells}
    shared = {cook: sum(min(own.get(kind, 0.0), known[kind]) for kind in known) for cook, own in cooks.items()}
    return frozenset(cook for cook, share in shared.items() if share >= LEAST_SHARED)


def _times(cells: Iterable[Cell], works: Mapping[int, Work]) -> dict[tuple[str, str], int]:
    timed: dict[tuple[str, str], int] = defaultdict(int)
    for cell in cells:
        for kind in works[cell.set_up]:
            timed[kind] += cell.runs
    return timed


def _shares(cells: Iterable[Cell], works: Mapping[int, Work]) -> dict[tuple[str, str], float]:
    spent_s: dict[tuple[str, str], float] = defaultdict(float)
    for cell in cells:
        for kind, of_run_s in works[cell.set_up].items():
            spent_s[kind] += cell.runs * of_run_s
    total_s = sum(spent_s.values())
    return {kind: of_kind_s / total_s for kind, of_kind_s in spent_s.items()}
