"""When to take it easier: every fifth week, and after runs that went badly."""

from dataclasses import replace

import pytest

from bot.domain.lighter import is_light, step_back
from bot.domain.run import Count, Kind, Result
from tests.fakes import a_result


def _results(*good: int, kind: Kind = "counted") -> list[Result]:
    """Runs of eight plates with so many accepted each."""
    return [replace(a_result(), kind=kind, count=Count(8, accepted, 8 - accepted)) for accepted in good]


STOPPED = replace(a_result(), kind="stopped", count=Count(8, 2, 0, 6))


@pytest.mark.parametrize(
    ("week", "light"),
    [("2026-W48", False), ("2026-W51", False), ("2026-W52", True), ("2026-W53", False), ("2027-W04", True)],
)
def test_every_fifth_week_is_light(week: str, light: bool) -> None:
    """From week 48 of 2026, a year of 53 weeks (ISO 8601): weeks 48 to 52 are five, 53 to week 4 of 2027 five more."""
    assert is_light(week, "2026-W48") is light


def test_no_week_before_the_first_is_light() -> None:
    """A week that the kitchen was not there for is none of its weeks, whatever it divides by."""
    assert not any(is_light(f"2026-W{number}", "2026-W48") for number in range(30, 48))


def test_two_of_three_runs_under_three_quarters_ask_for_less() -> None:
    """Five of eight twice in the last three; six of eight is three quarters and is not under it."""
    assert step_back(_results(5, 8, 5)) == "redo"
    assert step_back(_results(5, 5)) == "redo"
    assert step_back(_results(6, 6, 5)) is None
    assert step_back(_results(5, 8, 8, 5)) is None


def test_a_good_run_after_two_poor_ones_hears_nothing() -> None:
    """It has just shown that there is no need."""
    assert step_back(_results(5, 5, 8)) is None


def test_two_of_three_runs_stopped_ask_for_less() -> None:
    """Whatever their plates were; one stopped run and one poor one are not two of either."""
    assert step_back([STOPPED, *_results(8), STOPPED]) == "stopped"
    assert step_back([STOPPED, *_results(8, 5)]) is None
    assert step_back([]) is None
