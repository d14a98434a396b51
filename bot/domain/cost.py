"""What practice costs: what is lost of each component in a day of runs, and what redos would cost on the pass."""

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

    @property
    def cost(self) -> Decimal | None:
        """What that costs; None where the component has no price."""
        return None if self.need.price is None else self.total * self.need.price


def losses_of(mise: Mise, built_again: int) -> tuple[Loss, ...]:
    """What the runs of one day lose, with so many plates redone or rebuilt among them."""
    return tuple(_loss(need, built_again) for need in mise.needs)


def cost_of(losses: tuple[Loss, ...]) -> Decimal | None:
    """What all priced losses cost together; None where nothing has a price."""
    costs = [loss.cost for loss in losses if loss.cost is not None]
    return sum(costs, Decimal(0)) if costs else None


def _loss(need: Need, built_again: int) -> Loss:
    """A plate built again is made from the spare; what is binned the same day is thrown with all that came back."""
    lost = 1 - need.keeping.recovered
    used_up, again = need.used * lost, built_again * need.a_plate * _lost_again(need)
    left = need.total + need.stays - used_up - again
    return Loss(need, used_up, again, thrown=max(left, Decimal(0)) if need.keeping.same_day else Decimal(0))


def _lost_again(need: Need) -> Decimal:
    """Of a plate taken off, food is scraped into the bin; what is counted out and in comes back as ever."""
    return Decimal(1) if need.keeping.same_day else 1 - need.keeping.recovered
