"""Standard time: what the work of a spec in a set-up should take a steady, competent cook."""

from dataclasses import dataclass, replace
from itertools import pairwise

from bot.domain.drill import SetUp, Spec
from bot.domain.pace import LEVELLED_TOUCH_S
from bot.domain.techniques import Seconds


@dataclass(frozen=True)
class Targets:
    """The three times to aim at, shown as times only."""

    opening_s: float
    house_s: float
    brisk_s: float


def touches(spec: Spec) -> int:
    """Stated actions a plate, counted from the spec and never from the cook."""
    return sum(step.pieces for step in spec.steps)


def run_touches(spec: Spec, set_up: SetUp, plates: int | None = None) -> int:
    """Touches of a run, of the plates attempted where ``plates`` says how many; what calls leave off is not touched."""
    left_off = sum(spec.steps[nth - 1].pieces for nth in set_up.called.without)
    return max((set_up.plates if plates is None else plates) * touches(spec) - left_off, 0)


def reaches(spec: Spec, seconds: Seconds) -> int:
    """Approach, contact and leave, a plate: two hands setting two pieces are two touches and one reach."""
    return sum(-(-step.pieces // seconds.techniques[step.technique].pieces_a_reach) for step in spec.steps)


def tools(spec: Spec) -> list[str]:
    """The tool of each step, spelt alike where it is the same."""
    return [" ".join(step.tool.casefold().split()) for step in spec.steps]


def tool_changes(spec: Spec) -> int:
    """How often the tool in the hand changes from the first step to the last."""
    return sum(tool != following for tool, following in pairwise(tools(spec)))


def passes(spec: Spec) -> int:
    """Walks along the row when working component by component: one a step, a press and its lift sharing one."""
    techniques = [step.technique for step in spec.steps]
    return len(techniques) - list(pairwise(techniques)).count(("press", "lift"))


def walk_s(set_up: SetUp, seconds: Seconds, plates: int) -> float:
    """Standard seconds of walking once along so many plates."""
    columns = -(-plates // set_up.rows)
    return max(columns - 1, 0) * seconds.column_s


def touch_s(spec: Spec, seconds: Seconds) -> float:
    """Standard seconds of one plate's touches alone."""
    return sum(step.pieces * seconds.techniques[step.technique].seconds for step in spec.steps)


def alone_s(spec: Spec, seconds: Seconds) -> float:
    """Standard seconds of one plate built by itself, with its tool changes."""
    return touch_s(spec, seconds) + tool_changes(spec) * seconds.tool_change_s


def standard_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int | None = None) -> float:
    """Standard seconds of a run, of the plates attempted where ``plates`` says how many.

    Cooks share the plates evenly; the largest share sets the time. What calls add or take off comes last.
    """
    share = -(-(set_up.plates if plates is None else plates) // set_up.cooks)
    return _built_s(spec, set_up, seconds, share) + called_s(spec, set_up, seconds)


def called_s(spec: Spec, set_up: SetUp, seconds: Seconds) -> float:
    """Standard seconds that calls add by hands off, less what they leave off; their plate more is among the plates."""
    left_off = [spec.steps[nth - 1] for nth in set_up.called.without]
    return set_up.called.hands_off_s - sum(
        step.pieces * seconds.techniques[step.technique].seconds for step in left_off
    )


def _built_s(spec: Spec, set_up: SetUp, seconds: Seconds, share: int) -> float:
    if set_up.working == "plate":
        return _plate_by_plate_s(spec, set_up, seconds, share)
    if set_up.working == "waves":
        return _waves_s(spec, set_up, seconds, share)
    return wave_s(spec, set_up, seconds, share) + seconds.start_stop_s


def levelled_touches(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int | None = None) -> float:
    """The work of a run in levelled touches, which are alike across specs."""
    return standard_s(spec, set_up, seconds, plates) / LEVELLED_TOUCH_S


def targets(standard: float) -> Targets:
    """Opening, house and brisk times for this standard time."""
    return Targets(opening_s=1.4 * standard, house_s=standard, brisk_s=0.85 * standard)


def change_percent(old_standard_s: float, new_standard_s: float) -> float:
    """By how many percent the work content of a run grows (or, below zero, shrinks)."""
    return 100 * (new_standard_s - old_standard_s) / old_standard_s


def wave_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int) -> float:
    """So many plates component by component, without start and stop."""
    changes = tool_changes(spec) * seconds.tool_change_s
    return plates * touch_s(spec, seconds) + changes + passes(spec) * walk_s(set_up, seconds, plates)


def step_start_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int, step: int) -> float:
    """When the step of this place, from 0, begins in a wave of so many plates: its tool is in the hand."""
    before, up_to = (replace(spec, steps=spec.steps[:end]) for end in (step, step + 1))
    change = (tool_changes(up_to) - tool_changes(before)) * seconds.tool_change_s
    return wave_s(before, set_up, seconds, plates) + change


def _turn_s(spec: Spec, seconds: Seconds) -> float:
    """From the last step of one plate or wave to the first of the next: a change only if the tools differ."""
    in_hand = tools(spec)
    return seconds.tool_change_s if in_hand[0] != in_hand[-1] else 0.0


def _plate_by_plate_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int) -> float:
    turns = max(plates - 1, 0) * _turn_s(spec, seconds)
    return plates * alone_s(spec, seconds) + turns + walk_s(set_up, seconds, plates) + seconds.start_stop_s


def _waves_s(spec: Spec, set_up: SetUp, seconds: Seconds, plates: int) -> float:
    sizes = [min(set_up.wave, plates - first) for first in range(0, plates, set_up.wave)]
    built = sum(wave_s(spec, set_up, seconds, size) for size in sizes)
    return built + max(len(sizes) - 1, 0) * _turn_s(spec, seconds) + seconds.start_stop_s
