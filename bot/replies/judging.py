"""How far judges agree, and a cook's own count against the judges'."""

from collections.abc import Mapping, Sequence

from bot.domain.judging import Check, OwnCount
from bot.replies.boards import Figures
from bot.replies.phrases import Phrases

Pair = tuple[str, str]
MOST_PAIRS = 6


def check_lines(say: Phrases, pairs: Mapping[Pair, Check], names: Mapping[str, str]) -> list[str]:
    """A line a pair, those who agree least first, six at most."""
    least_first = sorted(pairs.items(), key=lambda pair: pair[1].agreed)
    return [_pair_line(say, [names.get(judge, judge) for judge in pair], c) for pair, c in least_first[:MOST_PAIRS]]


def _pair_line(say: Phrases, names: Sequence[str], check: Check) -> str:
    one, other = names
    percent = round(100 * check.agreed / check.photos)
    agreed = say("check-pair", one=one, other=other, agreed=check.agreed, photos=check.photos, percent=percent)
    kappa = say("check-no-kappa") if check.kappa is None else say("check-kappa", kappa=say.decimal(check.kappa, 2))
    return f"{agreed} {kappa}"


def figures_of_check(pairs: Mapping[Pair, Check]) -> Figures:
    """The numbers behind the lines."""
    figures: Figures = {}
    for nth, check in enumerate(pairs.values(), 1):
        figures |= {f"pair.{nth}.agreed": check.agreed, f"pair.{nth}.kappa": check.kappa}
    return figures


def own_count_line(say: Phrases, own: OwnCount) -> str:
    """How many plates a cook sent as good in judged runs, and how many of them the judges found good."""
    return say("own-count", runs=own.runs, sent=own.sent, found=own.found)
