"""The kitchen with its judges."""

import pytest

from tests.chat import Chat


@pytest.fixture
async def judges(live: Chat) -> Chat:
    """Rope coil live, with Bastian as sous, Petra as judge and the chef Ime to judge."""
    await live.say("ime", "!role @bastian sous")
    await live.say("ime", "!role @petra judge")
    return live
