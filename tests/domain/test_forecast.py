"""The next run is a band one step ahead, wider for a scattered cook, and none for a few runs."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.forecast import least_squares, next_run

nets = st.lists(st.floats(60, 600), min_size=8, max_size=24)


def test_too_few() -> None:
    """Seven first runs allow no forecast, eight do."""
    assert next_run([200.0] * 7) is None
    assert next_run([200.0] * 8) is not None


def test_a_cook_like_a_clock() -> None:
    """Who takes 1 % less every run exactly is expected to do it once more, with no width to speak of."""
    band = next_run([200 * 0.99**nth for nth in range(10)])
    assert band is not None
    assert (band.low_s, band.middle_s, band.high_s) == pytest.approx([200 * 0.99**10] * 3)


def test_last_ten_alone() -> None:
    """What was before the last ten does not bear on the next run."""
    last = [200.0, 210, 195, 205, 190, 202, 199, 207, 193, 201]
    assert next_run([900, 20, *last]) == next_run(last)


@given(nets, st.floats(0.2, 5))
def test_band_is_relative(nets_s: list[float], slower: float) -> None:
    """The band lies about its middle by the same factor below and above, and scales with the drill's time."""
    band, scaled = next_run(nets_s), next_run([net_s * slower for net_s in nets_s])
    assert band is not None
    assert scaled is not None
    assert band.middle_s / band.low_s == pytest.approx(band.high_s / band.middle_s)
    assert scaled.high_s == pytest.approx(band.high_s * slower)


def test_further_is_less_known() -> None:
    """A new value is least uncertain at the middle of the points, and there more so than the points' own scatter."""
    fit = least_squares([1.0, 2, 3, 4], [1.0, 3, 2, 4])
    assert fit.residual_sd < fit.spread_at(2.5) < fit.spread_at(4) < fit.spread_at(5)
