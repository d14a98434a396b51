"""What a cook is expected to take stands on their own earlier runs, like beside like, and rises slowly."""

from dataclasses import replace
from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.expected import LAST_RUNS, Earlier, Expected, Fitted, Formerly, expect, level, middle_s

ROPE_COIL, SLIPWAY = 6, 12


def on(set_up_id: int, *nets_s: float | None, standard_s: float = 160.0) -> list[Earlier]:
    """Earlier runs on a set-up."""
    return [Earlier(set_up_id, net_s, standard_s) for net_s in nets_s]


def test_the_middle_of_own_runs_on_the_set_up() -> None:
    """Three earlier runs of 3:10, 3:00 and 3:30 make 3:10; a run with no time is slower than any of them."""
    assert expect(on(ROPE_COIL, 190, 180, 210), [], ROPE_COIL, 160) == Expected(190, 160, 190 / 160, runs=3)
    with_none = expect(on(ROPE_COIL, 190, 180, None), [], ROPE_COIL, 160)
    assert with_none is not None
    assert with_none.net_s == pytest.approx(190)


def rounded(found: Expected | None) -> Expected | None:
    """What was found with its time and ratio to the ninth place."""
    return found and replace(found, net_s=round(found.net_s, 9), usual=round(found.usual, 9))


def test_the_middle_of_two_is_that_of_their_logs() -> None:
    """Of two times it is the geometric mean: 2:40 and 3:45 make 3:10 less a third of a second."""
    assert middle_s([160, 225]) == pytest.approx(sqrt(160 * 225))


def test_only_the_last_runs_are_looked_at() -> None:
    """Ten runs at 3:00 after ten at 4:00 make 3:00: the baseline follows the cook."""
    found = expect(on(ROPE_COIL, *[240.0] * LAST_RUNS, *[180.0] * LAST_RUNS), [], ROPE_COIL, 160)
    assert found is not None
    assert found.net_s == pytest.approx(180)
    assert found.runs == LAST_RUNS


def test_on_a_new_set_up_it_is_standard_by_ones_usual_ratio() -> None:
    """Usually 1.25 of standard: 200 s on a drill whose standard is 160 s, whatever the other drills take."""
    earlier = [*on(1, 125, standard_s=100), *on(2, 250, 250, standard_s=200)]
    assert rounded(expect(earlier, [], ROPE_COIL, 160)) == Expected(200, 160, 1.25)


@pytest.mark.parametrize("earlier", [[], on(SLIPWAY, None, None, 200)])
def test_nothing_to_compare_with(earlier: list[Earlier]) -> None:
    """In a first week, and where most earlier runs have no time, there is no expected time."""
    assert expect(earlier, [], ROPE_COIL, 160) is None


def test_a_fit_stands_before_the_middles() -> None:
    """Where the weeks before were fitted, the fitted ratio to standard is taken, of the set-up or else of the cook."""
    earlier = on(ROPE_COIL, 190, 180, 210)
    known = expect(earlier, [], ROPE_COIL, 160, Fitted(usual=1.1, on_it=1.2))
    assert rounded(known) == Expected(192, 160, 1.1, runs=3, fitted=True)
    new = expect(on(SLIPWAY, 170), [], ROPE_COIL, 160, Fitted(usual=1.1, on_it=None))
    assert rounded(new) == Expected(176, 160, 1.1)


def test_two_slow_weeks_loosen_it_by_two_percent_each() -> None:
    """Ten runs at 4:00 after an expected 3:00 make 3:03.6 a week later and 3:07.3 two weeks later, not 4:00."""
    then = Expected(180, 160, 1.125, runs=5)
    for weeks, net_s in ((1, 183.6), (2, 187.272)):
        found = expect(on(ROPE_COIL, *[240.0] * 10), [Formerly(weeks, ROPE_COIL, then)], ROPE_COIL, 160)
        assert found is not None
        assert found.net_s == pytest.approx(net_s)
        assert found.held


def test_slow_weeks_on_one_drill_loosen_no_other() -> None:
    """The usual ratio rises by 2 % a week too, so that a new drill is met with what was usual before."""
    then = Expected(180, 160, 1.125, runs=5)
    found = expect(on(ROPE_COIL, *[240.0] * 10), [Formerly(1, ROPE_COIL, then)], SLIPWAY, 200)
    assert found is not None
    assert found.net_s == pytest.approx(200 * 1.125 * 1.02)
    assert found.held


def test_a_guess_at_a_drill_holds_nothing_down() -> None:
    """What was expected where nobody knew the drill is no ceiling once it is known: its standard may be wrong."""
    guessed = Formerly(1, ROPE_COIL, Expected(180, 160, 1.125))
    found = expect(on(ROPE_COIL, 240, 240), [guessed], ROPE_COIL, 160)
    assert found is not None
    assert found.net_s == pytest.approx(240)
    by_others = Formerly(1, ROPE_COIL, Expected(198, 160, 1.125, drill=1.1))
    held = expect(on(ROPE_COIL, 240, 240), [by_others], ROPE_COIL, 160)
    assert held is not None
    assert held.net_s == pytest.approx(198 * 1.02)


def test_a_new_drill_is_levelled_by_what_it_took_the_others() -> None:
    """Two others took 1.1 and 1.21 of their own usual: for the third the drill counts as their middle, 1.1537.

    Their middle by logs is sqrt(1.1 x 1.21), worked out by hand; who knows the set-up is left as they were.
    """
    expected = {cook: Expected(160.0, 160.0, 1.0) for cook in ("noor", "lio", "petra")}
    expected["kwabena"] = Expected(150.0, 160.0, 1.0, runs=4)
    actual_s = {"noor": 176.0, "lio": 160 * 1.21, "petra": 300.0}
    found = level({cook: expected[cook] for cook in actual_s}, actual_s)
    assert found["petra"].drill == pytest.approx(sqrt(1.1 * 1.21))
    assert found["petra"].net_s == pytest.approx(160 * sqrt(1.1 * 1.21))
    assert level({cook: expected[cook] for cook in ("noor", "lio")}, actual_s)["noor"] == expected["noor"]
    assert level(expected, {**actual_s, "kwabena": 170.0})["kwabena"] == expected["kwabena"]


@given(st.lists(st.floats(60, 600), min_size=1, max_size=15), st.floats(0.5, 2))
def test_a_drill_twice_as_long_is_expected_to_take_twice_as_long(nets_s: list[float], times: float) -> None:
    """Expectations are ratios: scaling every time and the standard scales what is expected."""
    one = expect(on(ROPE_COIL, *nets_s), [], ROPE_COIL, 160)
    other = expect(
        on(ROPE_COIL, *(net_s * times for net_s in nets_s), standard_s=160 * times), [], ROPE_COIL, 160 * times
    )
    assert one is not None
    assert other is not None
    assert other.net_s == pytest.approx(one.net_s * times)
    assert other.usual == pytest.approx(one.usual)
