"""The standard seconds against published work measurement.

Basic motion times: MTM-1 data card; H. B. Maynard, G. J. Stegemerten and J. L. Schwab, Methods-Time Measurement, 1948
(facts only; values read in a text). The build-ups a technique are estimates constructed for this project, not an MTM
analysis; their sums are recomputed here.
"""

import tomllib
from importlib import resources
from itertools import combinations
from math import sqrt

import pytest

from bot.domain.pace import levelled_s
from bot.library.seconds import load_seconds

TMU_S = 0.036  # MTM-1 data card, unit table: 100,000 TMU are an hour. Read in a text.

TMU = {
    "R30B": 12.8, "R30C": 14.1, "R40B": 15.6, "M2B": 2.0, "M4B": 3.8, "M6C": 5.8, "M10B": 6.9, "M10C": 8.0, "M16B": 9.2,
    "M16C": 10.3, "M30B": 13.2, "M30C": 15.1, "M40B": 15.6, "G1A": 2.0, "G1B": 3.5, "G4B": 9.1, "P1SE": 5.6,
    "P1SSE": 9.1, "P2SE": 16.2, "RL1": 2.0, "APA": 10.6, "T60S": 4.1, "T90S": 5.4, "T120S": 6.8, "T180S": 9.4,
    "PT10": 10.0,  # constructed process time
}  # fmt: skip

BUILD_UPS = [  # name, motions, TMU, seconds, weight against one place: constructed, sums recomputed
    ("place", "R30C G4B M30C P1SE RL1", 45.9, 1.6524, 1.00),
    ("stack", "R30C G4B M30C P2SE RL1", 56.5, 2.0340, 1.23),
    ("dot", "M6C P1SE APA M2B", 24.0, 0.8640, 0.52),
    ("smear", "M30B T60S M30C P1SE M16C M4B", 52.1, 1.8756, 1.14),
    ("drizzle", "M10C P1SE APA M10B M10B M10B M10B M10B", 58.7, 2.1132, 1.28),
    ("spoon", "M30B T60S M30C P1SE T90S PT10 M10B", 60.3, 2.1708, 1.31),
    ("quenelle", "M30B M16C M16C M16C T120S T120S T120S M30C P1SSE T90S M10B", 101.0, 3.6360, 2.20),
    ("shave", "M10C M16C M16B", 27.5, 0.9900, 0.60),
    ("twirl", "M30B APA T180S T180S T180S T180S M30C P1SE T180S RL1", 93.5, 3.3660, 2.04),
    ("scatter", "R30B G1B M30B M4B M4B M4B RL1", 42.9, 1.5444, 0.93),
    ("wipe", "R30B G1A M30C M30C APA M30B RL1", 70.8, 2.5488, 1.54),
    ("tool_change", "M30B RL1 R30B G1A M30B", 43.2, 1.5552, 0.94),
    ("fresh_plate", "R40B G1A M40B P1SE RL1", 40.8, 1.4688, 0.89),
]

MOTION_S = {name: seconds for name, _, _, seconds, _ in BUILD_UPS}


def _seconds_beside_motion() -> dict[str, tuple[float, float]]:
    """By technique: its standard seconds, and the motion seconds of the build-up that the shipped file names."""
    rows = tomllib.loads(resources.files("bot.library").joinpath("seconds.toml").read_text("utf-8"))["techniques"]
    return {row["name"]: (row["seconds"], MOTION_S[row["motion"]]) for row in rows if "motion" in row}


def _kendall_tau_b(x: list[float], y: list[float]) -> float:
    """Rank correlation with ties (M. G. Kendall, Biometrika 33, 1945)."""
    pairs = [(x[i] - x[j], y[i] - y[j]) for i, j in combinations(range(len(x)), 2)]
    agree = sum((a * b > 0) - (a * b < 0) for a, b in pairs)
    return agree / sqrt(sum(a != 0 for a, _ in pairs) * sum(b != 0 for _, b in pairs))


@pytest.mark.parametrize(("name", "motions", "tmu", "seconds", "weight"), BUILD_UPS)
def test_build_ups_add_up(name: str, motions: str, tmu: float, seconds: float, weight: float) -> None:
    """Each build-up is the sum of its published motions, in TMU and seconds, with its weight against one place."""
    total = sum(TMU[motion] for motion in motions.split())
    assert total == pytest.approx(tmu, abs=1e-9), name
    assert total * TMU_S == pytest.approx(seconds, abs=1e-9), name
    assert round(total / 45.9, 2) == weight, name


def test_motion_never_passes_the_seconds_by_more_than_a_third() -> None:
    """No technique is given so little time that published motions alone take more than four thirds of it."""
    for name, (seconds, motion) in _seconds_beside_motion().items():
        assert motion <= seconds * 4 / 3, name


def test_a_tool_change_holds_its_motion() -> None:
    """Five seconds for a tool change are more than its motions; wiping and setting down are the rest."""
    assert load_seconds().tool_change_s > MOTION_S["tool_change"]


def test_our_rank_correlation_is_the_published_one() -> None:
    """Tau of the tuna data: Hollander and Wolfe, Nonparametric Statistical Methods, 1973, p. 187. Recomputed too."""
    lightness = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1]
    quality = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8]
    assert _kendall_tau_b(lightness, quality) == pytest.approx(0.4444444444444444, abs=1e-12)


def test_seconds_rank_as_their_motions_do() -> None:
    """What takes more motion is given more time, beyond what chance does once in a thousand.

    The bound is 3.09 standard errors of tau under no relation, sqrt(2 (2n + 5) / (9n (n - 1))): M. G. Kendall,
    Biometrika 30, 1938, normal approximation. From memory, recomputed.
    """
    pairs = list(_seconds_beside_motion().values())
    n = len(pairs)
    assert n == 16
    by_chance = 3.09 * sqrt(2 * (2 * n + 5) / (9 * n * (n - 1)))
    assert _kendall_tau_b([seconds for seconds, _ in pairs], [motion for _, motion in pairs]) > by_chance


@pytest.mark.parametrize(
    ("observed", "rating", "basic", "standard"), [(1.20, 90.0, 1.08, 1.242), (0.20, 110.0, 0.22, 0.253)]
)
def test_levelled_pace_is_the_rating_turned_round(
    observed: float, rating: float, basic: float, standard: float
) -> None:
    """A worker rated 90 shows 1.5 x 100 / 90 levelled: observed time x rating / 100 is basic time.

    ILO, Introduction to Work Study, 4th rev. ed. (G. Kanawaty, ed.), Geneva 1992, with the rating scale of BS 3138.
    Recomputed; the allowance of 15 % that turns basic into standard time is taken off again.
    """
    assert levelled_s(observed, standard / 1.15) == pytest.approx(1.5 * 100 / rating, rel=1e-12)
    assert levelled_s(observed, basic) == pytest.approx(1.5 * 100 / rating, rel=1e-12)
