"""How far wrong standard times would carry a run over from one set-up to another of the same spec."""

import random
from collections.abc import Callable
from dataclasses import replace
from math import exp, log
from statistics import pstdev

from bot.domain.drill import Drill, SetUp
from bot.domain.standard_time import standard_s
from bot.domain.techniques import Seconds
from bot.library.course import load_course
from bot.library.seconds import load_seconds

WRONG = 0.3
"""How wrong the seconds are: the standard deviation of the log of each, on its own."""

COURSE = [drill for drill in load_course() if not drill.set_up.pressure]


def wrong_seconds(draw: random.Random) -> Seconds:
    """The house's seconds, each as it might truly be."""
    seconds = load_seconds()

    def truly(second: float) -> float:
        return second * exp(draw.gauss(0, WRONG))

    return replace(
        seconds,
        techniques={name: replace(each, seconds=truly(each.seconds)) for name, each in seconds.techniques.items()},
        tool_change_s=truly(seconds.tool_change_s),
        column_s=truly(seconds.column_s),
        start_stop_s=truly(seconds.start_stop_s),
    )


def worst_error(change: Callable[[SetUp], SetUp]) -> float:
    """By what share, one standard deviation, a time is carried over wrongly on the worst drill of the course."""
    draw = random.Random(30)  # noqa: S311 - a simulation
    truths = [wrong_seconds(draw) for _ in range(60)]
    return max(pstdev(log(_ratio(drill, change, truth)) for truth in truths) for drill in COURSE)


def _ratio(drill: Drill, change: Callable[[SetUp], SetUp], seconds: Seconds) -> float:
    return standard_s(drill.spec, change(drill.set_up), seconds) / standard_s(drill.spec, drill.set_up, seconds)


def test_plates_and_rows_may_be_carried_over() -> None:
    """Two plates more, half as many more, one row for two: less than a cook's noise of 4 %."""
    assert worst_error(lambda set_up: replace(set_up, plates=set_up.plates + 2)) < 0.01
    assert worst_error(lambda set_up: replace(set_up, plates=set_up.plates * 3 // 2)) < 0.02
    assert worst_error(lambda set_up: replace(set_up, rows=3 - set_up.rows)) < 0.04


def test_working_orders_may_not() -> None:
    """Plate by plate for component by component: over 10 %, which would pass for progress."""
    assert worst_error(lambda set_up: replace(set_up, working="plate")) > 0.1
