"""The ticker beats steadily, and goes on after a beat that failed or came late; examples are constructed."""

import asyncio
import logging
import time
from contextlib import suppress

import pytest

from bot.ticker import Ticker


class Counted:
    """Counts its beats, doing at each what it is given to do; ``third`` is set at the third."""

    def __init__(self) -> None:
        self.beats = 0
        self.third = asyncio.Event()

    async def __call__(self) -> None:
        """One beat; the first one fails."""
        self.beats += 1
        if self.beats == 3:
            self.third.set()
        if self.beats == 1:
            raise ValueError("odd")


async def test_beats_follow_each_other_though_one_failed(caplog: pytest.LogCaptureFixture) -> None:
    """The failure is logged."""
    counted = Counted()
    ticker = Ticker(counted, every_s=0.05)
    with caplog.at_level(logging.ERROR):
        ticker.start()
        async with asyncio.timeout(5):
            await counted.third.wait()
        ticker.stop()
    assert "odd" in caplog.text
    seen = counted.beats
    await asyncio.sleep(0.2)
    assert counted.beats == seen


async def test_a_beat_missed_by_a_busy_machine_is_made_up_for_at_once() -> None:
    """By the scheduler's own rule one missed by over a second is lost: the next would come at 3.2 s."""
    beaten = asyncio.Event()

    async def tick() -> None:
        beaten.set()

    ticker = Ticker(tick, every_s=1.6)
    ticker.start()
    time.sleep(2.8)  # noqa: ASYNC251 - blocking the loop is what is tested
    with suppress(TimeoutError):
        async with asyncio.timeout(0.3):
            await beaten.wait()
    ticker.stop()
    assert beaten.is_set()
