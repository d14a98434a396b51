"""A call sheet in words: what it makes of the run, the calls a line each, and how to send the run."""

from bot.domain.calls import Sheet, without_calls
from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.standard_time import run_touches, standard_s
from bot.domain.techniques import Seconds
from bot.replies.phrases import Phrases


def sheet_lines(say: Phrases, drill: Drill, sheet: Sheet, seconds: Seconds) -> list[str]:
    """The whole sheet; ``drill`` is the one that it makes, under its own label."""
    spec, way = drill.spec, sheet.set_up
    standard = clock_text(standard_s(spec, way, seconds))
    head = say(
        "calls-head",
        drill=drill.wording.name,
        level=sheet.level,
        number=str(sheet.number),
        plates=way.plates,
        touches=run_touches(spec, way),
        standard=standard,
    )
    example = f"{drill.label} {standard} {way.plates}/{way.plates}"
    return [
        head,
        _sum_line(say, drill, sheet, seconds),
        say("calls-read"),
        *_call_lines(say, drill, sheet, seconds),
        say("calls-send", example=example),
    ]


def _sum_line(say: Phrases, drill: Drill, sheet: Sheet, seconds: Seconds) -> str:
    """How standard time comes about: the plates, hands off, and what a swap leaves off."""
    spec, way = drill.spec, sheet.set_up
    total_s, built_s = standard_s(spec, way, seconds), built_before_calls_s(drill, sheet, seconds)
    wait_s = way.called.hands_off_s
    return say(
        "calls-sum",
        plates=way.plates,
        built=say.decimal(built_s, 1),
        wait=f"{wait_s:.0f}" if wait_s else "no",
        swap=say.decimal(built_s + wait_s - total_s, 1) if way.called.without else "no",
        total=say.decimal(total_s, 1),
    )


def built_before_calls_s(drill: Drill, sheet: Sheet, seconds: Seconds) -> float:
    """Standard seconds of the sheet's plates without hands off and swap."""
    return standard_s(drill.spec, without_calls(sheet.set_up), seconds, sheet.set_up.plates)


def _call_lines(say: Phrases, drill: Drill, sheet: Sheet, seconds: Seconds) -> list[str]:
    off = sheet.set_up.called.without
    component = drill.spec.steps[off[0] - 1].component if off else ""
    return [
        say(
            f"call-{call.kind}",
            at=clock_text(call.at_s),
            plate=call.plate,
            component=component,
            wait=f"{seconds.hands_off_s:.0f}",
        )
        for call in sheet.calls
    ]
