"""When a drill may be made harder, and by how much.

The qualification is the project's own rule (constructed); the sizes are fixtures of its own model.
"""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.domain.drill import MOST_PLATES, Drill
from bot.domain.harder import Harder, Pieces, Plates, Waves, harder
from bot.domain.readiness import LevelRun, Standing, is_room_ready, standing_of, target_s
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, ROPE_COIL, SECONDS

MONDAY = date(2026, 11, 23)
TARGET_S = 164


def _runs(*good: int, plates: int = 12, net_s: float = 160.0) -> list[LevelRun]:
    """One run a day from Monday, of so many plates, all of one time."""
    days = [MONDAY + timedelta(days=nth) for nth in range(len(good))]
    return [LevelRun(day, "counted", accepted, plates, net_s) for day, accepted in zip(days, good, strict=True)]


def _standing(runs: list[LevelRun], days: int = 7) -> Standing:
    """Where these leave a cook so many days after Monday."""
    return standing_of(runs, TARGET_S, MONDAY + timedelta(days=days))


def test_a_week_of_thirty_three_good_in_thirty_six_under_the_target_is_ready() -> None:
    """11 of 12 three times at 2:40 for a target of 2:44, a week after the first."""
    assert _standing(_runs(11, 11, 11)) == Standing(3, accepted=33, attempted=36, median_s=160, days=7, lacks=())


@pytest.mark.parametrize(
    ("runs", "days", "lacks"),
    [
        (_runs(12, 12), 7, ("runs",)),
        (_runs(10, 11, 11), 7, ("good",)),
        (_runs(9, 12, 12), 7, ("each",)),
        (_runs(12, 11, 11), 7, ("redo",)),
        (_runs(12, 12, 12, 12, 12, 11), 7, ("redo",)),
        (_runs(12, 12, 12, net_s=164.6), 7, ("target",)),
        (_runs(12, 12, 12), 6, ("days",)),
    ],
)
def test_each_thing_that_is_lacking_is_named(runs: list[LevelRun], days: int, lacks: tuple[str, ...]) -> None:
    """Too few runs, 32 of 36, a run of nine, a redo more than before, a second too slow, a day too early."""
    assert _standing(runs, days).lacks == lacks


def test_the_shares_hold_for_other_plates() -> None:
    """Of eight plates 22 of 24 are eleven twelfths and seven are over ten twelfths; 21 and six are not."""
    assert _standing(_runs(7, 7, 8, plates=8)).ready
    assert _standing(_runs(7, 7, 7, plates=8)).lacks == ("good",)
    assert _standing(_runs(6, 8, 8, plates=8)).lacks == ("each",)


def test_the_target_is_met_to_the_second_that_is_shown() -> None:
    """A median of 164.4 s is shown as 2:44, and that is the target."""
    assert _standing(_runs(12, 12, 12, net_s=164.4)).ready


def test_a_stop_among_the_last_three_runs_holds() -> None:
    """A stopped run counts among the last three until three others have followed it."""
    before, after = _runs(12, 12, 12), [replace(run, day=run.day + timedelta(days=9)) for run in _runs(12, 12, 12)]
    stop = LevelRun(MONDAY + timedelta(days=8), "stopped", 2, 2, None)
    assert _standing([*before, stop, *after[:2]], days=12).lacks == ("stopped",)
    assert _standing([*before, stop, *after], days=12).ready


def test_short_and_settling_runs_do_not_count() -> None:
    """Neither for the three nor for the week."""
    first, second = _runs(8, 8)
    early = [replace(first, kind="short"), replace(second, kind="settling")]
    late = [replace(run, day=run.day + timedelta(days=2)) for run in _runs(12, 12, 12)]
    assert _standing([*early, *late], days=8).lacks == ("days",)


def test_a_run_with_no_time_meets_no_target() -> None:
    """Its median is not that of the other two."""
    no_time = replace(_runs(8)[0], net_s=None)
    assert "target" in _standing([*_runs(12, 12), no_time]).lacks


