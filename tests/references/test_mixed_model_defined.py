"""The mixed model on unbalanced runs, against its definition written out and against an independent library."""

from collections.abc import Sequence
from math import log, pi
from random import Random
from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt
import pandas as pd
import pytest
import statsmodels.formula.api as smf
from scipy.optimize import minimize

from bot.domain.fairness.cells import TimedRun, cells_of
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.reml import fit_cells

Array = npt.NDArray[np.float64]
SEEDS = range(20)


class Written(NamedTuple):
    """Runs of an unbalanced quarter, and what each of the definition's matrices needs of them."""

    runs: list[TimedRun]
    y: Array
    fixed: Array
    cooks: Array
    set_ups: Array

    @property
    def same(self) -> list[Array]:
        """For each random effect, which runs share it."""
        cook, set_up = self.cooks @ self.cooks.T, self.set_ups @ self.set_ups.T
        return [cook, set_up, cook * set_up]


def fitted(quarter: Written) -> Fit:
    """Its fit, from cells."""
    fit = fit_cells(cells_of(quarter.runs))
    assert fit is not None
    return fit


def unbalanced(seed: int) -> Written:
    """Four to eight cooks on two to eight set-ups, 15 to 60 runs, with trend, learning and some variances zero."""
    draw = Random(seed)  # noqa: S311 - a simulation, nothing secret
    sds = [draw.choice([0.0, 0.05, 0.2]) for _ in range(3)]
    return quarter_of(draw, draw.randint(4, 8), draw.randint(2, 8), draw.randint(15, 60), sds)


def quarter_of(draw: Random, cooks: int, set_ups: int, many: int, sds: list[float]) -> Written:
    """So many runs, of cooks, set-ups and pairs with these standard deviations."""
    cook_is = [draw.gauss(0, sds[0]) for _ in range(cooks)]
    set_up_is = [draw.gauss(0, sds[1]) for _ in range(set_ups)]
    pair_is = [[draw.gauss(0, sds[2]) for _ in range(set_ups)] for _ in range(cooks)]
    runs, practice, nth = [], [], dict.fromkeys(range(cooks), 0)
    for _ in range(many):
        cook, set_up, week = draw.randrange(cooks), draw.randrange(set_ups), draw.uniform(0, 13)
        nth[cook] += 1
        practice.append(log(nth[cook]))
        ratio = cook_is[cook] + set_up_is[set_up] + pair_is[cook][set_up] - 0.07 * practice[-1] + 0.01 * week
        runs.append(TimedRun(f"cook{cook}", set_up, ratio + draw.gauss(0, 0.06), week))
    return Written(
        runs,
        np.array([run.log_ratio for run in runs]),
        np.column_stack([np.ones(len(runs)), [run.week for run in runs], practice]),
        _belongs([run.cook for run in runs]),
        _belongs([str(run.set_up) for run in runs]),
    )


def _belongs(names: Sequence[str]) -> Array:
    return np.array([[name == level for level in sorted(set(names))] for name in names], dtype=np.float64)


def criterion(quarter: Written, ratios: Sequence[float]) -> float:
    """The REML criterion by its definition on single runs, the noise's variance profiled out.

    Source: Patterson and Thompson, Biometrika 58, 1971, 545-554, in the form of Bates et al., 2015 (from memory).
    """
    x, y = quarter.fixed - quarter.fixed.mean(axis=0) * [0, 1, 1], quarter.y
    v = np.eye(len(y)) + sum(ratio * same for ratio, same in zip(ratios, quarter.same, strict=True))
    inverse = np.linalg.inv(v)
    information = x.T @ inverse @ x
    rest = y - x @ np.linalg.solve(information, x.T @ inverse @ y)
    free = len(y) - 3
    determinants = np.linalg.slogdet(v).logabsdet + np.linalg.slogdet(information).logabsdet
    return float(determinants + free * (1 + log(2 * pi * (rest @ inverse @ rest) / free)))


def searched(quarter: Written, start: Sequence[float]) -> float:
    """The least criterion that a search without slopes finds from a start, over the logarithms of the ratios."""

    def at(logs: npt.NDArray[Any]) -> float:
        return criterion(quarter, [float(ratio) for ratio in np.exp(np.clip(logs, -16, 9))])

    return float(minimize(at, np.array(start), method="Nelder-Mead", tol=1e-5).fun)


def ratios_of(fit: Fit) -> list[float]:
    """The fitted variances over the noise's."""
    return [(sd / fit.sd_noise) ** 2 for sd in (fit.sd_cook, fit.sd_set_up, fit.sd_pair)]


