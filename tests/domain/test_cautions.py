"""The warnings that go with a drill, and its allergens by label."""

from dataclasses import replace

import pytest

from bot.domain.cautions import ALWAYS, IN_ORDER, cautions_for, labels_of
from bot.domain.drill import Spec, Step
from bot.domain.techniques import StandIn
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, SECONDS


def _one(technique: str, stand_in: StandIn) -> Spec:
    step = Step(pieces=1, component="x", technique=technique, tool="x", stand_in=stand_in)
    return Spec((step,), plate="paper disc")


@pytest.mark.parametrize(
    ("technique", "stand_in", "told"),
    [
        ("set", "firm", {"pieces-counted"}),
        ("place", "firm", {"pieces-counted", "floor"}),
        ("pair", "leaf", {"pieces-counted"}),
        ("crumb", "firm", set()),
        ("bead", "thin", {"cold", "floor"}),
        ("sauce", "thin", {"cold", "floor"}),
        ("sauce", "thick", {"cold"}),
        ("shingle", "soft", {"cold", "mandoline"}),
        ("dot", "gel", {"cold", "strain"}),
        ("line", "gel", {"cold", "strain"}),
        ("mound", "soft", {"puree"}),
        ("pull", "thick", {"cold"}),
        ("quenelle", "soft", {"puree", "strain", "heat"}),
        ("two-spoon quenelle", "soft", {"puree", "strain", "heat"}),
        ("ring fill", "soft", {"cooked-starch"}),
        ("press", "soft", set()),
        ("twirl", "soft", {"cooked-starch"}),
        ("wipe", "firm", {"chemicals"}),
        ("leaf", "leaf", {"pieces-counted"}),
    ],
)
def test_what_one_step_warns_of(technique: str, stand_in: StandIn, told: set[str]) -> None:
    """On paper plates a step adds just the warnings of its technique and of its stand-in, about its component."""
    fitting = cautions_for(_one(technique, stand_in), SECONDS)
    assert set(fitting) == {*ALWAYS, *told}
    assert all(fitting[key] == ("x",) for key in told)


@pytest.mark.parametrize("tool", ["bottle", "dropper"])
def test_nothing_goes_back_into_what_it_was_squeezed_from(tool: str) -> None:
    """A step with a bottle or a dropper warns of filling it again from plates, and one with a spoon does not."""
    squeezed = replace(_one("dot", "gel").steps[0], tool=tool)
    assert "bottle" in cautions_for(Spec((squeezed,)), SECONDS)
    assert "bottle" not in cautions_for(Spec((replace(squeezed, tool="spoon"),)), SECONDS)


def test_a_warning_names_each_component_once() -> None:
    """Full tide's cold mise is its gel, courgette and oil; the puree has a warning of its own."""
    fitting = cautions_for(FULL_TIDE.spec, SECONDS)
    assert fitting["cold"] == ("gel", "courgette", "oil")
    assert fitting["puree"] == ("bean puree",)
    assert fitting["pieces-counted"] == ("triangle", "leaf")


@pytest.mark.parametrize(("plate", "warned"), [("flat 27 cm china", True), ("Paper disc", False), ("plastic", False)])
def test_plates_that_break_are_warned_of(plate: str, warned: bool) -> None:
    """A plate is taken to break unless its name says otherwise."""
    spec = replace(FULL_TIDE.spec, plate=plate)
    assert ("breakage" in cautions_for(spec, SECONDS)) is warned


def test_every_list_closes_with_local_rules() -> None:
    """Each key once, in the order of telling, the local rules last."""
    for drill in EVERY:
        keys = list(cautions_for(drill.spec, SECONDS))
        assert keys == [key for key in IN_ORDER if key in keys]
        assert keys[-1] == "local-rules"


def test_labels_are_listed_a_component_once() -> None:
    """Rice is filled, pressed and lifted and listed once; labels of several steps add up; a wipe has none."""
    assert [component for component, _ in labels_of(LOCK_GATE.spec)] == ["rice", "triangle", "gel", "leaf"]
    first = Step(1, "gel", "dot", "bottle", "gel", labels=("wheat",))
    second = replace(first, technique="line", labels=("wheat", "sulphites"))
    wipe = replace(first, component="rim", technique="wipe", labels=())
    unread = replace(first, component="oil", labels=())
    assert labels_of(Spec((first, second, wipe, unread))) == [("gel", ("wheat", "sulphites")), ("oil", ())]
