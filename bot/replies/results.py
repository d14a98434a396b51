"""What is said about one run."""

from bot.domain.pace import clock_text
from bot.domain.run import Result, time_gate
from bot.replies.phrases import Phrases


def result_line(say: Phrases, result: Result) -> str:
    """The one line back: the clock as heard, the charge for redos, and the pace; or what was kept without a time."""
    count = result.count
    if result.kind == "stopped":
        return say("stopped", attempted=count.attempted)
    if result.net_s is None:
        gate = time_gate(count.attempted)
        return say("no-time", accepted=count.accepted, gate=gate) if count.accepted else say("none-accepted", gate=gate)
    pace = say.decimal(result.net_s / result.touches, 2)
    if result.kind == "short":
        return say("short", accepted=count.accepted, attempted=count.attempted, pace=pace)
    if count.redo:
        charge = clock_text(result.net_s - result.clock_s)
        return say("net", net=clock_text(result.net_s), redo=count.redo, charge=charge, pace=pace)
    return say(
        "heard",
        clock=clock_text(result.clock_s),
        accepted=count.accepted,
        plates=count.plates,
        rebuilt=count.rebuilt,
        pace=pace,
        levelled=say.decimal(result.levelled_s or 0, 2),
    )


def rebuilt_hint(say: Phrases, result: Result) -> str:
    """How to say that a plate was built again inside the clock instead."""
    return say("rebuilt-hint", clock=clock_text(result.clock_s), plates=result.count.plates, redo=result.count.redo)
