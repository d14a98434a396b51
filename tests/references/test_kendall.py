"""Kendall's S and its exact distribution against a published example, a printed table, scipy and counting."""

from collections import Counter
from itertools import permutations

import pytest
from scipy.stats import kendalltau

from bot.domain.kendall import chance_of, kendall_s

TUNA_X = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1]
TUNA_Y = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8]
"""Hunter L values and panel scores of nine lots of canned tuna.

Source: Hollander and Wolfe, Nonparametric Statistical Methods, 1973, p. 187; R's help of cor.test (read there).
"""

PRINTED = [(8, 16, 0.031), (8, 18, 0.016), (9, 18, 0.038), (9, 20, 0.022), (10, 21, 0.036), (10, 23, 0.023)]
"""Runs, S and its one-sided probability, about where the rule's 0.025 falls.

Source: M. G. Kendall, Rank Correlation Methods, appendix table 1 (from memory; recomputed by the tests below).
"""


def order_with(inversions: int, n: int) -> list[int]:
    """An order of n values with so many pairs the wrong way round."""
    order: list[int] = []
    for value in range(n):
        back = min(inversions, value)
        order.insert(value - back, value)
        inversions -= back
    return order


def test_tuna() -> None:
    """In order of lightness the scores have tau = S / 36 = 0.4444 and the exact two-sided p = 0.1194."""
    scores = [y for _, y in sorted(zip(TUNA_X, TUNA_Y, strict=True))]
    assert kendall_s(scores) / 36 == pytest.approx(0.4444444444444444, abs=1e-15)
    assert 2 * chance_of(scores) == pytest.approx(0.11943893298059964, abs=1e-15)


@pytest.mark.parametrize(("n", "s", "probability"), PRINTED)
def test_printed_table(n: int, s: int, probability: float) -> None:
    """To the three figures printed."""
    order = order_with((n * (n - 1) // 2 - s) // 2, n)
    assert kendall_s(order) == s
    assert round(chance_of(order), 3) == probability


@pytest.mark.parametrize("n", range(2, 13))
def test_scipy(n: int) -> None:
    """Every S that n values without equals can have, and its chance, as scipy's exact test gives them."""
    pairs = n * (n - 1) // 2
    for inversions in range(pairs + 1):
        order = order_with(inversions, n)
        s = kendall_s(order)
        assert s == pairs - 2 * inversions
        rising = order if s >= 0 else order[::-1]
        exact = kendalltau(list(range(n)), rising, method="exact", alternative="greater")
        assert chance_of(order) == pytest.approx(exact.pvalue, rel=1e-12)


@pytest.mark.parametrize("equal", [(1,), (2,), (2, 2), (3, 2, 2), (2, 2, 2, 2), (4, 4), (5, 3), (8,)])
def test_counted_over_every_order(equal: tuple[int, ...]) -> None:
    """With equal values, which scipy refuses, the chance of S is the share of all 40,320 orders that have S or more."""
    values = [group for group, size in enumerate(equal) for _ in range(size)]
    values += range(8, 16 - len(values))
    example: dict[int, tuple[int, ...]] = {}
    found: Counter[int] = Counter()
    for order in permutations(values):
        s = kendall_s(order)
        found[s] += 1
        example[s] = order
    for s, order in example.items():
        share = sum(times for each, times in found.items() if each >= abs(s)) / found.total()
        assert chance_of(order) == pytest.approx(share, rel=1e-12)
