"""Judging: which verdict on a run stands, and how far two judges agree."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from itertools import combinations
from statistics import median_low
from typing import Literal

from bot.domain.run import Count

OPEN_FOR = timedelta(hours=48)
SETTLED_BY = 3
"""Judges whose verdicts settle a split between two of them."""

FEWEST_JUDGED = 5
"""Judged runs below which a cook's own count is not held against the judges'."""

By = Literal["self", "witness", "photo"]
"""Who judged: the runner, somebody who watched, or a judge who saw the photo without the name."""


@dataclass(frozen=True)
class Verdict:
    """So many good plates, said by a judge at this moment."""

    judge: str
    by: By
    good: int
    at: datetime


@dataclass(frozen=True)
class Judged:
    """How a run stands: the good plates, by whom, and whether two judges differ and a third is wanted."""

    good: int
    by: By
    split: bool = False


@dataclass(frozen=True)
class Check:
    """How two judges agree on the same photos: on how many of them, and Cohen's kappa where it is defined."""

    photos: int
    agreed: int
    kappa: float | None


@dataclass(frozen=True)
class OwnCount:
    """In so many judged runs, the plates that the cook sent as good and how many of them judges found good."""

    runs: int
    sent: int
    found: int


def own_count(judged: Sequence[tuple[int, int]]) -> OwnCount | None:
    """A cook's own count against the judges', of (sent, found) a run; None of too few runs to say."""
    if len(judged) < FEWEST_JUDGED:
        return None
    return OwnCount(len(judged), sum(sent for sent, _ in judged), sum(found for _, found in judged))


def may_judge(judge: str, *cooks: str | None) -> bool:
    """Whether this person may judge a run of these cooks: nobody judges their own, nor a run as pair partner."""
    return judge not in cooks


def settle(
    runner: str, sent: int, sent_at: datetime, verdicts: Iterable[Verdict], partner: str | None = None
) -> Judged:
    """How the run stands after these verdicts, the runner having sent so many good plates.

    Verdicts of the cooks themselves and those after 48 hours do not count; a judge's later verdict takes the place of
    the earlier one. Of two that differ the stricter stands until a third settles it by the middle one. What the runner
    did not claim, no judge adds.
    """
    until = sent_at + OPEN_FOR
    latest: dict[str, Verdict] = {}
    for verdict in sorted(verdicts, key=lambda verdict: verdict.at):
        if verdict.by != "self" and may_judge(verdict.judge, runner, partner) and verdict.at <= until:
            latest[verdict.judge] = verdict
    counts = [verdict.good for verdict in latest.values()]
    if not counts:
        return Judged(sent, "self")
    by: By = "photo" if any(verdict.by == "photo" for verdict in latest.values()) else "witness"
    if len(counts) < SETTLED_BY:
        return Judged(min(sent, *counts), by, split=len(set(counts)) > 1)
    return Judged(min(sent, median_low(counts)), by)


def as_judged(claimed: Count, good: int) -> Count:
    """The count as sent with only so many of the accepted plates good: the others are redos."""
    rebuilt = min(claimed.rebuilt, good)
    return replace(
        claimed,
        accepted=good,
        redo=claimed.redo + claimed.accepted - good,
        rebuilt=rebuilt,
        fixed=min(claimed.fixed, good - rebuilt),
    )


def check_judges(verdicts: Mapping[str, Sequence[bool]]) -> dict[tuple[str, str], Check]:
    """Every pair of judges on the same photos in the same order, each accepted or not."""
    return {(one, other): check_pair(verdicts[one], verdicts[other]) for one, other in combinations(verdicts, 2)}


def check_pair(one: Sequence[bool], other: Sequence[bool]) -> Check:
    """The photos on which two judges agree, and Cohen's kappa; ValueError where they saw different numbers."""
    table = [[0, 0], [0, 0]]
    for first, second in zip(one, other, strict=True):
        table[first][second] += 1
    return Check(len(one), table[0][0] + table[1][1], kappa(table))


def kappa(table: Sequence[Sequence[int]]) -> float | None:
    """Cohen's kappa of a square table of counts, one judge's categories by the other's.

    None where chance alone would give full agreement, as when both accept everything: then it is undefined. (J. Cohen,
    A coefficient of agreement for nominal scales, Educational and Psychological Measurement 20, 1960.)
    """
    total = sum(map(sum, table))
    rows = [sum(row) for row in table]
    columns: list[int] = [sum(column) for column in zip(*table, strict=True)]
    by_chance = sum(row * column for row, column in zip(rows, columns, strict=True))
    if by_chance == total * total:
        return None
    agreed = sum(table[nth][nth] for nth in range(len(table)))
    return (agreed * total - by_chance) / (total * total - by_chance)
