"""Call sheets: what every sheet keeps to, whatever its number; and what calls do to plates, touches and standard."""

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.domain.call_times import is_quiet
from bot.domain.calls import CALLS, GAP_S, Sheet, make_sheet, swapped_step, without_calls
from bot.domain.drill import MOST_PLATES, Called, Drill
from bot.domain.identity import set_up_fingerprint
from bot.domain.pace import clock_text
from bot.domain.run import Count, work_out
from bot.domain.standard_time import run_touches, standard_s, touches
from bot.domain.step_times import step_times
from bot.errors import UserError
from tests.domain.kitchen import EVERY, FULL_TIDE, ROPE_COIL, SECONDS

LONG = [drill for drill in EVERY if drill.label in ("9", "11A", "11B", "11C")]
"""Drills long enough for every level."""
UNHURRIED = settings(deadline=None)
"""A busy machine is no fault of a sheet."""
LEVELS, NUMBERS = st.sampled_from(sorted(CALLS)), st.integers(1, 99_999)


def _sheet(drill: Drill, level: int, number: int = 417) -> Sheet:
    return make_sheet(drill.spec, drill.set_up, SECONDS, level, number)


def _work_s(sheet: Sheet) -> list[float]:
    """The moment of each call on the clock of the work, which rests while hands are off."""
    waited, moments = 0.0, []
    for call in sheet.calls:
        moments.append(call.at_s - waited)
        waited += SECONDS.hands_off_s if call.kind == "wait" else 0.0
    return moments


@UNHURRIED
@given(st.sampled_from(LONG), LEVELS, NUMBERS)
def test_how_many_and_how_far_apart(drill: Drill, level: int, number: int) -> None:
    """2, 4 or 6 calls at least 60, 40 or 30 s apart, none in the first 15 % or the last 10 % of standard time."""
    sheet = _sheet(drill, level, number)
    times = [call.at_s for call in sheet.calls]
    assert (len(times), GAP_S[level]) == {1: (2, 60), 2: (4, 40), 3: (6, 30)}[level]
    assert all(later - earlier >= GAP_S[level] for earlier, later in pairwise(times))
    standard = standard_s(drill.spec, sheet.set_up, SECONDS)
    assert 0.15 * standard <= times[0] <= times[-1] <= 0.9 * standard


@UNHURRIED
@given(st.sampled_from(LONG), LEVELS, NUMBERS)
def test_the_set_up_is_what_is_called(drill: Drill, level: int, number: int) -> None:
    """The plain run's plates, touches and standard, with a plate more, 20 s of hands off, a plate's last step off."""
    sheet, plain = _sheet(drill, level, number), drill.set_up
    kinds = [call.kind for call in sheet.calls]
    more, waits, swaps = (kinds.count(kind) for kind in ("one-more", "wait", "swap"))
    assert max(more, waits, swaps) == 1
    left_off = drill.spec.steps[-1]
    plates, way = plain.plates + more, replace(plain, plates=plain.plates + more, pressure=level)
    off_s = swaps * left_off.pieces * SECONDS.techniques[left_off.technique].seconds
    assert (sheet.set_up.plates, sheet.set_up.pressure) == (plates, level)
    assert run_touches(drill.spec, sheet.set_up) == plates * touches(drill.spec) - swaps * left_off.pieces
    expected = standard_s(drill.spec, way, SECONDS) + 20 * waits - off_s
    assert standard_s(drill.spec, sheet.set_up, SECONDS) == pytest.approx(expected, abs=1e-9)


@UNHURRIED
@given(st.sampled_from(LONG), LEVELS, NUMBERS)
def test_never_over_heat(drill: Drill, level: int, number: int) -> None:
    """At standard speed no call comes while spoons are in the warm bath."""
    sheet = _sheet(drill, level, number)
    spans = step_times(drill.spec, sheet.set_up, SECONDS)
    for moment in _work_s(sheet):
        doing = [drill.spec.steps[span.step - 1] for span in spans if span.start_s <= moment <= span.end_s]
        assert not any(step.technique in ("quenelle", "two-spoon quenelle") for step in doing)


@UNHURRIED
@given(st.sampled_from(LONG), LEVELS, NUMBERS)
def test_a_swap_comes_in_time(drill: Drill, level: int, number: int) -> None:
    """The plate is on the table from the start, and at standard speed its step is at least 5 s away."""
    sheet = _sheet(drill, level, number)
    for call, moment in zip(sheet.calls, _work_s(sheet), strict=True):
        if call.kind == "swap":
            assert 1 <= call.plate <= drill.set_up.plates
            turns = [
                span.reaches_s(call.plate)
                for span in step_times(drill.spec, sheet.set_up, SECONDS)
                if span.step == swapped_step(drill.spec) and span.first <= call.plate < span.first + span.plates
            ]
            assert turns[0] - moment >= 5 - 1e-9
        else:
            assert call.plate == 0


@UNHURRIED
@given(st.sampled_from(LONG), LEVELS, NUMBERS)
def test_the_same_number_is_the_same_sheet(drill: Drill, level: int, number: int) -> None:
    """Asked again, and under another wording, a sheet comes out the same."""
    renamed = replace(drill, wording=replace(drill.wording, name="Spring tide"), letter="Z")
    assert _sheet(drill, level, number) == _sheet(renamed, level, number)


def test_sheets_differ() -> None:
    """Of a hundred numbers at level 3 no two sheets are alike, and every kind of call is among them."""
    sheets = [_sheet(FULL_TIDE, 3, number) for number in range(1, 101)]
    assert len({sheet.calls for sheet in sheets}) == 100
    assert {call.kind for sheet in sheets for call in sheet.calls} == {
        "how-long",
        "send-four",
        "swap",
        "one-more",
        "wait",
    }


