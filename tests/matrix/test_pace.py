"""The pace holds the bot within what its server allows; the figures are Synapse's own (0.2/s, burst 10)."""

import pytest

from bot.matrix.pace import Pace
from bot.matrix.world import World
from tests.fakes import FixedClock
from tests.matrix.fakes import Rests


async def test_a_burst_goes_at_once_and_then_one_every_five_seconds(world: World, rests: Rests) -> None:
    """Ten, and then at 0.2 a second."""
    pace = Pace(world, rate_per_s=0.2, burst=10)
    for _ in range(10):
        await pace.take()
    assert rests.taken == []
    for _ in range(3):
        await pace.take()
    assert sum(rests.taken) == pytest.approx(15.0, abs=0.01)


async def test_what_is_not_used_is_saved_up_to_the_burst(world: World, rests: Rests, clock: FixedClock) -> None:
    """A quiet hour earns ten messages, not seven hundred."""
    pace = Pace(world, rate_per_s=0.2, burst=10)
    clock.advance(3600)
    for _ in range(11):
        await pace.take()
    assert sum(rests.taken) == pytest.approx(5.0, abs=0.01)


async def test_reactions_leave_half_of_the_burst_to_messages(world: World, rests: Rests) -> None:
    """Six of ten go at once (the sixth from the last five); the seventh waits until half is free again."""
    pace = Pace(world, rate_per_s=0.2, burst=10)
    for _ in range(6):
        await pace.take(reaction=True)
    assert rests.taken == []
    for _ in range(4):
        await pace.take()
    assert rests.taken == []
    await pace.take(reaction=True)
    assert sum(rests.taken) == pytest.approx(25.0, abs=0.01)


async def test_a_reaction_can_go_even_with_a_burst_of_one(world: World, rests: Rests) -> None:
    """Half of one message is one message."""
    pace = Pace(world, rate_per_s=1.0, burst=1)
    await pace.take(reaction=True)
    assert rests.taken == []


async def test_a_held_pace_lets_nothing_go_before_its_time(world: World, rests: Rests) -> None:
    """Thirty seconds asked by the server; the second message is then earned at the usual pace."""
    pace = Pace(world, rate_per_s=0.2, burst=10)
    pace.hold(30)
    await pace.take()
    assert sum(rests.taken) == pytest.approx(30.0, abs=0.01)
    await pace.take()
    assert sum(rests.taken) == pytest.approx(35.0, abs=0.01)
