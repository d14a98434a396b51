"""When each step of a run is done at standard speed."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Drill
from bot.domain.standard_time import standard_s
from bot.domain.step_times import step_times
from tests.domain.kitchen import EVERY, ROPE_COIL, SECONDS

WORKING = st.sampled_from(("component", "plate", "waves"))


@given(st.sampled_from(EVERY), st.integers(4, 20), WORKING, st.integers(1, 2))
def test_it_ends_when_standard_time_does(drill: Drill, plates: int, working: str, cooks: int) -> None:
    """In every working order the steps follow each other without a gap, from the start to standard time."""
    way = replace(drill.set_up, plates=plates, working=working, wave=3, cooks=cooks, pressure=0)
    spans = step_times(drill.spec, way, SECONDS)
    assert spans[0].start_s == SECONDS.start_stop_s
    assert [span.start_s for span in spans[1:]] == [span.end_s for span in spans[:-1]]
    assert spans[-1].end_s == pytest.approx(standard_s(drill.spec, way, SECONDS), abs=1e-6)
    assert sum(span.plates for span in spans if span.step == 1) == -(-plates // cooks)


def test_rope_coil_comes_to_its_beads() -> None:
    """3 + (80 + 4.9) + (28 + 5 + 4.9) = 125.8 s, then 8 x 3.6 + 5 + 4.9 = 38.7 s: the fifth plate halfway through."""
    *_, beads = step_times(ROPE_COIL.spec, ROPE_COIL.set_up, SECONDS)
    assert (beads.step, beads.first, beads.plates) == (3, 1, 8)
    assert beads.start_s == pytest.approx(125.8, abs=1e-9)
    assert beads.reaches_s(5) == pytest.approx(125.8 + 38.7 / 2, abs=1e-9)
