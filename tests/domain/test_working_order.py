"""Working orders compared. Times and waits are fixtures of the project's own model, worked out apart from this code."""

from dataclasses import replace

import pytest

from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.working_order import WorkingOrder, best_order, orders_of
from tests.domain.kitchen import EVERY, FULL_TIDE, LOCK_GATE, SECONDS

HARBOUR_CLOCK = EVERY[0]


def _way(order: WorkingOrder) -> str:
    return f"{order.set_up.working}{order.set_up.wave or ''}"


def _wait(order: WorkingOrder, component: str) -> float:
    return next(wait.wait_s for wait in order.waits if wait.component == component)


def _with_lives(drill: Drill, **lives: int) -> Drill:
    steps = tuple(replace(s, life_s=lives.get(s.component.replace(" ", "_"), s.life_s)) for s in drill.spec.steps)
    return replace(drill, spec=replace(drill.spec, steps=steps))


def test_full_tide() -> None:
    """Twelve plates: time, and the wait of the first quenelle in seconds, from one batch to plate by plate."""
    told = {
        _way(order): (clock_text(order.standard_s), round(_wait(order, "bean puree")))
        for order in orders_of(FULL_TIDE, SECONDS)
    }
    assert told == {
        "component": ("8:30", 280),
        "waves6": ("9:00", 146),
        "waves4": ("9:30", 101),
        "waves3": ("10:10", 81),
        "waves2": ("11:00", 57),
        "plate": ("14:34", 36),
    }


def test_batching_is_not_always_best() -> None:
    """Harbour clock takes 1:09 batched and 1:04 plate by plate, which is then the one to take."""
    batch, *_, single = orders = orders_of(HARBOUR_CLOCK, SECONDS)
    assert (clock_text(batch.standard_s), clock_text(single.standard_s)) == ("1:09", "1:04")
    assert best_order(orders) is single


@pytest.mark.parametrize(
    ("lives", "best"),
    [
        ({"bean_puree": 120, "triangle": 90}, "waves4"),
        ({"bean_puree": 150}, "waves6"),
        ({"bean_puree": 150, "triangle": 90}, "waves4"),
        ({"gel": 600}, "component"),
        ({"gel": 70}, "plate"),
        ({"gel": 60}, None),
        ({}, "component"),
    ],
)
def test_the_largest_batch_that_keeps_the_lives(lives: dict[str, int], best: str | None) -> None:
    """Quenelle 2 min and crisp 90 s pick waves of 4; without lives the fastest is taken; it may be that none keeps."""
    found = best_order(orders_of(_with_lives(FULL_TIDE, **lives), SECONDS))
    assert (_way(found) if found else None) == best


def test_waves_are_as_even_as_can_be() -> None:
    """Fourteen plates part into 7, 5, 4, 3 or 2; the wave in use is always among them."""
    ferry = EVERY[-1]
    assert [_way(order) for order in orders_of(ferry, SECONDS)][1:-1] == [f"waves{n}" for n in (7, 5, 4, 3, 2)]
    odd = replace(ferry, set_up=replace(ferry.set_up, wave=6))
    assert "waves6" in {_way(order) for order in orders_of(odd, SECONDS)}


@pytest.mark.parametrize(("plates", "ways"), [(1, ["component", "plate"]), (2, ["component", "plate"])])
def test_few_plates_have_no_waves(plates: int, ways: list[str]) -> None:
    """One plate, or two, are one batch or plate by plate."""
    few = replace(FULL_TIDE, set_up=replace(FULL_TIDE.set_up, plates=plates, rows=1))
    assert [_way(order) for order in orders_of(few, SECONDS)] == ways


def test_rice_waits_from_its_filling() -> None:
    """A component of several steps waits from the first; a press and a lift put nothing on the plate."""
    batch = orders_of(LOCK_GATE, SECONDS)[0]
    assert [wait.component for wait in batch.waits] == ["rice", "triangle", "gel", "leaf"]
    assert _wait(batch, "rice") == pytest.approx(batch.standard_s - SECONDS.start_stop_s)


def test_dry_pieces_are_not_minded() -> None:
    """Waits of discs, crumb and leaves are kept apart; where lives are given only those are minded."""
    plain, living = (orders_of(drill, SECONDS)[0] for drill in (FULL_TIDE, _with_lives(FULL_TIDE, triangle=90)))
    assert [wait.component for wait in plain.minded] == ["gel", "courgette", "bean puree", "oil"]
    assert [wait.component for wait in living.minded] == ["triangle"]
