"""Pressure rounds: a call sheet made before the run, read aloud by a mate; calls are about plates, never people.

What calls do to the work is in the set-up that a sheet is for, so that plates, touches and standard time are right
before a line is read. Sheets that do the same to the work share a set-up, and with it bests and boards.
"""

import random
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import combinations, permutations

from bot.domain.call_times import NONE_AFTER, NONE_BEFORE, Call, CallTimes, Kind, Order, call_times
from bot.domain.drill import MOST_PLATES, NOT_CALLED, Called, SetUp, Spec
from bot.domain.identity import set_up_fingerprint
from bot.domain.standard_time import standard_s
from bot.domain.techniques import Seconds
from bot.errors import UserError

CALLS = {1: 2, 2: 4, 3: 6}
GAP_S = {1: 60, 2: 40, 3: 30}
"""By level: how many calls, and how far apart they are at least."""

FOUR = 4
"""Plates that are sent at once."""

_LEAVES_NOTHING = {"wipe", "press", "lift"}


@dataclass(frozen=True)
class Sheet:
    """The calls in order, and the set-up that they make of the one asked for."""

    level: int
    number: int
    set_up: SetUp
    calls: tuple[Call, ...]


def make_sheet(spec: Spec, set_up: SetUp, seconds: Seconds, level: int, number: int) -> Sheet:
    """The sheet of this number: always the same for the same work, level and number.

    Of a set-up that a sheet made, further sheets of its level do the same to the work. Where no sheet of the level
    fits, a UserError names the highest that does.
    """
    # random() alone is promised to give the same sequence in later versions of Python.
    chance = random.Random(f"{set_up_fingerprint(spec, without_calls(set_up))} {level} {number}")  # noqa: S311 - no secret
    ways = sorted(_ways(spec, set_up, seconds, level), key=lambda _: chance.random())
    for way, times, order in _with_times(spec, seconds, level, ways):
        if latest := times.latest(order):
            return Sheet(level, number, way, times.draw(order, latest, chance))
    fitting = [lower for lower in range(1, level) if _fits(spec, set_up, seconds, lower)]
    if fitting:
        raise UserError("calls-level-too-high", level=level, calls=CALLS[level], gap=GAP_S[level], highest=fitting[-1])
    raise UserError("calls-too-short")


def without_calls(set_up: SetUp) -> SetUp:
    """The set-up that a sheet was made for."""
    plates = set_up.plates - set_up.called.one_more
    return replace(set_up, plates=plates, pressure=0, called=NOT_CALLED)


def swapped_step(spec: Spec) -> int | None:
    """The step (from 1) that a swap leaves off: the last that leaves something on the plate; None if it is alone."""
    leaving = [nth for nth, step in enumerate(spec.steps, 1) if step.technique not in _LEAVES_NOTHING]
    return leaving[-1] if len(leaving) > 1 else None


def _fits(spec: Spec, set_up: SetUp, seconds: Seconds, level: int) -> bool:
    ways = _ways(spec, set_up, seconds, level)
    return any(times.latest(order) for _, times, order in _with_times(spec, seconds, level, ways))


def _with_times(
    spec: Spec, seconds: Seconds, level: int, ways: list[tuple[SetUp, Order]]
) -> Iterator[tuple[SetUp, CallTimes, Order]]:
    """Each set-up and order with the times at which may be called there."""
    known: dict[SetUp, CallTimes] = {}
    for way, order in ways:
        if way not in known:
            known[way] = call_times(spec, way, seconds, GAP_S[level], swapped_step(spec))
        yield way, known[way], order


def _ways(spec: Spec, set_up: SetUp, seconds: Seconds, level: int) -> list[tuple[SetUp, Order]]:
    """Every order of calls of a level, with the set-up that it makes; none where the plain run has no room for them."""
    plain = without_calls(set_up)
    if (CALLS[level] - 1) * GAP_S[level] > (NONE_AFTER - NONE_BEFORE) * standard_s(spec, plain, seconds):
        return []
    like = set_up.called if set_up.called != NOT_CALLED and set_up.pressure == level else None
    return [
        (replace(plain, plates=plain.plates + called.one_more, pressure=level, called=called), order)
        for changes in _changes(spec, plain, CALLS[level])
        if (called := _as_called(spec, changes, seconds)) == like or like is None
        for order in _orders(changes, CALLS[level], plain.plates)
    ]


def _changes(spec: Spec, plain: SetUp, calls: int) -> Iterator[Order]:
    """The calls that change the work, one of a kind: one at least, and all that there are but at most two others."""
    kinds: list[Kind] = ["wait"]
    if plain.plates < MOST_PLATES:
        kinds.insert(0, "one-more")
    if swapped_step(spec):
        kinds.insert(0, "swap")
    fewest = min(max(calls - 2, 1), len(kinds))
    for many in range(fewest, min(calls, len(kinds)) + 1):
        yield from combinations(kinds, many)


def _orders(changes: Order, calls: int, plates: int) -> list[Order]:
    """Every order of these calls and of those that change nothing, which fill up the number."""
    rest = calls - len(changes)
    asked = {rest // 2, rest - rest // 2} if plates > FOUR else {rest}
    fills = [_many("how-long", few) + _many("send-four", rest - few) for few in asked]
    return sorted({order for fill in fills for order in permutations((*changes, *fill))})


def _many(kind: Kind, many: int) -> Order:
    return (kind,) * many


def _as_called(spec: Spec, changes: Order, seconds: Seconds) -> Called:
    step = swapped_step(spec)
    return Called(
        one_more=changes.count("one-more"),
        hands_off_s=seconds.hands_off_s * changes.count("wait"),
        without=(step,) if step and "swap" in changes else (),
    )
