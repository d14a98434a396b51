"""One run: its count filled in, its kind, and what it comes to once the redos are charged.

Worked times are fixtures of the project's own model.
"""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.run import Count, Result, card_redo_s, charge_s, kind_of, time_gate, work_out
from tests.domain.kitchen import FULL_TIDE, ROPE_COIL, SECONDS


def _run(drill: Drill, clock_s: int, count: Count) -> Result:
    kind = kind_of(count, newcomer=False)
    return work_out(clock_s, count, drill.spec, drill.set_up, SECONDS, kind)


def _net(drill: Drill, clock_s: int, count: Count) -> str:
    net_s = _run(drill, clock_s, count).net_s
    return "" if net_s is None else clock_text(net_s)


def test_full_tide_worked() -> None:
    """7:30 at 11/12 is 8:46, 6:40 at 10/12 is 9:11, and 7:12 at 12/12 stays 7:12."""
    assert _net(FULL_TIDE, 450, Count(12, 11, redo=1)) == "8:46"
    assert _net(FULL_TIDE, 400, Count(12, 10, redo=2)) == "9:11"
    assert _net(FULL_TIDE, 432, Count(12, 12)) == "7:12"


def test_a_plate_rebuilt_inside_the_clock_costs_less_than_a_redo() -> None:
    """The same 7:30 with the bad plate built again at the same speed: 8:40, against 8:46."""
    result = _run(FULL_TIDE, 450, Count(12, 11, redo=1))
    clock_s = round(450 + result.change_s + result.alone_s * 450 / result.standard_s)
    assert _net(FULL_TIDE, clock_s, Count(12, 12, rebuilt=1)) == "8:40"


def test_rope_coil_heard() -> None:
    """3:02 with 8 of 8: 56 touches, 3.25 s a touch, 1.66 levelled, nothing charged."""
    result = _run(ROPE_COIL, 182, Count(8, 8))
    assert (result.kind, result.touches, result.net_s) == ("counted", 56, 182)
    assert f"{result.pace_s:.2f} {result.levelled_s:.2f}" == "3.25 1.66"


def test_rope_coil_with_one_redo() -> None:
    """3:20 with 7 of 8: net 4:09, the redo cost 0:49, 4.45 s a touch."""
    result = _run(ROPE_COIL, 200, Count(8, 7, redo=1))
    assert result.net_s is not None
    assert (clock_text(result.net_s), clock_text(result.net_s - 200)) == ("4:09", "0:49")
    assert f"{result.pace_s:.2f}" == "4.45"


def test_rope_coil_short() -> None:
    """2:10 with six built of eight and all six good: a short run at 3.10 s a touch of those six."""
    result = _run(ROPE_COIL, 130, Count(8, 6, left=2))
    assert (result.kind, result.count.attempted, result.touches) == ("short", 6, 42)
    assert f"{result.pace_s:.2f}" == "3.10"


@pytest.mark.parametrize("accepted", [0, 1, 5])
def test_under_three_quarters_there_is_no_time(accepted: int) -> None:
    """Five of eight, one and none keep a count, and neither net nor pace; nothing divides by zero."""
    result = _run(ROPE_COIL, 190, Count(8, accepted, redo=8 - accepted))
    assert (result.kind, result.count.accepted) == ("counted", accepted)
    assert (result.net_s, result.pace_s, result.levelled_s) == (None, None, None)


def test_a_stopped_run_has_no_time() -> None:
    """Two good plates of eight and a stop: kept without a time, and none attempted as well."""
    assert _run(ROPE_COIL, 60, Count(8, 2, left=6)).net_s is None
    assert _run(ROPE_COIL, 60, Count(8, 0, left=8)).pace_s is None


@pytest.mark.parametrize(
    ("attempted", "gate"), [(0, 0), (1, 1), (2, 2), (3, 3), (4, 3), (8, 6), (9, 7), (10, 8), (14, 11)]
)
def test_the_gate_is_three_quarters_rounded_up(attempted: int, gate: int) -> None:
    """So many plates have to be good for a time."""
    assert time_gate(attempted) == gate


@pytest.mark.parametrize(
    ("plates", "left", "newcomer", "kind"),
    [
        (8, 0, False, "counted"),
        (8, 0, True, "settling"),
        (8, 4, False, "short"),
        (8, 4, True, "short"),
        (8, 5, False, "stopped"),
        (6, 3, False, "stopped"),
        (12, 6, False, "short"),
        (12, 7, False, "stopped"),
        (3, 0, False, "counted"),
        (3, 1, False, "stopped"),
        (9, 5, False, "stopped"),
    ],
)
def test_kinds_of_run(plates: int, left: int, newcomer: bool, kind: str) -> None:
    """All attempted is counted or settling in; half and four at least is short; anything less is stopped."""
    assert kind_of(Count(plates, plates - left, left=left), newcomer=newcomer) == kind


def test_the_card_names_no_price_where_one_redo_leaves_no_time() -> None:
    """With three plates or fewer one redo is under three quarters; with four it has a price."""
    prices = [card_redo_s(ROPE_COIL.spec, replace(ROPE_COIL.set_up, plates=n), SECONDS) for n in (1, 2, 3, 4)]
    assert [price is None for price in prices] == [True, True, True, False]


CLOCKS = st.integers(1, 3600)


@given(clock_s=CLOCKS, plates=st.integers(4, 60), data=st.data())
def test_a_redo_never_pays(clock_s: int, plates: int, data: st.DataObject) -> None:
    """Under the same clock one more redo in the place of an accepted plate never lowers the net time.

    Drawn where there is a time with the redo: at least three quarters accepted.
    """
    accepted = plates - data.draw(st.integers(0, plates // 4 - 1))
    drill = replace(FULL_TIDE, set_up=replace(FULL_TIDE.set_up, plates=plates))
    better = _run(drill, clock_s, Count(plates, accepted, redo=plates - accepted))
    worse = _run(drill, clock_s, Count(plates, accepted - 1, redo=plates - accepted + 1))
    assert better.net_s is not None
    assert worse.net_s is not None
    assert worse.net_s > better.net_s


@given(clock_s=CLOCKS, plates=st.integers(4, 60), data=st.data())
def test_rebuilding_is_never_dearer_than_leaving_it_to_the_judge(
    clock_s: int, plates: int, data: st.DataObject
) -> None:
    """Each redo is charged at least the change and the plate alone that building it again would have taken."""
    redo = data.draw(st.integers(1, plates // 4))
    result = _run(FULL_TIDE, clock_s, Count(plates, plates - redo, redo=redo))
    assert result.net_s is not None
    rebuilding = redo * (result.change_s + result.alone_s * clock_s / result.standard_s)
    assert result.net_s - clock_s >= rebuilding * (1 - 1e-12)


@given(clock_s=CLOCKS, count=st.builds(Count, st.just(60), st.integers(0, 30), st.integers(0, 30)))
def test_a_charge_is_never_negative_and_nothing_is_charged_for_none(clock_s: int, count: Count) -> None:
    """No redo costs nothing, a redo something, and no accepted plate gives no time at all."""
    charge = charge_s(clock_s, count, 164.5, 27.1, 10)
    if count.accepted == 0 or count.accepted < time_gate(count.attempted):
        assert charge is None
    else:
        assert charge is not None
        assert (charge > 0) == (count.redo > 0)
