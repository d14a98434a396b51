"""What practice loses and costs. Expected sums are worked by hand from the project's own amounts."""

from dataclasses import replace
from decimal import Decimal

from bot.domain.cost import Week, cost_of, losses_of, plate_cost
from bot.domain.mise import Mise, mise_of
from tests.domain.kitchen import ROPE_COIL, SECONDS

PRICES = {"noodle": Decimal("0.002"), "triangle": Decimal("0.3"), "oil": None}


def _mise() -> Mise:
    """One run of Rope coil: 192 g of noodle, 8 triangles and 0.544 ml of oil, noodle and triangle priced."""
    steps = tuple(replace(step, price=PRICES[step.component]) for step in ROPE_COIL.spec.steps)
    return mise_of(replace(ROPE_COIL, spec=replace(ROPE_COIL.spec, steps=steps)), 1, SECONDS)


def test_loss_of_a_run() -> None:
    """Noodle: half of 192 g is used up, the rest and the spare are thrown; of 8 triangles 2 % are lost, none thrown."""
    noodle, triangle, oil = losses_of(_mise())
    assert (noodle.used_up, noodle.again, noodle.thrown) == (Decimal(96), Decimal(0), Decimal("115.2"))
    assert (triangle.used_up, triangle.thrown) == (Decimal("0.16"), Decimal(0))
    assert (oil.total, oil.cost(2)) == (Decimal("0.5984"), None)


def test_plates_built_again_come_out_of_the_spare() -> None:
    """Half a plate a run takes 12 g more noodle and as much less is thrown, until the spare is gone."""
    noodle, triangle, _ = losses_of(_mise(), Decimal("0.5"))
    assert (noodle.again, noodle.thrown, noodle.total) == (Decimal(12), Decimal("103.2"), Decimal("211.2"))
    assert triangle.total == Decimal("0.17")
    gone, _, _ = losses_of(_mise(), Decimal(10))
    assert (gone.again, gone.thrown) == (Decimal(240), Decimal(0))


def test_costs_add_up_as_they_are_shown() -> None:
    """0.42 and 0.05 are 0.47, each rounded first; in a currency without cents they are 0; unpriced oil is left out."""
    losses = losses_of(_mise())
    assert [loss.cost(2) for loss in losses] == [Decimal("0.42"), Decimal("0.05"), None]
    assert cost_of(losses, 2) == Decimal("0.47")
    assert cost_of(losses, 0) == 0
    assert cost_of(losses_of(mise_of(ROPE_COIL, 1, SECONDS)), 2) is None


def test_one_plate_built_again() -> None:
    """24 g of noodle at 0.002, and a fiftieth of a triangle at 0.3."""
    assert plate_cost(_mise()) == Decimal("0.054")


def test_a_week_in_the_average_run() -> None:
    """Three redone and one rebuilt in eight runs are half a plate a run."""
    assert Week(runs=8, redo=3, rebuilt=1).built_again == Decimal("0.5")
