"""Thirteen weeks of cooks who neither improve nor tire, each from its seed, as the headline board sees them."""

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass, field
from math import exp, log
from random import Random
from statistics import fmean

from bot.domain.boards import Entry, Week
from bot.domain.expected import Earlier, Expected, Fitted, Formerly, expect
from bot.domain.fairness.cells import NEEDED_COOKS, NEEDED_RUNS, TimedRun, cells_of
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.reml import fit_cells
from bot.domain.own_board import own_scores
from bot.domain.places import Figure
from bot.services.expectations import fitted_of

WEEKS = 13
STANDARD_S = 180.0
SKILL = 0.18
DRILL_EFFECT = 0.10
NOISE = 0.06

Slowness = Callable[[str, int], float]
"""By how much a cook is slower on purpose in a week, in log time."""


@dataclass
class Season:
    """What is known after some weeks; drills change every ``weeks_a_drill``, their standards wrong by 10 %."""

    seed: int
    cooks: int = 8
    weeks_a_drill: int = 1
    with_fit: bool = False
    held: bool = True
    """Whether what is expected may rise by 2 % a week only."""
    slower: Slowness = lambda _cook, _week: 0.0
    runs: list[TimedRun] = field(default_factory=list)
    formerly: dict[str, list[tuple[int, int, Expected]]] = field(default_factory=lambda: defaultdict(list))
    figures: list[tuple[int, Figure]] = field(default_factory=list)
    """Every score with its week."""
    bests_ahead: list[bool] = field(default_factory=list)
    """Of every score, whether the best of that week's runs was under what was expected."""

    def play(self) -> "Season":
        """The whole season."""
        draw = Random(self.seed)  # noqa: S311 - a simulation
        cooks = {f"cook {nth}": (draw.gauss(0.1, SKILL), draw.uniform(0.35, 0.95)) for nth in range(self.cooks)}
        drills = [draw.gauss(0.0, DRILL_EFFECT) for _ in range(WEEKS)]
        for week in range(WEEKS):
            drill = week // self.weeks_a_drill + 1
            ratios = {}
            for cook, (skill, present) in cooks.items():
                # Drawn for the absent too, so that a season with a slow cook is otherwise the same.
                there, many = draw.random() < present, draw.randint(1, 5)
                noise = [draw.gauss(0.0, NOISE) for _ in range(5)]
                if there:
                    mean = skill + drills[drill - 1] + self.slower(cook, week)
                    ratios[cook] = [mean + error for error in noise[:many]]
            self._close(week, drill, ratios)
        return self

    def _close(self, week: int, drill: int, ratios: dict[str, list[float]]) -> None:
        """Score a week and remember it."""
        fit = self._fit()
        expected = {}
        for cook, theirs in ratios.items():
            by_fit = _fitted(fit, cook, drill, week, len(theirs))
            earlier = [
                Earlier(run.set_up, STANDARD_S * exp(run.log_ratio), STANDARD_S)
                for run in self.runs
                if run.cook == cook
            ]
            formerly = [Formerly(week - then, on, was) for then, on, was in self.formerly[cook] if self.held]
            if found := expect(earlier, formerly, drill, STANDARD_S, by_fit):
                expected[cook] = found
        entries = [
            Entry(cook, STANDARD_S * exp(ratio), 8, 8, witnessed=True)
            for cook, theirs in ratios.items()
            for ratio in theirs
        ]
        for figure in own_scores(Week(entries, dict.fromkeys(ratios, NOISE), expected)):
            assert figure.expected
            self.figures.append((week, figure))
            best_s = STANDARD_S * exp(min(ratios[figure.user_id]))
            self.bests_ahead.append(best_s < figure.expected.net_s)
            self.formerly[figure.user_id].append((week, drill, figure.expected))
        self.runs += [TimedRun(cook, drill, ratio, float(week)) for cook, theirs in ratios.items() for ratio in theirs]

    def _fit(self) -> Fit | None:
        """The fit of the weeks before, under the rule for when there is one."""
        enough = len(self.runs) >= NEEDED_RUNS and len({run.cook for run in self.runs}) >= NEEDED_COOKS
        return fit_cells(cells_of(self.runs)) if self.with_fit and enough else None


def _fitted(fit: Fit | None, cook: str, drill: int, week: int, runs: int) -> Fitted | None:
    found = fitted_of(fit, drill, float(week)).get(cook) if fit else None
    return found.at_middle_of(runs) if found else None


def improved(seasons: int, weeks_a_drill: int, *, with_fit: bool) -> tuple[float, float]:
    """The share of weeks in which unchanged cooks beat what is expected: by the board, and by a best of the week."""
    played = [Season(seed, weeks_a_drill=weeks_a_drill, with_fit=with_fit).play() for seed in range(seasons)]
    ahead = [figure.value > 0 for season in played for _, figure in season.figures]
    return fmean(ahead), fmean(best for season in played for best in season.bests_ahead)


def loosened(seasons: int, weeks_a_drill: int, *, with_fit: bool = False, held: bool = True) -> list[float]:
    """By how much a week two weeks at 25 % over raise what is expected of the slow cook, season by season.

    In log time from the first slow week to the week after them: on one drill the time itself, on new ones the ratio to
    standard that new drills are met with.
    """
    rises = []
    for seed in range(seasons):
        season = Season(seed, weeks_a_drill=weeks_a_drill, with_fit=with_fit, held=held, slower=_in_two_weeks).play()
        theirs = {week: figure.expected for week, figure in season.figures if figure.user_id == SLOW}
        before, after = theirs.get(SLOW_WEEKS[0]), theirs.get(SLOW_WEEKS[-1] + 1)
        if before and after:
            one_drill = season.weeks_a_drill == WEEKS
            ratio = after.net_s / before.net_s if one_drill else after.usual / before.usual
            rises.append(log(ratio) / len(SLOW_WEEKS))
    return rises


SLOW = "cook 0"
SLOW_WEEKS = (6, 7)


def _in_two_weeks(cook: str, week: int) -> float:
    return log(1.25) if cook == SLOW and week in SLOW_WEEKS else 0.0
