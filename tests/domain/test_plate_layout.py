"""The plate as laid out: by hours, by what an earlier step put down, or calmly where there is room."""

import math

import pytest

from bot.domain.drill import Drill
from bot.domain.plate_clock import WELL_SHARE, Spot, hour_spot
from bot.domain.plate_layout import INSIDE_SHARE, Laid, laid_out_plate
from tests.domain.kitchen import EVERY

BY_LABEL = {drill.label: drill for drill in EVERY}


def _laid(label: str) -> dict[int, Laid]:
    """The steps of a drill of the course as laid out, by their number."""
    return {laid.nth: laid for laid in laid_out_plate(BY_LABEL[label].spec)}


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_every_step_lies_in_the_well(drill: Drill) -> None:
    """Each step of the course but a wipe has a spot for every piece, or a stroke, and none is on the rim."""
    laid = {step.nth: step for step in laid_out_plate(drill.spec)}
    assert laid.keys() == {n for n, step in enumerate(drill.spec.steps, 1) if step.technique != "wipe"}
    assert all(len(step.spots) >= step.step.pieces for step in laid.values())
    assert all(math.hypot(spot.x, spot.y) <= 0.75 for step in laid.values() for spot in step.spots)


def test_what_the_chef_left_open_is_said_to_be_open() -> None:
    """The course leaves open dots and leaves of Lock gate, quenelles of Two spoons, most of Full tide."""
    open_steps = {drill.label: [s.nth for s in laid_out_plate(drill.spec) if not s.said] for drill in EVERY}
    assert {label: steps for label, steps in open_steps.items() if steps} == {
        "9": [5, 6],
        "10": [2, 3, 4],
        "11A": [2, 3, 4, 5, 6, 7],
        "11B": [2, 3, 4, 5, 6, 7],
        "11C": [2, 3, 4, 5, 6, 7],
    }


def test_a_step_goes_by_what_an_earlier_one_put_down() -> None:
    """The 11 twirl is at 11; the tail is along the pull to 3; inside a line is on its hours; on the jus is on both."""
    assert _laid("6")[2].spots == (hour_spot(11, WELL_SHARE),)
    tail = _laid("2")[3].spots
    assert [spot.y for spot in tail] == pytest.approx([0, 0], abs=1e-9)
    assert all(0 <= spot.x <= WELL_SHARE + 1e-9 for spot in tail)
    inside = _laid("3")[2].spots
    assert [math.hypot(spot.x, spot.y) for spot in inside] == pytest.approx([INSIDE_SHARE] * 5)
    assert [math.degrees(math.atan2(spot.x, spot.y)) for spot in inside] == pytest.approx([-120, -75, -30, 15, 60])
    assert sorted(spot.y > 0 for spot in _laid("8")[3].spots) == [False, False, True, True, True]


def test_a_press_is_of_what_was_filled() -> None:
    """Rice is filled, pressed and its ring lifted in one place, and triangles are leant on it."""
    laid = _laid("9")
    assert laid[1].spots == laid[2].spots == laid[3].spots == (Spot(0, 0),)
    assert laid[4].said


def test_open_steps_keep_apart() -> None:
    """No two pieces of different steps are laid onto each other where the chef has said no place."""
    laid = _laid("11B")
    apart = [
        math.dist((one.x, one.y), (other.x, other.y))
        for nth, step in laid.items()
        for later in range(nth + 1, 8)
        for one in step.spots
        for other in laid[later].spots
    ]
    assert min(apart) > 0.1
