"""Sister kitchens side by side: whether they have common ground, and what may then be compared of them."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from math import exp, sqrt
from statistics import mean, variance

from bot.domain.fairness.cells import Cell, groups
from bot.domain.fairness.fit import Fit
from bot.domain.places import FEWEST_COOKS, TOO_CLOSE

Sites = Mapping[str, Sequence[Cell]]
"""The cells of each site."""


@dataclass(frozen=True)
class SameSetUp:
    """A set-up run by three cooks or more at each of ``ratios``' sites: mean net / standard, cooks counting alike.

    ``close`` where the sites furthest apart are too close to call.
    """

    set_up: int
    ratios: Mapping[str, float]
    close: bool


def apart(sites: Sites, spec_of: Mapping[int, int]) -> tuple[str, str] | None:
    """Two sites that share no cook and no spec, not by way of others either; None where all have common ground."""
    by_spec = {site: [cell._replace(set_up=spec_of[cell.set_up]) for cell in cells] for site, cells in sites.items()}
    group_of = groups(chain.from_iterable(by_spec.values())).cooks
    reach = {site: {group_of[cell.cook] for cell in cells} for site, cells in by_spec.items()}
    first, *others = reach
    joined = reach[first]
    for _ in others:
        joined = joined.union(*(reach[site] for site in others if reach[site] & joined))
    return next(((first, site) for site in others if not reach[site] & joined), None)


def met_own_line(fit: Fit, cells: Sequence[Cell]) -> float | None:
    """The share of cooks whose runs took no longer than the fit expected of them; None below three cooks."""
    ahead: dict[str, float] = defaultdict(float)
    for cell in cells:
        expected = fit.expected(cell.cook, cell.set_up, cell.sum_t / cell.runs, nth=1)
        if expected is not None:
            ahead[cell.cook] += cell.runs * expected + fit.learning * cell.sum_p - cell.sum_y
    return sum(by >= 0 for by in ahead.values()) / len(ahead) if len(ahead) >= FEWEST_COOKS else None


def same_set_ups(sites: Sites) -> list[SameSetUp]:
    """The set-ups that may be compared by the clock, the most run first."""
    ratios: dict[int, dict[str, list[float]]] = defaultdict(dict)
    runs: dict[int, int] = defaultdict(int)
    for site, cells in sites.items():
        for cell in cells:
            ratios[cell.set_up].setdefault(site, []).append(cell.sum_y / cell.runs)
            runs[cell.set_up] += cell.runs
    found = []
    for set_up in sorted(ratios, key=lambda set_up: (-runs[set_up], set_up)):
        enough = {site: cooks for site, cooks in ratios[set_up].items() if len(cooks) >= FEWEST_COOKS}
        if len(enough) > 1:
            found.append(SameSetUp(set_up, {site: exp(mean(cooks)) for site, cooks in enough.items()}, _close(enough)))
    return found


def _close(sites: Mapping[str, Sequence[float]]) -> bool:
    quickest, *_, slowest = sorted(sites.values(), key=mean)
    error = sqrt(variance(quickest) / len(quickest) + variance(slowest) / len(slowest))
    return mean(slowest) - mean(quickest) < TOO_CLOSE * error
