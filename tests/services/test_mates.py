"""A result sent for a mate is theirs by their own yes alone."""

from datetime import timedelta

from tests.chat import Chat

ASKED = ["Waiting for Lio to say yes."]
NO_RUN = ["There is no run of yours to explain yet."]


async def test_yes_keeps_it_under_the_mates_name(live: Chat) -> None:
    """The mate's yes makes it theirs; the sender's own yes does nothing."""
    assert await live.say("noor", "3:03 8/8 for @lio") == ASKED
    assert await live.say("noor", "yes") == []
    assert await live.say("lio", "yes") == ["Kept under your name, Lio."]
    (why,) = await live.say("lio", "!why")
    assert why.startswith("Rope coil, 3:03 = 183 s")
    assert await live.say("noor", "!why") == NO_RUN


async def test_no_voids_it(live: Chat) -> None:
    """The mate's no leaves nothing."""
    await live.say("noor", "3:03 8/8 for lio")
    assert await live.say("lio", "no") == ["Not kept."]
    assert await live.say("lio", "yes") == []
    assert await live.say("lio", "!why") == NO_RUN


async def test_it_lapses(live: Chat) -> None:
    """Unanswered for twelve hours it is void, and no later hand or yes brings it back."""
    await live.say("noor", "3:03 8/8 for lio")
    run = live.last
    await live.away(live.now + timedelta(hours=12, minutes=1))
    assert await live.say("lio", "yes") == []
    assert await live.react("bastian", run) == []
    assert await live.say("lio", "!why") == NO_RUN


async def test_an_edit_asks_again(live: Chat) -> None:
    """Whatever the sender edits waits for the mate's yes again, also what was declined or kept before."""
    await live.say("noor", "3:03 8/8 for lio")
    run = live.last
    await live.say("lio", "no")
    assert await live.edit("noor", run, "3:13 8/8 for lio") == ASKED
    await live.say("lio", "yes")
    assert await live.edit("noor", run, "2:13 8/8 for lio") == ASKED
    assert await live.say("lio", "!why") == NO_RUN
    await live.say("lio", "yes")
    (why,) = await live.say("lio", "!why")
    assert why.startswith("Rope coil, 2:13 = 133 s")


async def test_a_hand_before_the_yes_counts(live: Chat) -> None:
    """Whoever watched may raise a hand before the mate has said yes; the best is told with the yes."""
    await live.say("noor", "3:03 8/8 for lio")
    assert await live.react("bastian", live.last) == []
    assert await live.say("lio", "yes") == ["Kept under your name, Lio.", "First mark for Lio on Rope coil: 3:03."]


async def test_the_mate_is_no_witness_of_it(live: Chat) -> None:
    """The runner's own hand does not count, though the mate sent the line; the sender's does."""
    await live.say("noor", "3:03 8/8 for lio")
    run = live.last
    await live.say("lio", "yes")
    assert await live.react("lio", run) == []
    assert await live.react("noor", run) == ["First mark for Lio on Rope coil: 3:03."]


async def test_one_who_has_not_joined(live: Chat) -> None:
    """Nothing is kept for somebody who has not joined."""
    told = ["Bastian has not joined yet. They can say `!join`; then send it again."]
    assert await live.say("noor", "3:03 8/8 for bastian") == told


async def test_who_is_meant(live: Chat) -> None:
    """A name that two have, or nobody, is asked about; a user id is always one person; a name of several words too."""
    await live.stage.come("!kitchen:tern.example", "@lio2:tern.example", "Lio")
    asked = "I cannot tell who {} is here. Mention them, or write a name that only one person has."
    assert await live.say("noor", "3:03 8/8 for Lio") == [asked.format("Lio")]
    assert await live.say("noor", "3:04 8/8 for @nobody") == [asked.format("@nobody")]
    assert await live.say("noor", "3:05 8/8 for @lio:tern.example") == ASKED
    await live.stage.come("!kitchen:tern.example", "@petra:tern.example", "Petra of the Pass")
    assert await live.say("noor", "3:06 8/8 for petra of the pass") == ["Waiting for Petra of the Pass to say yes."]


async def test_the_bot_is_no_mate(live: Chat) -> None:
    """A run for the bot itself is not taken."""
    (told,) = await live.say("noor", "3:03 8/8 for @platepace")
    assert told.startswith("I cannot tell who @platepace is here.")
