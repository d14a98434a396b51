"""How much of a component one touch takes, and what becomes of it after the run."""

import math
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

Unit = Literal["piece", "ml", "g", "none"]
"""What a component is counted or measured in; ``none`` where a touch takes nothing, as a press or a wipe."""

Shape = Literal["cap", "ellipsoid", "slab"]
"""A dot or bead sitting on the plate, a quenelle, a pull."""


@dataclass(frozen=True)
class Amount:
    """What one touch takes: ``each`` of its unit, or the volume of a shape of these millimetres.

    A cap has its width and height; the others length, width and height.
    """

    unit: Unit = "piece"
    each: Decimal = Decimal(1)
    shape: Shape | None = None
    mm: tuple[float, ...] = ()

    @property
    def a_touch(self) -> Decimal:
        """The amount of one touch; a volume in two figures, so that what follows can be checked by hand."""
        return _two_figures(volume_mm3(self.shape, self.mm) / 1000) if self.shape else self.each

    def wide(self, width_mm: float) -> "Amount":
        """The same cap at another width, its height in proportion."""
        width, height = self.mm
        return replace(self, mm=(width_mm, height * width_mm / width))


A_PIECE = Amount()


@dataclass(frozen=True)
class Keeping:
    """What becomes of a stand-in of one class after a run.

    ``recovered`` is the share that comes back for another run, ``runs`` how many runs it may be used for (None: until
    it is worn); one of the ``same_day`` is binned at the day's end.
    """

    recovered: Decimal = Decimal(0)
    runs: int | None = None
    same_day: bool = True


def volume_mm3(shape: Shape, mm: tuple[float, ...]) -> float:
    """The volume of a shape (spherical cap, ellipsoid and box of plane and solid geometry)."""
    if shape == "cap":
        width, height = mm
        return math.pi * height / 6 * (3 * (width / 2) ** 2 + height**2)
    length, width, height = mm
    box = length * width * height
    return box * math.pi / 6 if shape == "ellipsoid" else box


def _two_figures(amount: float) -> Decimal:
    return Decimal(f"{amount:.2g}")
