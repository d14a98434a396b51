"""The whole sum of a result in one message, so that a chef can check it by hand."""

from dataclasses import asdict, dataclass

from bot.domain.drill import Drill
from bot.domain.fairness.fit import Band
from bot.domain.fairness.grounds import Ground
from bot.domain.pace import LEVELLED_TOUCH_S, clock_text
from bot.domain.run import Result, time_gate
from bot.replies.boards import Figures
from bot.replies.phrases import Phrases
from bot.replies.quarter import needs


@dataclass(frozen=True)
class Fitted:
    """A set-up's fitted difficulty: the ``factor`` on its computed standard, from so many runs by so many cooks."""

    factor: Band
    runs: int
    cooks: int


Difficulty = Fitted | Ground | None
"""A fitted one; what of runs there is while the computed standard stands; None of what may not stand beside others."""


def sum_lines(say: Phrases, drill: Drill, result: Result) -> list[str]:
    """From the clock to the net time, the pace and the levelled pace, a line a step.

    What the set-up's own difficulty is follows by ``difficulty_line``.
    """
    count = result.count
    first = say(
        "why-clock",
        drill=drill.wording.name,
        clock=clock_text(result.clock_s),
        seconds=result.clock_s,
        accepted=count.accepted,
        attempted=count.attempted,
    )
    if result.net_s is None or result.pace_s is None or result.levelled_s is None:
        return [first, say("why-no-time", gate=time_gate(count.attempted), attempted=count.attempted)]
    net = say.decimal(result.net_s, 1)
    levelled_touches = say.decimal(result.standard_s / LEVELLED_TOUCH_S, 1)
    return [
        first,
        *(_charge_lines(say, result) if count.redo else []),
        say("why-pace", net=net, touches=result.touches, pace=say.decimal(result.pace_s, 2)),
        say(
            "why-levelled",
            standard=say.decimal(result.standard_s, 1),
            levelled_touches=levelled_touches,
            net=net,
            levelled=say.decimal(result.levelled_s, 2),
        ),
    ]


def difficulty_line(say: Phrases, standard: float, difficulty: Difficulty) -> str:
    """How hard the set-up is beside its computed standard, by the kitchen's runs; or that it stands, and why."""
    time = clock_text(standard)
    match difficulty:
        case Fitted(factor, runs, cooks):
            low, high = say.decimal(factor.low, 2), say.decimal(factor.high, 2)
            value = say.decimal(factor.value, 2)
            return say("why-fitted", standard=time, factor=value, low=low, high=high, runs=runs, cooks=cooks)
        case None:
            return say("why-not-compared", standard=time)
        case ground:
            return say("why-unfitted", standard=time, **needs(say, ground))


def figures_of_difficulty(difficulty: Difficulty) -> Figures:
    """The numbers behind a fitted difficulty."""
    if not isinstance(difficulty, Fitted):
        return {}
    factor = difficulty.factor
    figures: Figures = {"fitted.factor": factor.value, "fitted.low": factor.low, "fitted.high": factor.high}
    return figures | {"fitted.runs": difficulty.runs, "fitted.cooks": difficulty.cooks}


def figures_of_result(result: Result) -> Figures:
    """The numbers behind a result."""
    count = asdict(result.count)
    return {**count, **{key: value for key, value in asdict(result).items() if key != "count"}}


def _charge_lines(say: Phrases, result: Result) -> list[str]:
    count = result.count
    one_s = result.change_s + result.alone_s * result.clock_s / result.standard_s
    charge_s = (result.net_s or 0) - result.clock_s
    return [
        say(
            "why-charge",
            change=f"{result.change_s:.0f}",
            alone=say.decimal(result.alone_s, 1),
            clock_s=result.clock_s,
            standard=say.decimal(result.standard_s, 1),
            one=say.decimal(one_s, 2),
        ),
        say(
            "why-net",
            redo=count.redo,
            attempted=count.attempted,
            accepted=count.accepted,
            one=say.decimal(one_s, 2),
            charge=say.decimal(charge_s, 1),
            seconds=result.clock_s,
            net=say.decimal(result.net_s or 0, 1),
            time=clock_text(result.net_s or 0),
        ),
    ]
