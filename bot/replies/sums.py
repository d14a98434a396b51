"""The whole sum of a result in one message, so that a chef can check it by hand."""

from dataclasses import asdict

from bot.domain.drill import Drill
from bot.domain.pace import LEVELLED_TOUCH_S, clock_text
from bot.domain.run import Result, time_gate
from bot.replies.phrases import Phrases


def sum_lines(say: Phrases, drill: Drill, result: Result) -> list[str]:
    """From the clock to the net time, the pace and the levelled pace, a line a step."""
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
    net = f"{result.net_s:.1f}"
    levelled_touches = f"{result.standard_s / LEVELLED_TOUCH_S:.1f}"
    return [
        first,
        *(_charge_lines(say, result) if count.redo else []),
        say("why-pace", net=net, touches=result.touches, pace=f"{result.pace_s:.2f}"),
        say(
            "why-levelled",
            standard=f"{result.standard_s:.1f}",
            levelled_touches=levelled_touches,
            net=net,
            levelled=f"{result.levelled_s:.2f}",
        ),
    ]


def figures_of_result(result: Result) -> dict[str, float | int | str | None]:
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
            alone=f"{result.alone_s:.1f}",
            clock_s=result.clock_s,
            standard=f"{result.standard_s:.1f}",
            one=f"{one_s:.2f}",
        ),
        say(
            "why-retry",
            redo=count.redo,
            attempted=count.attempted,
            accepted=count.accepted,
            one=f"{one_s:.2f}",
            charge=f"{charge_s:.1f}",
        ),
        say(
            "why-net",
            seconds=result.clock_s,
            charge=f"{charge_s:.1f}",
            net=f"{result.net_s:.1f}",
            time=clock_text(result.net_s or 0),
        ),
    ]
