"""Which steps a redo reason speaks of: a drip on the rim is of the sauce, a flat dot of the dots."""

from collections.abc import Mapping

from bot.domain.drill import Spec

CAUSES: Mapping[str, frozenset[str]] = {
    "rim": frozenset({"sauce", "line", "crumb", "pull", "brush", "wipe"}),
    "size": frozenset({"dot", "bead", "line", "brush", "mound", "twirl", "quenelle", "two-spoon quenelle"}),
    "flat": frozenset({"dot", "mound"}),
    "air": frozenset({"dot", "line"}),
    "place": frozenset({"set", "place", "pair", "leaf"}),
    "edge": frozenset({"pull", "sauce", "crumb", "line"}),
    "face": frozenset({"quenelle", "two-spoon quenelle"}),
    "count": frozenset({"bead", "dot", "shingle", "place", "pair"}),
    "tall": frozenset({"twirl", "mound", "ring fill", "press", "lift"}),
    "fell": frozenset({"lean"}),
    "torn": frozenset({"pull", "leaf"}),
    "mark": frozenset({"set", "place", "pair"}),
}
"""The techniques that each reason may be the fault of (common practice, no source)."""


def techniques_behind(reason: str, spec: Spec) -> tuple[str, ...]:
    """The techniques of a spec that a reason speaks of, in the order of their steps; none where it can be of none."""
    causes = CAUSES.get(reason, frozenset())
    return tuple(dict.fromkeys(step.technique for step in spec.steps if step.technique in causes))
