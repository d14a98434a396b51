"""Cohen's kappa against published tables and an independent library."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from statsmodels.stats.inter_rater import cohens_kappa

from bot.domain.judging import kappa

COUNTS = st.lists(st.lists(st.integers(0, 40), min_size=3, max_size=3), min_size=3, max_size=3)


def test_cohen_1960() -> None:
    """Three diagnoses by two judges in shares of 100: agreement .70, chance .41, kappa .492.

    Source: J. Cohen, A coefficient of agreement for nominal scales, Educational and Psychological Measurement 20
    (1960), 37-46: the table as reproduced in the documentation of an R package (lbagree, cohen_k); .492 from memory.
    """
    assert kappa([[44, 5, 1], [7, 20, 3], [9, 5, 6]]) == pytest.approx(0.492, abs=5e-4)


def test_fifty_proposals() -> None:
    """Two readers of fifty proposals, both yes on 20, both no on 15: agreement .7, chance .5, kappa .4.

    Source: the textbook example as told in encyclopedias under Cohen's kappa (from memory; recomputed by hand).
    """
    assert kappa([[20, 5], [10, 15]]) == pytest.approx(0.4, abs=1e-12)


def test_the_same_agreement_is_worth_less_when_one_answer_is_common() -> None:
    """Of a hundred, 60 agree in both: kappa .1304 where the margins are even, .2593 where they are opposed.

    Source: the two tables usually told of Cohen's kappa (from memory; recomputed by hand).
    """
    even, opposed = kappa([[45, 15], [25, 15]]), kappa([[25, 35], [5, 35]])
    assert even == pytest.approx(0.1304, abs=5e-5)
    assert opposed == pytest.approx(0.2593, abs=5e-5)


@given(COUNTS)
def test_statsmodels(table: list[list[int]]) -> None:
    """Any table of three categories gives what statsmodels gives; where that divides by zero, kappa is undefined."""
    total = sum(map(sum, table))
    rows, columns = [sum(row) for row in table], [sum(column) for column in zip(*table, strict=True)]
    if total and sum(a * b for a, b in zip(rows, columns, strict=True)) < total * total:
        assert kappa(table) == pytest.approx(float(cohens_kappa(np.array(table), return_results=False)), abs=1e-9)
    else:
        assert kappa(table) is None
