"""What a demanding chef tries with coaching (sizes: fixtures of the project's own model)."""

from tests.chat import COOKS, Chat
from tests.services.practice import practise

ELEVEN_OF_TWELVE = ("7:10 11/12", "7:08 11/12", "7:12 11/12")
"""One redo each: 8:23 net and thereabouts, for a house time of 8:30."""

FASTER_AND_SLOPPIER = ("2:44 8/8", "2:42 8/8", "2:40 8/8", "2:20 8/8", "2:12 8/8", "2:05 7/8")
"""23 of the last 24 are good and the median meets 2:44, but there is a redo more than in the three before."""


async def test_a_week_of_thirty_three_in_thirty_six_at_the_target_brings_ways_up_with_their_size(chat: Chat) -> None:
    """Full tide: what is 5 to 10 % more work comes first, and on Rope coil a coil more is refused with its 24.3 %."""
    await chat.say("ime", "!post now 11B")
    for cook in COOKS[:2]:
        await chat.say(cook, "!join")
    await practise(chat, dict.fromkeys(COOKS[:2], ELEVEN_OF_TWELVE))
    head, fitting, others, *_ = (await chat.say("ime", "!raise 11B"))[0].split("\n")
    assert head == "Full tide is ready for a harder version: 2 of this month's 2 cooks keep 11 in 12 good at 8:30."
    assert fitting == (
        "5 to 10 % more work, the size to take: `1` +1 plate 8.4 %; `2` +1 gel (line) 7.5 %;"
        " `3` +1 coffee (crumb) 6.1 %; `4` +1 courgette (shingle) 5.2 %; `6` +1 triangle (lean) 8.2 %;"
        " `10` +4 leaf (pair) 9.4 %; `11` waves of 6 5.9 %."
    )
    assert others.startswith("Less or more than that: ")
    assert await chat.say("ime", "!raise 6 2") == [
        "+1 noodle (twirl) is 24.3 % more work, and over 20 % at once is refused. Take a smaller one; `raise` lists"
        " them."
    ]


async def test_faster_with_more_redos_is_no_reason_to_raise(live: Chat) -> None:
    """Two cooks within the target whose redos rise: hold, and no way up is named."""
    await practise(live, dict.fromkeys(COOKS[:2], FASTER_AND_SLOPPIER))
    (told,) = await live.say("ime", "!raise")
    assert told.startswith("Hold Rope coil as it is: 0 of this month's 2 cooks keep 11 in 12 good at 2:44.")
    assert "%" not in told
