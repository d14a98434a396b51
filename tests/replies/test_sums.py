"""`why` can be checked by hand: every number follows from those printed before it."""

import re

from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill
from bot.domain.run import Count, kind_of, time_gate, work_out
from bot.replies.phrases import english
from bot.replies.sums import figures_of_result, sum_lines
from tests.domain.kitchen import EVERY, SECONDS

NUMBER = re.compile(r"\d+(?:\.\d+)?")


def _numbers(line: str) -> list[float]:
    return [float(number) for number in NUMBER.findall(line)]


@given(st.sampled_from(EVERY), st.floats(0.5, 3), st.data())
def test_every_line_follows_from_the_printed_numbers(drill: Drill, speed: float, data: st.DataObject) -> None:
    """Recomputed from what is printed, charge, net, pace and levelled pace agree to their last shown figure."""
    plates = drill.set_up.plates
    redo = data.draw(st.integers(0, plates - time_gate(plates)))
    count = Count(plates, plates - redo, redo)
    clock_s = round(speed * 60 * plates / 8)
    kind = kind_of(count, newcomer=False)
    result = work_out(clock_s, count, drill.spec, drill.set_up, SECONDS, kind)
    _, *lines = sum_lines(english(), drill, result)
    if redo:
        one, net, *lines = lines
        change, alone, clock, standard, one_s = _numbers(one.removeprefix("One redo: "))
        assert abs(change + alone * clock / standard - one_s) < 0.06
        redos, attempted, accepted, _, charge_s, clock, charge, net_s, *_ = _numbers(net)
        assert abs(redos * attempted / accepted * one_s - charge_s) < 0.06 + 0.005 * redos * attempted / accepted
        assert charge == charge_s
        assert abs(clock + charge - net_s) < 0.101
    pace, levelled = lines
    net_s, touches, pace_s = _numbers(pace)
    assert abs(net_s / touches - pace_s) < 0.006 + 0.05 / touches
    standard, _, levelled_touches, _, _, levelled_s = _numbers(levelled)
    assert abs(standard / 1.5 - levelled_touches) < 0.1
    assert abs(net_s / levelled_touches - levelled_s) < 0.006 + 0.05 * (1 + levelled_s) / levelled_touches


def test_figures_are_the_result() -> None:
    """The figures behind a reply are the result's own numbers, the plates among them."""
    drill = EVERY[0]
    result = work_out(80, Count(8, 7, redo=1), drill.spec, drill.set_up, SECONDS, "counted")
    figures = figures_of_result(result)
    assert figures["net_s"] == result.net_s
    assert (figures["plates"], figures["accepted"], figures["redo"], figures["kind"]) == (8, 7, 1, "counted")
