"""The first hour: what a new room sees, and what a new cook sees."""

from bot.rehearsal import IN_MEMORY, rehearsal
from tests.chat import KITCHEN, LONDON, MORNING, kitchen, user


async def test_a_new_room_is_told_what_for_and_how_to_begin() -> None:
    """One message of at most six lines: whose results are kept, for what, never for what, and the twelve drills."""
    async with rehearsal(MORNING, zone=LONDON, url=IN_MEMORY) as stage:
        heard = await stage.open_kitchen(KITCHEN, "Tern & Lantern", user("ime"))
        (first,) = [one.note.text for one in heard if one.note.style == "text"]
    assert len(first.splitlines()) <= 6
    assert "never for pay, rota, promotion or discipline" in first
    assert all(
        word in first for word in ("`!join`", "`!drills` lists twelve drills", "`!post 1 mon 15:00`", "`!words`")
    )


async def test_a_new_cook_is_asked_once_and_then_counted() -> None:
    """The first run of a cook is held with what is kept and why; `yes` counts it; `next` begins the course."""
    async with kitchen() as chat:
        await chat.say("ime", "!post now 1")
        (course,) = await chat.whisper("lio", "next")
        assert "The course comes to it: week 1 of" in course
        (asked,) = await chat.say("lio", "6:20 8/8", thread=True)
        assert "never for pay, rota, promotion or discipline" in asked
        assert "erased in 48 hours" in asked
        assert await chat.say("lio", "6:31 8/8", thread=True) == []
        counted, *runs = await chat.say("lio", "yes", thread=True)
        assert counted == "Counted in, Lio."
        assert [run.split(",")[0] for run in runs] == ["Heard. 6:20", "Heard. 6:31"]
