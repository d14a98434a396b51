"""What fits in a slot: laying out, so many honest runs with every plate judged and reset, and clearing down."""

from dataclasses import dataclass

from bot.domain.drill import SetUp, Spec
from bot.domain.run import day_limit
from bot.domain.standard_time import standard_s
from bot.domain.techniques import Seconds

FEWEST_OWN_RUNS = 3
"""Whole runs from which a cook's own median stands in the place of standard time."""


@dataclass(frozen=True)
class Slot:
    """How many runs fit in ``length_s``; times are whole seconds, as a chef adds them up.

    ``more_fit`` where the day's safe number, and not the slot, ends it.
    """

    length_s: int
    runs: int
    run_s: int
    judging_s: int
    reset_s: int
    laying_out_s: int
    clearing_s: int
    more_fit: bool = False

    @property
    def each_s(self) -> int:
        """One run with its judging and reset."""
        return self.run_s + self.judging_s + self.reset_s

    def taken_s(self, runs: int) -> int:
        """What a practice of so many runs takes in all."""
        return self.laying_out_s + runs * self.each_s + self.clearing_s


def fit_slot(spec: Spec, set_up: SetUp, seconds: Seconds, length_s: int, run_s: float | None = None) -> Slot:
    """As many runs as fit, each of ``run_s`` or else of standard time, and at most the day's safe number."""
    whole_run_s = round(standard_s(spec, set_up, seconds) if run_s is None else run_s)
    judging_s, reset_s = (round(set_up.plates * each) for each in (seconds.judge_plate_s, seconds.reset_plate_s))
    laying_out_s, clearing_s = round(seconds.laying_out_s), round(seconds.clearing_s)
    fit = max(length_s - laying_out_s - clearing_s, 0) // (whole_run_s + judging_s + reset_s)
    most = day_limit(spec, seconds)
    return Slot(
        length_s, min(fit, most), whole_run_s, judging_s, reset_s, laying_out_s, clearing_s, more_fit=fit > most
    )
