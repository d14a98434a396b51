"""What a fit of the mixed model gives: plain numbers, kept with a quarter's boards.

The model: ln(net / computed standard) = level + trend x week + practice x ln(own run number) + cook + set-up
+ cook on set-up + noise, the last four random with mean zero. Sources: Henderson's mixed model equations (Henderson,
Biometrics 31, 1975, 423-447), REML (Patterson and Thompson, Biometrika 58, 1971, 545-554), crossed effects as in
Bates, Maechler, Bolker and Walker, J. Statistical Software 67(1), 2015.
"""

import json
from dataclasses import dataclass, fields
from functools import cached_property
from math import exp, log, sqrt
from typing import NamedTuple

from bot.domain.pace import LEVELLED_TOUCH_S


class CookEffect(NamedTuple):
    """One cook in the fit.

    ``effect`` is the cook's difference from the crew in ln(net / standard), partially pooled towards it (-0.10: about
    10 % quicker), ``se`` its standard error; ``practice`` the mean over the cook's runs of ln(own run number);
    ``group`` the number of the connected group.
    """

    cook: str
    runs: int
    group: int
    effect: float
    se: float
    practice: float


class SetUpEffect(NamedTuple):
    """One set-up: ``effect`` is ln(fitted / computed standard), pooled towards 0, ``se`` its standard error."""

    set_up: int
    runs: int
    group: int
    effect: float
    se: float


class Band(NamedTuple):
    """A number with the ends of its band."""

    value: float
    low: float
    high: float


@dataclass(frozen=True)
class Fit:
    """A fitted quarter. All effects and standard deviations are in ln(net / computed standard): 0.10 is about 10 %.

    ``level`` is the fitted value of the crew on the set-ups at ``mid_week`` and ``mid_practice``, the means over the
    runs of the week and of ln(own run number), and ``level_se`` its standard error. ``trend`` is its change a week,
    ``learning`` its change for each unit of ln(own run number) (-0.07: twice the runs, 5 % less time). ``sd_cook``,
    ``sd_set_up``, ``sd_pair`` and ``sd_noise`` are the standard deviations of cooks, of set-ups about their computed
    standard, of cooks on set-ups beyond both, and of one run. ``criterion`` is the REML criterion (minus twice the
    restricted log-likelihood).

    ``pairs`` has a row for each of ``cooks`` and in it a number for each of ``set_ups``: what the cook's runs there
    differ by, beyond cook and set-up (0 without runs). ``pace_covariances`` are the prediction error covariances of the
    cooks' paces, in the order of ``cooks``.
    """

    level: float
    level_se: float
    trend: float
    learning: float
    sd_cook: float
    sd_set_up: float
    sd_pair: float
    sd_noise: float
    criterion: float
    mid_week: float
    mid_practice: float
    cooks: tuple[CookEffect, ...]
    set_ups: tuple[SetUpEffect, ...]
    pairs: tuple[tuple[float, ...], ...]
    pace_covariances: tuple[tuple[float, ...], ...]

    def expected(self, cook: str, set_up: int, week: float, nth: int | None = None) -> float | None:
        """Fitted ln(net / computed standard) of a cook's ``nth`` run of the quarter, by default the next.

        On a set-up new to the fit, or of another connected group, it is the cook's own ratio alone; None for a cook of
        whom the fit knows nothing.
        """
        own = self._cook(cook)
        if own is None:
            return None
        practice = log(own.runs + 1 if nth is None else nth)
        ratio = self._ratio(own, week, practice)
        found = self._set_up(set_up)
        if found is None or found.group != own.group:
            return ratio
        return ratio + found.effect + self.pairs[self._cook_places[cook]][self._set_up_places[set_up]]

    def pace(self, cook: str) -> float | None:
        """Fitted ln(net / standard) over the quarter's set-ups, in its middle, at the cook's own mean practice."""
        own = self._cook(cook)
        if own is None:
            return None
        return self._ratio(own, self.mid_week, own.practice)

    def levelled_s(self, cook: str, z: float = 1.28) -> Band | None:
        """A cook's fitted seconds a levelled touch over the quarter's set-ups, with a band of ``z`` standard errors."""
        pace = self.pace(cook)
        if pace is None:
            return None
        at = self._cook_places[cook]
        return _band(LEVELLED_TOUCH_S, pace, z * sqrt(self.pace_covariances[at][at]))

    def difficulty(self, set_up: int, z: float = 1.28) -> Band | None:
        """A set-up's difficulty as a factor on its computed standard time, with a band of ``z`` standard errors."""
        found = self._set_up(set_up)
        return _band(1.0, found.effect, z * found.se) if found else None

    def difference_se(self, a: str, b: str) -> float | None:
        """The standard error of the difference of two cooks' paces; None if they are not comparable."""
        if not self.comparable(a, b):
            return None
        of, one, other = self.pace_covariances, self._cook_places[a], self._cook_places[b]
        return sqrt(max(of[one][one] + of[other][other] - 2 * of[one][other], 0.0))

    def comparable(self, a: str, b: str) -> bool:
        """Whether two cooks are in the same connected group: they share a set-up, directly or by way of others."""
        one, other = self._cook(a), self._cook(b)
        return one is not None and other is not None and one.group == other.group

    def to_json(self) -> str:
        """As JSON text."""
        return json.dumps({field.name: getattr(self, field.name) for field in fields(self)})

    @classmethod
    def from_json(cls, text: str) -> "Fit":
        """Back from ``to_json``."""
        kept = json.loads(text)
        return cls(
            **kept
            | {
                "cooks": tuple(CookEffect(*row) for row in kept["cooks"]),
                "set_ups": tuple(SetUpEffect(*row) for row in kept["set_ups"]),
                "pairs": tuple(map(tuple, kept["pairs"])),
                "pace_covariances": tuple(map(tuple, kept["pace_covariances"])),
            }
        )

    def _ratio(self, own: CookEffect, week: float, practice: float) -> float:
        drift = self.trend * (week - self.mid_week) + self.learning * (practice - self.mid_practice)
        return self.level + drift + own.effect

    def _cook(self, cook: str) -> CookEffect | None:
        at = self._cook_places.get(cook)
        return None if at is None else self.cooks[at]

    def _set_up(self, set_up: int) -> SetUpEffect | None:
        at = self._set_up_places.get(set_up)
        return None if at is None else self.set_ups[at]

    @cached_property
    def _cook_places(self) -> dict[str, int]:
        return {found.cook: at for at, found in enumerate(self.cooks)}

    @cached_property
    def _set_up_places(self) -> dict[int, int]:
        return {found.set_up: at for at, found in enumerate(self.set_ups)}


def _band(unit: float, log_factor: float, reach: float) -> Band:
    return Band(*(unit * exp(log_factor + by) for by in (0.0, -reach, reach)))