@pytest.mark.parametrize("seed", SEEDS)
def test_criterion_by_definition(seed: int) -> None:
    """On unbalanced runs the criterion is the definition's, and no other variances found by searching do better."""
    quarter = unbalanced(seed)
    fit = fitted(quarter)
    assert fit.criterion == pytest.approx(criterion(quarter, ratios_of(fit)), abs=1e-6)
    for start in ([0.0, 0.0, 0.0], [-6.0, 2.0, -6.0], [2.0, -6.0, -3.0]):
        assert fit.criterion <= searched(quarter, start) + 1e-4


@pytest.mark.parametrize("seed", SEEDS)
def test_effects_by_definition(seed: int) -> None:
    """Effects, and the errors of effects and paces, are those of generalised least squares and best prediction.

    Source: Henderson, Biometrics 31, 1975, 423-447; C. R. Rao's prediction error variance (from memory).
    """
    quarter = unbalanced(seed)
    fit = fitted(quarter)
    variances = [sd**2 for sd in (fit.sd_cook, fit.sd_set_up, fit.sd_pair)]
    v = fit.sd_noise**2 * np.eye(len(quarter.y)) + sum(
        variance * same for variance, same in zip(variances, quarter.same, strict=True)
    )
    x, inverse = quarter.fixed, np.linalg.inv(v)
    of_fixed = np.linalg.inv(x.T @ inverse @ x)
    fixed = of_fixed @ x.T @ inverse @ quarter.y
    rest = inverse @ (quarter.y - x @ fixed)
    level = fit.level - fit.trend * fit.mid_week - fit.learning * fit.mid_practice
    assert (level, fit.trend, fit.learning) == pytest.approx(tuple(fixed), abs=1e-9)
    random = np.hstack([quarter.cooks, quarter.set_ups])
    spread = np.diag([variances[0]] * len(fit.cooks) + [variances[1]] * len(fit.set_ups))
    effects = [*(cook.effect for cook in fit.cooks), *(set_up.effect for set_up in fit.set_ups)]
    assert effects == pytest.approx(list(spread @ random.T @ rest), abs=1e-9)
    assert np.array(fit.pairs) == pytest.approx(variances[2] * (quarter.cooks.T * rest) @ quarter.set_ups, abs=1e-9)

    through = spread @ random.T @ inverse
    of_effects = through @ x @ of_fixed @ (through @ x).T + spread - through @ random @ spread
    errors = [*(cook.se for cook in fit.cooks), *(set_up.se for set_up in fit.set_ups)]
    assert errors == pytest.approx(list(np.sqrt(of_effects.diagonal().clip(0))), abs=1e-7)
    at = np.array([[1, fit.mid_week, cook.practice] for cook in fit.cooks])
    weights = np.hstack([np.eye(len(fit.cooks)), np.full((len(fit.cooks), len(fit.set_ups)), 1 / len(fit.set_ups))])
    unknown = at - weights @ through @ x
    of_paces = unknown @ of_fixed @ unknown.T + weights @ (spread - through @ random @ spread) @ weights.T
    assert np.array(fit.pace_covariances) == pytest.approx(of_paces, abs=1e-9)


def test_statsmodels() -> None:
    """Criterion and standard deviations agree with statsmodels, an independent library, on unbalanced runs.

    It is given percent instead of shares, as it takes every variance below 0.01 for zero.
    """
    percent = 100.0
    quarter = quarter_of(Random(1), 8, 6, 120, [0.2, 0.2, 0.1])  # noqa: S311 - a simulation, nothing secret
    fit = fitted(quarter)
    middle = quarter.fixed - quarter.fixed.mean(axis=0)
    table = pd.DataFrame(
        {
            "y": percent * quarter.y,
            "week": middle[:, 1],
            "practice": middle[:, 2],
            "cook": [run.cook for run in quarter.runs],
            "set_up": [str(run.set_up) for run in quarter.runs],
            "pair": [f"{run.cook} {run.set_up}" for run in quarter.runs],
            "crew": 1,
        }
    )
    parts = {term: f"0 + C({term})" for term in ("cook", "pair", "set_up")}
    theirs = smf.mixedlm("y ~ week + practice", table, groups="crew", vc_formula=parts, re_formula="0").fit()
    wider = 2 * (len(quarter.y) - 3) * log(percent)
    assert fit.criterion == pytest.approx(-2 * theirs.llf - wider, abs=1e-4)
    ours = [percent * sd for sd in (fit.sd_cook, fit.sd_pair, fit.sd_set_up, fit.sd_noise)]
    assert ours == pytest.approx(np.sqrt([*theirs.vcomp, theirs.scale]).tolist(), rel=1e-3)
