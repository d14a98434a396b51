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
    """What decides whether a cook can have a place: runs, how many were witnessed, whether the work is like others'."""

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


def rank_quarter(fit: Fit, cooks: Mapping[str, Cook], off: frozenset[str] = frozenset()) -> QuarterBoard:
    """Rank the largest connected group; where two are the largest, nobody.

    Place = 1 + the number of cooks distinguishably quicker, by the standard error of the difference.
    """
    groups = Counter(cook.group for cook in fit.cooks)
    largest = [group for group, size in groups.items() if size == max(groups.values())]
    without: dict[str, NoPlace] = {}
    figures = []
    for found in fit.cooks:
        reason = "ground" if largest != [found.group] else _no_place(cooks[found.cook])
        if reason:
            without[found.cook] = reason
        else:
            figures.append(_figure(fit, found.cook, cooks[found.cook]))
    bands = {found.cook: fit.levelled_s(found.cook, TOO_CLOSE) for found in fit.cooks}
    ranked = board(figures, lambda one, other: _quicker(fit, one, other), lambda figure: figure.value, off)
    return QuarterBoard(ranked, {cook: band for cook, band in bands.items() if band}, without, len(groups) > 1)


def _no_place(cook: Cook) -> NoPlace | None:
    if not cook.works_alike:
        return "work"
    return "judged" if 2 * cook.witnessed < cook.runs else None


def _figure(fit: Fit, cook: str, known: Cook) -> Figure:
    band = fit.levelled_s(cook)
    return Figure(cook, band.value if band else 0.0, known.runs)


def _quicker(fit: Fit, one: Figure, other: Figure) -> bool:
    """Whether the first pace is shorter by more than chance would make it."""
    its, others = fit.pace(one.user_id), fit.pace(other.user_id)
    error = fit.difference_se(one.user_id, other.user_id)
    if its is None or others is None or error is None:
        return False
    return its < others and others - its >= TOO_CLOSE * error
