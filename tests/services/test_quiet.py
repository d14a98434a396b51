"""Quiet hours and the break of a split shift: nothing unasked in them, and answers as ever."""

from datetime import datetime, timedelta

import pytest

from tests.chat import Chat


def at(chat: Chat, hour: int, minute: int = 0) -> datetime:
    """This time of the chat's day; London has UTC's in November."""
    return chat.now.replace(hour=hour, minute=minute)


async def test_a_rest_is_kept_and_told(live: Chat) -> None:
    """In private, whatever room it was said in; the kitchen's quiet hours stand beside it."""
    assert (await live.whisper("noor", "rest"))[0].startswith("You have told me no rest.")
    await live.say("noor", "!rest 15:00-17:00")
    (told,) = live.told("noor")
    assert told.startswith("Your rest: 15:00-17:00.")
    (both,) = await live.whisper("noor", "rest")
    assert both.splitlines()[1].startswith("Quiet hours: 22:00-09:00.")
    assert await live.whisper("noor", "rest off") == ["No rest of yours is kept any more."]


async def test_nothing_unasked_in_the_rest(live: Chat) -> None:
    """The chef's correction is told to the cook when the rest is over; what the cook asks is answered at once."""
    await live.say("noor", "!rest 15:00-17:00")
    run = await live.run("noor", "3:02 8/8", at=at(live, 14, 50))
    await live.say("ime", "!correct 3:20 7/8", reply=run, at=at(live, 15, 10))
    assert live.told("noor") == []
    await live.say("noor", "!best", at=at(live, 15, 20))
    assert len(live.told("noor")) == 1
    await live.wait(at(live, 17))
    (told,) = live.told("noor")
    assert told.startswith("Ime has put your 14:50 run right.")


async def test_a_rest_that_ends_in_quiet_hours_ends_with_them(live: Chat) -> None:
    """From 21:00 to 23:00 of one's own, then the kitchen's until nine."""
    await live.say("noor", "!rest 21:00-23:00")
    run = await live.run("noor", "3:02 8/8", at=at(live, 20, 50))
    await live.say("ime", "!correct 3:20 7/8", reply=run, at=at(live, 21, 30))
    assert await live.wait(at(live, 8, 59) + timedelta(days=1)) == []
    await live.wait(at(live, 9))
    assert len(live.told("noor")) == 1


async def test_what_was_kept_for_later_is_forgotten_too(live: Chat) -> None:
    """Nothing is said after the rest to somebody who has asked to be forgotten in it."""
    await live.say("noor", "!rest 15:00-17:00")
    run = await live.run("noor", "3:02 8/8", at=at(live, 14, 50))
    await live.say("ime", "!correct 3:20 7/8", reply=run, at=at(live, 15, 10))
    await live.whisper("noor", "forget me")
    await live.whisper("noor", "yes, forget me")
    assert await live.wait(at(live, 18)) == []
    async with live.stage.storage.begin() as work:
        assert await work.outbox.lanes() == []


async def test_the_chef_hears_how_many_rest_at_a_post(live: Chat) -> None:
    """A number, no name; a rest over midnight counts too."""
    await live.say("noor", "!rest 15:00-17:00")
    await live.say("lio", "!rest 23:00 to 01:00")
    assert (await live.say("ime", "!post 6 mon 15:00"))[0].splitlines()[1:] == [
        "One person has their rest at that time; no drill belongs in it."
    ]
    assert len((await live.say("ime", "!post move 1 mon 17:00"))[0].splitlines()) == 1
    assert len((await live.say("ime", "!post move 1 mon 00:30"))[0].splitlines()) == 2


async def test_quiet_hours_are_the_houses(live: Chat) -> None:
    """A board closed at five is told when the hours set by the chef end, or at once where there are none."""
    assert await live.say("ime", "!quiet 21:00-07:30") == [
        "Quiet hours: 21:00-07:30. Posts and reminders wait until they end; answers do not."
    ]
    await live.run("noor", "3:02 8/8")
    monday = (live.now + timedelta(days=7)).replace(hour=7, minute=29)
    assert await live.wait(monday) == []
    assert "the week is closed" in (await live.wait(monday + timedelta(minutes=1)))[0]
    assert await live.say("ime", "!quiet off") == ["No quiet hours: posts and reminders come at any time."]
    assert await live.say("ime", "!quiet") == ["No quiet hours: posts and reminders come at any time."]


@pytest.mark.parametrize("typed", ["15:00", "15:00-15:00", "25:00-26:00", "from three", "15:00-17:00 daily"])
async def test_what_to_send_instead(live: Chat, typed: str) -> None:
    """Half of the hours, none, or no hours at all."""
    await live.whisper("noor", f"rest {typed}")
    assert live.told("noor") == ["Write it like `rest 15:00-17:00`, or `rest off`."]
    assert await live.say("ime", f"!quiet {typed}") == ["Write it like `!quiet 22:00-09:00`, or `!quiet off`."]
