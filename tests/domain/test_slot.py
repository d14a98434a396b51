"""What fits in a slot, checked by hand. Laying out, judging, reset and clearing: common practice, no source."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill
from bot.domain.slot import fit_slot
from tests.domain.kitchen import EVERY, FULL_TIDE, ROPE_COIL, SECONDS


def test_rope_coil_in_25_minutes() -> None:
    """3:00 + 2 x (2:44 + 8 x 10 s + 8 x 20 s) + 5:00 = 21:28; a third run would end at 28:12."""
    slot = fit_slot(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, 25 * 60)
    assert (slot.runs, slot.each_s) == (2, 164 + 80 + 160)
    assert (slot.taken_s(2), slot.taken_s(3)) == (21 * 60 + 28, 28 * 60 + 12)


def test_own_median_in_the_place_of_standard() -> None:
    """At 4:40 a run one fits in 25:00; at 4:31 two fill 25:02 to the second, and 25:01 holds one."""
    assert fit_slot(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, 25 * 60, 280.0).runs == 1
    assert fit_slot(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, 480 + 2 * (271 + 240), 271.0).runs == 2
    assert fit_slot(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, 479 + 2 * (271 + 240), 271.0).runs == 1


@given(st.sampled_from(EVERY), st.integers(0, 4 * 3600))
def test_as_many_as_fit(drill: Drill, length_s: int) -> None:
    """What is said to fit does, one more does not unless the day's safe number ended it, and reset is never nothing."""
    slot = fit_slot(drill.spec, drill.set_up, SECONDS, length_s)
    assert slot.runs == 0 or slot.taken_s(slot.runs) <= length_s
    assert slot.more_fit == (slot.taken_s(slot.runs + 1) <= length_s)
    assert slot.reset_s == 20 * drill.set_up.plates


def test_the_days_safe_number_ends_it() -> None:
    """Three hours hold five runs of Rope coil at most, and three of Full tide, which strains the hand."""
    five, three = (fit_slot(drill.spec, drill.set_up, SECONDS, 3 * 3600) for drill in (ROPE_COIL, FULL_TIDE))
    assert (five.runs, five.more_fit) == (5, True)
    assert (three.runs, three.more_fit) == (3, True)


def test_the_house_sets_its_own_seconds() -> None:
    """A house that resets a plate in 40 s has time for one run."""
    slow = replace(SECONDS, reset_plate_s=40.0)
    assert fit_slot(ROPE_COIL.spec, ROPE_COIL.set_up, slow, 25 * 60).runs == 1
