"""What is doubted or refused is not kept, and what only looks doubtful is."""

from datetime import UTC, datetime

import pytest

from tests.chat import Chat, kitchen


async def test_the_same_words_of_another_hour_are_another_run() -> None:
    """On the night the clocks go back two runs `at 02:30` with the same clock are both kept, unasked.

    IANA time zone database: Berlin's clocks went from 03:00 back to 02:00 on 25 October 2026, at 01:00 UTC.
    """
    async with kitchen(start=datetime(2026, 10, 24, 12, 0, tzinfo=UTC), zone="Europe/Berlin") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        for hour in (0, 1):
            half_past_two = datetime(2026, 10, 25, hour, 31, tzinfo=UTC)
            (heard,) = await chat.say("noor", "at 02:30 3:31 8/8", at=half_past_two)
            assert heard.startswith("Heard. 3:31, 8 of 8.")


async def test_the_same_words_of_the_same_hour_are_asked_about(live: Chat) -> None:
    """Sent twice with the same `at`, it is most likely the same run."""
    await live.say("noor", "at 09:01 3:31 8/8")
    (asked,) = await live.say("noor", "at 09:01 3:31 8/8")
    assert asked.startswith("Same as your 09:06 run.")


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("8:65 8/8", "`8:65` cannot be a clock: minutes and seconds go from 00 to 59. Send it again, like `8:05`."),
        ("-3:02 8/8", "I could not read -3:02 as a clock; write it like `8:05`."),
        ("25h 8/8", "25h is more than a day; write the run's clock like `8:05`."),
        ("at 25:00 3:32 8/8", "I could not read 25:00 as a time of day; write it like `at 02:10`."),
        ("3:20 8/0", "Good, redo and left have to make 8 plates together; send the count again, like `3:20 8/8`."),
        ("3:20 0/0", "Good, redo and left have to make 8 plates together; send the count again, like `3:20 8/8`."),
        ("3:20 redo 9", "Good, redo and left have to make 8 plates together; send the count again, like `3:20 8/8`."),
        ("3:20 99/99", "Drill 6 has 8 plates; send how many of 8 were good, like `3:20 8/8`."),
    ],
)
async def test_what_cannot_be_is_refused(live: Chat, line: str, told: str) -> None:
    """One sentence says what to send, and nothing is stored."""
    assert await live.say("noor", line) == [told]
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


@pytest.mark.parametrize("line", ["NaN 8/8", "inf 8/8", "3:02 -8/8", "3:20 8"])
async def test_what_is_no_number_is_talk(live: Chat, line: str) -> None:
    """It is answered with silence, and nothing is stored."""
    assert await live.say("noor", line) == []
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]
