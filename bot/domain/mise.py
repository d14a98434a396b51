"""The mise of a drill: what so many runs take of each component, the spare included, and the china and tools."""

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.domain.amounts import Keeping, Unit
from bot.domain.drill import Drill, Spec, Step
from bot.domain.techniques import Seconds

BARE_HANDS = ("fingers", "both hands")

_SIZES = re.compile(r"\b(\d{1,3}(?:[-–]\d{1,3})+) ?mm\b")
_WIDE = re.compile(r"\b(\d{1,3}) ?mm (?:wide|across)\b")
_CALLED = re.compile(r"\b(\d{1,3}(?:\.\d{1,2})?) ?(ml|g)\b")


@dataclass(frozen=True)
class Need:
    """What the runs take of one component.

    ``a_plate`` times plates and runs is ``used``; ``stays`` remains in the tool ``stays_in``, unmeasured where it is 0.
    ``life_s`` is the shortest time that it keeps once placed, ``price`` that of one piece, millilitre or gram.
    """

    component: str
    unit: Unit
    a_plate: Decimal
    used: Decimal
    spare: Decimal
    keeping: Keeping
    stays_in: str = ""
    stays: Decimal = Decimal(0)
    life_s: int | None = None
    price: Decimal | None = None

    @property
    def total(self) -> Decimal:
        """What to make, what stays in the tool apart."""
        return self.used + self.spare


@dataclass(frozen=True)
class Mise:
    """Everything for so many runs; the china is washed between them."""

    runs: int
    spare_share: Decimal
    needs: tuple[Need, ...]
    plates: int
    spare_plates: int
    tools: tuple[str, ...]


def mise_of(drill: Drill, runs: int, seconds: Seconds) -> Mise:
    """What so many runs of a drill take."""
    plates = drill.set_up.plates
    tools = dict.fromkeys(step.tool for step in drill.spec.steps if step.tool not in BARE_HANDS)
    return Mise(
        runs=runs,
        spare_share=seconds.spare_share,
        needs=tuple(_need(steps, drill.spec, plates * runs, seconds) for steps in _by_component(drill.spec, seconds)),
        plates=plates,
        spare_plates=_spare_pieces(Decimal(plates), seconds),
        tools=tuple(tools),
    )


def amount_a_plate(step: Step, spec: Spec, seconds: Seconds) -> Decimal:
    """What one plate takes at one step: as the spec calls it, else as the technique usually takes."""
    amount = seconds.techniques[step.technique].amount
    called = _CALLED.search(step.at)
    if called and called[2] == amount.unit:
        return step.pieces * Decimal(called[1])
    if amount.shape == "cap":
        return sum((amount.wide(width).a_touch for width in _widths(step, spec, amount.mm[0])), Decimal(0))
    return step.pieces * amount.a_touch


def _widths(step: Step, spec: Spec, usual_mm: float) -> list[float]:
    """The width of each dot: one size a dot or one for all, as the step or the accept rule calls it; else the usual."""
    for text in (step.at, spec.accept):
        for graded in _SIZES.findall(text):
            sizes = [float(size) for size in re.split("[-–]", graded)]
            if len(sizes) == step.pieces:
                return sizes
    one = _WIDE.search(step.at)
    return [float(one[1]) if one else usual_mm] * step.pieces


def _by_component(spec: Spec, seconds: Seconds) -> Iterable[list[Step]]:
    """The steps of each component that is used up, in the order of the spec; one counted and measured is two."""
    groups: dict[tuple[str, Unit], list[Step]] = {}
    for step in spec.steps:
        unit = seconds.techniques[step.technique].amount.unit
        if unit != "none":
            groups.setdefault((step.component.casefold(), unit), []).append(step)
    return groups.values()


def _need(steps: list[Step], spec: Spec, plates: int, seconds: Seconds) -> Need:
    first = steps[0]
    unit = seconds.techniques[first.technique].amount.unit
    a_plate = sum((amount_a_plate(step, spec, seconds) for step in steps), Decimal(0))
    used = plates * a_plate
    stays_in = next((step.tool for step in steps if step.tool in seconds.stays_ml), "") if unit == "ml" else ""
    return Need(
        component=first.component,
        unit=unit,
        a_plate=a_plate,
        used=used,
        spare=Decimal(_spare_pieces(used, seconds)) if unit == "piece" else used * seconds.spare_share,
        keeping=_keeping(first, seconds),
        stays_in=stays_in,
        stays=seconds.stays_ml.get(stays_in, Decimal(0)),
        life_s=min((step.life_s for step in steps if step.life_s is not None), default=None),
        price=next((step.price for step in steps if step.price is not None), None),
    )


def _keeping(step: Step, seconds: Seconds) -> Keeping:
    """What becomes of a component by its class; the technique may say otherwise of what comes back."""
    keeping = seconds.keeping.get(step.stand_in, Keeping())
    recovered = seconds.techniques[step.technique].recovered
    return keeping if recovered is None else replace(keeping, recovered=recovered)


def _spare_pieces(pieces: Decimal, seconds: Seconds) -> int:
    """Whole spare pieces, and never fewer than the fewest."""
    return max(math.ceil(pieces * seconds.spare_share), seconds.fewest_spare)
