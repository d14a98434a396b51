"""Counted runs are gathered into cells; cells say who can be compared and which difficulty may be spoken of."""

from itertools import product
from math import log

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.fairness.cells import Cell, TimedRun, cells_of, groups
from bot.domain.fairness.grounds import ready

PLACES = st.lists(st.tuples(st.sampled_from(["ime", "noor", "lio", "petra", "anselm"]), st.integers(1, 5)), max_size=12)


def cell(cook: str, set_up: int, runs: int = 1) -> Cell:
    """A cell of which the runs alone matter."""
    return Cell(cook, set_up, runs)


def test_sums() -> None:
    """A cell has the sums over its runs; practice counts the cook's runs on every set-up."""
    runs = [TimedRun("noor", 6, 0.2, 1.0), TimedRun("noor", 9, 0.5, 1.5), TimedRun("noor", 6, 0.1, 3.0)]
    first, second = cells_of(runs)
    assert second == Cell("noor", 9).plus(0.5, 1.5, nth=2)
    assert first[:3] == ("noor", 6, 2)
    assert first[3:8] == pytest.approx((0.3, 0.05, 4.0, 10.0, 0.5))
    assert first[8:] == pytest.approx((log(3), log(3) ** 2, 0.1 * log(3), 3 * log(3)))


@given(PLACES)
def test_groups(places: list[tuple[str, int]]) -> None:
    """Two cooks are in one group just when a chain of shared set-ups leads from one to the other."""
    found = groups(cell(*place) for place in places)
    cooks = sorted({cook for cook, _ in places})
    chained = {
        (a, b): any((a, set_up) in places and (b, set_up) in places for set_up in range(6))
        for a in cooks
        for b in cooks
    }
    for by, a, b in product(cooks, repeat=3):
        chained[a, b] |= chained[a, by] and chained[by, b]
    assert {(a, b): found.cooks[a] == found.cooks[b] for a in cooks for b in cooks} == chained
    assert all(found.cooks[cook] == found.set_ups[set_up] for cook, set_up in places)


ENOUGH = [cell("ime", 1, 4), cell("noor", 1, 4), cell("lio", 1, 4), cell("petra", 1, 3)]
ELSEWHERE = [cell("ime", 3), cell("noor", 3), cell("lio", 3)]
SPECS = {1: 1, 2: 1, 3: 2}
"""Set-ups 1 and 2 are of one spec."""


def test_ready() -> None:
    """Fifteen counted runs by four cooks, three of whom ran another spec, are enough for one set-up."""
    assert ready([*ENOUGH, *ELSEWHERE], SPECS) == {1}


@pytest.mark.parametrize(
    "cells",
    [
        [*ENOUGH[:3], cell("petra", 1, 2), *ELSEWHERE],
        [*ENOUGH[:2], cell("lio", 1, 7), *ELSEWHERE],
        [*ENOUGH, *ELSEWHERE[:2]],
        [*ENOUGH, *ELSEWHERE[:2], cell("lio", 2)],
    ],
    ids=["fourteen runs", "three cooks", "two linked", "the third by the same spec"],
)
def test_not_ready(cells: list[Cell]) -> None:
    """One short of any of them is not enough."""
    assert 1 not in ready(cells, SPECS)
