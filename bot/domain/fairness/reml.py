"""The mixed model fitted to a quarter's cells: REML for the standard deviations, then the effects.

Source: Patterson and Thompson, Biometrika 58, 1971, 545-554. Runs in a worker process, as it needs numpy and scipy.
"""

from collections.abc import Iterable, Sequence
from math import sqrt
from typing import Literal

import numpy as np
from scipy.optimize import minimize

from bot.domain.fairness.cells import Cell, groups
from bot.domain.fairness.equations import LEAST_VARIANCE, Array, Solved, Sums, pace_covariance, slopes, solve
from bot.domain.fairness.fit import CookEffect, Fit, SetUpEffect

Term = Literal["cook", "set_up", "pair"]
EVERY_TERM: tuple[Term, ...] = ("cook", "set_up", "pair")
LEAST_LOG_RATIO, MOST_LOG_RATIO = -16.0, 14.0
UPPER = np.triu_indices(4)
GRID = [0, 3, 6, 1]
"""Where a cell has its runs and its sums of t, p and y, from its runs on."""
PRODUCTS = [*GRID, 4, 9, 5, 7, 8, 2]
"""Where it has their products with 1, t, p and y, in the order of the upper triangle."""


def fit_cells(cells: Iterable[Cell], known: Fit | None = None, terms: Sequence[Term] = EVERY_TERM) -> Fit | None:
    """Fit a quarter's cells, one a cook and set-up; None while there are not more runs than fixed effects.

    The standard deviations of ``known`` are kept and only the effects fitted anew. ``terms`` are the random effects
    that the model has; one that these cells cannot tell from the rest is left out.
    """
    return Quarter(cells).fit(known, terms)


class Quarter:
    """A quarter's cells, held as arrays, so that one more run needs no gathering."""

    def __init__(self, cells: Iterable[Cell]) -> None:
        self._cells = {(cell.cook, cell.set_up): cell for cell in cells}
        self._gather()

    def put(self, cell: Cell) -> None:
        """Put a cell in the place of this cook's on this set-up, as when one more run has come to it."""
        place = cell.cook, cell.set_up
        before, self._cells[place] = self._cells.get(place), cell
        if before is None:
            self._gather()
        else:
            more = np.subtract(cell[2:], before[2:])
            self._totals += more
            self._grid[:, self._cooks[cell.cook], self._set_ups[cell.set_up]] += more[GRID]

    def fit(self, known: Fit | None = None, terms: Sequence[Term] = EVERY_TERM) -> Fit | None:
        """As ``fit_cells`` says."""
        means, sums = self._about_means()
        if sums.free < 1:
            return None
        if known is None:
            ratios, variance = _best_ratios(sums, _told_apart(sums, terms)), None
        else:
            variance = max(known.sd_noise**2, LEAST_VARIANCE)
            ratios = np.array([known.sd_cook, known.sd_set_up, known.sd_pair]) ** 2 / variance
        solved = solve(sums, ratios)
        return self._fit(means, sums, solved, ratios, sqrt(variance or solved.variance))

    def _gather(self) -> None:
        self._cooks = {cook: at for at, cook in enumerate(sorted({cook for cook, _ in self._cells}))}
        self._set_ups = {set_up: at for at, set_up in enumerate(sorted({set_up for _, set_up in self._cells}))}
        columns = np.array([cell[2:] for cell in self._cells.values()], dtype=np.float64).reshape(-1, 10).T
        at_cooks = [self._cooks[cook] for cook, _ in self._cells]
        at_set_ups = [self._set_ups[set_up] for _, set_up in self._cells]
        self._totals = columns.sum(axis=1)
        self._grid = np.zeros((4, len(self._cooks), len(self._set_ups)))
        self._grid[:, at_cooks, at_set_ups] = columns[GRID]

    def _about_means(self) -> tuple[Array, Sums]:
        products = np.zeros((4, 4))
        products[UPPER] = self._totals[PRODUCTS]
        products = np.triu(products) + np.triu(products, 1).T
        means = products[0] / max(products[0, 0], 1)
        about = np.eye(4) - np.outer([0, *means[1:]], [1, 0, 0, 0])
        products = about @ products @ about.T
        kept = _varying(products)
        rows = [*kept, 3]
        return means, Sums(kept, np.tensordot(about, self._grid, 1)[rows], products[np.ix_(rows, rows)])

    def _fit(self, means: Array, sums: Sums, solved: Solved, ratios: Array, noise: float) -> Fit:
        size, spread = len(self._cooks), noise * np.sqrt(ratios)
        practice = self._grid[2].sum(axis=1) / self._grid[0].sum(axis=1)
        at = np.column_stack([np.ones(size), np.zeros(size), practice - means[2]])[:, sums.kept]
        fixed = np.zeros(3)
        fixed[sums.kept] = solved.crew[size:]
        cooks, set_ups = self._effects(solved, ratios, noise, practice)
        return Fit(
            level=float(fixed[0] + means[3]),
            level_se=noise * sqrt(solved.covariance[size, size]),
            trend=float(fixed[1]),
            learning=float(fixed[2]),
            sd_cook=float(spread[0]),
            sd_set_up=float(spread[1]),
            sd_pair=float(spread[2]),
            sd_noise=noise,
            criterion=solved.criterion,
            mid_week=float(means[1]),
            mid_practice=float(means[2]),
            cooks=cooks,
            set_ups=set_ups,
            pairs=_rows(ratios[2] * solved.left),
            pace_covariances=_rows(noise**2 * pace_covariance(solved, at, ratios)),
        )

    def _effects(
        self, solved: Solved, ratios: Array, noise: float, practice: Array
    ) -> tuple[tuple[CookEffect, ...], tuple[SetUpEffect, ...]]:
        """What each cook and each set-up is found to differ by, with standard errors."""
        (cook, set_up, _), (of_cooks, of_set_ups) = np.sqrt(ratios), solved.variances
        group = groups(self._cells.values())
        cooks = map(
            CookEffect,
            self._cooks,
            self._grid[0].sum(axis=1).astype(int).tolist(),
            map(group.cooks.__getitem__, self._cooks),
            (cook * solved.crew[: len(self._cooks)]).tolist(),
            (noise * cook * np.sqrt(of_cooks)).tolist(),
            practice.tolist(),
        )
        set_ups = map(
            SetUpEffect,
            self._set_ups,
            self._grid[0].sum(axis=0).astype(int).tolist(),
            map(group.set_ups.__getitem__, self._set_ups),
            (set_up * solved.set_ups).tolist(),
            (noise * set_up * np.sqrt(of_set_ups)).tolist(),
        )
        return tuple(cooks), tuple(set_ups)


