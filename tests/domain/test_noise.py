"""Own noise where a cook has runs enough, else the crew's, else what to begin with."""

from math import exp

import pytest

from bot.domain.noise import LEAST_NOISE, NOISE_TO_BEGIN_WITH, noises

DIVISOR = 0.9538725524089398
"""Of a median moving range of two: closed form for span 2, as in control-chart tables (recomputed)."""


def zigzag(step: float, runs: int) -> list[float]:
    """Runs about 3:00 each a step of log net from the one before."""
    return [180 * exp(step * (nth % 2)) for nth in range(runs)]


def test_own_noise_from_eight_runs() -> None:
    """With eight runs it is a cook's own, whatever the others' is."""
    found = noises({"noor": zigzag(0.05, 8), "lio": zigzag(0.1, 9)})
    assert found == pytest.approx({"noor": 0.05 / DIVISOR, "lio": 0.1 / DIVISOR})


def test_the_crews_noise_for_few_runs() -> None:
    """A cook of one run has the middle step of the whole crew, here that of eight steps: six of 3 %, two of 20 %."""
    found = noises({"noor": zigzag(0.03, 7), "lio": zigzag(0.2, 3), "petra": [300.0]})
    assert found == pytest.approx(dict.fromkeys(("noor", "lio", "petra"), 0.03 / DIVISOR))


def test_before_the_crew_has_shown_its_own() -> None:
    """Under eight steps of all together it is 4 %."""
    assert noises({"noor": zigzag(0.1, 7), "lio": [180.0]}) == dict.fromkeys(("noor", "lio"), NOISE_TO_BEGIN_WITH)


def test_nobody_is_clockwork() -> None:
    """Eight runs alike to the second leave a noise of 1 %."""
    assert noises({"noor": [180.0] * 8}) == {"noor": LEAST_NOISE}
