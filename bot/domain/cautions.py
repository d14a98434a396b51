"""Which warnings go with a drill, and what is known of its allergens."""

from bot.domain.drill import Spec, Step
from bot.domain.techniques import Seconds, StandIn

IN_ORDER = (
    "mandoline",
    "heat",
    "floor",
    "reuse",
    "cooked-starch",
    "pieces-counted",
    "strain",
    "chemicals",
    "breakage",
    "hands",
    "allergens",
    "never-served",
    "local-rules",
)
"""Every warning, as keys of the catalogues, in the order in which they are told: the particular ones first."""

ALWAYS = {"hands", "allergens", "never-served", "local-rules"}

_BY_STAND_IN: dict[StandIn, set[str]] = {
    "firm": {"pieces-counted"},
    "leaf": {"pieces-counted"},
    "soft": {"reuse"},
    "gel": {"reuse"},
    "thick": {"reuse"},
    "thin": {"reuse", "floor"},
}

_UNBREAKABLE = ("paper", "card", "plastic", "melamine", "wood", "steel")


def cautions_for(spec: Spec, seconds: Seconds) -> tuple[str, ...]:
    """Keys of the warnings that fit the spec's techniques and stand-ins, closing with ``local-rules``."""
    fitting = ALWAYS.union(*(_of_step(step, seconds) for step in spec.steps))
    if not any(word in spec.plate.casefold() for word in _UNBREAKABLE):
        fitting.add("breakage")
    return tuple(key for key in IN_ORDER if key in fitting)


def labels_of(spec: Spec) -> list[tuple[str, tuple[str, ...]]]:
    """Each component once, with its allergens as read off the label; none means that nobody has read it yet.

    A wipe puts nothing on the plate and is left out.
    """
    read: dict[str, tuple[str, ...]] = {}
    for step in spec.steps:
        if step.technique != "wipe":
            read[step.component] = tuple(dict.fromkeys((*read.get(step.component, ()), *step.labels)))
    return list(read.items())


def _of_step(step: Step, seconds: Seconds) -> set[str]:
    technique = seconds.techniques[step.technique]
    strain = {"strain"} if technique.strains else set()
    return _BY_STAND_IN[step.stand_in].union(technique.cautions, strain)
