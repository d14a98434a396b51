"""Kendall's test of order: how often chance alone puts values so steadily in rising or falling order."""

from collections.abc import Sequence
from functools import cache
from itertools import combinations


def kendall_s(values: Sequence[float]) -> int:
    """Kendall's S of values in their order: pairs of which the later is larger, less those of which it is smaller."""
    return sum((later > earlier) - (later < earlier) for earlier, later in combinations(values, 2))


def chance_of(s: int, n: int) -> float:
    """The exact one-sided p of S: the share of all orders of n values that rise (or fall) at least so steadily.

    Equal values have their own distribution, a narrower one: for them a small chance is told too large, never too
    small, so that times in whole seconds claim nothing that is not there.
    """
    inverted = _orders_by_inversions(n)
    pairs = len(inverted) - 1
    most = (pairs - abs(s) + 1) // 2
    return sum(inverted[: most + 1]) / sum(inverted)


@cache
def _orders_by_inversions(n: int) -> tuple[int, ...]:
    """How many orders of n values have 0, 1, 2, … pairs the wrong way round.

    The n-th value may be put before any 0 to n - 1 of the others, which inverts so many pairs more.
    """
    if n <= 1:
        return (1,)
    fewer = _orders_by_inversions(n - 1)
    most = n * (n - 1) // 2
    return tuple(sum(fewer[max(k - n + 1, 0) : k + 1]) for k in range(most + 1))
