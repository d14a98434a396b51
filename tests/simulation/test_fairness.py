"""On kitchens with known truth the quarter's order is the fair one; ``make bench`` prints it for two hundred."""

from itertools import combinations
from statistics import fmean, median

import pytest

from tests.simulation.kitchens import Kitchen, agreement, fitted, kitchen, pace

KITCHENS = 40
Z = 1.28
"""Standard errors within which a difference is too close to call."""


@pytest.fixture(scope="module")
def kitchens() -> list[Kitchen]:
    """Forty kitchens."""
    return [kitchen(seed) for seed in range(KITCHENS)]


def test_the_order_agrees_with_the_truth(kitchens: list[Kitchen]) -> None:
    """The fitted order is nearly as true as that of an oracle who knows every drill, and truer than any other way's."""
    taus = [agreement(one) for one in kitchens]
    ways = {way: median(each[way] for each in taus) for way in taus[0]}
    assert ways["quarter board"] >= 0.90
    assert ways["quarter board"] >= ways["oracle"] - 0.03
    for way in ("computed standard", "seconds per touch", "raw time"):
        assert ways["quarter board"] > ways[way] + 0.04, way


def test_bands_of_differences_cover_the_truth(kitchens: list[Kitchen]) -> None:
    """Two cooks' true difference lies in its band of 80 % as often as that, or oftener by what the drills share."""
    inside = []
    for one in kitchens:
        fit, truth = fitted(one), one.truth()
        for a, b in combinations(truth, 2):
            error = (pace(fit, a) - pace(fit, b)) - (truth[a] - truth[b])
            se = fit.difference_se(a, b)
            assert se is not None
            inside.append(abs(error) <= Z * se)
    assert 0.77 <= fmean(inside) <= 0.93
