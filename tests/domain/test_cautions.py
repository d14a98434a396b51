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
        ("bead", "thin", {"reuse", "floor"}),
        ("sauce", "thin", {"reuse", "floor"}),
        ("sauce", "thick", {"reuse"}),
        ("shingle", "soft", {"reuse", "mandoline"}),
        ("dot", "gel", {"reuse", "strain"}),
        ("line", "gel", {"reuse", "strain"}),
        ("quenelle", "soft", {"reuse", "strain", "heat"}),
        ("two-spoon quenelle", "soft", {"reuse", "strain", "heat"}),
        ("ring fill", "soft", {"reuse", "cooked-starch"}),
        ("twirl", "soft", {"reuse", "cooked-starch"}),
        ("wipe", "firm", {"pieces-counted", "chemicals"}),
        ("leaf", "leaf", {"pieces-counted"}),
    ],
)
def test_what_one_step_warns_of(technique: str, stand_in: StandIn, told: set[str]) -> None:
    """On paper plates a step adds just the warnings of its technique and of its stand-in to those always told."""
    assert set(cautions_for(_one(technique, stand_in), SECONDS)) == ALWAYS | told


@pytest.mark.parametrize(("plate", "warned"), [("flat 27 cm china", True), ("Paper disc", False), ("plastic", False)])
def test_plates_that_break_are_warned_of(plate: str, warned: bool) -> None:
    """A plate is taken to break unless its name says otherwise."""
    spec = replace(FULL_TIDE.spec, plate=plate)
    assert ("breakage" in cautions_for(spec, SECONDS)) is warned


def test_every_list_closes_with_local_rules() -> None:
    """Each key once, in the order of telling, the local rules last."""
    for drill in EVERY:
        keys = cautions_for(drill.spec, SECONDS)
        assert list(keys) == [key for key in IN_ORDER if key in keys]
        assert keys[-1] == "local-rules"


def test_labels_are_listed_a_component_once() -> None:
    """Rice is filled, pressed and lifted and listed once; labels of several steps add up; a wipe has none."""
    assert [component for component, _ in labels_of(LOCK_GATE.spec)] == ["rice", "triangle", "gel", "leaf"]
    first = Step(1, "gel", "dot", "bottle", "gel", labels=("wheat",))
    second = replace(first, technique="line", labels=("wheat", "sulphites"))
    wipe = replace(first, component="rim", technique="wipe", labels=())
    unread = replace(first, component="oil", labels=())
    assert labels_of(Spec((first, second, wipe, unread))) == [("gel", ("wheat", "sulphites")), ("oil", ())]
