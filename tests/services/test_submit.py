"""Taking results: several in a message, several in a day, stopped, of another drill, and after the close."""

from datetime import UTC, datetime, timedelta

import pytest

from tests.chat import KITCHEN, Chat

LIMIT = "That is {} today. Kept, not counted; rest the hands."


async def _runs(chat: Chat, drill: str, plates: int, clocks: list[int]) -> list[str]:
    """The answers to Noor's runs, each with its own clock in seconds."""
    said = [(await chat.say("noor", f"{drill} {clock}s {plates}/{plates}"))[0] for clock in clocks]
    return [text.split(" levelled.")[-1].strip() for text in said]


async def test_several_lines_are_judged_singly(live: Chat) -> None:
    """Good lines are kept, the bad one is named by its place, and one memo pad acknowledges the message."""
    said = await live.say("noor", "3:20 8/8\n3.21 8/8\n3:22 7/8")
    assert [text[:20] for text in said] == ["Heard. 3:20, 8 of 8.", "Line 2: Is that 3 mi", "Net 4:11 (one redo c"]
    assert [heard.note.key for heard in live.heard if heard.note.style == "reaction"] == ["\N{MEMO}"]


async def test_five_runs_a_day_count(live: Chat) -> None:
    """A sixth run of a day is kept but not counted; the next kitchen day begins anew."""
    assert await _runs(live, "6", 8, [200, 201, 202, 203, 204, 205]) == ["", "", "", "", "", LIMIT.format("five")]
    fast = (await live.whisper("noor", "best"))[0]
    assert "3:20" in fast
    (next_day,) = await live.say("noor", "3:30 8/8", at=live.now + timedelta(days=1))
    assert "today" not in next_day


async def test_three_runs_a_day_count_where_the_hand_tires(live: Chat) -> None:
    """A fourth run of a drill with dots is not counted."""
    assert await _runs(live, "3", 8, [90, 91, 92, 93]) == ["", "", "", LIMIT.format("three")]


async def test_the_days_true_number_is_told(live: Chat) -> None:
    """After five runs of another drill a tiring one is not counted, and the number told is the day's."""
    await _runs(live, "6", 8, [200, 201, 202, 203, 204])
    assert await _runs(live, "3", 8, [90]) == [LIMIT.format("five")]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("3:00 stopped 3", "Stopped after 3 plates. Kept for you alone, on no board."),
        ("3:00 3/8 left 5", "Stopped after 3 plates. Kept for you alone, on no board."),
        ("0:40 stopped 1", "Stopped after 1 plate. Kept for you alone, on no board."),
    ],
)
async def test_stopped_runs_are_private(live: Chat, line: str, told: str) -> None:
    """A run that was stopped is answered in private alone, and stands on no board and in no trend."""
    assert await live.say("noor", line) == live.told("noor") == [told]
    assert await live.say("noor", "!trend") == ["No run yet. Your trend begins with your first one."]


async def test_another_drill_is_named(live: Chat) -> None:
    """A line may name a drill that is not live: kept for bests and trend, on no board; an unknown one is refused."""
    (heard,) = await live.say("noor", "1 1:20 8/8")
    assert heard.endswith(" levelled.")
    (best,) = await live.say("noor", "!best 1")
    assert best.startswith("Harbour clock: first mark 1:20")
    assert await live.say("noor", "99 1:20 8/8") == ["There is no drill 99 here. `!drills` lists them."]


async def test_the_newest_live_drill_is_meant(live: Chat) -> None:
    """In the main timeline a line means the newest, in a drill's thread that drill."""
    rope_coil = live.stage.newest_drill(KITCHEN) or ""
    await live.say("ime", "!post now 1")
    (newest,) = await live.say("noor", "3:20 8/8")
    assert newest.startswith("Heard. 3:20, 8 of 8. 6.25 s a touch")
    (older,) = await live.say("noor", "3:21 8/8", thread=rope_coil)
    assert older.startswith("Heard. 3:21, 8 of 8. 3.59 s a touch")
    assert live.heard[0].note.thread == rope_coil


async def test_after_the_close(live: Chat) -> None:
    """Of a closed week a run is kept, and the closed board says that it has none, by its week's Monday."""
    await live.run("noor", "3:20 8/8")
    await live.wait(datetime(2026, 11, 30, 12, 0, tzinfo=UTC))
    (kept,) = await live.say("noor", "3:21 8/8")
    assert kept.endswith("Kept; that board is closed.")
    assert await live.say("noor", "!board") == [
        "Rope coil, the week of Monday 23 November, closed\n"
        "No board; a board needs three cooks with witnessed runs. Every run counts for its own cook all the same.\n"
        "House: 8 clean plates."
    ]


async def test_rebuilt_plates_are_good_plates(live: Chat) -> None:
    """A plate rebuilt inside the clock is said, costs nothing more, and is not clean."""
    assert await live.say("noor", "3:20 8/8 rebuilt 1") == [
        "Heard. 3:20, 8 of 8, 1 rebuilt. 3.57 s a touch, 1.82 levelled."
    ]
    (refused,) = await live.say("noor", "3:21 8/8 rebuilt 9")
    assert refused.startswith("Rebuilt and fixed plates are among the good ones, and 9 is more than 8")
