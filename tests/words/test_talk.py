"""Ordinary talk is silence, and nothing of it is kept."""

from pathlib import Path

import pytest

from tests.chat import Chat, kitchen
from tests.database import tables_that_hold

TALK = (
    "table 12?",
    "86 the trout",
    "why",
    "next",
    "hold on",
    "best of luck",
    "see you at 8:05",
    "8:05 is too late for the trout",
    "yes",
    "12/12 of them came back",
    "can somebody post the rota",
)


@pytest.mark.parametrize("text", TALK)
async def test_talk_is_answered_with_silence(live: Chat, text: str) -> None:
    """In the drill's thread and in the main timeline."""
    assert await live.say("noor", text, thread=True) == []
    assert await live.say("noor", text) == []
    assert live.heard == []


async def test_nothing_of_talk_stays_in_the_database(tmp_path: Path) -> None:
    """Not in a table, and not in the bytes of the file or of its log, once it has been processed."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        for text in ("the zanderfilet is off tonight", "86 the zanderfilet", "table 12, no zanderfilet"):
            await chat.say("noor", text, thread=True)
        await chat.say("noor", "3:02 8/8")
        assert tables_that_hold(file, "zanderfilet") == []
        assert tables_that_hold(file, "Noor") == ["member"]
