"""What was sent can be mended: edits, deletions, scrap and undo."""

from datetime import UTC, datetime, timedelta

import pytest

from tests.chat import Chat

NEXT_TUESDAY = datetime(2026, 12, 1, 12, 0, tzinfo=UTC)
UNREADABLE = (
    "I could not read that edit, so your run stands as it was. Write it like `3:02 8/8`, or delete the message to "
    "take the run off."
)
MOVES = "An edit cannot move a run to another drill or another person. Delete the message and send the run again."


async def test_edit_works_the_run_out_again(live: Chat) -> None:
    """An edit of 8/8 to 7/8 redoes the result with a small mark, and the best with it."""
    run = await live.run("noor", "3:20 8/8")
    assert await live.edit("noor", run, "3:20 7/8 fell") == [
        "Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)",
        "Corrected: Noor has no witnessed best on Rope coil now.",
    ]
    assert await live.edit("noor", run, "3:20 8/8") == [
        "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled. (corrected)",
        "First mark for Noor on Rope coil: 3:20.",
    ]


@pytest.mark.parametrize("text", ["sorry all", "", "8/8", "look at this\nphoto"])
async def test_an_edit_that_cannot_be_read_leaves_the_run(live: Chat, text: str) -> None:
    """The run stands, and the answer says what to send."""
    run = await live.run("noor", "3:20 8/8", watched=False)
    assert await live.edit("noor", run, text) == [UNREADABLE]
    (why,) = await live.say("noor", "!why")
    assert why.startswith("Rope coil, 3:20 = 200 s, 8 of 8 good.")


async def test_an_edit_that_is_doubtful_is_asked_about(live: Chat) -> None:
    """A count that may leave a plate out is asked about; the answer mends the run that is there."""
    run = await live.run("noor", "3:20 8/8", watched=False)
    assert await live.edit("noor", run, "3:20 7/7") == [
        "Drill 6 has 8 plates. Was one left unbuilt? `yes`, or the count again, like `7/8`."
    ]
    assert await live.say("noor", "yes") == [
        "Short run, 7 of 7 built. 4.08 s a touch. Kept for your trend. (corrected)"
    ]
    assert await live.say("noor", "!scrap") == ["Your 09:06 run is off. `undo` puts it back."]
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


async def test_an_edit_too_fast_is_asked_about_in_private(live: Chat) -> None:
    """An edit to a clock under a third of standard changes nothing until it is said to be right."""
    run = await live.run("noor", "3:20 8/8")
    (doubt,) = await live.edit("noor", run, "0:32 8/8")
    assert live.told("noor") == [doubt]
    (why,) = await live.say("noor", "!why")
    assert "3:20 = 200 s" in why
    heard, best = await live.whisper("noor", "yes")
    assert heard.startswith("Heard. 0:32")
    assert best == "Corrected: Noor's best on Rope coil is 0:32."


async def test_an_edit_keeps_the_day(live: Chat) -> None:
    """A run edited a week later is still of the day on which it was run, and on that week's board."""
    for cook, line in (("noor", "3:20 8/8"), ("kwabena", "3:30 8/8"), ("lio", "3:40 8/8")):
        run = await live.run(cook, line)
    await live.wait(NEXT_TUESDAY)
    corrected, *told = await live.edit("lio", run, "3:05 8/8")
    assert corrected.endswith("(corrected)")
    assert any("Fast: 1 Lio 3:05 (1 try)" in text for text in told)
    (best,) = await live.say("lio", "!best")
    assert best == "Rope coil: 3:05, Monday 23 November, 8 of 8."


async def test_an_edit_moves_no_run(live: Chat) -> None:
    """An edit that names another drill or another person leaves the run; naming its own drill is no move."""
    run = await live.run("noor", "3:20 8/8", watched=False)
    assert await live.edit("noor", run, "5 3:20 8/8") == [MOVES]
    assert await live.edit("noor", run, "3:20 8/8 for lio") == [MOVES]
    (corrected,) = await live.edit("noor", run, "6 3:21 8/8")
    assert corrected.endswith("(corrected)")


