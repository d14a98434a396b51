"""Making a drill harder by one thing: what may be added, and how much more work that truly is."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from typing import Literal

from bot.domain.drill import SMALLEST_WAVE, Drill, SetUp, Spec, laid_out
from bot.domain.standard_time import change_percent, standard_s
from bot.domain.techniques import Seconds
from bot.errors import UserError

LEAST_FITTING, MOST_FITTING = 5.0, 10.0
MOST_AT_ONCE = 20.0
"""Percent more work: what a rise should be, and what no rise may be past (common practice, no source)."""

ONCE_A_PLATE = frozenset({"ring fill", "press", "lift", "wipe"})
"""Techniques of which a plate has one, however hard it is."""

Fit = Literal["small", "fitting", "large", "refused"]


@dataclass(frozen=True)
class Plates:
    """More plates in the row."""

    more: int


@dataclass(frozen=True)
class Pieces:
    """More pieces of one step, the nth from 1, on every plate."""

    more: int
    nth: int


@dataclass(frozen=True)
class Waves:
    """The plates in waves of so many, so that less food waits."""

    of: int


Change = Plates | Pieces | Waves


@dataclass(frozen=True)
class Harder:
    """A drill made harder by one thing, and by how many percent its standard time grows."""

    change: Change
    drill: Drill
    percent: float

    @property
    def fit(self) -> Fit:
        """How the rise sits beside 5 to 10 %, by the tenth of a percent that is shown."""
        shown = round(self.percent, 1)
        if shown > MOST_AT_ONCE:
            return "refused"
        if shown > MOST_FITTING:
            return "large"
        return "fitting" if shown >= LEAST_FITTING else "small"


def harder(drill: Drill, seconds: Seconds) -> tuple[Harder, ...]:
    """Every way of making a drill harder by one thing, in the order of the ladder: plates, pieces, working order.

    One more of a thing, and two where one is under 5 % more work; what cannot be laid out is left out.
    """
    ways = [made for change in _changes(drill, seconds) if (made := _made(drill, seconds, change))]
    return tuple(made for made in ways if made.percent > 0)


def _changes(drill: Drill, seconds: Seconds) -> Iterator[Change]:
    yield from _one_or_two(drill, seconds, Plates)
    for nth, step in enumerate(drill.spec.steps, 1):
        if step.technique not in ONCE_A_PLATE:
            hands = seconds.techniques[step.technique].pieces_a_reach
            yield from _one_or_two(drill, seconds, partial(Pieces, nth=nth), hands)
    yield from _in_waves(drill.set_up)


def _one_or_two(drill: Drill, seconds: Seconds, change: Callable[[int], Change], hands: int = 1) -> Iterator[Change]:
    """One more, and two where one is little; as many at a time as the hands set at once."""
    one = change(hands)
    yield one
    made = _made(drill, seconds, one)
    if made and made.fit == "small":
        yield change(2 * hands)


def _in_waves(set_up: SetUp) -> Iterator[Waves]:
    """The largest waves that leave no plate over and are smaller than what is worked at once now."""
    at_once = {"component": set_up.plates, "waves": set_up.wave}.get(set_up.working, 0)
    even = [of for of in range(SMALLEST_WAVE, at_once) if set_up.plates % of == 0]
    if even:
        yield Waves(max(even))


def _made(drill: Drill, seconds: Seconds, change: Change) -> Harder | None:
    """The drill so changed, without the time that was set for it as it is; None where it cannot be laid out."""
    try:
        spec, set_up = _changed(drill, change)
    except UserError:
        return None
    before, after = (standard_s(*work, seconds) for work in ((drill.spec, drill.set_up), (spec, set_up)))
    raised = replace(drill, spec=spec, set_up=set_up, wording=replace(drill.wording, target_s=None))
    return Harder(change, raised, change_percent(before, after))


def _changed(drill: Drill, change: Change) -> tuple[Spec, SetUp]:
    spec, set_up = drill.spec, drill.set_up
    match change:
        case Plates(more):
            return spec, laid_out(replace(set_up, plates=set_up.plates + more))
        case Waves(of):
            return spec, laid_out(replace(set_up, working="waves", wave=of))
        case Pieces(more, nth):
            step = replace(spec.steps[nth - 1], pieces=spec.steps[nth - 1].pieces + more)
            return replace(spec, steps=(*spec.steps[: nth - 1], step, *spec.steps[nth:])), set_up
