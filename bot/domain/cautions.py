"""Which warnings go with a drill, of which of its components they speak, and what is known of its allergens."""

from collections.abc import Mapping

from bot.domain.amounts import Unit
from bot.domain.drill import Spec, Step
from bot.domain.techniques import Seconds, StandIn

IN_ORDER = (
    "mandoline",
    "heat",
    "floor",
    "cold",
    "puree",
    "cooked-starch",
    "bottle",
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

ALWAYS = ("hands", "allergens", "never-served", "local-rules")

_BY_STAND_IN: dict[StandIn, tuple[str, ...]] = {
    "firm": ("pieces-counted",),
    "leaf": ("pieces-counted",),
    "soft": ("cold",),
    "gel": ("cold",),
    "thick": ("cold",),
    "thin": ("cold", "floor"),
}

_COOKED = {"puree", "cooked-starch"}
"""Warnings of what was cooked soft; they tell of the cold themselves."""

_BOTTLES = ("bottle", "dropper")
_UNBREAKABLE = ("paper", "card", "plastic", "melamine", "wood", "steel")


def cautions_for(spec: Spec, seconds: Seconds) -> Mapping[str, tuple[str, ...]]:
    """The warnings that fit the spec, in order, each with the components it is about; ``local-rules`` closes them."""
    about: dict[str, dict[str, None]] = {key: {} for key in ALWAYS}
    for step in spec.steps:
        for key in _of_step(step, seconds):
            about.setdefault(key, {})[step.component] = None
    if not any(word in spec.plate.casefold() for word in _UNBREAKABLE):
        about["breakage"] = {}
    return {key: tuple(about[key]) for key in IN_ORDER if key in about}


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
    placed = technique.amount.unit != "none"
    fitting = {
        *technique.cautions,
        *(_BY_STAND_IN[step.stand_in] if placed else ()),
        *(("strain",) if technique.strains else ()),
        *(("bottle",) if step.tool in _BOTTLES else ()),
    }
    return fitting - _beside_the_point(step.stand_in, technique.amount.unit, fitting)


def _beside_the_point(stand_in: StandIn, unit: Unit, fitting: set[str]) -> set[str]:
    """Of these warnings those that do not concern the stand-in: a leaf is no slip, and loose grains are not counted."""
    beside = set() if unit == "piece" else {"pieces-counted"}
    if stand_in == "leaf":
        beside.add("floor")
    if stand_in != "soft":
        return beside | _COOKED
    return beside | {"cold"} if fitting & _COOKED else beside
