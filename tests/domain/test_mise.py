"""Mise: what runs take of each component. Expected amounts are fixtures of the project's own model, worked by hand."""

from dataclasses import replace
from decimal import Decimal

import pytest

from bot.domain.drill import Drill, Spec, Step
from bot.domain.mise import Need, amount_a_plate, mise_of
from bot.replies.amounts import amount_text
from bot.replies.phrases import english
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, ROPE_COIL, SECONDS

BY_LABEL = {drill.label: drill for drill in EVERY}


def _needs(drill: Drill, runs: int = 1) -> dict[str, Need]:
    return {need.component: need for need in mise_of(drill, runs, SECONDS).needs}


def _step(technique: str, pieces: int, at: str = "") -> Step:
    known = SECONDS.techniques[technique]
    return Step(pieces, "gel", technique, known.tool, known.stand_in, at=at)


def test_full_tide() -> None:
    """Twelve plates of Full tide: 79 ml of gel and 25 in the bottle, 53 g, 66 rounds, 251 ml, 27, 1.3 ml, 27."""
    mise = mise_of(FULL_TIDE, 1, SECONDS)
    assert {need.component: amount_text(english(), need.total, need.unit) for need in mise.needs} == {
        "gel": "79 ml",
        "coffee": "53 g",
        "courgette": "66",
        "bean puree": "251 ml",
        "triangle": "27",
        "oil": "1.3 ml",
        "leaf": "27",
    }
    stays = {need.component: (need.stays_in, need.stays) for need in mise.needs if need.stays_in}
    assert stays == {"gel": ("bottle", Decimal(25)), "oil": ("dropper", Decimal(0))}
    assert (mise.plates, mise.spare_plates) == (12, 2)
    assert mise.tools == ("bottle", "crumb spoon", "quenelle spoon", "dropper")


def test_two_runs_take_twice_as_much_and_the_same_china() -> None:
    """Use doubles with the runs; what stays in the bottle and the china, which is washed, do not."""
    once, twice = (mise_of(FULL_TIDE, runs, SECONDS) for runs in (1, 2))
    assert [need.used for need in twice.needs] == [2 * need.used for need in once.needs]
    assert [need.stays for need in twice.needs] == [need.stays for need in once.needs]
    assert (twice.plates, twice.spare_plates) == (once.plates, once.spare_plates)


@pytest.mark.parametrize(("plates", "spare"), [(1, 2), (16, 2), (20, 2), (21, 3), (60, 6)])
def test_at_least_two_spare_pieces(plates: int, spare: int) -> None:
    """A tenth more in whole pieces, two where that is fewer; triangles and plates alike."""
    drill = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, plates=plates))
    assert _needs(drill)["triangle"].spare == spare
    assert mise_of(drill, 1, SECONDS).spare_plates == spare


def test_a_component_of_several_steps_is_one_line() -> None:
    """Buoys takes gel for its line and its dots together; of rice filled, pressed and lifted the filling counts."""
    (gel,) = mise_of(BY_LABEL["3"], 1, SECONDS).needs
    assert gel.a_plate == Decimal(6) + Decimal("1.617")
    assert amount_text(english(), gel.total, "ml") == "67 ml"
    assert _needs(LOCK_GATE)["rice"].a_plate == 30


@pytest.mark.parametrize(
    ("step", "accept", "ml"),
    [
        (_step("dot", 5), "", "1.30"),
        (_step("dot", 5), "graded 14-12-10-8-6 mm", "1.617"),
        (_step("dot", 5, "graded 14-12-10-8-6 mm"), "", "1.617"),
        (_step("dot", 4), "graded 14-12-10-8-6 mm", "1.04"),
        (_step("dot", 4), "level within 2 mm, 12 mm wide", "1.04"),
        (_step("dot", 2, "8 mm wide"), "", "0.26"),
        (_step("dot", 2, "10 mm from the rim"), "", "0.52"),
        (_step("bead", 6), "", "0.102"),
        (_step("sauce", 2, "7, 20 ml"), "", "40"),
        (_step("sauce", 1, "7, 20 g"), "", "15"),
    ],
)
def test_sizes_that_the_spec_calls(step: Step, accept: str, ml: str) -> None:
    """Called diameters, one a dot or one for all, and a called amount replace the usual; any other measure does not."""
    assert amount_a_plate(step, Spec((step,), accept=accept), SECONDS) == Decimal(ml)


def test_what_becomes_of_it() -> None:
    """Firm pieces and leaves come back, what is soft for two runs of the day, gel and oil and loose grains never."""
    needs = _needs(FULL_TIDE)
    assert {name for name, need in needs.items() if need.keeping.same_day} == {"gel", "courgette", "bean puree", "oil"}
    assert {name for name, need in needs.items() if not need.keeping.recovered} == {"gel", "coffee", "oil"}
    assert needs["bean puree"].keeping.runs == 2
    assert {_needs(LOCK_GATE)["rice"].keeping.same_day, _needs(ROPE_COIL)["noodle"].keeping.same_day} == {True}


def test_a_component_keeps_its_shortest_life() -> None:
    """Of two steps of one component the shorter life holds."""
    steps = tuple(replace(_step("dot", 1), life_s=life) for life in (None, 120, 90))
    assert _needs(replace(ROPE_COIL, spec=Spec(steps)))["gel"].life_s == 90


def test_a_wipe_takes_nothing() -> None:
    """A drill whose only step is a wipe needs china and a cloth."""
    mise = mise_of(replace(ROPE_COIL, spec=Spec((_step("wipe", 1),))), 1, SECONDS)
    assert (mise.needs, mise.tools) == ((), ("cloth",))
