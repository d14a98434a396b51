"""Hands for a pickup in words: whether it can be done, by how many, who does what, and the sum."""

from collections.abc import Iterator

from bot.domain.drill import Spec, Step
from bot.domain.pace import clock_text
from bot.domain.pickup import MOST_HANDS, Line, Pickup, Station
from bot.replies.phrases import Phrases


def pickup_lines(say: Phrases, spec: Spec, limit_s: int, touch_s: float, pickup: Pickup) -> list[str]:
    """Yes with the tasks, or no with the narrowest step and what would do it."""
    line = pickup.line
    if line.within(limit_s):
        return [f"{_fits(say, limit_s, line)} {say('pickup-plating-only')}", _tasks(say, spec, line)]
    if round(touch_s) > limit_s:
        return [say("pickup-one-plate", limit=clock_text(limit_s), touch=clock_text(touch_s))]
    answer = say(
        "pickup-not",
        limit=clock_text(limit_s),
        many=line.hands,
        hands=say("hands-first", many=line.hands),
        time=clock_text(line.time_s),
        narrowest=_doing(say, spec.steps[pickup.narrowest]),
    )
    return [" ".join([answer, *_what_would_do(say, spec, pickup), say("pickup-plating-only")])]


def with_lines(say: Phrases, spec: Spec, limit_s: int, line: Line, asked: int) -> list[str]:
    """What so many hands come to, with the tasks."""
    if line.within(limit_s):
        answer = _fits(say, limit_s, line)
    else:
        hands, time = say("hands", many=line.hands), clock_text(line.time_s)
        answer = say("pickup-not-with", limit=clock_text(limit_s), hands=hands, time=time)
    gain = [] if line.hands == asked else [say("pickup-no-gain")]
    return [" ".join([answer, *gain, say("pickup-plating-only")]), _tasks(say, spec, line)]


def sum_line(say: Phrases, plates: int, limit_s: int, touch_s: float, line: Line) -> str:
    """The time as a chef adds it up, and how often a plate has to leave."""
    return say(
        "pickup-sum",
        touch=_seconds_text(say, touch_s),
        more=str(plates - 1),
        largest=_seconds_text(say, line.largest_s),
        time=clock_text(line.time_s),
        limit=clock_text(limit_s),
        takt=_seconds_text(say, limit_s / plates),
    )


def own_pace_line(say: Phrases, line: Line, ratio: float) -> str:
    """What the kitchen's own median makes of a line."""
    return say("pickup-own-pace", ratio=say.decimal(ratio, 2), time=clock_text(line.time_s * ratio))


def _fits(say: Phrases, limit_s: int, line: Line) -> str:
    return say(
        "pickup-fits", limit=clock_text(limit_s), hands=say("hands", many=line.hands), time=clock_text(line.time_s)
    )


def _what_would_do(say: Phrases, spec: Spec, pickup: Pickup) -> Iterator[str]:
    """Hands sharing a step, or fewer pieces in the narrowest one."""
    divided, fewer = pickup.divided, pickup.fewer
    if divided:
        hands = say("hands", many=divided.hands)
        yield say("pickup-divided", shared=_shared(say, spec, divided), hands=hands, time=clock_text(divided.time_s))
    else:
        yield say("pickup-no-hands", most=MOST_HANDS)
    if fewer:
        yield say(
            "pickup-or-fewer" if divided else "pickup-fewer",
            pieces=_pieces(say, spec.steps[pickup.narrowest], fewer.pieces),
            hands=say("hands", many=fewer.line.hands),
            time=clock_text(fewer.line.time_s),
        )


def _shared(say: Phrases, spec: Spec, line: Line) -> str:
    """The steps that are shared, each with its hands: ``Two on shingling, two on leaning``."""
    shared = [station for station in line.stations if station.hands > 1]
    return ", ".join(
        say(
            "pickup-shared",
            many=say("counted" if nth else "counted-first", many=station.hands),
            doing=_doing(say, spec.steps[station.first]),
        )
        for nth, station in enumerate(shared)
    )


def _tasks(say: Phrases, spec: Spec, line: Line) -> str:
    """What each pair of hands does, by number and never by name."""
    tasks, first = [], 1
    for station in line.stations:
        who = ", ".join(str(nth) for nth in range(first, first + station.hands))
        tasks.append(say("pickup-task", who=who, steps=_steps(say, spec, station)))
        first += station.hands
    return say("pickup-tasks", tasks="; ".join(tasks))


def _steps(say: Phrases, spec: Spec, station: Station) -> str:
    steps = " + ".join(
        say("pickup-step", component=step.component, technique=step.technique)
        for step in spec.steps[station.first : station.end]
    )
    return say("pickup-in-turn", steps=steps) if station.hands > 1 else steps


def _doing(say: Phrases, step: Step) -> str:
    return say("doing", technique=_variant(step), name=step.technique)


def _pieces(say: Phrases, step: Step, many: int) -> str:
    return say("pieces", technique=_variant(step), many=many, component=step.component)


def _variant(step: Step) -> str:
    """The technique's name as a catalogue may tell it from others."""
    return step.technique.replace(" ", "-")


def _seconds_text(say: Phrases, seconds: float) -> str:
    """To a tenth of a second where that is exact, else to a hundredth."""
    tenth = f"{seconds:.1f}"
    return say.number(tenth if abs(float(tenth) - seconds) < 1e-9 else f"{seconds:.2f}")  # noqa: PLR2004 - a hair of a double
