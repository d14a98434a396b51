"""Dots measured on a plate: even, of the size that was called, or graded; a spot check on two plates, no survey.

The tolerances are common practice, no source.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import fmean, stdev
from typing import Literal

MOST_SPREAD_PERCENT = 10.0
CALLED_SHARE = 0.1
LEAST_LEEWAY_MM = 1.0
GRADED_LEEWAY_MM = 1.5
VISIBLY_MM = 1.0
_HAIR = 1e-9
"""What doubles may lose of a tenth of a millimetre."""

Fault = Literal["spread", "size", "grade", "ends"]


@dataclass(frozen=True)
class Dots:
    """Mean and spread (standard deviation of the sample, in percent of the mean), and what is wrong, if anything.

    ``dot`` is the dot at fault, from 1; ``leeway_mm`` how far from the called size a dot may be.
    """

    mean_mm: float
    spread_percent: float
    fault: Fault | None = None
    dot: int = 0
    leeway_mm: float = 0.0


def measure_even(widths_mm: Sequence[float], called_mm: float | None = None) -> Dots:
    """Equal dots: an even spread, and each within a tenth (at least 1 mm) of the called width where one was called."""
    mean_mm = fmean(widths_mm)
    spread = 100 * stdev(widths_mm) / mean_mm
    leeway_mm = 0.0 if called_mm is None else max(CALLED_SHARE * called_mm, LEAST_LEEWAY_MM)
    off = [] if called_mm is None else [nth for nth, w in enumerate(widths_mm, 1) if _off(w, called_mm, leeway_mm)]
    if off:
        return Dots(mean_mm, spread, "size", off[0], leeway_mm)
    return Dots(mean_mm, spread, "spread" if spread > MOST_SPREAD_PERCENT + _HAIR else None, leeway_mm=leeway_mm)


def measure_graded(widths_mm: Sequence[float], called_mm: Sequence[float]) -> Dots:
    """Graded dots: each visibly smaller than the one before, first and last within 1.5 mm of what was called."""
    mean_mm = fmean(widths_mm)
    measured = Dots(mean_mm, 100 * stdev(widths_mm) / mean_mm, leeway_mm=GRADED_LEEWAY_MM)
    for nth, (larger, smaller) in enumerate(pairwise(widths_mm), 2):
        if larger - smaller < VISIBLY_MM - _HAIR:
            return _at_fault(measured, "grade", nth)
    for nth, place in ((1, 0), (len(widths_mm), -1)):
        if _off(widths_mm[place], called_mm[place], GRADED_LEEWAY_MM):
            return _at_fault(measured, "ends", nth)
    return measured


def _off(width_mm: float, called_mm: float, leeway_mm: float) -> bool:
    return abs(width_mm - called_mm) > leeway_mm + _HAIR


def _at_fault(measured: Dots, fault: Fault, dot: int) -> Dots:
    return Dots(measured.mean_mm, measured.spread_percent, fault, dot, measured.leeway_mm)
