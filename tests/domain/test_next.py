"""What a cook practises next, from splits, redo reasons and what has rested. The rule is the project's own."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.domain.drill import Drill
from bot.domain.next_drill import (
    COURSE,
    Mentions,
    PractisedRun,
    costs_of,
    course_drill,
    next_drill,
    present_level_s,
    shares_of,
)
from bot.domain.redo_reasons import CAUSES, techniques_behind
from bot.domain.standard_time import standard_s
from bot.words.result_words import REASONS
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, ROPE_COIL, SECONDS, SLIPWAY

TODAY = date(2026, 11, 27)


def _run(drill: Drill, *splits_s: int, reasons: tuple[str, ...] = (), days_ago: int = 1) -> PractisedRun:
    return PractisedRun(TODAY - timedelta(days=days_ago), drill, drill.set_up.plates, splits_s, reasons)


def _next(*runs: PractisedRun, drills: tuple[Drill, ...] = EVERY) -> tuple[str, str]:
    """The drill's label and the technique; a dash for no drill, nothing for no advice."""
    advice = next_drill(drills, runs, SECONDS, TODAY)
    return (advice.drill.label if advice.drill else "-", advice.technique) if advice else ("", "")


SHINGLING = [_run(SLIPWAY, 168, 35, 25), _run(SLIPWAY, 171, 36, 24), _run(SLIPWAY, 169, 35, 25)]
"""Slipway with 126.8, 35.1 and 24.6 s of standard time by step: 41.2 s over on the shingle at least, each time."""


def test_what_is_lost_every_time_is_trained_where_it_is_most_of_the_work() -> None:
    """The shingle cost 41 s in each of three runs; Slipway is the drill within reach that is mostly shingle."""
    advice = next_drill(EVERY, SHINGLING, SECONDS, TODAY)
    assert advice is not None
    assert (advice.drill, advice.technique) == (SLIPWAY, "shingle")
    assert advice.costs.lost_s == pytest.approx(41.2)
    assert advice.level_s == pytest.approx(186.5)


def test_nothing_is_advised_without_splits_or_reasons() -> None:
    """Clocks alone do not tell, nor two runs with splits, nor three at standard, nor a reason given once."""
    assert _next() == ("", "")
    assert _next(_run(SLIPWAY), _run(SLIPWAY), _run(SLIPWAY)) == ("", "")
    assert _next(*SHINGLING[:2]) == ("", "")
    assert _next(*[_run(SLIPWAY, 126, 35, 24)] * 3) == ("", "")
    assert _next(_run(ROPE_COIL, reasons=("fell",))) == ("", "")


def test_a_reason_given_again_is_trained() -> None:
    """`fell` in two of the last three runs is the lean's, and costs a clean plate built alone each time: 37.1 s."""
    runs = [_run(ROPE_COIL, reasons=("fell",)), _run(ROPE_COIL), _run(ROPE_COIL, reasons=("fell",))]
    costs = costs_of(runs, SECONDS)["lean"]
    assert costs.mentions == Mentions("fell", times=2, of_runs=3)
    assert costs.redo_s == pytest.approx(2 * (10.0 + 27.1) / 3)
    assert _next(*runs) == ("6", "lean")


def test_only_the_last_five_runs_reasons_are_heard() -> None:
    """What fell twice before the last five runs has been mended since."""
    fell = [_run(ROPE_COIL, reasons=("fell",))] * 2
    assert _next(*fell, *[_run(ROPE_COIL)] * 5) == ("", "")


def test_a_drill_out_of_reach_is_not_advised() -> None:
    """At 8:30 of standard time Slipway's 3:07 is too easy: what is within reach is Full tide and Last ferry."""
    at_full_tide = [_run(FULL_TIDE, 44, 40, 180, 90, 90, 80, 40)] * 3
    assert _next(*at_full_tide) == ("11B", "shingle")
    assert _next(*at_full_tide, drills=(SLIPWAY,)) == ("-", "shingle")


def test_what_has_rested_for_three_weeks_tips_the_scale() -> None:
    """Of two drills that train a lost technique alike, the one with a technique not practised for 21 days is taken."""
    shingle, sauce, _ = SLIPWAY.spec.steps
    known = replace(SLIPWAY, spec=replace(SLIPWAY.spec, steps=(shingle, sauce)))
    rested = replace(SLIPWAY, spec=replace(SLIPWAY.spec, steps=(shingle, replace(sauce, technique="glaze"))))
    glaze = replace(SECONDS.techniques["sauce"], name="glaze")
    seconds = replace(SECONDS, techniques={**SECONDS.techniques, "glaze": glaze})

    def advised(*runs: PractisedRun) -> Drill | None:
        advice = next_drill((known, rested), [*runs, *SHINGLING], seconds, TODAY)
        return advice.drill if advice else None

    assert advised(_run(rested, days_ago=21)) == rested
    assert advised(_run(rested, days_ago=20)) == known


def test_the_present_level_is_the_median_of_the_last_three() -> None:
    """An odd easy run does not make a beginner of anybody."""
    level_s = present_level_s([_run(FULL_TIDE), _run(SLIPWAY), _run(ROPE_COIL), _run(SLIPWAY)], SECONDS)
    assert level_s == standard_s(SLIPWAY.spec, SLIPWAY.set_up, SECONDS)


def test_a_technique_has_its_share_of_a_drill() -> None:
    """Slipway is 123.2 s of shingling, 28 s of sauce and 16 s of wiping in 186.5 s."""
    assert shares_of(SLIPWAY, SECONDS) == pytest.approx(
        {"shingle": 123.2 / 186.5, "sauce": 28 / 186.5, "wipe": 16 / 186.5}
    )


def test_a_newcomer_goes_through_the_course() -> None:
    """One to four take a week each, five to seven two, and then there is no next of the course."""
    weeks: dict[int, int] = {}
    order = []
    while (number := course_drill(weeks)) is not None:
        order.append(number)
        weeks[number] = weeks.get(number, 0) + 1
    assert order == [1, 2, 3, 4, 5, 5, 6, 6, 7, 7]
    assert course_drill({1: 1, 3: 1}) == 2
    assert sum(COURSE.values()) == 10


def test_every_reason_is_of_some_technique_and_every_technique_of_some_reason() -> None:
    """The twelve reasons that a line may give are all known here, and no technique is beyond reproach."""
    assert CAUSES.keys() == REASONS
    assert frozenset().union(*CAUSES.values()) == SECONDS.techniques.keys()


@pytest.mark.parametrize(
    ("reason", "drill", "techniques"),
    [
        ("fell", ROPE_COIL, ("lean",)),
        ("rim", FULL_TIDE, ("line", "crumb")),
        ("flat", LOCK_GATE, ("dot",)),
        ("face", FULL_TIDE, ("quenelle",)),
        ("torn", ROPE_COIL, ()),
        ("soup", ROPE_COIL, ()),
    ],
)
def test_a_reason_speaks_of_the_steps_that_a_drill_has(reason: str, drill: Drill, techniques: tuple[str, ...]) -> None:
    """In their order; of none where the drill has nothing that it could be."""
    assert techniques_behind(reason, drill.spec) == techniques