@UNHURRIED
@given(NUMBERS)
def test_sheets_of_the_highest_level_share_a_set_up(number: int) -> None:
    """At level 3 all three changes are called, so that every sheet is the same work, on one board."""
    assert _sheet(FULL_TIDE, 3, number).set_up == _sheet(FULL_TIDE, 3, 1).set_up


@UNHURRIED
@given(LEVELS, NUMBERS, NUMBERS)
def test_a_further_sheet_for_the_same_set_up(level: int, number: int, further: int) -> None:
    """Of what a sheet made, another sheet of its level does the same to the work; of another level it starts afresh."""
    made = replace(FULL_TIDE, set_up=_sheet(FULL_TIDE, level, number).set_up)
    assert _sheet(made, level, further).set_up == made.set_up
    assert without_calls(made.set_up) == FULL_TIDE.set_up
    other = level % 3 + 1
    assert _sheet(made, other, further) == _sheet(FULL_TIDE, other, further)


def test_what_is_called_is_identity() -> None:
    """A set-up with other calls is another set-up; with none it is the one that it always was."""
    plain, waits = FULL_TIDE.set_up, replace(FULL_TIDE.set_up, called=Called(hands_off_s=20.0))
    swaps = replace(waits, called=Called(hands_off_s=20.0, without=(7,)))
    assert len({set_up_fingerprint(FULL_TIDE.spec, way) for way in (plain, waits, swaps)}) == 3
    assert set_up_fingerprint(FULL_TIDE.spec, replace(plain, called=Called())) == set_up_fingerprint(
        FULL_TIDE.spec, plain
    )


@pytest.mark.parametrize(
    ("label", "level", "highest"), [("2", 2, 1), ("6", 3, 2), ("5", 3, 2), ("7", 2, 1), ("10", 3, 1)]
)
def test_too_short_for_a_level(label: str, level: int, highest: int) -> None:
    """A level that the run has no room for is refused with the highest that fits, which then does.

    By hand: five gaps of 30 s in the middle three quarters need 200 s, three of 40 s 160 s, one of 60 s 80 s. Low tide
    (95.6 s) and Gull egg (133.4 s) hold level 1, Rope coil (164.5 s) and Slipway (186.5 s) level 2. Two spoons
    (322.2 s) would be long enough for any but is three fifths over the bath.
    """
    drill = next(drill for drill in EVERY if drill.label == label)
    with pytest.raises(UserError) as refused:
        _sheet(drill, level)
    assert (refused.value.key, refused.value.values) == (
        "calls-level-too-high",
        {"level": level, "calls": CALLS[level], "gap": GAP_S[level], "highest": highest},
    )
    assert _sheet(drill, highest).level == highest


def test_too_short_for_any() -> None:
    """Harbour clock (69 s) has no room for two calls a minute apart, though the calls themselves would lengthen it."""
    with pytest.raises(UserError) as refused:
        _sheet(EVERY[0], 1)
    assert refused.value.key == "calls-too-short"


def test_what_cannot_be_called_is_not() -> None:
    """Sixty plates get no further one, four are not sent as four, a plate of one step goes without nothing."""
    full = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, plates=MOST_PLATES))
    four = replace(FULL_TIDE, set_up=replace(FULL_TIDE.set_up, plates=4))
    one_step = replace(full, spec=replace(full.spec, steps=full.spec.steps[:1]))
    for number in range(1, 40):
        assert "one-more" not in {call.kind for call in _sheet(full, 3, number).calls}
        assert "send-four" not in {call.kind for call in _sheet(four, 2, number).calls}
        assert "swap" not in {call.kind for call in _sheet(one_step, 3, number).calls}


@pytest.mark.parametrize(
    ("technique", "tool", "component", "quiet"),
    [
        ("lean", "fingers", "triangle", False),
        ("crumb", "Blowtorch", "triangle", True),
        ("sauce", "hot pan", "jus", True),
        ("sauce", "spoon", "jus from the pan", True),
        ("lean", "fingers", "pancake", False),
        ("quenelle", "quenelle spoon", "bean puree", True),
        ("shingle", "fingers", "courgette", False),
    ],
)
def test_quiet_steps(technique: str, tool: str, component: str, quiet: bool) -> None:
    """Bath, flame, hot pan and blade are quiet, by technique, tool or component; slices cut beforehand are not."""
    step = replace(ROPE_COIL.spec.steps[1], technique=technique, tool=tool, component=component)
    assert is_quiet(step, SECONDS) is quiet


def test_a_run_is_worked_out_on_its_sheet() -> None:
    """Full tide at level 3: 13 plates, 13 x 18 - 2 = 232 touches, 552.5 + 20 - 2 = 570.5 s; at standard 1.50 levelled.

    The 552.5 s are a fixture of the project's own model: 13 plates of Full tide as a batch.
    """
    way = _sheet(FULL_TIDE, 3).set_up
    assert clock_text(standard_s(FULL_TIDE.spec, way, SECONDS)) == "9:30"
    result = work_out(570, Count(13, 13), FULL_TIDE.spec, way, SECONDS, "counted")
    assert result.touches == 232
    assert result.standard_s == pytest.approx(570.5, abs=1e-9)
    assert result.levelled_s == pytest.approx(1.5, abs=0.002)
    assert result.pace_s == pytest.approx(570 / 232, abs=1e-12)
