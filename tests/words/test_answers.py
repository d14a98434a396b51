"""The answer to a question that is open with somebody, bare in the room and in private."""

from datetime import timedelta

import pytest

from tests.chat import Chat

HOW_MANY = ["How many of 8 were good?"]
ONE_LEFT = ["Drill 6 has 8 plates. Was one left unbuilt? `yes`, or the count again, like `7/8`."]
NOTHING_OPEN = ["No question is open with you now. If it was about a run, send the run again, like `3:02 8/8`."]


@pytest.mark.parametrize(
    ("answer", "kept"),
    [
        ("all", "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled."),
        ("8/8", "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled."),
        ("ALL.", "Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled."),
        ("7 of 8 fell", "Net 4:09 (one redo cost 0:49). 4.45 s a touch."),
        (
            "redo 1",
            "Net 4:09 (one redo cost 0:49). 4.45 s a touch. If it was rebuilt inside the clock: `3:20 8/8 rebuilt 1`.",
        ),
    ],
)
async def test_how_many_were_good(live: Chat, answer: str, kept: str) -> None:
    """A lone clock is asked about in the thread; a count in any of its forms completes it, in the thread or out."""
    assert await live.say("noor", "3:20", thread=True) == HOW_MANY
    assert await live.say("noor", answer) == [kept]
    assert live.heard[0].note.thread == live.stage.newest_drill(live.heard[0].room_id)


async def test_a_lone_clock_in_the_main_timeline_is_talk(live: Chat) -> None:
    """Only in the thread and in private is it asked about."""
    assert await live.say("noor", "3:20") == []
    assert await live.whisper("noor", "3:20") == HOW_MANY


async def test_one_left(live: Chat) -> None:
    """Seven of seven on eight plates: `yes` makes it a short run, another count is taken instead."""
    assert await live.say("noor", "3:30 7/7") == ONE_LEFT
    assert await live.say("noor", "yes") == ["Short run, 7 of 7 built. 4.29 s a touch. Kept for your trend."]
    assert await live.say("noor", "3:31 7/7") == ONE_LEFT
    assert await live.say("noor", "7/8") == ["Net 4:22 (one redo cost 0:51). 4.68 s a touch."]


@pytest.mark.parametrize("held", ["3:30 7/7", "0:41 8/8"])
async def test_no_erases_what_is_held(live: Chat, held: str) -> None:
    """`no` is an answer too: nothing is kept, and a `yes` after it brings nothing back."""
    await live.say("noor", held)
    assert await live.say("noor", "no") == ["Not kept."]
    assert await live.say("noor", "yes") == []
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


async def test_nobody_else_can_answer(live: Chat) -> None:
    """What is open with Noor is not answered by Lio's words."""
    await live.say("noor", "3:20", thread=True)
    assert await live.say("lio", "8/8", thread=True) == []
    assert len(await live.say("noor", "8/8")) == 1


async def test_a_question_lapses_with_the_next_submission(live: Chat) -> None:
    """A whole line sent after the question takes its place."""
    await live.say("noor", "3:20", thread=True)
    assert len(await live.say("noor", "3:23 8/8")) == 1
    assert await live.say("noor", "all") == []


async def test_a_question_lapses_after_twelve_hours(live: Chat) -> None:
    """Up to then it is answered, after it the answer is talk in the room and told so in private."""
    await live.say("noor", "3:20", thread=True)
    asked = live.now
    assert len(await live.say("noor", "all", at=asked + timedelta(hours=12) - timedelta(seconds=1))) == 1
    await live.say("lio", "3:20", thread=True)
    late = live.now + timedelta(hours=12)
    assert await live.say("lio", "all", at=late) == []
    assert await live.whisper("lio", "all") == ["I need the clock too, like `3:02 8/8`."]
    assert await live.whisper("lio", "yes") == NOTHING_OPEN


async def test_the_newest_question_is_answered_first(live: Chat) -> None:
    """A chef asked about a change and about a run answers each by its own words."""
    await live.say("ime", "!join")
    await live.say("ime", "!step 2 2 triangle, lean")
    await live.say("ime", "3:20", thread=True)
    assert (await live.say("ime", "all"))[0].startswith("Heard. 3:20")
    assert await live.say("ime", "c") == ["Drill 12 is kept for next week. Drill 6 runs on."]


async def test_an_answer_that_cannot_be_is_told(live: Chat) -> None:
    """Nine of eight as an answer is told how to say it, with the clock that was sent."""
    await live.say("noor", "3:20", thread=True)
    assert await live.say("noor", "9/8") == ["Drill 6 has 8 plates. If you rebuilt one: `3:20 8/8 rebuilt 1`."]
