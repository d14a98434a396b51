"""Working orders compared: how long each takes, and how long each component waits on the plate in it."""

from dataclasses import dataclass, replace

from bot.domain.drill import Drill, SetUp, Spec
from bot.domain.standard_time import standard_s, step_start_s, wave_s
from bot.domain.techniques import Seconds, StandIn

DRY: tuple[StandIn, ...] = ("firm", "leaf")
"""Classes of stand-in that waiting does nothing to."""


@dataclass(frozen=True)
class Wait:
    """How long the first piece of a component waits, from the start of its step to the wave's last touch."""

    component: str
    wait_s: float
    stand_in: StandIn
    life_s: int | None

    @property
    def too_long(self) -> bool:
        """Whether it waits longer than it keeps."""
        return self.life_s is not None and self.wait_s > self.life_s


@dataclass(frozen=True)
class WorkingOrder:
    """A set-up worked in one order: its standard time and the wait of each component, in the order of the steps."""

    set_up: SetUp
    standard_s: float
    waits: tuple[Wait, ...]

    @property
    def minded(self) -> tuple[Wait, ...]:
        """The waits to mind: of what has a life, else of what is not dry."""
        living = tuple(wait for wait in self.waits if wait.life_s is not None)
        return living or tuple(wait for wait in self.waits if wait.stand_in not in DRY)

    @property
    def keeps(self) -> bool:
        """Whether every component is finished within its life."""
        return not any(wait.too_long for wait in self.waits)


def orders_of(drill: Drill, seconds: Seconds) -> tuple[WorkingOrder, ...]:
    """Component by component, waves of each sensible size and the drill's own, the largest first, plate by plate."""
    whole, single = (replace(drill.set_up, working=way, wave=0) for way in ("component", "plate"))
    waves = [replace(drill.set_up, working="waves", wave=size) for size in _wave_sizes(drill.set_up)]
    return tuple(_order(drill.spec, way, seconds) for way in (whole, *waves, single))


def best_order(orders: tuple[WorkingOrder, ...]) -> WorkingOrder | None:
    """The largest batch that keeps every life where any is given, else the fastest; None where none keeps them."""
    if any(wait.life_s is not None for wait in orders[0].waits):
        return next((order for order in orders if order.keeps), None)
    return min(orders, key=lambda order: order.standard_s)


def _wave_sizes(set_up: SetUp) -> list[int]:
    """Sizes that part the plates into waves as even as can be, from two plates up, and the one in use."""
    share = _share(set_up)
    even = {-(-share // waves) for waves in range(2, share)}
    own = {set_up.wave} if set_up.working == "waves" else set()
    return sorted({size for size in even | own if 1 < size < share}, reverse=True)


def _share(set_up: SetUp) -> int:
    """Plates of the cook who has the most."""
    return -(-set_up.plates // set_up.cooks)


def _order(spec: Spec, set_up: SetUp, seconds: Seconds) -> WorkingOrder:
    share = _share(set_up)
    size = {"component": share, "plate": 1}.get(set_up.working, min(set_up.wave, share))
    return WorkingOrder(set_up, standard_s(spec, set_up, seconds), _waits(spec, set_up, seconds, size))


def _waits(spec: Spec, set_up: SetUp, seconds: Seconds, size: int) -> tuple[Wait, ...]:
    """The wait of each component from the first of its steps, and from any later one that has a life of its own."""
    whole = wave_s(spec, set_up, seconds, size)
    waits: dict[tuple[str, int | None], Wait] = {}
    for nth, step in enumerate(spec.steps):
        again = any(component == step.component for component, _ in waits)
        placed = seconds.techniques[step.technique].amount.unit != "none"
        if placed and (step.life_s is not None or not again):
            wait_s = whole - step_start_s(spec, set_up, seconds, size, nth)
            waits.setdefault((step.component, step.life_s), Wait(step.component, wait_s, step.stand_in, step.life_s))
    return tuple(waits.values())
