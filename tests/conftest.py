"""The kitchens that tests talk to."""

from collections.abc import AsyncIterator

import pytest

from tests.chat import Chat, kitchen, rope_coil


@pytest.fixture
async def chat() -> AsyncIterator[Chat]:
    """The Tern & Lantern on Monday morning: no drill posted, nobody counted in."""
    async with kitchen() as opened:
        yield opened


@pytest.fixture
async def live() -> AsyncIterator[Chat]:
    """The same with Rope coil live and Noor, Kwabena, Lio and Petra counted in."""
    async with rope_coil() as opened:
        yield opened
