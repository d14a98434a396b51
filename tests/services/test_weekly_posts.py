"""Weekly posts: set, listed, moved, skipped, held, cancelled; once a slot, late or not at all, never in quiet hours."""

from datetime import UTC, datetime, timedelta

import pytest

from tests.chat import KITCHEN, MORNING, Chat, kitchen

THREE = datetime(2026, 11, 23, 15, 0, tzinfo=UTC)
"""Monday at three in London, where winter time is UTC."""

WEEK = timedelta(weeks=1)
ROPE_COIL = "Rope coil (drill 6), 8 plates, one row."
LATE = f"(late) {ROPE_COIL}"


def posts(texts: list[str]) -> list[str]:
    """The first lines of the drills that were posted."""
    heads = [text.partition("\n")[0] for text in texts]
    return [head for head in heads if "(drill " in head]


async def test_a_post_comes_every_week_at_its_hour_and_is_pinned(chat: Chat) -> None:
    """At three on both Mondays and not between; the pin of the second takes the place of the first."""
    assert await chat.say("ime", "!post 6 mon 15:00") == [
        "Set. Monday 15:00 (Europe/London): drill 6, Rope coil. Next: Monday 23 November."
    ]
    assert posts(await chat.wait(THREE - timedelta(seconds=1))) == []
    assert posts(await chat.wait(THREE)) == [ROPE_COIL]
    first = chat.stage.newest_drill(KITCHEN)
    assert posts(await chat.wait(THREE + WEEK - timedelta(seconds=1))) == []
    assert posts(await chat.wait(THREE + WEEK)) == [ROPE_COIL]
    pins = [heard.note for heard in chat.all_heard if heard.note.style == "pin"]
    assert [(pin.replaces, pin.target) for pin in pins] == [
        (None, first),
        (first, chat.stage.newest_drill(KITCHEN)),
    ]


async def test_a_slot_is_posted_once_however_it_is_set_again(chat: Chat) -> None:
    """Setting, moving within the week and changing the zone after the post bring no second one that week."""
    await chat.say("ime", "!post 6 mon 15:00")
    await chat.wait(THREE)
    await chat.say("ime", "!post 6 mon 16:00")
    await chat.say("ime", "!zone America/New_York")
    assert posts(await chat.wait(THREE + timedelta(days=6))) == []


async def test_posts_are_listed_moved_and_cancelled(chat: Chat) -> None:
    """By their number in the list; nothing to list is said with what to send."""
    assert await chat.say("ime", "!post") == ["No weekly post is set yet. Set one like `!post 6 mon 15:00`."]
    await chat.say("ime", "!post 6 mon 15:00")
    await chat.say("ime", "!post 5 thu 15:00")
    (listed,) = await chat.say("ime", "!post")
    assert listed.split("\n")[:2] == [
        "1. Monday 15:00 (Europe/London): drill 6, Rope coil. Next: Monday 23 November.",
        "2. Thursday 15:00 (Europe/London): drill 5, Slipway. Next: Thursday 26 November.",
    ]
    await chat.say("ime", "!post move 1 tue 14:30")
    await chat.say("ime", "!post 2 off")
    assert posts(await chat.wait(THREE)) == []
    assert posts(await chat.wait(THREE + timedelta(days=1))) == [ROPE_COIL]
    assert posts(await chat.wait(THREE + timedelta(days=5))) == []


async def test_skip_leaves_out_one_week_and_hold_all_until_set_again(chat: Chat) -> None:
    """What was left out is not made up for."""
    await chat.say("ime", "!post 6 mon 15:00")
    assert await chat.say("ime", "!skip") == ["Monday 23 November is left out. The next post is Monday 30 November."]
    assert posts(await chat.wait(THREE + timedelta(days=1))) == []
    assert posts(await chat.wait(THREE + WEEK)) == [ROPE_COIL]
    await chat.say("ime", "!hold")
    assert posts(await chat.wait(THREE + 3 * WEEK)) == []
    await chat.say("ime", "!post 6 mon 15:00")
    assert posts(await chat.wait(THREE + 4 * WEEK)) == [ROPE_COIL]


