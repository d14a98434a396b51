"""Pair runs: half the plates each in their standard time, kept by the partner's yes, apart from runs of one cook."""

from datetime import timedelta

from tests.chat import Chat

WAITING = ["Waiting for Lio to say yes."]

# Rope coil by hand (C, constructed of technique seconds): a plate is 2 x 5.0 + 3.5 + 4 x 0.9 = 17.1 s. Four plates
# are 68.4 s, 2 tool changes 10 s, 3 passes over 3 columns 6.3 s, start and stop 3 s: 87.7 s. Eight would be 164.5 s.


async def test_half_the_plates_each(live: Chat) -> None:
    """Of eight plates each builds four, so four plates' standard time levels the pair's clock."""
    await live.say("noor", "2:00 8/8 with @lio")
    run = live.last
    await live.say("lio", "yes")
    for cook in ("noor", "lio"):
        (why,) = await live.say(cook, "!why", reply=run)
        assert "Standard 87.7 s / 1.5 = 58.5 levelled touches; 120.0 / 58.5 = 2.05 levelled." in why


async def test_yes_keeps_it_under_both(live: Chat) -> None:
    """Nothing is kept before the partner's yes; then both have it among their bests and the room hears it."""
    assert await live.say("noor", "2:00 8/8 with @lio", thread=True) == WAITING
    assert await live.whisper("noor", "best") == ["No run with a time yet. Send one like `3:02 8/8`."]
    (told,) = await live.say("lio", "yes")
    assert told.startswith("Kept for Noor and Lio. Heard. 2:00, 8 of 8.")
    for cook in ("noor", "lio"):
        (best,) = await live.whisper(cook, "best")
        assert "Rope coil, in a pair" in best


async def test_no_voids_it(live: Chat) -> None:
    """The partner's no leaves nothing, and so does silence for twelve hours."""
    await live.say("noor", "2:00 8/8 with @lio")
    assert await live.say("lio", "no") == ["Not kept."]
    await live.say("noor", "2:01 8/8 with @lio")
    await live.away(live.now + timedelta(hours=12, minutes=1))
    assert await live.say("lio", "yes") == []
    assert await live.whisper("noor", "why") == ["There is no run of yours to explain yet."]


async def test_neither_is_a_witness(live: Chat) -> None:
    """Neither of the two may raise a hand; another's hand names both."""
    await live.say("noor", "2:00 8/8 with @lio")
    run = live.last
    await live.say("lio", "yes")
    assert await live.react("lio", run) == []
    assert await live.react("noor", run) == []
    assert await live.react("bastian", run) == ["First mark for Noor and Lio on Rope coil, in a pair: 2:00."]


async def test_the_partner_is_no_judge(live: Chat) -> None:
    """A partner who judges is refused in private; another's verdict names both."""
    await live.say("ime", "!role @lio judge")
    await live.say("noor", "2:00 8/8 with @lio")
    run = live.last
    await live.say("lio", "yes")
    await live.say("lio", "7 good", reply=run)
    assert live.told("lio")[0].startswith("Nobody judges their own run")
    (told,) = await live.say("ime", "7 good", reply=run)
    assert told.startswith("Noor and Lio: 7 of 8 good by the judges.")


async def test_a_pair_is_apart_from_one(live: Chat) -> None:
    """A quick pair is no best of either alone, on no board of the drill for one, and `6` still means that."""
    await live.run("noor", "3:02 8/8")
    await live.say("noor", "2:00 8/8 with @lio", thread=True)
    pair = live.last
    await live.say("lio", "yes")
    await live.react("bastian", pair)
    (board,) = await live.say("noor", "!board house")
    assert board.endswith("House: 8 clean plates.")
    (best,) = await live.whisper("noor", "best 6")
    assert "3:02" in best
    await live.say("kwabena", "6 3:10 8/8")
    (why,) = await live.whisper("kwabena", "why")
    assert why.startswith("Rope coil, 3:10")


async def test_its_own_board(live: Chat) -> None:
    """Posted by the chef, the set-up for two has a board of its own, and a run there needs a partner."""
    await live.say("noor", "2:00 8/8 with @lio")
    await live.say("lio", "yes")
    await live.say("ime", "!post now 6B")
    assert await live.say("noor", "2:01 8/8", thread=True) == [
        "Drill 6B is laid out for two. Say with whom, like `3:02 8/8 with @lio`."
    ]
    await live.say("noor", "2:02 8/8 with @lio", thread=True)
    run = live.last
    await live.say("lio", "yes")
    await live.react("bastian", run)
    (board,) = await live.say("noor", "!board house", thread=True)
    assert board.splitlines()[0].startswith("Rope coil, in a pair, this week")
    assert board.endswith("House: 8 clean plates.")


async def test_an_edit_asks_the_partner_again(live: Chat) -> None:
    """Another clock waits for another yes; another partner is another run."""
    await live.say("noor", "2:00 8/8 with @lio")
    run = live.last
    await live.say("lio", "yes")
    assert await live.edit("noor", run, "2:05 8/8 with @lio") == WAITING
    (moved,) = await live.edit("noor", run, "2:05 8/8 with @petra")
    assert moved.startswith("An edit cannot move a run")


async def test_what_is_no_pair(live: Chat) -> None:
    """With oneself, for a third, or with somebody who has not joined: each is told what to send instead."""
    assert await live.say("noor", "2:00 8/8 with @noor") == [
        "A pair run needs somebody else; name them, like `3:02 8/8 with @lio`."
    ]
    assert await live.say("noor", "2:00 8/8 with @lio for @petra") == [
        "A pair run is sent by one of the two: `3:02 8/8 with @lio`, without `for`."
    ]
    (told,) = await live.say("noor", "2:00 8/8 with @bastian")
    assert told.startswith("Bastian has not joined yet.")
