"""Shares of plates: Wilson's interval for one, Newcombe's for the difference of two."""

from math import hypot, sqrt
from statistics import NormalDist

ONE_SIDED_95 = NormalDist().inv_cdf(0.95)

Share = tuple[int, int]
"""So many of so many."""


def wilson(successes: int, trials: int, z: float) -> tuple[float, float]:
    """Wilson's score interval for a share, ``z`` standard errors to each side (E. B. Wilson, JASA 22, 1927)."""
    share, squared = successes / trials, z * z
    middle = share + squared / (2 * trials)
    reach = z * sqrt(share * (1 - share) / trials + squared / (4 * trials * trials))
    low, high = ((middle + side * reach) / (1 + squared / trials) for side in (-1, 1))
    return low if successes else 0.0, high if successes < trials else 1.0


def difference(one: Share, other: Share, z: float) -> tuple[float, float]:
    """Newcombe's interval for the first share less the second, from their Wilson intervals.

    Method 10 of R. G. Newcombe, Statistics in Medicine 17 (1998), 873-890.
    """
    (low_1, high_1), (low_2, high_2) = wilson(*one, z), wilson(*other, z)
    share_1, share_2 = one[0] / one[1], other[0] / other[1]
    between = share_1 - share_2
    return between - hypot(share_1 - low_1, high_2 - share_2), between + hypot(high_1 - share_1, share_2 - low_2)
