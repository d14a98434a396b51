"""What is kept and who sees it: erased words leave the file, stopped runs stay private, boards show nobody last."""

import asyncio
from datetime import timedelta
from pathlib import Path

import pytest

from tests.chat import KITCHEN, Chat, kitchen, rope_coil
from tests.database import tables_in, tables_that_hold

CROWD = ("noor", "kwabena", "lio", "petra", "anselm", "sunniva", "bastian", "ida")


def test_erased_words_leave_the_file(file: Path) -> None:
    """Words that were erased are not left in free pages of the file either."""

    async def talk() -> None:
        async with kitchen(url=f"sqlite:///{file}") as chat:
            for nth in range(20):
                await chat.say("noor", f"the walk-in hums at quarter past {nth}")
            await chat.say("ime", "!drills")

    asyncio.run(talk())
    assert b"walk-in hums" not in file.read_bytes()


async def test_words_of_a_result_are_not_kept(file: Path) -> None:
    """Of a result its numbers stay and its words go; a doubtful or faulty one leaves neither."""
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        await chat.say("noor", "3:20 7/8 fell")
        await chat.say("noor", "3.41 8/8")
        assert tables_that_hold(file, "7/8") == []
        assert tables_that_hold(file, "3.41") == []
        (run,) = tables_in(file)["run"]
        assert '"clock_s":200' in str(run["result"])


async def test_nobody_hears_anothers_numbers(live: Chat) -> None:
    """`why` as a reply to another's run explains nothing of it."""
    run = await live.run("lio", "3:20 7/8")
    await live.say("noor", "!why", reply=run)
    assert live.told("noor") == ["There is no run of yours to explain yet."]


async def test_stopped_runs_are_private(live: Chat) -> None:
    """A stopped run is answered for in private and nothing in the room tells of it but the memo pad."""
    await live.say("lio", "1:10 stopped 2", thread=True)
    in_room = [heard.note for heard in live.heard if heard.room_id == KITCHEN]
    assert [(note.style, note.text) for note in in_room] == [("reaction", "")]
    assert live.told("lio") == ["Stopped after 2 plates. Kept for you alone, on no board."]


@pytest.mark.parametrize(("cooks", "shown"), [(1, 0), (2, 0), (3, 1), (4, 2), (5, 2), (6, 3), (7, 3), (8, 3)])
async def test_boards_show_the_first_half(cooks: int, shown: int) -> None:
    """Of n cooks the first floor(n / 2), three at most, and nothing with two; how many ran is never told."""
    crowd = CROWD[:cooks]
    async with rope_coil(cooks=crowd) as chat:
        for nth, cook in enumerate(crowd):
            await chat.say(cook, f"{170 + 20 * nth}s {8 if nth % 2 else 7}/8", thread=True)
            await chat.react("ime", chat.last)
        (board,) = await chat.say("ime", "!board fast")
        named = [cook for cook in crowd if cook.capitalize() in board]
        assert len(named) == shown
        closed = await chat.wait(chat.now + timedelta(days=8))
    fast = [line for text in closed for line in text.split("\n") if line.startswith("Fast")]
    assert sum(cook.capitalize() in line for line in fast for cook in crowd) == shown
    for told in (board, *closed):
        assert f"{cooks} cooks" not in told
        assert f"of {cooks}" not in told
