"""The replies that the design gives by example, word for word, on Rope coil of eight plates.

Numbers: 56 touches, standard 2:44 (the course's own figures, fixtures of the project's model).
"""

from datetime import UTC, datetime, timedelta

import pytest

from tests.chat import LONDON, Chat, kitchen

PRIVATE = "!private@{}:tern.example"


async def test_heard(live: Chat) -> None:
    """Example 1: a clean run is heard, in the drill's thread, with its pace and its levelled pace."""
    assert await live.say("noor", "3:02 8/8") == ["Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."]
    answer, mark = live.heard
    assert (answer.note.style, answer.note.thread) == ("notice", live.stage.newest_drill(answer.room_id))
    assert (mark.note.style, mark.note.key, mark.note.target) == ("reaction", "\N{MEMO}", live.last)


async def test_card_says_once_that_hands_count(chat: Chat) -> None:
    """Example 1: the card, once, says that a run counts for boards when somebody who watched raises a hand on it."""
    (card,) = await chat.say("ime", "!post now 6")
    assert card.count("A run counts for boards when somebody who watched raises a hand on it.") == 1


async def test_net(live: Chat) -> None:
    """Example 2: one redo is charged; told by `redo 1`, the answer says how to send a rebuild instead."""
    assert await live.say("noor", "3:20 7/8 fell") == ["Net 4:09 (one redo cost 0:49). 4.45 s a touch."]
    assert await live.say("lio", "3:20 redo 1") == [
        "Net 4:09 (one redo cost 0:49). 4.45 s a touch. If it was rebuilt inside the clock: `3:20 8/8 rebuilt 1`."
    ]


async def test_no_time(live: Chat) -> None:
    """Example 3: five of eight is a count without a time, said kindly."""
    assert await live.say("noor", "3:10 5/8") == ["Five clean plates kept. No time this run; try for six."]


async def test_point_is_asked_about(live: Chat) -> None:
    """Example 4: 3.20 is asked about and nothing is stored."""
    asked = ["Is that 3 min 20 s or 3.2 minutes? Send `3:20` or `3:12`."]
    assert await live.say("noor", "3.20 8/8") == asked
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


async def test_too_many_plates(live: Chat) -> None:
    """Example 5: nine of eight is asked about as a rebuild."""
    assert await live.say("noor", "3:20 9/8") == ["Drill 6 has 8 plates. If you rebuilt one: `3:20 8/8 rebuilt 1`."]


@pytest.mark.parametrize(("answer", "heard"), [("yes", "0:48"), ("2:48", "2:48")])
async def test_under_a_third(live: Chat, answer: str, heard: str) -> None:
    """Example 6: a clock under a third of standard is doubted in private and held until `yes` or the time again."""
    doubt = "0:48 is under a third of standard time. Is it right? `yes`, or the time again."
    assert await live.say("noor", "0:48 8/8") == [doubt]
    assert live.told("noor") == [doubt]
    (kept,) = await live.whisper("noor", answer)
    assert kept.startswith(f"Heard. {heard}, 8 of 8.")


async def test_for_a_mate(live: Chat) -> None:
    """Example 7: a run sent for a mate waits for the mate's own yes, and is theirs."""
    assert await live.say("noor", "2:58 8/8 for @lio") == ["Waiting for Lio to say yes."]
    assert await live.say("noor", "yes") == []
    assert await live.say("lio", "yes") == ["Kept under your name, Lio."]
    (trend,) = await live.say("lio", "!trend")
    assert "2:58" in trend
    (none,) = await live.say("noor", "!trend")
    assert "2:58" not in none


async def test_last_week(live: Chat) -> None:
    """Example 8: Monday 05:10 where the day turns at 07:00, a run at 02:10 is Sunday night's, on last week's board."""
    await live.say("ime", "!dayturn 07:00")
    monday = datetime(2026, 11, 30, 5, 10, tzinfo=UTC)
    (heard,) = await live.say("noor", "at 02:10 3:31 8/8", at=monday)
    assert heard.endswith("Sunday night's kitchen day, last week's board (open until 07:00). Counted.")


