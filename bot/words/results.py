"""Words about one's own results: taken off, put back, best, trend, why; and being counted in or out."""

from bot.services import corrections, own, people, trend
from bot.services.said import Said
from bot.words.registry import Word


async def _join(said: Said, _: str) -> None:
    await people.join(said)


async def _leave(said: Said, _: str) -> None:
    await people.leave(said)


async def _scrap(said: Said, _: str) -> None:
    await corrections.scrap(said)


async def _undo(said: Said, _: str) -> None:
    await corrections.undo(said)


async def _best(said: Said, label: str) -> None:
    await own.tell_best(said, label)


async def _trend(said: Said, label: str) -> None:
    await trend.tell_trend(said, label)


async def _why(said: Said, _: str) -> None:
    await own.tell_why(said)


WORDS = (
    Word("join", _join, "privacy"),
    Word("leave", _leave, "privacy"),
    Word("scrap", _scrap, "cook"),
    Word("undo", _undo, "cook"),
    Word("best", _best, private=True),
    Word("trend", _trend, private=True),
    Word("why", _why, private=True),
)
