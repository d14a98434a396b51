"""Cooks whose first runs are drawn with a known trend, and how often what is told of them is right."""

import random
from datetime import date, timedelta
from math import exp

from bot.domain.first_runs import LAST, FirstRun, FirstRuns
from bot.domain.forecast import next_run
from bot.domain.kendall import chance_of, kendall_s
from bot.domain.plateau import is_level
from bot.domain.progress import NEEDED, progress_of

NOISE = 0.04
"""Standard deviation of log net from run to run."""

RUNS = 24
"""First runs of a cook, who looks after every one of them."""

START_S = 221.0


def nets_s(draw: random.Random, runs: int, slope: float) -> list[float]:
    """The net times of a cook who changes by so much of log net a run, in whole seconds as they are typed."""
    return [float(round(START_S * exp(slope * nth + draw.gauss(0, NOISE)))) for nth in range(runs)]


def called(seed: int, cooks: int, slope: float, speed: str) -> float:
    """The share of cooks who are called faster (or slower) at least once in their runs."""
    draw = random.Random(seed)  # noqa: S311 - a simulation
    return sum(_is_ever_called(nets_s(draw, RUNS, slope), speed) for _ in range(cooks)) / cooks


def called_by_an_ordinary_test(seed: int, cooks: int) -> float:
    """The share of unchanged cooks whom a test at one in ten, with nothing else asked, calls faster at least once."""
    draw = random.Random(seed)  # noqa: S311 - a simulation
    return sum(_passes_an_ordinary_test(nets_s(draw, RUNS, 0)) for _ in range(cooks)) / cooks


def covered(seed: int, cooks: int, slope: float) -> float:
    """The share of next runs that fall within the band told before them, after 8 to 24 runs."""
    draw = random.Random(seed)  # noqa: S311 - a simulation
    return sum(_is_covered(nets_s(draw, draw.randint(NEEDED, RUNS) + 1, slope)) for _ in range(cooks)) / cooks


def asked(seed: int, cooks: int, slope: float) -> float:
    """The share of clean cooks with ten first runs over three weeks who are asked whether they have stopped gaining."""
    draw = random.Random(seed)  # noqa: S311 - a simulation
    return sum(is_level(_over_three_weeks(nets_s(draw, LAST, slope))) for _ in range(cooks)) / cooks


def _over_three_weeks(nets: list[float]) -> FirstRuns:
    days = (date(2026, 11, 2) + timedelta(weeks=3) * nth / (len(nets) - 1) for nth in range(len(nets)))
    return FirstRuns(tuple(FirstRun(day, net_s, 8, 0) for day, net_s in zip(days, nets, strict=True)))


def _is_ever_called(nets: list[float], speed: str) -> bool:
    looks = (progress_of(nets[:seen]) for seen in range(NEEDED, len(nets) + 1))
    return any(look is not None and look.speed == speed for look in looks)


def _passes_an_ordinary_test(nets: list[float]) -> bool:
    windows = (nets[max(seen - LAST, 0) : seen] for seen in range(NEEDED, len(nets) + 1))
    return any(kendall_s(window) < 0 and chance_of(window) <= 0.1 for window in windows)


def _is_covered(nets: list[float]) -> bool:
    *earlier, newest = nets
    band = next_run(earlier)
    assert band is not None
    return band.low_s <= newest <= band.high_s
