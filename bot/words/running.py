"""Words before and after a run: declare, clock, stop."""

from bot.services import chat_clock, declared
from bot.services.said import Said
from bot.words.registry import Word


async def _declare(said: Said, label: str) -> None:
    await declared.declare(said, label)


async def _clock(said: Said, _: str) -> None:
    await chat_clock.start_clock(said)


async def _stop(said: Said, _: str) -> None:
    await chat_clock.stop_clock(said)


WORDS = (Word("declare", _declare, "cook"), Word("clock", _clock, "cook"), Word("stop", _stop, "cook"))
