"""On simulated kitchens of known truth the headline board is honest, and slow weeks buy little."""

from math import log

import pytest

from tests.simulation.seasons import WEEKS, improved, loosened


@pytest.mark.parametrize(("with_fit", "seasons"), [(False, 40), (True, 8)])
@pytest.mark.parametrize("weeks_a_drill", [1, 3, WEEKS])
def test_unchanged_cooks_improve_in_half_of_the_weeks(weeks_a_drill: int, with_fit: bool, seasons: int) -> None:
    """45 to 55 % of weeks, by the fit or by middles, on new drills or on one; a best of the week would flatter most."""
    by_board, by_best = improved(seasons, weeks_a_drill, with_fit=with_fit)
    assert 0.45 <= by_board <= 0.55
    assert by_best > 0.65


@pytest.mark.parametrize(("with_fit", "seasons"), [(False, 60), (True, 12)])
@pytest.mark.parametrize("weeks_a_drill", [1, WEEKS])
def test_two_slow_weeks_raise_it_by_two_percent_each(weeks_a_drill: int, with_fit: bool, seasons: int) -> None:
    """At 25 % over for two weeks nobody gains more than 2 % a week; without the rule somebody would gain over 3 %."""
    held, free = (loosened(seasons, weeks_a_drill, with_fit=with_fit, held=held) for held in (True, False))
    assert len(held) >= 3
    assert max(held) <= log(1.02) + 1e-9
    assert max(free) > 0.03
