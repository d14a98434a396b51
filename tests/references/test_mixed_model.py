"""The mixed model against printed fits.

The examples are data of other trades put through the same cells: in each a run is one measurement, its cook and its
set-up are the two crossed factors, and ``log_ratio`` is what was measured.
"""

from collections.abc import Iterable
from math import log

import numpy as np
import pytest

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.reml import EVERY_TERM, Term, fit_cells

CRITERION = 1e-4
"""Tolerance of a REML criterion that is printed to four decimals."""

SD = 5e-4
"""Relative tolerance of a standard deviation that is printed to four figures."""

PENICILLIN = """
27 23 26 23 23 21  27 23 26 23 23 21  25 21 25 24 24 20  26 23 25 23 23 20  25 22 26 22 23 20  24 22 25 23 22 19
24 20 23 21 22 19  26 22 26 24 24 21  24 21 24 22 22 20  24 21 24 23 22 19  26 23 26 24 24 21  25 22 26 24 24 20
26 24 26 24 25 22  26 23 26 23 23 20  26 23 25 24 24 22  25 22 25 23 23 20  25 21 24 23 23 20  25 22 24 23 23 19
24 21 23 21 21 19  26 23 26 24 24 21  25 21 24 22 22 18  25 22 25 22 22 20  24 21 24 22 24 19  24 21 24 22 21 18
"""
"""Diameters in mm on 24 plates, of six samples each.

Source: Davies and Goldsmith, Statistical Methods in Research and Production, 1972, 6.6. REML as printed in the help of
lme4 and in Bates et al., J. Statistical Software 67(1), 2015: 330.8606, 0.8467, 1.9316, 0.5499 (read in a text); the
further digits, effects and standard errors recomputed.
"""

ROUNDING_TIMES = """
5.40 5.50 5.55  5.85 5.70 5.75  5.20 5.60 5.50  5.55 5.50 5.40  5.90 5.85 5.70  5.45 5.55 5.60  5.40 5.40 5.35
5.45 5.50 5.35  5.25 5.15 5.00  5.85 5.80 5.70  5.25 5.20 5.10  5.65 5.55 5.45  5.60 5.35 5.45  5.05 5.00 4.95
5.50 5.50 5.40  5.45 5.55 5.50  5.55 5.55 5.35  5.45 5.50 5.55  5.50 5.45 5.25  5.65 5.60 5.40  5.70 5.65 5.55
6.30 6.30 6.25
"""
"""Seconds of 22 players round first base in three ways (round out, narrow, wide): a drill if ever there was one.

Source: Hollander and Wolfe, Nonparametric Statistical Methods, 1973, p. 140 (data read in a text, fit recomputed).
"""

MACHINES = """
52.0 52.8 53.1 62.1 62.6 64.0 67.5 67.2 66.9  51.8 52.8 53.1 59.7 60.0 59.0 61.5 61.7 62.3
60.0 60.2 58.4 68.6 65.8 69.7 70.8 70.6 71.0  51.1 52.3 50.3 63.2 62.8 62.2 64.1 66.2 64.0
50.9 51.8 51.4 64.8 65.0 65.4 72.1 72.0 71.1  46.4 44.8 49.2 43.7 44.2 43.0 62.0 61.4 60.5
"""
"""Three scores of each of six workers on each of three machines.

Source: Pinheiro and Bates, Mixed-Effects Models in S and S-PLUS, 2000, 1.3 (fits recomputed).
"""


def numbers(text: str) -> list[float]:
    """The numbers of a table."""
    return [float(word) for word in text.split()]


def crossed(values: Iterable[float], set_ups: int, by: int = 1) -> list[Cell]:
    """Cells of a full table: cook by cook, in it set-up by set-up, in it ``by`` runs."""
    cells: dict[tuple[str, int], Cell] = {}
    for nth, value in enumerate(values):
        place = f"cook{nth // (set_ups * by):02d}", nth // by % set_ups
        cells[place] = cells.get(place, Cell(*place)).plus(value, 0.0, 1)
    return list(cells.values())


def fitted(cells: Iterable[Cell], terms: tuple[Term, ...] = EVERY_TERM) -> Fit:
    """A fit that there is."""
    fit = fit_cells(cells, terms=terms)
    assert fit is not None
    return fit


