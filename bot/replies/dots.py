"""Dots measured on a plate, in words."""

from collections.abc import Sequence

from bot.domain.dots import GRADED_LEEWAY_MM, MOST_SPREAD_PERCENT, VISIBLY_MM, Dots
from bot.replies.phrases import Phrases


def even_line(say: Phrases, widths_mm: Sequence[float], called_mm: float | None, dots: Dots) -> str:
    """Equal dots: accept, or what is wrong with which."""
    mean, spread = say.decimal(dots.mean_mm, 1), f"{dots.spread_percent:.0f}"
    if dots.fault == "spread":
        return say(
            "dots-uneven", mean=mean, spread=say.decimal(dots.spread_percent, 1), most=f"{MOST_SPREAD_PERCENT:.0f}"
        )
    if called_mm is None:
        return say("dots-even", mean=mean, spread=spread)
    leeway, called = _mm(dots.leeway_mm), _mm(called_mm)
    if dots.fault:
        width = _mm(widths_mm[dots.dot - 1])
        return say("dots-off-size", mean=mean, spread=spread, nth=dots.dot, width=width, leeway=leeway, called=called)
    return say("dots-as-called", mean=mean, spread=spread, leeway=leeway, called=called)


def graded_line(say: Phrases, widths_mm: Sequence[float], called_mm: Sequence[float], dots: Dots) -> str:
    """Graded dots: accept, or which is wrong."""
    step, leeway = _mm(VISIBLY_MM), _mm(GRADED_LEEWAY_MM)
    if dots.fault is None:
        first, last = _mm(called_mm[0]), _mm(called_mm[-1])
        return say("dots-graded", count=len(widths_mm), step=step, leeway=leeway, first=first, last=last)
    width = _mm(widths_mm[dots.dot - 1])
    if dots.fault == "grade":
        return say("dots-not-graded", nth=dots.dot, width=width, step=step, before=_mm(widths_mm[dots.dot - 2]))
    return say("dots-off-ends", nth=dots.dot, width=width, leeway=leeway, called=_mm(called_mm[dots.dot - 1]))


def _mm(width: float) -> str:
    return f"{width:g}"
