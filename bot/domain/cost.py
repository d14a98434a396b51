"""What practice costs: what is lost of each component in a day of runs, and what redos would cost on the pass."""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from bot.domain.mise import Mise, Need


@dataclass(frozen=True)
class Loss:
    """What a day's runs lose of one component, in its own unit.

    ``used_up`` does not come back, ``again`` went onto plates built again, ``thrown`` is left at the day's end and
    keeps no longer.
    """

    need: Need
    used_up: Decimal
    again: Decimal
    thrown: Decimal

    @property
    def total(self) -> Decimal:
        """All that is lost."""
        return self.used_up + self.again + self.thrown

    def cost(self, digits: int) -> Decimal | None:
        """What that costs, to so many figures behind the point; None where the component has no price."""
        return None if self.need.price is None else round(self.total * self.need.price, digits)


@dataclass(frozen=True)
class Week:
    """A week's runs of a drill, with their plates redone and rebuilt."""

    runs: int
    redo: int
    rebuilt: int

    @property
    def built_again(self) -> Decimal:
        """Plates built again in the average run."""
        return Decimal(self.redo + self.rebuilt) / self.runs


def losses_of(mise: Mise, built_again: Decimal = Decimal(0)) -> tuple[Loss, ...]:
    """What the runs of one day lose, with so many plates redone or rebuilt among them."""
    return tuple(_loss(need, built_again) for need in mise.needs)


def cost_of(losses: tuple[Loss, ...], digits: int) -> Decimal | None:
    """What all priced losses cost together, each rounded as it is shown; None where nothing has a price."""
    return _sum_of(loss.cost(digits) for loss in losses)


def plate_cost(mise: Mise) -> Decimal | None:
    """What the stand-ins lost with one plate built again cost; None where nothing has a price."""
    return _sum_of(None if n.price is None else n.a_plate * _lost_again(n) * n.price for n in mise.needs)


def _loss(need: Need, built_again: Decimal) -> Loss:
    """A plate built again is made from the spare; what is binned the same day is thrown with all that came back."""
    used_up = need.used * (1 - need.keeping.recovered)
    again = built_again * need.a_plate * _lost_again(need)
    left = need.total + need.stays - used_up - again
    return Loss(need, used_up, again, thrown=max(left, Decimal(0)) if need.keeping.same_day else Decimal(0))


def _lost_again(need: Need) -> Decimal:
    """Of a plate taken off, food is scraped into the bin; what is counted out and in comes back as ever."""
    return Decimal(1) if need.keeping.same_day else 1 - need.keeping.recovered


def _sum_of(costs: Iterable[Decimal | None]) -> Decimal | None:
    known = [cost for cost in costs if cost is not None]
    return sum(known, Decimal(0)) if known else None
