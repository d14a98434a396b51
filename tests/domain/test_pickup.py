"""Hands for a pickup: how a plate is shared out, and how long so many plates take.

The times of Full tide are fixtures of the project's own model; the sharing itself is checked against trying every way.
"""

from dataclasses import replace
from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.domain.pace import clock_text
from bot.domain.pickup import Shares, own_ratio, plan_pickup, plan_with, share_out, shares_of
from tests.domain.kitchen import FULL_TIDE, ROPE_COIL, SECONDS

FULL_TIDE_SHARES = shares_of(FULL_TIDE.spec, SECONDS)
SHARES = st.lists(st.integers(1, 60).map(lambda tenths: tenths / 4), min_size=1, max_size=7).map(tuple)
"""Quarters of a second, which doubles hold exactly, so that sums may be compared."""


def _every_run_of_neighbours(shares_s: Shares, hands: int) -> float:
    """The smallest largest share over every way to cut the steps into at most so many runs."""
    places = range(1, len(shares_s))
    cuts = (cut for many in range(min(hands, len(shares_s))) for cut in combinations(places, many))
    return min(max(sum(shares_s[a:b]) for a, b in pairwise((0, *cut, len(shares_s)))) for cut in cuts)


def _every_sharing(shares_s: Shares, hands: int) -> float:
    """The same where several hands may take one step, by trying every way from the first step on."""
    if not shares_s:
        return 0.0
    runs = [(sum(shares_s[:end]), 1, shares_s[end:]) for end in range(1, len(shares_s) + 1)]
    shared = [(shares_s[0] / many, many, shares_s[1:]) for many in range(2, hands + 1)]
    ways = [(share, many, rest) for share, many, rest in runs + shared if hands - many >= (1 if rest else 0)]
    return min((max(share, _every_sharing(rest, hands - many)) for share, many, rest in ways), default=float("inf"))


@pytest.mark.parametrize(
    ("hands", "time"), [(3, "33:57"), (4, "27:24"), (5, "22:27"), (6, "22:27"), (7, "22:27"), (1, "1:15:24")]
)
def test_full_tide(hands: int, time: str) -> None:
    """120 plates by so many hands; from the fifth on shingling, 11.0 s a plate, lets nothing pass more often."""
    assert clock_text(share_out(FULL_TIDE_SHARES, 120, hands).time_s) == time
    assert FULL_TIDE_SHARES[2] == pytest.approx(11.0, abs=1e-9)


@settings(deadline=None)
@given(SHARES, st.integers(1, 9))
def test_no_other_cut_is_better(shares_s: Shares, hands: int) -> None:
    """The largest share is the smallest that any cutting into neighbours gives."""
    assert share_out(shares_s, 1, hands).largest_s == _every_run_of_neighbours(shares_s, hands)


@settings(deadline=None)
@given(SHARES.filter(lambda shares_s: len(shares_s) <= 5), st.integers(1, 6))
def test_no_other_sharing_is_better(shares_s: Shares, hands: int) -> None:
    """Where hands may share a step, no other way of standing is quicker."""
    assert share_out(shares_s, 1, hands, divide=True).largest_s == _every_sharing(shares_s, hands)


@settings(deadline=None)
@given(SHARES, st.integers(1, 9), st.integers(1, 300), st.booleans())
def test_every_step_is_done_once(shares_s: Shares, hands: int, plates: int, divide: bool) -> None:
    """The stations are all steps in order, by no more hands than there are; the time is the touches and the rest."""
    line = share_out(shares_s, plates, hands, divide=divide)
    assert [nth for station in line.stations for nth in range(station.first, station.end)] == list(range(len(shares_s)))
    assert line.hands <= hands
    assert all(station.end - station.first == 1 for station in line.stations if station.hands > 1)
    assert line.time_s == pytest.approx(sum(shares_s) + (plates - 1) * line.largest_s, abs=1e-6)


def test_the_question_of_120_in_20() -> None:
    """Five hands come nearest; two on shingling, or four slices, would do it."""
    pickup = plan_pickup(FULL_TIDE.spec, SECONDS, 120, 20 * 60)
    assert (pickup.line.hands, pickup.narrowest) == (5, 2)
    assert pickup.divided
    assert (pickup.divided.hands, clock_text(pickup.divided.time_s)) == (6, "15:18")
    assert [station.hands for station in pickup.divided.stations] == [1, 2, 1, 1, 1]
    assert pickup.fewer
    assert (pickup.fewer.pieces, pickup.fewer.line.hands, clock_text(pickup.fewer.line.time_s)) == (4, 5, "18:03")


@settings(deadline=None)
@given(st.integers(1, 300), st.integers(1, 7200))
def test_the_fewest_hands_that_are_in_time(plates: int, limit_s: int) -> None:
    """Where it can be done, one pair of hands fewer cannot; where it cannot, neither can a pair for every step."""
    line = plan_pickup(FULL_TIDE.spec, SECONDS, plates, limit_s).line
    if line.within(limit_s):
        assert line.hands == 1 or not share_out(FULL_TIDE_SHARES, plates, line.hands - 1).within(limit_s)
    else:
        assert not share_out(FULL_TIDE_SHARES, plates, 7).within(limit_s)


def test_a_time_that_reads_as_the_limit_is_within_it() -> None:
    """22:26.7 reads as 22:27 and is within 22:27, not within 22:26."""
    line = share_out(FULL_TIDE_SHARES, 120, 5)
    assert line.within(22 * 60 + 27)
    assert not line.within(22 * 60 + 26)


def test_one_plate_and_one_piece() -> None:
    """One plate takes its touches by one pair of hands; a narrowest step of one piece cannot have fewer."""
    assert plan_pickup(FULL_TIDE.spec, SECONDS, 1, 60).line.hands == 1
    single = replace(ROPE_COIL.spec, steps=(replace(ROPE_COIL.spec.steps[0], pieces=1),))
    assert plan_pickup(single, SECONDS, 120, 60).fewer is None


def test_hands_that_gain_nothing_are_not_asked_for() -> None:
    """Of two equal steps one pair of hands each is as quick as three: the third would only halve one of them."""
    coils = replace(ROPE_COIL.spec, steps=(ROPE_COIL.spec.steps[0],) * 2)
    assert [plan_with(coils, SECONDS, 120, hands).hands for hands in (1, 2, 3, 4)] == [1, 2, 2, 4]


def test_own_ratio_needs_five_people() -> None:
    """The median of five people's medians, each of their own runs; of four there is none."""
    people = [[1.0, 1.2, 5.0], [1.1], [1.3], [0.9], [2.0, 1.0]]
    assert own_ratio(people) == 1.2
    assert own_ratio([*people[:4], []]) is None
