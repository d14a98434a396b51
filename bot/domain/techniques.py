"""Techniques and the standard seconds that a steady, competent cook needs for one touch of each."""

import difflib
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from bot.domain.amounts import A_PIECE, Amount, Keeping

StandIn = Literal["firm", "soft", "gel", "thin", "thick", "leaf"]
"""The class of a component's stand-in: what it handles like, never its brand."""


@dataclass(frozen=True)
class Technique:
    """One way of putting something on a plate.

    ``seconds`` is the standard time of one touch; ``tool`` and ``stand_in`` are what a step uses when it names none;
    ``pieces_a_reach`` is 2 where both hands set at once; ``others`` are further spellings that are understood;
    ``strains`` marks the techniques that tire the hand (three counted runs a day instead of five); ``cautions`` are
    the keys of the warnings that go with it; ``amount`` is what one touch takes of its component, ``recovered`` the
    share that comes back, where it is not that of the stand-in's class.
    """

    name: str
    seconds: float
    tool: str
    stand_in: StandIn
    pieces_a_reach: int = 1
    others: tuple[str, ...] = ()
    strains: bool = False
    cautions: tuple[str, ...] = ()
    amount: Amount = A_PIECE
    recovered: Decimal | None = None


@dataclass(frozen=True)
class Seconds:
    """The house's standard seconds: editable, and frozen with each quarter's boards.

    ``laying_out_s`` and ``clearing_s`` are before the first run of a practice and after the last; every plate of a run
    is judged and reset. ``hands_off_s`` is what the call to wait adds to a pressure round. Of every component
    ``spare_share`` is made on top, of pieces and plates at least ``fewest_spare``; ``stays_ml`` is what stays behind in
    a tool (0 where nobody has measured it), ``keeping`` what becomes of each class of stand-in.
    """

    techniques: Mapping[str, Technique]
    tool_change_s: float = 5.0
    column_s: float = 0.7
    start_stop_s: float = 3.0
    change_plate_s: float = 10.0
    laying_out_s: float = 180.0
    judge_plate_s: float = 10.0
    reset_plate_s: float = 20.0
    clearing_s: float = 300.0
    hands_off_s: float = 20.0
    spare_share: Decimal = Decimal("0.1")
    fewest_spare: int = 2
    stays_ml: Mapping[str, Decimal] = field(default_factory=dict)
    keeping: Mapping[StandIn, Keeping] = field(default_factory=dict)


def find_technique(seconds: Seconds, words: str) -> Technique | None:
    """The technique that these words name, in any case, word order and number; None where they name none."""
    wanted = _gist(words)
    return next((t for t in seconds.techniques.values() if wanted in map(_gist, (t.name, *t.others))), None)


def near_techniques(seconds: Seconds, words: str, most: int = 3) -> list[str]:
    """Names of the techniques spelt most like these words, the nearest first; empty where none is at all like them."""
    spelt = {said.casefold(): t.name for t in seconds.techniques.values() for said in (t.name, *t.others)}
    close = difflib.get_close_matches(words.casefold(), spelt, n=len(spelt), cutoff=0.5)
    return list(dict.fromkeys(spelt[said] for said in close))[:most]


def _gist(words: str) -> tuple[str, ...]:
    """What is compared: the words without case, order, punctuation or a plural's s."""
    return tuple(sorted(re.sub(r"(?<=..)s$", "", word) for word in re.findall(r"\w+", words.casefold())))
