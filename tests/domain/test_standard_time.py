"""Standard time: what a spec in a set-up should take.

The tables of every drill are in tests/library. Numbers here are fixtures of the project's own model.
"""

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill, SetUp, Spec, Step
from bot.domain.pace import clock_text
from bot.domain.standard_time import (
    alone_s,
    change_percent,
    levelled_touches,
    passes,
    reaches,
    standard_s,
    targets,
    tool_changes,
    touches,
)
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, ROPE_COIL, SECONDS, SLIPWAY


def _step(pieces: int, technique: str) -> Step:
    known = SECONDS.techniques[technique]
    return Step(pieces=pieces, component="bean", technique=technique, tool=known.tool, stand_in=known.stand_in)


def _spec(*steps: tuple[int, str]) -> Spec:
    return Spec(tuple(_step(pieces, technique) for pieces, technique in steps))


def test_four_pairs_are_eight_touches_and_four_reaches() -> None:
    """Two hands setting two pieces touch twice and reach once; a single left over is a reach of its own."""
    assert (touches(_spec((8, "pair"))), reaches(_spec((8, "pair")), SECONDS)) == (8, 4)
    assert reaches(_spec((7, "pair")), SECONDS) == 4
    assert reaches(_spec((3, "place"), (1, "set")), SECONDS) == 4


def test_full_tide_has_eighteen_touches_and_six_tool_changes() -> None:
    """Seven steps with seven tools in turn: six changes, seven passes."""
    spec = FULL_TIDE.spec
    assert (touches(spec), tool_changes(spec), passes(spec)) == (18, 6, 7)
    assert touches(spec) * FULL_TIDE.set_up.plates == 216


def test_a_press_and_its_lift_are_one_pass() -> None:
    """Lock gate walks the row five times for six steps; a lift after anything else is a pass of its own."""
    assert (len(LOCK_GATE.spec.steps), passes(LOCK_GATE.spec)) == (6, 5)
    assert passes(_spec((1, "press"), (1, "dot"), (1, "lift"))) == 3


def test_tools_that_differ_in_spelling_alone_are_no_change() -> None:
    """Case and spaces do not make another tool."""
    first, second = _step(1, "set"), replace(_step(1, "place"), tool=" Fingers ")
    assert tool_changes(Spec((first, second))) == 0


def test_the_sum_of_rope_coil() -> None:
    """8 x 17.1 s of touches, two tool changes, three passes of seven steps, start and stop: 164.5 s."""
    set_up = ROPE_COIL.set_up
    assert standard_s(ROPE_COIL.spec, set_up, SECONDS) == pytest.approx(8 * 17.1 + 2 * 5 + 3 * 7 * 0.7 + 3, abs=1e-9)
    assert levelled_touches(ROPE_COIL.spec, set_up, SECONDS) == pytest.approx(164.5 / 1.5, abs=1e-9)
    assert alone_s(ROPE_COIL.spec, SECONDS) == pytest.approx(27.1, abs=1e-9)


def test_slipway_ends_a_hair_above_the_half() -> None:
    """186.5 s in decimals; the sum in doubles decides that the card says 3:07 and not the even 3:06."""
    assert standard_s(SLIPWAY.spec, SLIPWAY.set_up, SECONDS) == pytest.approx(186.5, abs=1e-9)
    assert clock_text(standard_s(SLIPWAY.spec, SLIPWAY.set_up, SECONDS)) == "3:07"


def test_raising_rope_coil_by_one_thing() -> None:
    """The percent of five candidates: a bead, two beads, a plate, a lean, a coil."""
    spec, set_up = ROPE_COIL.spec, ROPE_COIL.set_up
    twirl, lean, bead = spec.steps
    base = standard_s(spec, set_up, SECONDS)

    def percent(*steps: Step, plates: int = 8) -> float:
        harder = standard_s(replace(spec, steps=steps), replace(set_up, plates=plates), SECONDS)
        return round(change_percent(base, harder), 1)

    assert percent(twirl, lean, replace(bead, pieces=5)) == 4.4
    assert percent(twirl, lean, replace(bead, pieces=6)) == 8.8
    assert percent(twirl, lean, bead, plates=9) == 11.7
    assert percent(twirl, replace(lean, pieces=2), bead) == 17.0
    assert percent(replace(twirl, pieces=3), lean, bead) == 24.3


def test_targets_are_shares_of_standard() -> None:
    """Opening 1.4, house 1.0 and brisk 0.85 of standard time."""
    aims = targets(100)
    assert (aims.opening_s, aims.house_s, aims.brisk_s) == (140, 100, 85)


def test_a_change_between_plates_only_where_the_tools_differ() -> None:
    """One tool throughout costs nothing between plates; two tools cost a change back as well."""
    by_plate = SetUp(plates=4, working="plate")
    one_tool = standard_s(_spec((1, "set"), (1, "place")), by_plate, SECONDS)
    two_tools = standard_s(_spec((1, "set"), (1, "dot")), by_plate, SECONDS)
    assert one_tool == pytest.approx(4 * 4.0 + 3 * 0.7 + 3, abs=1e-9)
    assert two_tools == pytest.approx(4 * 3.7 + 7 * 5 + 3 * 0.7 + 3, abs=1e-9)


def test_a_pair_of_cooks_is_given_the_larger_half() -> None:
    """Two cooks on eight plates have the time of four, on seven the same; the plates attempted are shared."""
    pair = replace(ROPE_COIL.set_up, cooks=2)
    four = standard_s(ROPE_COIL.spec, replace(ROPE_COIL.set_up, plates=4), SECONDS)
    assert standard_s(ROPE_COIL.spec, pair, SECONDS) == four
    assert standard_s(ROPE_COIL.spec, pair, SECONDS, plates=7) == four


@pytest.mark.parametrize("working", ["component", "plate", "waves"])
@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_more_plates_always_take_longer(working: str, drill: Drill) -> None:
    """In every working order another plate attempted adds time, from none on."""
    way = replace(drill.set_up, working=working, wave=4)
    times = [standard_s(drill.spec, way, SECONDS, plates) for plates in range(way.plates + 1)]
    assert all(fewer < more for fewer, more in pairwise(times))


@given(st.integers(1, 40), st.integers(1, 2))
def test_one_wave_of_all_plates_is_a_batch(plates: int, rows: int) -> None:
    """A wave as large as the run is working component by component."""
    batch = SetUp(plates=plates, rows=rows)
    wave = replace(batch, working="waves", wave=plates)
    assert standard_s(FULL_TIDE.spec, wave, SECONDS) == standard_s(FULL_TIDE.spec, batch, SECONDS)
