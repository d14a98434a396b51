"""When, at standard speed, each step of a run is done on which plates."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.domain.drill import SetUp, Spec
from bot.domain.standard_time import passes, tool_changes, walk_s
from bot.domain.techniques import Seconds


@dataclass(frozen=True)
class Span:
    """One step (from 1) on so many plates from ``first`` (from 1) on, in seconds of the clock.

    The tool change before it and the walking are part of it.
    """

    step: int
    first: int
    plates: int
    start_s: float
    end_s: float

    def reaches_s(self, plate: int) -> float:
        """When it comes to this plate."""
        return self.start_s + (plate - self.first) * (self.end_s - self.start_s) / self.plates


def step_times(spec: Spec, set_up: SetUp, seconds: Seconds) -> list[Span]:
    """The steps of one cook's share of a run in the order in which they are done, without what calls do to it.

    It ends when standard time does.
    """
    plates = -(-set_up.plates // set_up.cooks)
    now_s, before = seconds.start_stop_s, spec.steps[0]
    spans: list[Span] = []
    for first, wave in _waves(set_up, plates):
        for nth, step in enumerate(spec.steps, 1):
            two = replace(spec, steps=(before, step))
            took_s = wave * step.pieces * seconds.techniques[step.technique].seconds
            took_s += tool_changes(two) * seconds.tool_change_s
            if nth == 1 or passes(two) > 1:
                took_s += walk_s(set_up, seconds, wave)
            if nth == 1 and first > 1 and set_up.working == "plate":
                took_s += walk_s(set_up, seconds, plates) / (plates - 1)
            spans.append(Span(nth, first, wave, now_s, now_s + took_s))
            now_s, before = now_s + took_s, step
    return spans


def _waves(set_up: SetUp, plates: int) -> Iterator[tuple[int, int]]:
    """The first plate and the size of each wave; component by component is one wave, plate by plate waves of one."""
    size = {"component": plates, "plate": 1}.get(set_up.working, set_up.wave)
    for first in range(1, plates + 1, size):
        yield first, min(size, plates - first + 1)
