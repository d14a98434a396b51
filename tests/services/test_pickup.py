"""Hands for a pickup in the chat: the kitchen's own pace, hands that are said, and what nobody can do."""

import pytest

from tests.chat import COOKS, Chat, rope_coil

FIVE = (*COOKS, "bastian")


async def test_own_pace_of_five_people() -> None:
    """From five people on it says what their median makes of it: 200 s against 164.5 s is 1.22 of standard."""
    async with rope_coil(cooks=FIVE) as live:
        for cook, run in zip(FIVE, ("3:00 8/8", "3:10 8/8", "3:20 8/8", "3:30 8/8", "3:40 8/8"), strict=True):
            assert "own pace" not in (await live.say("ime", "!pickup 120 in 30"))[0]
            await live.say(cook, run)
        (told,) = await live.say("ime", "!pickup 120 in 30")
        assert told.split("\n")[0].startswith("In 30:00: two hands, 20:07.")
        assert told.split("\n")[-1] == "At this kitchen's own pace, 1.22 x standard: 24:28."
        assert live.heard[0].note.figures["ratio"] == pytest.approx(200 / 164.5, abs=1e-9)


async def test_pressure_rounds_are_not_its_pace() -> None:
    """Runs by a call sheet do not count towards the kitchen's pace."""
    async with rope_coil(cooks=FIVE) as live:
        await live.whisper("noor", "calls 6 2 sheet 417")
        for cook in FIVE:
            await live.say(cook, "6B 3:20 8/8")
        assert "own pace" not in (await live.say("ime", "!pickup 6 120 in 30"))[0]


@pytest.mark.parametrize(
    ("asked", "answer"),
    [
        (
            "2 120 in 20 with 4",
            "In 20:00: three hands, 6:06. More hands gain nothing. Plating only: add your own heat, carry and check.",
        ),
        (
            "11 120 in 20 with 4",
            "Not in 20:00 with four hands: 27:24. Plating only: add your own heat, carry and check.",
        ),
        ("11 1 in 1", "In 1:00: one pair of hands, 0:38. Plating only: add your own heat, carry and check."),
        ("11 5 in 0:30", "Not in 0:30: the touches of one plate alone take 0:38."),
        (
            "6 120 in 1",
            "Not in 1:00. Two hands take 20:07; twirling is the narrowest step. "
            "Not with 20 hands sharing steps either. Plating only: add your own heat, carry and check.",
        ),
        (
            "6 1000 in 20",
            "Not in 20:00. Two hands take 2:46:47; twirling is the narrowest step. "
            "Nine on twirling, three on leaning, four on beading, 16 hands: 19:43. "
            "Plating only: add your own heat, carry and check.",
        ),
    ],
)
async def test_answers(chat: Chat, asked: str, answer: str) -> None:
    """Hands that are said, hands that gain nothing, one plate, and what no number of hands can do."""
    assert (await chat.say("noor", f"!pickup {asked}"))[0].split("\n")[0] == answer


async def test_pieces_are_called_as_in_the_kitchen(chat: Chat) -> None:
    """Of thirty beads one would do: 0.9 + 1.5 s, then 99 x 1.5 s, is 2:31; and it is a bead, not oil."""
    await chat.say("ime", "!draft Beads\nplates 8\n1. 30 oil, bead, right edge\n2. 1 bean, place, centre")
    await chat.say("ime", "!publish")
    (told,) = await chat.say("ime", "!pickup 12 100 in 3")
    assert "Or 1 bead, two hands: 2:31." in told


@pytest.mark.parametrize("asked", ["", "soup", "120", "in 20", "120 in", "120 20"])
async def test_how_to_ask(chat: Chat, asked: str) -> None:
    """What cannot be read is told how to be asked."""
    (told,) = await chat.say("noor", f"!pickup {asked}")
    assert told.startswith("Write the plates, then the minutes, like `pickup 120 in 20`")


@pytest.mark.parametrize(
    "asked", ["0 in 20", "2001 in 20", "120 in 0", "120 in 721", "120 in 20 with 0", "9 in 9 with 21"]
)
async def test_out_of_range(chat: Chat, asked: str) -> None:
    """No plates, no time, no hands, or far too many of them are refused with what can be asked."""
    (told,) = await chat.say("noor", f"!pickup {asked}")
    assert told == "I can plan 1 to 2000 plates, 1 to 20 hands and 12 hours at most, like `pickup 120 in 20`."


@pytest.mark.parametrize("asked", ["120 in 20:00", "120 plates in 20 min", "120 in 20m", "١٢٠ in ٢٠", "120  IN  20"])
async def test_ways_of_asking(chat: Chat, asked: str) -> None:
    """Minutes, a clock, a unit, another script's digits: the same answer."""
    assert await chat.say("noor", f"!pickup 11 {asked}") == await chat.say("noor", "!pickup 11 120 in 20")


async def test_no_drill(chat: Chat) -> None:
    """With no drill posted and none named, or one that is not there, it says how to name one."""
    (none,) = await chat.say("noor", "!pickup 120 in 20")
    assert none.startswith("No drill has been posted here yet.")
    assert await chat.say("noor", "!pickup 99 120 in 20") == ["There is no drill 99 here. `!drills` lists them."]
