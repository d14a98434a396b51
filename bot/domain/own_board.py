"""The headline board, which a beginner may head: each cook's week against their own expected time; and the house's."""

from dataclasses import dataclass, replace
from math import isinf, log, sqrt

from bot.domain.boards import Week, first_runs, judged_nets_s, spread_of_middle
from bot.domain.expected import Expected, level, middle_s
from bot.domain.places import TOO_CLOSE, Board, Figure, board

MOST_SCORE = 3.0


@dataclass(frozen=True)
class Together:
    """What the house did: how many of the ``compared`` cooks ``met`` their own expected time, and all clean plates."""

    compared: int
    met: int
    clean_plates: int


def rank_own(week: Week) -> Board:
    """Against one's own expected time, in standard errors of the week's median, three at most either way.

    A place that anybody has who was not faster than expected is not shown, nor one below it.
    """
    ranked = board(own_scores(week), _further_ahead, _furthest, week.off)
    behind = [row.place for row in ranked.public if percent_faster(row.figure) < 1]
    return replace(ranked, shown=sum(row.place < behind[0] for row in ranked.public)) if behind else ranked


def own_scores(week: Week) -> list[Figure]:
    """Every cook's week against their own expected time, the forgotten too; those with nothing to compare are not."""
    nets_s = {cook: judged_nets_s(runs) for cook, runs in first_runs(week.entries) if cook in week.expected}
    actual_s = {cook: middle for cook, nets in nets_s.items() if not isinf(middle := middle_s(nets))}
    expected = level({cook: week.expected[cook] for cook in actual_s}, actual_s)
    scores = [_score(cook, actual_s[cook], expected[cook], week.noise[cook], len(nets_s[cook])) for cook in actual_s]
    return [*scores, *week.forgotten.get("own", ())]


def percent_faster(figure: Figure) -> int:
    """By how many percent of the expected time a cook was faster, as it is shown; negative where slower."""
    return round(100 * (1 - figure.actual_s / figure.expected.net_s)) if figure.expected else 0


def together(week: Week) -> Together:
    """What the house did, those who are off public boards among it: it names nobody."""
    scores = own_scores(week)
    clean_plates = week.forgotten_plates + sum(entry.accepted - entry.rebuilt for entry in week.entries)
    return Together(len(scores), sum(figure.value >= 0 for figure in scores), clean_plates)


def _score(cook: str, actual_s: float, expected: Expected, noise: float, runs: int) -> Figure:
    spread = spread_of_middle(noise, runs)
    score = log(expected.net_s / actual_s) / spread
    clipped = max(-MOST_SCORE, min(MOST_SCORE, score))
    return Figure(cook, clipped, runs, spread, actual_s=actual_s, expected=expected)


def _further_ahead(one: Figure, other: Figure) -> bool:
    """Whether the first score is higher by more than chance would make it: each score has a standard error of one."""
    return one.value - other.value >= TOO_CLOSE * sqrt(2)


def _furthest(figure: Figure) -> float:
    return -figure.value
