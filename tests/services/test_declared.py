"""Declared runs take one of the week's five; chat-timed runs are marked and set no best."""

from datetime import timedelta

from tests.chat import Chat


async def _others(chat: Chat) -> None:
    """Two more cooks, since a board of fewer than three is not shown."""
    await chat.run("kwabena", "4:02 8/8")
    await chat.run("lio", "5:02 8/8")


async def test_declared_and_not_run_is_a_try(live: Chat) -> None:
    """A declared run that never comes counts among the tries; one that comes takes its place, not another."""
    await _others(live)
    await live.run("noor", "3:02 8/8")
    await live.say("noor", "!declare", thread=True)
    assert "1 Noor 3:02 (2 tries)" in (await live.say("petra", "!board fast"))[0]
    await live.run("noor", "3:09 8/8")
    assert "1 Noor 3:02 (2 tries)" in (await live.say("petra", "!board fast"))[0]


async def test_the_sixth_does_not_count(live: Chat) -> None:
    """Four runs and one declared and stopped are five: a quicker sixth, on another day, changes no board."""
    await _others(live)
    for seconds in range(4):
        await live.run("noor", f"3:3{seconds} 8/8")
    assert await live.say("noor", "!declare", thread=True) == [
        "Declared: your next run on Rope coil counts, whatever becomes of it."
    ]
    await live.run("noor", "1:00 stopped 2")
    await live.wait(live.now + timedelta(days=1))
    await live.run("noor", "3:02 8/8")
    assert "1 Noor 3:30 (5 tries)" in (await live.say("petra", "!board fast"))[0]


async def test_declaring_twice_or_too_early(live: Chat) -> None:
    """One declared run at a time, not to be scrapped or explained, by people who are counted in, on an open board."""
    await live.say("noor", "!declare")
    for word in ("!declare", "!scrap", "!why"):
        (told,) = await live.say("noor", word)
        assert told.startswith("You have declared a run already")
    assert await live.say("bastian", "!declare") == ["Declaring is for people who are counted in: `!join` first."]
    (told,) = await live.say("lio", "!declare 1")
    assert told.startswith("Drill 1 has no open board this week")


async def test_clock_and_stop(live: Chat) -> None:
    """The clock is the time between the two messages as their server has it; then the count is asked for."""
    start = live.now + timedelta(minutes=1)
    await live.say("noor", "!clock", thread=True, at=start)
    assert await live.say("noor", "!stop", thread=True, at=start + timedelta(seconds=182.4)) == [
        "How many of 8 were good?"
    ]
    assert await live.say("noor", "8/8", thread=True) == [
        "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled. Chat-timed: no best and no place by it."
    ]


async def test_chat_timed_sets_no_best(live: Chat) -> None:
    """Even watched, and mended by an edit to a clock, it is no mark and has no place."""
    await _others(live)
    start = live.now + timedelta(minutes=1)
    await live.say("noor", "!clock", at=start)
    await live.say("noor", "!stop", at=start + timedelta(seconds=182))
    run = live.last
    await live.say("noor", "8/8")
    assert await live.react("bastian", run) == []
    await live.edit("noor", run, "3:01 8/8")
    assert await live.whisper("noor", "best") == ["No run with a time yet. Send one like `3:02 8/8`."]
    assert "Noor" not in (await live.say("petra", "!board fast"))[0]


async def test_stop_without_clock(live: Chat) -> None:
    """Nothing runs, or it was forgotten after two hours: told what to send instead."""
    told = ["No clock of yours is running. `!clock` starts one; or send the time on your own timer, like `3:02 8/8`."]
    assert await live.say("noor", "!stop") == told
    await live.say("noor", "!clock")
    await live.wait(live.now + timedelta(hours=2, minutes=1))
    assert await live.say("noor", "!stop") == told
