"""Where the time of a run goes. Drills are the course's; their seconds are fixtures of the project's own model."""

from dataclasses import replace
from statistics import median

import numpy as np
import pytest

from bot.domain.drill import Drill
from bot.domain.splits import (
    SplitRun,
    add_up,
    has_splits,
    quickest_quarter_s,
    repeated_s,
    slowest_step,
    step_times,
    steps_standard_s,
)
from bot.domain.standard_time import standard_s
from tests.domain.kitchen import EVERY, LOCK_GATE, ROPE_COIL, SECONDS

BATCHED = [drill for drill in EVERY if has_splits(drill.set_up)]


def _rope_coil(*splits_s: int, attempted: int = 8) -> SplitRun:
    return SplitRun(splits_s, attempted)


def _slowest(*runs: SplitRun) -> str:
    step = slowest_step(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, runs)
    return step.technique if step else ""


@pytest.mark.parametrize("drill", BATCHED, ids=lambda drill: drill.label)
@pytest.mark.parametrize("cooks", [1, 2])
@pytest.mark.parametrize("left", [0, 1, 4])
def test_steps_add_up_to_the_runs_standard_time(drill: Drill, cooks: int, left: int) -> None:
    """Whatever the drill, the hands and the plates built, the steps share out the run's standard time to the last."""
    set_up = replace(drill.set_up, cooks=cooks)
    plates = set_up.plates - left
    shares = steps_standard_s(drill.spec, set_up, SECONDS, plates)
    assert len(shares) == len(drill.spec.steps)
    assert sum(shares) == pytest.approx(standard_s(drill.spec, set_up, SECONDS, plates), abs=1e-9)


def test_a_step_has_its_touches_its_tool_change_and_its_walk() -> None:
    """Rope coil by hand: 7 gaps of 0.7 s are a walk of 4.9; tweezers, fingers and dropper are a change before 2 and 3.

    16 x 5.0 + 4.9 + 1.5; 8 x 3.5 + 5 + 4.9; 32 x 0.9 + 5 + 4.9 + 1.5.
    """
    shares = steps_standard_s(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, 8)
    assert shares == pytest.approx((86.4, 37.9, 40.2))


def test_a_press_and_its_lift_share_a_walk_and_a_tool() -> None:
    """Lock gate: 4 gaps of 0.7 s are 2.8, half for each; the press is fetched once, before pressing."""
    press, lift = steps_standard_s(LOCK_GATE.spec, LOCK_GATE.set_up, SECONDS, 10)[1:3]
    assert (press, lift) == pytest.approx((10 * 3.0 + 5 + 1.4, 10 * 2.5 + 1.4))


def test_a_loss_is_what_a_step_took_over_its_standard() -> None:
    """2:00 for 16 twirls is 7.5 s a touch and 33.6 s over 86.4; the lean at 0:30 won 7.9 s."""
    twirl, lean, _ = step_times(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, _rope_coil(120, 30, 40))
    assert (twirl.touches, twirl.pace_s) == (16, 7.5)
    assert twirl.lost_s == pytest.approx(33.6)
    assert lean.lost_s == pytest.approx(-7.9)


def test_splits_of_another_number_of_steps_say_nothing() -> None:
    """After a correction of the spec its earlier splits are left out, not laid on other steps."""
    assert step_times(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, _rope_coil(120, 30)) == ()


def test_only_a_row_worked_step_by_step_without_calls_has_splits() -> None:
    """Of plate by plate, of waves and of a pressure round the steps have no time of their own."""
    assert has_splits(ROPE_COIL.set_up)
    assert not has_splits(replace(ROPE_COIL.set_up, working="plate"))
    assert not has_splits(replace(ROPE_COIL.set_up, working="waves", wave=4))
    assert not has_splits(replace(ROPE_COIL.set_up, pressure=1))


@pytest.mark.parametrize(("splits_s", "made"), [((90, 40, 52), True), ((90, 40, 54), True), ((90, 40, 55), False)])
def test_splits_make_the_clock_within_two_seconds(splits_s: tuple[int, ...], made: bool) -> None:
    """3:02 is made by steps of 3:02 and 3:04 and not of 3:05; below it the same."""
    assert add_up(splits_s, 182) is made
    assert add_up(splits_s, 2 * sum(splits_s) - 182) is made


def test_a_loss_counts_once_it_was_lost_three_times_running() -> None:
    """The least of the last three; nothing for two, nor where one of the three was within two seconds of standard."""
    assert repeated_s([99.0, 41.0, 43.5, 47.0]) == 41.0
    assert repeated_s([41.0, 43.5]) is None
    assert repeated_s([41.0, 2.0, 47.0]) is None


def test_the_slowest_step_is_the_one_that_costs_most_every_time() -> None:
    """The lean cost 12 s three times running; twirls that cost 33 s but once are not the slowest step."""
    assert _slowest(_rope_coil(120, 50, 45), _rope_coil(86, 51, 45), _rope_coil(88, 50, 45)) == "lean"


def test_no_step_is_slowest_of_two_runs_or_at_standard() -> None:
    """Two runs with splits are too few, and at standard nothing is lost."""
    assert _slowest(_rope_coil(120, 50, 45), _rope_coil(120, 50, 45)) == ""
    assert _slowest(*[_rope_coil(86, 37, 40)] * 3) == ""


def test_a_short_run_is_held_to_the_plates_it_built() -> None:
    """Six plates of Rope coil are 12 twirls and five gaps to walk: 65 s of standard time, of which 1:10 loses 5."""
    twirl = step_times(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS, _rope_coil(70, 30, 40, attempted=6))[0]
    assert twirl.lost_s == pytest.approx(70 - (12 * 5.0 + 5 * 0.7 + 1.5))


def test_the_houses_quickest_quarter_is_told_of_five_cooks() -> None:
    """Each by their own median, the quartile as NumPy has it (its default, R's type 7); of four cooks nothing."""
    paces_s = [[4.0, 4.4, 9.0], [3.9], [5.1, 4.9], [3.6, 3.8], [6.0], [4.6]]
    medians_s = [median(cook) for cook in paces_s]
    assert quickest_quarter_s(paces_s) == pytest.approx(np.percentile(medians_s, 25))
    assert quickest_quarter_s([*paces_s[:4], []]) is None
