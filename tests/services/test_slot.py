"""What fits in a slot, in the chat: by standard time in the room, by one's own median in private."""

import pytest

from tests.chat import Chat


async def test_two_runs_of_rope_coil(live: Chat) -> None:
    """Rope coil in 25 minutes: two honest runs, with the sum to check."""
    assert await live.say("noor", "!slot 25") == [
        "Two honest runs of Rope coil in 25:00.\n"
        "Each 6:44: run 2:44 (standard time), judging 1:20, reset 2:40.\n"
        "Laying out 3:00, 2 x 6:44, clearing down 5:00: 21:28."
    ]
    assert live.heard[0].note.figures == {"runs": 2, "run_s": 164, "each_s": 404, "taken_s": 1288, "own_runs": 0}


async def test_none_fits(live: Chat) -> None:
    """Where none fits, the shortest slot that holds one: 3:00 + 14:30 + 5:00 for Full tide."""
    (told,) = await live.say("noor", "!slot 11B 20")
    assert told.split("\n")[0] == (
        "No honest run of Full tide fits in 20:00; the shortest slot that holds one is 22:30."
    )
    assert (await live.say("noor", "!slot 11B 22:30"))[0].startswith("One honest run of Full tide in 22:30.")
    assert (await live.say("noor", "!slot 11B 22:29"))[0].startswith("No honest run")


async def test_own_median_is_private(live: Chat) -> None:
    """From three runs on the private room reckons with one's own median, the room never."""
    for minutes, clock in enumerate(("4:30", "4:40", "5:00")):
        assert "standard time" in (await live.whisper("noor", "slot 25"))[0], minutes
        await live.say("noor", f"{clock} 8/8")
    (private,) = await live.whisper("noor", "slot 25")
    assert private.startswith("One honest run of Rope coil in 25:00.\nEach 8:40: run 4:40 (your median of 3 runs)")
    assert "run 2:44 (standard time)" in (await live.say("noor", "!slot 25"))[0]
    assert "run 2:44 (standard time)" in (await live.whisper("lio", "slot 25"))[0]


async def test_the_hands_end_a_long_slot(live: Chat) -> None:
    """Three hours hold more runs of Full tide than are good for the hands."""
    (told,) = await live.say("noor", "!slot 11B 180")
    assert told.startswith(
        "Three honest runs of Full tide in 3:00:00. More would fit; for the hands it is three a day at most."
    )


@pytest.mark.parametrize("asked", ["", "0", "6 0"])
async def test_how_to_ask(live: Chat, asked: str) -> None:
    """Without minutes it says how to write them."""
    assert await live.say("noor", f"!slot {asked}") == [
        "Write the minutes, like `slot 25`, or `slot 6 25` for drill 6."
    ]


async def test_unreadable(live: Chat) -> None:
    """What is no time is told how a time is written."""
    (told,) = await live.say("noor", "!slot soup")
    assert told.startswith("I could not read")
