"""Days of practice, for tests of what comes of them."""

from collections.abc import Mapping
from datetime import timedelta

from tests.chat import Chat

HOUR, DAY, WEEK = timedelta(hours=1), timedelta(days=1), timedelta(weeks=1)


async def practise(chat: Chat, lines: Mapping[str, tuple[str, ...]], *, days: int = 7) -> None:
    """Each cook's runs, one a day from now, and then time until an hour past so many days after the first."""
    first = chat.now
    for day, those in enumerate(zip(*lines.values(), strict=True)):
        for cook, line in zip(lines, those, strict=True):
            await chat.run(cook, line, at=max(chat.now, first + day * DAY) + HOUR / 4)
    await chat.wait(first + days * DAY + HOUR)