async def test_an_edit_of_talk_is_silent(live: Chat) -> None:
    """Talk edited into talk is talk, from those counted in and from others; edited into a result it is one."""
    await live.say("bastian", "table 12?")
    assert await live.edit("bastian", live.last, "table 14?") == []
    await live.say("noor", "table 12?")
    talk = live.last
    assert await live.edit("noor", talk, "table 14?") == []
    (heard,) = await live.edit("noor", talk, "3:20 8/8")
    assert heard.startswith("Heard. 3:20")


async def test_an_edit_by_another_changes_nothing(live: Chat) -> None:
    """Nobody edits somebody else's run."""
    run = await live.run("noor", "3:20 8/8", watched=False)
    assert await live.edit("lio", run, "3:50 8/8") == []


async def test_lines_edited_away_and_back(live: Chat) -> None:
    """Of a message of two runs one is edited away, which voids it, and edited back, which gives it back."""
    await live.say("noor", "3:20 8/8\n3:30 8/8")
    both = live.last
    assert await live.edit("noor", both, "3:20 8/8") == []
    (trend,) = await live.say("noor", "!why")
    assert "3:20 = 200 s" in trend
    (again,) = await live.edit("noor", both, "3:20 8/8\n3:30 8/8")
    assert again.startswith("Heard. 3:30")


async def test_deletion_voids(live: Chat) -> None:
    """A deleted message takes its run off: best, board and trend are without it, and undo does not find it."""
    run = await live.run("noor", "3:20 8/8")
    assert await live.delete("noor", run) == ["Corrected: Noor has no witnessed best on Rope coil now."]
    assert await live.say("noor", "!undo") == ["You have no run to put back."]
    assert await live.say("noor", "!why") == ["There is no run of yours to explain yet."]


async def test_deletion_of_a_question(live: Chat) -> None:
    """A deleted line that was asked about is not taken on a later yes."""
    await live.say("noor", "0:48 8/8")
    await live.delete("noor", live.last)
    assert await live.say("noor", "yes") == []
    assert await live.say("noor", "!why") == ["There is no run of yours to explain yet."]


async def test_a_lost_best_returns_to_the_former_run(live: Chat) -> None:
    """Void a best and the earlier one is told again."""
    await live.run("noor", "3:20 8/8")
    better = await live.run("noor", "3:02 8/8")
    assert await live.delete("noor", better) == ["Corrected: Noor's best on Rope coil is 3:20."]


async def test_closed_board_is_corrected(live: Chat) -> None:
    """A deletion after the closing is posted as a correction of the board, in the drill's thread."""
    first = await live.run("noor", "3:20 8/8")
    for cook, line in (("kwabena", "3:40 8/8"), ("lio", "4:00 8/8"), ("petra", "4:20 8/8")):
        await live.run(cook, line)
    root = live.stage.newest_drill(live.heard[0].room_id)
    await live.wait(NEXT_TUESDAY)
    told = await live.delete("noor", first)
    assert told[0] == "Corrected: Noor has no witnessed best on Rope coil now."
    assert told[1].startswith("Correction to the closed board of Rope coil")
    assert "Fast: 1 Kwabena 3:40 (1 try)" in told[1]
    assert live.heard[1].note.thread == root


async def test_scrap_and_undo_go_back_in_order(live: Chat) -> None:
    """Each scrap takes the last run that stands, each undo puts the last one back."""
    await live.run("noor", "3:20 8/8", watched=False, at=live.now + timedelta(minutes=1))
    await live.run("noor", "3:30 8/8", watched=False)
    assert await live.say("noor", "!scrap") == ["Your 09:07 run is off. `undo` puts it back."]
    assert await live.say("noor", "!scrap") == ["Your 09:06 run is off. `undo` puts it back."]
    assert await live.say("noor", "!undo") == ["Your 09:07 run is back."]
    (why,) = await live.say("noor", "!why")
    assert "3:30" in why


async def test_offered_undo_is_understood_bare(live: Chat) -> None:
    """The word that the answer to scrap offers is understood as it stands there; without a scrap it is talk."""
    await live.run("noor", "3:20 8/8", watched=False)
    assert await live.say("noor", "undo") == []
    await live.say("noor", "!scrap")
    assert await live.say("lio", "undo") == []
    assert await live.say("noor", "undo") == ["Your 09:06 run is back."]
    assert await live.say("noor", "undo") == []
