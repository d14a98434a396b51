"""The mixed model gives sober numbers where there is little to go by, and the same whichever way the runs came."""

from dataclasses import fields
from math import isfinite, log
from random import Random

import pytest

from bot.domain.fairness.cells import Cell, TimedRun, cells_of
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.reml import Quarter, fit_cells

COOKS = ("ime", "noor", "lio", "petra", "anselm")


def quarter(seed: int, cooks: tuple[str, ...] = COOKS, set_ups: tuple[int, ...] = (1, 2, 3, 4)) -> list[TimedRun]:
    """Sixty runs; a cook is slower the later in the list, a set-up harder the higher its number."""
    draw = Random(seed)  # noqa: S311 - a simulation, nothing secret
    runs = []
    for nth in range(60):
        cook, set_up = draw.randrange(len(cooks)), draw.choice(set_ups)
        runs.append(TimedRun(cooks[cook], set_up, 0.1 * cook + 0.1 * set_up + draw.gauss(0, 0.06), nth / 5))
    return runs


def fitted(cells: tuple[Cell, ...]) -> Fit:
    """A fit that there is."""
    fit = fit_cells(cells)
    assert fit is not None
    return fit


@pytest.mark.parametrize("runs", [[], [TimedRun("noor", 6, 0.1, 0.0)]], ids=["none", "one"])
def test_nothing_to_fit(runs: list[TimedRun]) -> None:
    """Of no run or one there is no fit."""
    assert fit_cells(cells_of(runs)) is None


LITTLE = {
    "two equal runs": [("noor", 6, 0.1, 0.0), ("noor", 6, 0.1, 0.0)],
    "one cook": [("noor", set_up, set_up / 10, float(nth)) for nth, set_up in enumerate((1, 1, 2, 2, 3))],
    "one set-up": [(cook, 6, len(cook) / 10, float(nth)) for nth, cook in enumerate(COOKS * 2)],
    "nobody ran twice": [(cook, set_up, len(cook) / 10 + set_up / 9, 1.0) for cook in COOKS for set_up in (1, 2, 3)],
    "each a set-up alone": [(cook, nth, nth / 9, 1.0) for nth, cook in enumerate(COOKS)],
    "all equal": [(cook, set_up, 0.2, 1.0) for cook in COOKS for set_up in (1, 2) for _ in range(2)],
    "the week as practice": [(cook, nth % 2, nth / 50, log(nth + 1)) for cook in COOKS for nth in range(3)],
}


@pytest.mark.parametrize("runs", LITTLE.values(), ids=LITTLE.keys())
def test_little_to_go_by(runs: list[tuple[str, int, float, float]]) -> None:
    """Every number is finite, every standard deviation and error zero or more, every pace within the runs' range."""
    fit = fitted(cells_of(TimedRun(*run) for run in runs))
    single = [getattr(fit, field.name) for field in fields(fit)]
    assert all(isfinite(number) for number in single if isinstance(number, float))
    assert min(fit.sd_cook, fit.sd_set_up, fit.sd_pair, fit.sd_noise, fit.level_se) >= 0
    least, most = min(run[2] for run in runs), max(run[2] for run in runs)
    for cook in fit.cooks:
        pace = fit.pace(cook.cook)
        assert pace is not None
        assert least - 1e-6 <= pace <= most + 1e-6
        assert cook.se >= 0


def test_few_runs_are_pooled_more() -> None:
    """Of two cooks with the same mean the one with one run is drawn nearer to the crew than the one with many."""
    crew = [run for run in quarter(1) if run.cook != "anselm"]
    slow = [TimedRun("anselm", set_up, 1.0, 6.0) for set_up in (1, 2, 3, 4) for _ in range(5)]
    slow += [TimedRun("sunniva", 2, 1.0, 6.0)]
    fit = fitted(cells_of(sorted([*crew, *slow], key=lambda run: run.week)))
    effect = {cook.cook: cook.effect for cook in fit.cooks}
    assert 0 < effect["sunniva"] < effect["anselm"]


def test_order_of_cells() -> None:
    """The order in which cells are given changes nothing but the last digits."""
    cells = cells_of(quarter(2))
    one, other = fitted(cells), fitted(cells[::-1])
    assert one.criterion == pytest.approx(other.criterion, abs=1e-6)
    assert [cook.effect for cook in one.cooks] == pytest.approx([cook.effect for cook in other.cooks], abs=1e-6)


def test_two_groups() -> None:
    """Cooks who share no set-up with the others are in the fit, and not comparable with them."""
    runs = quarter(3) + quarter(4, ("bastian", "kwabena"), (7, 8))
    fit = fitted(cells_of(runs))
    assert fit.comparable("noor", "lio")
    assert not fit.comparable("noor", "bastian")
    assert {cook.group for cook in fit.cooks} == {set_up.group for set_up in fit.set_ups} == {0, 1}


def test_known_variances() -> None:
    """With the standard deviations of a fit, the same cells give the same effects without looking for them again."""
    cells = cells_of(quarter(5))
    fit = fitted(cells)
    again = fit_cells(cells, known=fit)
    assert again is not None
    assert (again.sd_cook, again.sd_noise) == pytest.approx((fit.sd_cook, fit.sd_noise))
    assert [cook.effect for cook in again.cooks] == pytest.approx([cook.effect for cook in fit.cooks])
    assert [cook.se for cook in again.cooks] == pytest.approx([cook.se for cook in fit.cooks])


@pytest.mark.parametrize("cook", ["noor", "sunniva"], ids=["known", "new"])
def test_one_more_run(cook: str) -> None:
    """A cell put into a quarter gives what gathering all runs again gives."""
    before = quarter(6)
    held = Quarter(cells_of(before))
    cells = cells_of([*before, TimedRun(cook, 2, 0.3, 12.5)])
    held.put(next(cell for cell in cells if (cell.cook, cell.set_up) == (cook, 2)))
    known = fitted(cells)
    one = held.fit(known)
    assert one is not None
    assert [effect[3:] for effect in one.cooks] == [pytest.approx(effect[3:]) for effect in known.cooks]
