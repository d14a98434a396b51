"""The mixed model's equations, solved for given ratios of the variances.

y = X b + cook + set-up + pair + noise. The pair of a cook and a set-up is eliminated cell by cell, then the set-ups,
whose equations are diagonal, by a Schur complement: what is left has the size of the crew. Random effects are kept in
units of their own standard deviation, so that a variance of zero needs no special case. ``ratios`` are variances over
the noise's: the cooks', the set-ups' and the pairs'.

Sources: Henderson, Biometrics 31, 1975, 423-447; the profiled criterion, Bates et al., J. Statistical Software 67(1),
2015; its slopes, Searle, Casella and McCulloch, Variance Components, 1992, ch. 6. Runs in a worker process, as it needs
numpy and scipy.
"""

from dataclasses import dataclass
from math import log, pi, sqrt

import numpy as np
import numpy.typing as npt
from scipy.linalg import cho_factor, cho_solve

Array = npt.NDArray[np.float64]
LEAST_VARIANCE = 1e-12


@dataclass(frozen=True)
class Sums:
    """A quarter's runs: sums of 1, t, p and y about their means, by cook and set-up, and ``gram``, of their products.

    Of 1, t and p only those in ``kept`` are there: the others do not vary, or not apart from these.
    """

    kept: list[int]
    cells: Array
    gram: Array

    @property
    def free(self) -> int:
        """Runs less fixed effects."""
        return round(float(self.gram[0, 0])) - len(self.kept)


@dataclass(frozen=True)
class Solved:
    """The equations solved: effects in units of their standard deviations, covariances in the noise's variance.

    ``crew`` are the effects of the cooks and then the fixed ones, ``covariance`` is theirs; ``set_ups`` are the
    set-ups' effects, ``own`` their own weights and ``border`` their ties to the crew, over these. ``cells`` are the
    sums with the pairs eliminated, and ``left`` is what all effects leave of those of y.
    """

    criterion: float
    variance: float
    crew: Array
    set_ups: Array
    covariance: Array
    border: Array
    own: Array
    cells: Array
    left: Array

    @property
    def variances(self) -> tuple[Array, Array]:
        """Those of the cooks' and of the set-ups' effects."""
        of_set_ups = 1 / self.own + (self.border * (self.covariance @ self.border)).sum(axis=0)
        return self.covariance.diagonal()[: len(self.cells[0])], of_set_ups


def solve(sums: Sums, ratios: Array) -> Solved:
    """Henderson's equations solved, and the REML criterion with the noise's variance profiled out."""
    cook, set_up, pair = sqrt(ratios[0]), sqrt(ratios[1]), ratios[2]
    columns = len(sums.gram)
    cells = sums.cells / (1 + pair * sums.cells[0])
    gram = sums.gram - pair * cells.reshape(columns, -1) @ sums.cells.reshape(columns, -1).T
    by_cook, by_set_up = cook * cells.sum(axis=2), set_up * cells.sum(axis=1)
    own = 1 + set_up * by_set_up[0]
    ties = np.vstack([cook * set_up * cells[0], by_set_up])
    whole = np.block([[np.diag(1 + cook * by_cook[0]), by_cook.T], [by_cook, gram]]) - (ties / own) @ ties.T
    factor, lower = cho_factor(whole[:-1, :-1], lower=True)
    covariance = cho_solve((factor, lower), np.eye(len(factor)))
    crew = covariance @ whole[:-1, -1]
    set_ups = (ties[-1] - crew @ ties[:-1]) / own
    variance = max(whole[-1, -1] - crew @ whole[:-1, -1], LEAST_VARIANCE) / sums.free
    determinant = 2 * np.log(factor.diagonal()).sum() + np.log(own).sum() + np.log1p(pair * sums.cells[0]).sum()
    size = len(sums.cells[0])
    fitted = cells[0] * (cook * crew[:size, None] + set_up * set_ups) + np.tensordot(crew[size:], cells[:-1], 1)
    return Solved(
        criterion=float(determinant + sums.free * (1 + log(2 * pi * variance))),
        variance=float(variance),
        crew=crew,
        set_ups=set_ups,
        covariance=covariance,
        border=ties[:-1] / own,
        own=own,
        cells=cells,
        left=cells[-1] - fitted,
    )


def slopes(solved: Solved, ratios: Array) -> Array:
    """The criterion's slopes by the logarithms of the ratios."""
    size = len(solved.cells[0])
    effects = solved.crew[:size], solved.set_ups
    sides = [
        len(of) - variances.sum() - of @ of / solved.variance
        for of, variances in zip(effects, solved.variances, strict=True)
    ]
    pairs = (solved.cells[0] - _leverages(solved, ratios)).sum() - (solved.left**2).sum() / solved.variance
    return np.array([*sides, ratios[2] * pairs])


def _leverages(solved: Solved, ratios: Array) -> Array:
    """How much of each cell's weight its own fitted value takes up."""
    cook, set_up = np.sqrt(ratios[:2])
    weight, fixed, size = solved.cells[0], solved.cells[:-1], len(solved.cells[0])
    of_cooks, of_set_ups = solved.variances
    crossed = solved.covariance @ solved.border
    both = cook**2 * of_cooks[:, None] + set_up**2 * of_set_ups - 2 * cook * set_up * crossed[:size]
    mixed = cook * solved.covariance[size:, :size, None] - set_up * crossed[size:, None, :]
    alone = fixed * np.tensordot(solved.covariance[size:, size:], fixed, 1)
    return np.asarray(weight**2 * both + (2 * weight * fixed * mixed + alone).sum(axis=0))


def pace_covariance(solved: Solved, fixed: Array, ratios: Array) -> Array:
    """The covariance of the cooks' paces over all set-ups alike, each cook's ``fixed`` effects weighted so."""
    size, many = solved.cells.shape[1:]
    on_crew = np.hstack([sqrt(ratios[0]) * np.eye(size), fixed])
    on_set_ups = np.full(many, sqrt(ratios[1]) / many)
    weights = on_crew - solved.border @ on_set_ups
    return np.asarray(weights @ solved.covariance @ weights.T + (on_set_ups**2 / solved.own).sum())
