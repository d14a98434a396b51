"""Kendall's test of order: how often chance alone puts values so steadily in rising or falling order."""

from collections import Counter
from collections.abc import Sequence
from functools import cache
from itertools import combinations

Counts = tuple[int, ...]
"""How many orders have 0, 1, 2, … pairs the wrong way round."""


def kendall_s(values: Sequence[float]) -> int:
    """Kendall's S of values in their order: pairs of which the later is larger, less those of which it is smaller."""
    return sum((later > earlier) - (later < earlier) for earlier, later in combinations(values, 2))


def chance_of(values: Sequence[float]) -> float:
    """The exact one-sided p of their S: the share of all their orders that rise (or fall) at least so steadily.

    Exact with equal values too, since times in whole seconds often are: without that, one pair of equal times would
    make the chance of progress seem smaller, or larger, than it is.
    """
    inverted = _orders_by_inversions(tuple(sorted(Counter(values).values())))
    unequal_pairs = len(inverted) - 1
    most = (unequal_pairs - abs(kendall_s(values))) // 2
    return sum(inverted[: most + 1]) / sum(inverted)


@cache
def _orders_by_inversions(groups: tuple[int, ...]) -> Counts:
    """The orders of values of which so many each are equal (a Gaussian multinomial, by its coefficients).

    The n-th value may be put before any 0 to n - 1 of the others, which inverts so many pairs more; among its equals
    nothing is inverted, so what they would have done between themselves is divided out again.
    """
    counts: Counts = (1,)
    placed = 0
    for size in groups:
        for nth in range(1, size + 1):
            placed += 1
            counts = _without(_with(counts, placed), nth)
    return counts


def _with(counts: Counts, places: int) -> Counts:
    """With one value more that may go to any of so many places: times 1 + q + … + q^(places - 1)."""
    return tuple(sum(counts[max(k - places + 1, 0) : k + 1]) for k in range(len(counts) + places - 1))


def _without(counts: Counts, places: int) -> Counts:
    """The inverse of ``_with``."""
    fewer: list[int] = []
    for k in range(len(counts) - places + 1):
        fewer.append(counts[k] - sum(fewer[max(k - places + 1, 0) :]))
    return tuple(fewer)