def _varying(products: Array) -> list[int]:
    """Of 1, t and p those that vary apart from the ones before, while runs are left over."""
    kept = [0]
    for at in (1, 2):
        if products[0, 0] <= len(kept) + 1:
            break
        on = products[kept, at]
        apart = products[at, at] - on @ np.linalg.solve(products[np.ix_(kept, kept)], on)
        if apart > 1e-8 * max(products[0, 0], products[at, at]):
            kept.append(at)
    return kept


def _told_apart(sums: Sums, terms: Sequence[Term]) -> list[int]:
    """Which ratios to look for: of cooks and set-ups if there are two, of pairs if they are more and some ran again."""
    runs = sums.cells[0]
    paired = runs.max() > 1 and np.count_nonzero(runs) > max(runs.shape)
    found = {"cook": len(runs) > 1, "set_up": len(runs.T) > 1, "pair": paired}
    return [at for at, term in enumerate(EVERY_TERM) if term in terms and found[term]]


def _best_ratios(sums: Sums, looked: list[int]) -> Array:
    def at(logs: Array) -> Array:
        ratios = np.zeros(3)
        ratios[looked] = np.where(logs > LEAST_LOG_RATIO, np.exp(logs), 0.0)
        return ratios

    def criterion(logs: Array) -> tuple[float, Array]:
        solved = solve(sums, at(logs))
        return solved.criterion, slopes(solved, at(logs))[looked]

    if not looked:
        return np.zeros(3)
    found = minimize(
        criterion,
        np.zeros(len(looked)),
        jac=True,
        method="L-BFGS-B",
        bounds=[(LEAST_LOG_RATIO, MOST_LOG_RATIO)] * len(looked),
        options={"ftol": 1e-13, "gtol": 1e-6},
    )
    return at(found.x)


def _rows(table: Array) -> tuple[tuple[float, ...], ...]:
    return tuple(map(tuple, table.tolist()))
