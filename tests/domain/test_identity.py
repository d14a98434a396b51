"""Which changes make another drill and which only tell it otherwise."""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill, Spec, Step
from bot.domain.identity import set_up_fingerprint, spec_fingerprint, what_changed
from tests.domain.kitchen import EVERY, FULL_TIDE, ROPE_COIL, SLIPWAY


def _with_step(drill: Drill, nth: int, **changes: Any) -> Drill:
    steps = list(drill.spec.steps)
    steps[nth] = replace(steps[nth], **changes)
    return replace(drill, spec=replace(drill.spec, steps=tuple(steps)))


@pytest.mark.parametrize(
    "changes",
    [
        {"pieces": 3},
        {"technique": "quenelle"},
        {"tool": "fork"},
        {"stand_in": "firm"},
        {"at": "11 and 4"},
        {"at": "11"},
    ],
)
def test_a_changed_step_is_a_new_spec(changes: dict[str, Any]) -> None:
    """Pieces, technique, tool, class of stand-in and the hours of the clock make the spec."""
    assert what_changed(ROPE_COIL, _with_step(ROPE_COIL, 0, **changes)) == "spec"


@pytest.mark.parametrize(
    "changes",
    [
        {"component": "spaghetti"},
        {"at": "at 11 o'clock, and at 5"},
        {"at": "5 and 11"},
        {"life_s": 90},
        {"labels": ("rye",)},
        {"price": Decimal("0.02")},
    ],
)
def test_a_step_told_otherwise_is_a_new_wording(changes: dict[str, Any]) -> None:
    """Names, free words of the place, life, labels and price are no identity; nor is the order of a mark a piece."""
    assert what_changed(ROPE_COIL, _with_step(ROPE_COIL, 0, **changes)) == "wording"


def test_a_course_has_a_direction() -> None:
    """Slices laid from ten to four are not those laid from four to ten; a dash and a word are the same."""
    assert what_changed(SLIPWAY, _with_step(SLIPWAY, 0, at="4 to 10")) == "spec"
    assert what_changed(SLIPWAY, _with_step(SLIPWAY, 0, at="10-4")) == "wording"


def test_sizes_are_no_hours() -> None:
    """A place that names millimetres names no hour by them."""
    plain = _with_step(FULL_TIDE, 0, at="inside the line")
    assert what_changed(plain, _with_step(FULL_TIDE, 0, at="inside the line, 14-12-10 mm, 5mm apart")) == "wording"


@pytest.mark.parametrize("field", ["plate", "accept", "mise", "start", "stop"])
def test_plate_and_rules_make_the_spec(field: str) -> None:
    """Another plate, accept rule, mise, start or stop is another spec; other case and spaces are not."""
    spec = ROPE_COIL.spec
    said: dict[str, Any] = {field: "something else"}
    shouted: dict[str, Any] = {field: "  ".join(getattr(spec, field).upper().split())}
    other = replace(ROPE_COIL, spec=replace(spec, **said))
    spaced = replace(ROPE_COIL, spec=replace(spec, **shouted))
    assert what_changed(ROPE_COIL, other) == "spec"
    assert what_changed(ROPE_COIL, spaced) == "wording"


def test_the_accept_rule_in_another_order_is_the_same_rule() -> None:
    """Its parts between commas may be listed in any order."""
    one, other = (replace(SLIPWAY.spec, accept=rule) for rule in ("strip 2 mm, no drip", "No drip,  strip 2 mm,"))
    assert spec_fingerprint(one) == spec_fingerprint(other)


@pytest.mark.parametrize(
    "changes",
    [
        {"plates": 9},
        {"rows": 2},
        {"gap_cm": 3.0},
        {"edge_cm": 5.0},
        {"working": "plate"},
        {"working": "waves", "wave": 4},
        {"cooks": 2},
        {"pressure": 1},
    ],
)
def test_a_changed_layout_is_a_new_set_up(changes: dict[str, Any]) -> None:
    """Plates, pattern, spacing, working order, cooks and pressure make the set-up, and leave the spec alone."""
    other = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, **changes))
    assert what_changed(ROPE_COIL, other) == "set-up"
    assert spec_fingerprint(other.spec) == spec_fingerprint(ROPE_COIL.spec)
    assert set_up_fingerprint(other.spec, other.set_up) != set_up_fingerprint(ROPE_COIL.spec, ROPE_COIL.set_up)


def test_a_wave_that_is_not_worked_in_changes_nothing() -> None:
    """The size of a wave counts only when working in waves."""
    other = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, wave=4))
    assert what_changed(ROPE_COIL, other) == "nothing"


@pytest.mark.parametrize("changes", [{"name": "Rope"}, {"notes": "x"}, {"cautions": ()}, {"target_s": 150}])
def test_a_changed_wording_keeps_the_bests(changes: dict[str, Any]) -> None:
    """Name, notes, cautions and target make a new wording and nothing more."""
    other = replace(ROPE_COIL, wording=replace(ROPE_COIL.wording, **changes))
    assert what_changed(ROPE_COIL, other) == "wording"


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_number_letter_and_revision_are_no_change(drill: Drill) -> None:
    """The same drill under another number and revision is the same."""
    other = replace(drill, number=99, letter="C", wording=replace(drill.wording, revision=7))
    assert what_changed(drill, other) == "nothing"


STEPS = st.builds(
    Step,
    pieces=st.integers(1, 9),
    component=st.text(max_size=8),
    technique=st.sampled_from(["set", "dot", "lean"]),
    tool=st.sampled_from(["fingers", "bottle"]),
    stand_in=st.sampled_from(["firm", "gel"]),
    at=st.sampled_from(["", "12", "10-4", "4-10", "12, 4, 8"]),
    life_s=st.none() | st.integers(1, 300),
)
SPECS = st.builds(Spec, st.lists(STEPS, min_size=1, max_size=4).map(tuple), accept=st.sampled_from(["", "a, b"]))


@given(SPECS, st.text(max_size=12), st.integers(1, 300))
def test_no_wording_reaches_the_fingerprint(spec: Spec, name: str, life_s: int) -> None:
    """Whatever the components are called and however long they keep, the fingerprint stays."""
    steps = tuple(replace(step, component=name, life_s=life_s, labels=(name,)) for step in spec.steps)
    assert spec_fingerprint(replace(spec, steps=steps)) == spec_fingerprint(spec)


@given(SPECS, st.data())
def test_the_order_of_steps_is_identity(spec: Spec, data: st.DataObject) -> None:
    """Steps in another order have the same fingerprint only where they ask for the same work."""
    shuffled = tuple(data.draw(st.permutations(spec.steps)))
    bare = [tuple(replace(step, component="", life_s=None) for step in steps) for steps in (spec.steps, shuffled)]
    same = spec_fingerprint(replace(spec, steps=shuffled)) == spec_fingerprint(spec)
    if bare[0] == bare[1]:
        assert same
    elif [s.technique for s in shuffled] != [s.technique for s in spec.steps]:
        assert not same


@given(SPECS, st.data())
def test_another_piece_is_another_spec(spec: Spec, data: st.DataObject) -> None:
    """One more piece of any step changes the fingerprint."""
    nth = data.draw(st.integers(0, len(spec.steps) - 1))
    step = spec.steps[nth]
    steps = (*spec.steps[:nth], replace(step, pieces=step.pieces + 1), *spec.steps[nth + 1 :])
    assert spec_fingerprint(replace(spec, steps=steps)) != spec_fingerprint(spec)
