"""The quarter's board: cooks by their fitted levelled pace, those who can be compared, and why others have no place."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from bot.domain.fairness.fit import Band, Fit
from bot.domain.places import TOO_CLOSE, Board, Figure, board

NoPlace = Literal["ground", "work", "judged"]
"""ground: of another group of cooks and drills; work: half the work or more is unlike the crew's; judged: most runs
were judged by their own cook."""


@dataclass(frozen=True)
class Cook:
    """What decides on a cook's place: runs, how many of them were witnessed, whether the work is like the crew's."""

    runs: int
    witnessed: int
    works_alike: bool


@dataclass(frozen=True)
class QuarterBoard:
    """The ``board`` over one connected group; ``divided`` where others have no common ground with it.

    ``without`` are the cooks who have a pace and no place.
    """

    board: Board
    bands: Mapping[str, Band]
    without: Mapping[str, NoPlace]
    divided: bool


def largest_group(fit: Fit) -> frozenset[str]:
    """The cooks of the largest connected group; nobody where two are the largest."""
    sizes = Counter(cook.group for cook in fit.cooks)
    largest = [group for group, size in sizes.items() if size == max(sizes.values())]
    return frozenset(cook.cook for cook in fit.cooks if largest == [cook.group])


def rank_quarter(fit: Fit, cooks: Mapping[str, Cook], off: frozenset[str] = frozenset()) -> QuarterBoard:
    """Rank the largest connected group of these cooks.

    Place = 1 + the number of cooks distinguishably quicker, by the standard error of the difference.
    """
    bands = {cook: band for cook in cooks if (band := fit.levelled_s(cook, TOO_CLOSE))}
    group = largest_group(fit)
    reasons = {cook: _no_place(known) if cook in group else "ground" for cook, known in cooks.items() if cook in bands}
    without = {cook: reason for cook, reason in reasons.items() if reason}
    figures = [Figure(cook, bands[cook].value, cooks[cook].runs) for cook in reasons if cook not in without]
    ranked = board(figures, lambda one, other: _quicker(fit, one, other), lambda figure: figure.value, off)
    return QuarterBoard(ranked, bands, without, divided="ground" in without.values())


def _no_place(cook: Cook) -> NoPlace | None:
    if not cook.works_alike:
        return "work"
    return "judged" if 2 * cook.witnessed < cook.runs else None


def _quicker(fit: Fit, one: Figure, other: Figure) -> bool:
    """Whether the first pace is shorter by more than chance would make it."""
    its, others = fit.pace(one.user_id), fit.pace(other.user_id)
    error = fit.difference_se(one.user_id, other.user_id)
    if its is None or others is None or error is None:
        return False
    return its < others and others - its >= TOO_CLOSE * error
