"""The chef says when: weekdays and times in the forms people type, and what to send where they cannot be read."""

from datetime import UTC, datetime, timedelta

import pytest

from tests.chat import Chat

WHEN = "Write a weekday and a time, like `!post mon 15:00`, or `!post now`."
WHICH_TIME = "Write a time, like `!dayturn 05:00`."


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("6 mon 15:00", "Monday 15:00"),
        ("6 Wednesday 9.30", "Wednesday 09:30"),
        ("6 THU 23:59", "Thursday 23:59"),
        ("6 sun. 9:05", "Sunday 09:05"),
    ],
)
async def test_days_and_times_as_typed(chat: Chat, typed: str, told: str) -> None:
    """A weekday in full or short and a time with colon or point."""
    (answer,) = await chat.say("ime", f"!post {typed}")
    assert answer.startswith(f"Set. {told} (Europe/London): drill 6, Rope coil.")


@pytest.mark.parametrize("typed", ["6 mon", "6 mon 25:00", "6 funday 15:00", "6 mon 15", "now 6 7", "x off"])
async def test_what_is_no_slot(chat: Chat, typed: str) -> None:
    """It is told how to write one, and nothing is set."""
    assert await chat.say("ime", f"!post {typed}") == [WHEN]
    assert await chat.say("ime", "!post") == ["No weekly post is set yet. Set one like `!post 6 mon 15:00`."]


async def test_a_drill_that_is_not_there(chat: Chat) -> None:
    """An unknown number is told; so is a post of the newest where none was published."""
    assert await chat.say("ime", "!post 99 mon 15:00") == ["There is no drill 99 here. `!drills` lists them."]
    which = "Which drill? Name one, like `!post 6 mon 15:00`; `!drills` lists them."
    assert await chat.say("ime", "!post mon 15:00") == [which]
    assert await chat.say("ime", "!post now") == [which]


async def test_several_are_named_by_number(chat: Chat) -> None:
    """With two weekly posts, `skip`, `hold` and `off` ask which; out of the list they ask too."""
    await chat.say("ime", "!post 6 mon 15:00")
    await chat.say("ime", "!post 5 thu 15:00")
    for typed in ("!skip", "!hold", "!post off", "!skip 3", "!hold 0"):
        (told,) = await chat.say("ime", typed)
        assert told.startswith("There are 2 weekly posts.")
    assert (await chat.say("ime", "!hold 2"))[0].startswith("Held: Thursday 15:00 posts nothing until")


async def test_posted_once_a_week_by_hand(chat: Chat) -> None:
    """A second `post now` of the same drill in a week is refused, also after its board was closed."""
    again = ["Drill 6 was posted this week already; it can be posted again from Monday."]
    await chat.say("ime", "!post now 6")
    assert await chat.say("ime", "!post now 6") == again
    await chat.say("ime", "!close")
    assert await chat.say("ime", "!post now 6") == again
    monday = datetime(2026, 11, 30, 9, 30, tzinfo=UTC)
    assert (await chat.say("ime", "!post now 6", at=monday))[0].startswith("Rope coil (drill 6)")


async def test_close_is_answered(live: Chat) -> None:
    """Closing a board on which nobody ran is told to the chef, and a second time refused."""
    assert await live.say("ime", "!close") == ["Rope coil: the week is closed."]
    assert await live.say("ime", "!close") == ["That board is closed already."]


async def test_close_tells_the_room(live: Chat) -> None:
    """Closing a board on which somebody ran tells the room what it came to, once."""
    await live.run("noor", "3:02 8/8")
    (told,) = await live.say("ime", "!close")
    assert told.startswith("Rope coil: the week is closed.\n")
    assert [heard.note.style for heard in live.heard] == ["text"]
    assert await live.wait(live.now + timedelta(days=8)) == []


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("!zone europe/berlin", "Times are read and shown in Europe/Berlin."),
        ("!dayturn 04:00", "The kitchen day turns at 04:00."),
        ("!dayturn 4", WHICH_TIME),
        ("!dayturn 24:00", WHICH_TIME),
        ("!dayturn", WHICH_TIME),
        ("!replies quiet", "Write `!replies full` or `!replies short`."),
    ],
)
async def test_settings(chat: Chat, said: str, told: str) -> None:
    """Zone, day turn and length of replies are set, or told how to be."""
    assert await chat.say("ime", said) == [told]


async def test_an_unknown_zone_is_offered_the_nearest(chat: Chat) -> None:
    """Nothing is guessed: the nearest names are offered."""
    (told,) = await chat.say("ime", "!zone Europe/Lodnon")
    assert told.startswith("I do not know that time zone. Near it: Europe/London")


async def test_short_replies_are_the_memo_pad(live: Chat) -> None:
    """With `replies short` a run gets the reaction alone, in private its line all the same."""
    await live.say("ime", "!replies short")
    assert await live.say("noor", "3:02 8/8", thread=True) == []
    assert [heard.note.key for heard in live.heard] == ["\N{MEMO}"]
    assert len(await live.whisper("noor", "3:05 8/8")) == 1


async def test_a_post_follows_the_kitchens_zone(chat: Chat) -> None:
    """Set for three in London and moved to New York, it comes at three there: 20:00 UTC in winter."""
    await chat.say("ime", "!post 6 mon 15:00")
    await chat.say("ime", "!zone America/New_York")
    due = datetime(2026, 11, 23, 20, 0, tzinfo=UTC)
    assert await chat.wait(due - timedelta(seconds=1)) == []
    assert (await chat.wait(due))[0].startswith("Rope coil (drill 6)")
