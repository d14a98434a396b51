"""When to take it easier: every fifth week of a kitchen, and after runs that went badly."""

from collections.abc import Sequence
from datetime import date
from typing import Literal

from bot.domain.run import Result

LIGHT_EVERY = 5
"""Weeks; the last of each five is short, tidy and without a board (common practice, no source)."""

LOOKED_AT = 3
OF_THEM = 2

Strain = Literal["redo", "stopped"]
"""What tells that a drill is too much now: plates not good, or runs not finished."""


def is_light(week: str, since: str) -> bool:
    """Whether this ISO week is light in a kitchen whose first was ``since``: the fifth, the tenth and so on."""
    nth = (_monday(week) - _monday(since)).days // 7 + 1
    return nth > 0 and nth % LIGHT_EVERY == 0


def step_back(results: Sequence[Result]) -> Strain | None:
    """What speaks for an easier run next: of the last three, two stopped or two under three quarters accepted.

    Results are given in the order in which they were run; nothing is said after a run that was neither.
    """
    strains = [strain_of(result) for result in results[-LOOKED_AT:]]
    return strains[-1] if strains and strains.count(strains[-1]) >= OF_THEM else None


def strain_of(result: Result) -> Strain | None:
    """What of one run speaks for an easier one; None of a run that went well enough."""
    if result.kind == "stopped":
        return "stopped"
    return "redo" if 4 * result.count.accepted < 3 * result.count.attempted else None


def _monday(week: str) -> date:
    year, number = week.split("-W")
    return date.fromisocalendar(int(year), int(number), 1)
