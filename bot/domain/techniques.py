"""Techniques and the standard seconds that a steady, competent cook needs for one touch of each."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

StandIn = Literal["firm", "soft", "gel", "thin", "thick", "leaf"]
"""The class of a component's stand-in: what it handles like, never its brand."""


@dataclass(frozen=True)
class Technique:
    """One way of putting something on a plate.

    ``seconds`` is the standard time of one touch; ``tool`` and ``stand_in`` are what a step uses when it names none;
    ``pieces_a_reach`` is 2 where both hands set at once; ``others`` are further spellings that are understood;
    ``strains`` marks the techniques that tire the hand (three counted runs a day instead of five).
    """

    name: str
    seconds: float
    tool: str
    stand_in: StandIn
    pieces_a_reach: int = 1
    others: tuple[str, ...] = ()
    strains: bool = False


@dataclass(frozen=True)
class Seconds:
    """The house's standard seconds: editable, and frozen with each quarter's boards."""

    techniques: Mapping[str, Technique]
    tool_change_s: float = 5.0
    column_s: float = 0.7
    start_stop_s: float = 3.0
    change_plate_s: float = 10.0