@pytest.mark.parametrize(("ready", "cooks", "offered"), [(2, 4, True), (2, 5, False), (3, 5, True), (1, 1, False)])
def test_half_of_the_months_cooks_and_two_make_a_room_ready(ready: int, cooks: int, offered: bool) -> None:
    """Two of four and three of five do, two of five and one alone do not."""
    yes, no = _standing(_runs(12, 12, 12)), _standing([])
    assert is_room_ready([yes] * ready + [no] * (cooks - ready)) is offered


def test_the_target_is_the_chefs_or_else_the_houses() -> None:
    """Rope coil's house time is 2:44; a target that was set stands before it."""
    assert target_s(ROPE_COIL, SECONDS) == 164
    assert target_s(replace(ROPE_COIL, wording=replace(ROPE_COIL.wording, target_s=140)), SECONDS) == 140


def _told(one: Harder) -> tuple[str, str, str]:
    """What is added, by how many percent, and how that fits."""
    match one.change:
        case Plates(more):
            what = f"+{more} plate"
        case Pieces(more, nth):
            what = f"+{more} {one.drill.spec.steps[nth - 1].technique}"
        case Waves(of):
            what = f"waves of {of}"
    return what, f"{one.percent:.1f}", one.fit


def test_rope_coil_has_these_ways_up() -> None:
    """A plate, a coil (that is a twirl), a lean, one bead and two: 11.7, 24.3, 17.0, 4.4 and 8.8 %, the second refused.

    Waves of four by hand: 2 x (68.4 + 10 + 6.3) + 5 + 3 = 177.4 s, against 164.5 s.
    """
    assert [_told(one) for one in harder(ROPE_COIL, SECONDS)] == [
        ("+1 plate", "11.7", "large"),
        ("+1 twirl", "24.3", "refused"),
        ("+1 lean", "17.0", "large"),
        ("+1 bead", "4.4", "small"),
        ("+2 bead", "8.8", "fitting"),
        ("waves of 4", "7.8", "fitting"),
    ]


def test_waves_of_six_are_one_step_up_from_full_tide_in_one() -> None:
    """Twelve plates as one batch are 8:30 and in waves of six 9:00, so 5.9 % more."""
    (waves,) = (one for one in harder(FULL_TIDE, SECONDS) if isinstance(one.change, Waves))
    assert _told(waves) == ("waves of 6", "5.9", "fitting")


def test_a_second_row_of_waves_is_smaller_still() -> None:
    """From waves of six the next even ones are four; plate by plate there is nothing smaller."""
    in_sixes = replace(FULL_TIDE, set_up=replace(FULL_TIDE.set_up, working="waves", wave=6))
    assert [one.change for one in harder(in_sixes, SECONDS) if isinstance(one.change, Waves)] == [Waves(4)]
    single = replace(FULL_TIDE, set_up=replace(FULL_TIDE.set_up, working="plate"))
    assert not any(isinstance(one.change, Waves) for one in harder(single, SECONDS))


def test_both_hands_set_two_more_and_a_ring_stays_one() -> None:
    """Lock gate: leaves come in pairs, and there is no second ring to fill, press or lift."""
    pieces = [one.change for one in harder(LOCK_GATE, SECONDS) if isinstance(one.change, Pieces)]
    assert pieces == [Pieces(1, 4), Pieces(1, 5), Pieces(2, 5), Pieces(2, 6)]


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_every_way_up_is_more_work_in_one_thing_and_in_no_mind_of_the_old_target(drill: Drill) -> None:
    """Nothing easier is offered, and the time set for the old work does not go with the new."""
    aimed = replace(drill, wording=replace(drill.wording, target_s=99))
    ways = harder(aimed, SECONDS)
    assert ways
    assert all(one.percent > 0 and one.drill.wording.target_s is None for one in ways)
    assert all((one.drill.spec != drill.spec) is not (one.drill.set_up != drill.set_up) for one in ways)


def test_a_full_bench_has_no_plate_more() -> None:
    """Where no more plates can be laid out, none are offered."""
    full = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, plates=MOST_PLATES))
    assert not any(isinstance(one.change, Plates) for one in harder(full, SECONDS))