async def test_same_again() -> None:
    """Example 10: the same words four minutes later are asked about; `again` keeps them as a second run."""
    async with kitchen(start=datetime(2026, 11, 23, 14, 30, tzinfo=UTC), zone=LONDON) as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        first = datetime(2026, 11, 23, 14, 49, tzinfo=UTC)
        await chat.say("noor", "3:02 8/8", at=first)
        asked = await chat.say("noor", "3:02 8/8", at=first + timedelta(minutes=4))
        assert asked == ["Same as your 14:49 run. A second run? `again`. Otherwise do nothing."]
        assert len(await chat.say("noor", "again")) == 1
        (scrapped,) = await chat.say("noor", "!scrap")
        assert scrapped == "Your 14:53 run is off. `undo` puts it back."


NEW_DRILL = "That changes the work by +17.0 %, so it is a new drill (12), not 6."


async def test_chef_changes_a_live_drill(live: Chat) -> None:
    """Example 11: the sentence and the three choices."""
    (asked,) = await live.say("ime", "!step 2 2 triangle, lean")
    first, *choices = asked.split("\n")
    assert first == NEW_DRILL
    assert [choice[:3] for choice in choices] == ["`a`", "`b`", "`c`"]


async def test_only_written_wrong(live: Chat) -> None:
    """Example 11 a: runs stand, are worked out by the right spec, and the room is told of the correction."""
    await live.say("noor", "3:02 8/8")
    await live.say("ime", "!step 2 2 triangle, lean")
    (told,) = await live.say("ime", "a")
    assert told.startswith("Correction to drill 6: it was written wrong. Runs stand. The steps are:\n1. 2 noodle")
    assert "2. 2 triangle, lean" in told
    (why,) = await live.say("noor", "!why")
    assert "182.0 s / 64 touches" in why
    assert await live.say("noor", "!drills")


async def test_new_drill_from_now(live: Chat) -> None:
    """Example 11 b: the live board closes as it is and the new drill is posted in its place."""
    await live.say("ime", "!step 2 2 triangle, lean")
    told = await live.say("ime", "b")
    assert any(text.startswith("Rope coil (drill 12)") for text in told)
    (heard,) = await live.say("noor", "3:02 8/8")
    assert "2.84 s a touch" in heard


async def test_new_drill_next_week(live: Chat) -> None:
    """Example 11 c: the new drill waits and the live one goes on."""
    await live.say("ime", "!step 2 2 triangle, lean")
    assert await live.say("ime", "c") == ["Drill 12 is kept for next week. Drill 6 runs on."]
    (heard,) = await live.say("noor", "3:02 8/8")
    assert heard.startswith("Heard. 3:02, 8 of 8. 3.25 s a touch")


async def test_commis_sets_no_drill(live: Chat) -> None:
    """Example 12: a commis who posts is told whose word that is."""
    assert await live.say("petra", "!post mon") == ["The chef sets drills. Send yours as an idea?"]


async def test_answer_without_a_clock(live: Chat) -> None:
    """Example 12: `8/8 quick` as an answer is told what is still needed."""
    assert await live.say("noor", "3:02", thread=True) == ["How many of 8 were good?"]
    assert await live.say("noor", "8/8 quick") == ["I have 8 of 8; I need the clock, like `3:02 8/8`."]


async def test_short_run(live: Chat) -> None:
    """Example 13: six built of eight, all good: a short run, kept for the trend."""
    assert await live.say("noor", "2:10 6/8 left 2") == [
        "Short run, 6 of 6 built. 3.10 s a touch. Kept for your trend."
    ]


async def test_scrap_and_undo() -> None:
    """Example 14: the last run is taken off and put back."""
    async with kitchen(start=datetime(2026, 11, 23, 14, 30, tzinfo=UTC)) as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        await chat.say("noor", "3:02 8/8", at=datetime(2026, 11, 23, 14, 49, tzinfo=UTC))
        assert await chat.say("noor", "!scrap") == ["Your 14:49 run is off. `undo` puts it back."]
        assert await chat.say("noor", "!undo") == ["Your 14:49 run is back."]
