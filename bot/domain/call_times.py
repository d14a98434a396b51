"""When to call in a pressure round: apart from each other, not too early, not too late, never over heat or a blade."""

import random
import re
from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from math import ceil, floor
from typing import Literal

from bot.domain.drill import SetUp, Spec, Step
from bot.domain.standard_time import standard_s
from bot.domain.step_times import Span, step_times
from bot.domain.techniques import Seconds

Kind = Literal["how-long", "send-four", "swap", "one-more", "wait"]
Order = tuple[Kind, ...]

NONE_BEFORE, NONE_AFTER = 0.15, 0.9
"""Shares of standard time before and after which nobody calls."""

WARNED_S = 5
"""How long before a plate's turn its swap has to be called, to be heard in time (common practice, no source)."""

_HOT_OR_SHARP = {"knife", "mandoline", "slicer", "peeler", "torch", "blowtorch", "flame", "burner", "pan", "skillet"}


@dataclass(frozen=True)
class Call:
    """What is called, so many seconds into the run; ``plate`` is the one that a swap is about."""

    at_s: int
    kind: Kind
    plate: int = 0


@dataclass(frozen=True)
class CallTimes:
    """The whole seconds at which may be called, before the call to wait and after it, which moves all work.

    ``swapped`` is when the step that a swap leaves off comes to each of the ``plates`` on the table.
    """

    before_wait: tuple[int, ...]
    after_wait: tuple[int, ...]
    swapped: tuple[Span, ...]
    plates: int
    hands_off_s: float
    gap_s: int

    def latest(self, order: Order) -> list[int]:
        """The latest that each call of an order may come so that those after it still can; empty if they do not fit."""
        found: list[int] = []
        for nth in reversed(range(len(order))):
            times = self._allowed(order, nth)
            before = bisect_right(times, found[0] - self._gap_after(order[nth])) if found else len(times)
            if not before:
                return []
            found.insert(0, times[before - 1])
        return found

    def draw(self, order: Order, latest: list[int], chance: random.Random) -> tuple[Call, ...]:
        """The calls of an order at times left to chance, each taking about its share of the time that is free."""
        calls: list[Call] = []
        for nth, kind in enumerate(order):
            times = self._allowed(order, nth)
            first = bisect_left(times, calls[-1].at_s + self._gap_after(order[nth - 1])) if calls else 0
            share = 2 * (latest[nth] - times[first]) / (len(order) - nth + 1)
            end = bisect_right(times, min(times[first] + share, latest[nth]))
            at_s = times[first + int(chance.random() * (end - first))]
            calls.append(Call(at_s, kind, self._plate(order, nth, at_s, chance) if kind == "swap" else 0))
        return tuple(calls)

    def _allowed(self, order: Order, nth: int) -> tuple[int, ...]:
        times = self.after_wait if "wait" in order[:nth] else self.before_wait
        if order[nth] != "swap":
            return times
        return times[: bisect_right(times, self._turn_s(self.plates) - WARNED_S + self._waited_s(order, nth))]

    def _gap_after(self, kind: Kind) -> float:
        return max(self.gap_s, self.hands_off_s) if kind == "wait" else self.gap_s

    def _waited_s(self, order: Order, nth: int) -> float:
        return self.hands_off_s if "wait" in order[:nth] else 0.0

    def _turn_s(self, plate: int) -> float:
        return next(span.reaches_s(plate) for span in self.swapped if plate < span.first + span.plates)

    def _plate(self, order: Order, nth: int, at_s: int, chance: random.Random) -> int:
        """One of the plates whose turn is yet to come."""
        soonest = at_s + WARNED_S - self._waited_s(order, nth)
        coming = [plate for plate in range(1, self.plates + 1) if self._turn_s(plate) >= soonest]
        return coming[int(chance.random() * len(coming))]


def call_times(spec: Spec, way: SetUp, seconds: Seconds, gap_s: int, swapped: int | None) -> CallTimes:
    """When may be called in a run laid out in this way, in which a swap leaves off the step ``swapped``."""
    standard = standard_s(spec, way, seconds)
    spans = step_times(spec, way, seconds)
    quiet = [span for span in spans if is_quiet(spec.steps[span.step - 1], seconds)]
    within = range(ceil(NONE_BEFORE * standard), floor(NONE_AFTER * standard) + 1)

    def free(after_s: float) -> tuple[int, ...]:
        return tuple(at for at in within if not any(q.start_s <= at - after_s <= q.end_s for q in quiet))

    return CallTimes(
        before_wait=free(0.0),
        after_wait=free(seconds.hands_off_s),
        swapped=tuple(span for span in spans if span.step == swapped),
        plates=-(-way.plates // way.cooks) - way.called.one_more,
        hands_off_s=seconds.hands_off_s,
        gap_s=gap_s,
    )


def is_quiet(step: Step, seconds: Seconds) -> bool:
    """Whether nobody calls during a step: over a bath, flame or hot pan, or with a blade in the hand."""
    words = set(re.findall(r"[a-z]+", f"{step.tool} {step.component}".casefold()))
    return "heat" in seconds.techniques[step.technique].cautions or bool(words & _HOT_OR_SHARP)
