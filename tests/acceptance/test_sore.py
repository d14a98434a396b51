"""The word sore: answered in private, and no word of it stays anywhere."""

import asyncio
import logging
from pathlib import Path

import pytest

from tests.chat import KITCHEN, kitchen, user


def test_it_is_answered_and_leaves_no_trace(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    """In private it answers the caution, in two kitchens too; the file's bytes and the log's lines lack the word."""
    caplog.set_level(logging.DEBUG)
    asyncio.run(_say_it_twice(tmp_path / "kitchen.db"))
    kept = b"".join(path.read_bytes() for path in tmp_path.iterdir())
    assert b"outbox" in kept
    assert b"sore" not in kept.lower()
    assert b"umbness" not in kept
    assert "alembic" in caplog.text
    assert "sore" not in caplog.text.lower()


async def _say_it_twice(file: Path) -> None:
    async with kitchen(url=f"sqlite:///{file}") as chat:
        told = await chat.whisper("noor", "sore")
        assert told == ["Numbness, tingling or pain: stop, and see a qualified person. Nothing of this is stored."]
        await chat.stage.open_kitchen("!upper-lock:tern.example", "Upper Lock", user("anselm"))
        await chat.stage.come("!upper-lock:tern.example", user("noor"), "Noor")
        assert await chat.whisper("noor", "Sore") == told


async def test_sore_in_the_room_says_only_where() -> None:
    """In the room one line says where it is answered, to nobody by name and as a reply to nothing."""
    async with kitchen() as chat:
        (told,) = await chat.say("noor", "!sore")
        assert told == "In our private room, please: `sore` is answered there, and nothing of it is stored."
        (heard,) = chat.heard
        assert (heard.room_id, heard.note.reply_to, heard.note.about) == (KITCHEN, None, "")