@pytest.mark.parametrize(
    ("late", "posted"),
    [
        (timedelta(minutes=5), [ROPE_COIL]),
        (timedelta(minutes=6), [LATE]),
        (timedelta(hours=6), [LATE]),
    ],
)
async def test_a_post_that_was_missed_is_made_late(chat: Chat, late: timedelta, posted: list[str]) -> None:
    """Within five minutes nothing is said of it; within twelve hours it is marked."""
    await chat.say("ime", "!post 6 mon 15:00")
    assert posts(await chat.away(THREE + late)) == posted


async def test_a_post_over_twelve_hours_late_is_left_out_and_told_once() -> None:
    """Due on Monday at nine and found at ten in the evening: the chef can post it by hand."""
    async with kitchen(start=MORNING - timedelta(hours=1)) as chat:
        await chat.say("ime", "!post 6 mon 09:00")
        told = await chat.away(MORNING + timedelta(hours=12, minutes=1))
        assert told == [
            "Drill 6 was due more than 12 hours ago, while I was away, and was not posted. `!post now 6` posts it."
        ]
        assert await chat.wait(MORNING + timedelta(days=2)) == []


async def test_quiet_hours_hold_a_post_until_they_end(chat: Chat) -> None:
    """Due at half past five in the morning, posted at nine, and not called late."""
    await chat.say("ime", "!post 6 tue 05:30")
    nine = datetime(2026, 11, 24, 9, 0, tzinfo=UTC)
    assert posts(await chat.wait(nine - timedelta(seconds=1))) == []
    assert posts(await chat.wait(nine)) == [ROPE_COIL]


@pytest.mark.parametrize(
    ("start", "slot", "due"),
    [
        # IANA time zone database: London puts its clocks back on 25 October 2026 at 01:00 UTC, forward on 29 March.
        (datetime(2026, 10, 24, 12, 0, tzinfo=UTC), "sun 01:30", datetime(2026, 10, 25, 0, 30, tzinfo=UTC)),
        (datetime(2026, 3, 28, 12, 0, tzinfo=UTC), "sun 01:30", datetime(2026, 3, 29, 1, 30, tzinfo=UTC)),
    ],
)
async def test_on_the_nights_of_the_clock_change_a_post_comes_once(start: datetime, slot: str, due: datetime) -> None:
    """The repeated hour fires at its first passage, the missing one an hour on; both wait for the morning."""
    async with kitchen(start=start) as chat:
        await chat.say("ime", f"!post 6 {slot}")
        posted = posts(await chat.wait(due + timedelta(days=1)))
        (occurrence,) = [h for h in chat.all_heard if ROPE_COIL in h.note.text]
        assert posted == [ROPE_COIL]
        assert due <= occurrence.at <= due + timedelta(hours=9)


async def test_a_drill_left_for_next_week_is_posted_next_week(chat: Chat) -> None:
    """The weekly post of the drill that it came from posts it from the next slot on."""
    await chat.say("ime", "!post 6 mon 15:00")
    await chat.wait(THREE)
    await chat.say("ime", "!step 2 2 triangle, lean")
    await chat.say("ime", "c")
    assert posts(await chat.wait(THREE + WEEK)) == ["Rope coil (drill 12), 8 plates, one row."]


async def test_the_board_freezes_at_the_day_turn_and_is_told_after_quiet_hours(live: Chat) -> None:
    """A run sent at six on Monday is too late for the board, though nobody has been told of its close yet."""
    turn = datetime(2026, 11, 30, 5, 0, tzinfo=UTC)
    assert await live.wait(turn + timedelta(minutes=1)) == []
    (answer,) = await live.say("noor", "3:02 8/8", at=turn + timedelta(hours=1))
    assert answer.endswith("Kept; that board is closed.")
    assert await live.wait(turn + timedelta(hours=4)) == []
    await live.say("noor", "!close")
    assert live.heard[-1].note.text == "That word is the chef's."


async def test_a_week_in_which_somebody_ran_is_closed_in_words(live: Chat) -> None:
    """At nine, with no word on how many ran where too few were watched."""
    await live.run("noor", "3:02 8/8", watched=False)
    told = await live.wait(datetime(2026, 11, 30, 9, 0, tzinfo=UTC))
    assert [text.split("\n")[0] for text in told] == ["Rope coil: the week is closed."]
    assert live.heard[-1].at == datetime(2026, 11, 30, 9, 0, tzinfo=UTC)