def sample_by_plate() -> list[float]:
    """Penicillin with the six samples as cooks, the plates as set-ups."""
    table = np.reshape(numbers(PENICILLIN), (24, 6))
    return [float(value) for value in table.T.ravel()]


def test_penicillin() -> None:
    """Criterion, standard deviations, mean, effects and their errors agree with the printed fit."""
    fit = fitted(crossed(sample_by_plate(), 24))
    assert fit.criterion == pytest.approx(330.860589, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_set_up, fit.sd_noise) == pytest.approx((1.93157, 0.84670, 0.549923), rel=SD)
    assert fit.level == pytest.approx(22.972222222222, abs=1e-9)
    assert fit.level_se == pytest.approx(0.8086, abs=5e-5)
    effects = [2.18706, -1.01048, 1.93790, -0.09689, -0.01384, -3.00374]
    assert [cook.effect for cook in fit.cooks] == pytest.approx(effects, abs=1e-5)
    assert [cook.se for cook in fit.cooks] == pytest.approx([0.795166] * 6, rel=SD)
    assert fit.difference_se("cook00", "cook05") == pytest.approx(0.158482, rel=SD)


def test_penicillin_turned() -> None:
    """With plates as cooks and samples as set-ups it is the same fit."""
    fit = fitted(crossed(numbers(PENICILLIN), 6))
    assert fit.criterion == pytest.approx(330.860589, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_set_up, fit.sd_noise) == pytest.approx((0.84670, 1.93157, 0.549923), rel=SD)
    assert [set_up.se for set_up in fit.set_ups] == pytest.approx([0.795166] * 6, rel=SD)


def test_rounding_times() -> None:
    """On logarithms of times, as the bot has them, players and ways agree with the fit."""
    fit = fitted(crossed(map(log, numbers(ROUNDING_TIMES)), 3))
    assert fit.criterion == pytest.approx(-278.24808, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_set_up, fit.sd_noise) == pytest.approx((0.04535691, 0.00773354, 0.01588089), rel=SD)
    assert fit.level == pytest.approx(1.70581526, abs=1e-8)
    assert [set_up.effect for set_up in fit.set_ups] == pytest.approx([0.004724, 0.003422, -0.008146], abs=2e-6)


def test_machines_crossed() -> None:
    """Workers and machines as crossed effects, without their pairs."""
    fit = fitted(crossed(numbers(MACHINES), 3, by=3), ("cook", "set_up"))
    assert fit.criterion == pytest.approx(301.4262789, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_set_up, fit.sd_noise) == pytest.approx((5.1465524, 6.9427643, 3.1616474), rel=SD)
    assert fit.level == pytest.approx(59.65)


def machines_fixed() -> list[Cell]:
    """The second and third machine in the places of the week and of practice: 1 there, else 0."""
    cells = crossed(numbers(MACHINES), 3, by=3)
    return [
        cell
        if cell.set_up == 0
        else cell._replace(sum_t=3.0, sum_tt=3.0, sum_ty=cell.sum_y)
        if cell.set_up == 1
        else cell._replace(sum_p=3.0, sum_pp=3.0, sum_py=cell.sum_y)
        for cell in cells
    ]


def test_machines_fixed() -> None:
    """Fixed effects, which in the bot are the week and practice, beside the workers."""
    fit = fitted(machines_fixed(), ("cook",))
    assert fit.criterion == pytest.approx(286.878202, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_noise) == pytest.approx((5.1465522, 3.1616474), rel=SD)
    first = fit.level - fit.trend * fit.mid_week - fit.learning * fit.mid_practice
    assert (first, fit.trend, fit.learning) == pytest.approx((52.355555556, 7.966666667, 13.916666667))


def test_machines_pairs() -> None:
    """The same with an effect for each pair of a worker and a machine."""
    fit = fitted(machines_fixed(), ("cook", "pair"))
    assert fit.criterion == pytest.approx(215.687568, abs=CRITERION)
    assert (fit.sd_cook, fit.sd_pair, fit.sd_noise) == pytest.approx((4.78105058, 3.72953843, 0.96157664), rel=SD)
