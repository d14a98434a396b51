"""Hold or raise, the chef's target, and ready by one's own word.

Rope coil has eight plates and three steps (twirl, lean, bead); its figures are fixtures of the project's own model.
"""

import pytest

from tests.chat import Chat
from tests.services.practice import practise

STEADY = ("2:40 8/8", "2:42 8/8", "2:41 8/8")


async def test_raise_is_told_to_the_chef_alone_with_a_count_and_no_names(live: Chat) -> None:
    """Two of the month's three cooks qualify: the sizes are listed, and nobody is named who has not said `ready`."""
    await practise(live, {"noor": STEADY, "lio": STEADY, "kwabena": ("3:10 8/8", "3:05 8/8", "3:08 8/8")})
    (told,) = await live.say("ime", "!raise")
    assert live.told("ime") == [told]
    assert told.split("\n") == [
        "Rope coil is ready for a harder version: 2 of this month's 3 cooks keep 11 in 12 good at 2:44.",
        "5 to 10 % more work, the size to take: `5` +2 oil (bead) 8.8 %; `6` waves of 4 7.8 %.",
        "Less or more than that: `1` +1 plate 11.7 %; `3` +1 triangle (lean) 17.0 %; `4` +1 oil (bead) 4.4 %.",
        "Refused, over 20 % at once: `2` +1 noodle (twirl) 24.3 %.",
        "`raise 6 5` begins a draft.",
    ]
    figures = live.heard[0].note.figures
    assert (figures["ready"], figures["cooks"], figures["target_s"]) == (2, 3, 164)
    assert round(float(str(figures["way.5.percent"])), 1) == 8.8


async def test_names_are_of_those_who_said_ready(live: Chat) -> None:
    """`ready` puts a name before the chef, `ready off` takes it away, and a cook who left is not named."""
    await practise(live, {"noor": STEADY, "lio": STEADY})
    for cook in ("noor", "lio", "kwabena"):
        await live.say(cook, "!ready")
    await live.say("lio", "!ready off")
    await live.say("kwabena", "!leave")
    (told,) = await live.say("ime", "!raise")
    assert "Ready by their own word: Noor." in told.split("\n")


async def test_half_of_the_months_cooks_are_needed(live: Chat) -> None:
    """One of two is not two: hold, with the count, and no way up is listed."""
    await practise(live, {"noor": STEADY, "lio": ("3:10 8/8", "3:05 8/8", "3:08 8/8")})
    assert await live.say("ime", "!raise") == [
        "Hold Rope coil as it is: 1 of this month's 2 cooks keeps 11 in 12 good at 2:44. It takes half of them, two at"
        " least."
    ]


async def test_after_a_month_without_it_nobody_raises(live: Chat) -> None:
    """The runs of more than 28 days ago are nobody's month."""
    await practise(live, {"noor": STEADY, "lio": STEADY}, days=32)
    assert await live.say("ime", "!raise") == ["Hold Rope coil: nobody has a counted run on it in the last 28 days."]


async def test_a_way_up_begins_a_draft(live: Chat) -> None:
    """`raise 5` is two more beads on every plate, a child of drill 6; of a way that is none it says which there are."""
    (card,) = await live.say("ime", "!raise 6 5")
    assert "3. 6 oil, bead, right edge" in card.split("\n")
    assert "Against drill 6: +8.8 % work." in card
    assert await live.say("ime", "!raise 7") == ["Write `raise`, or a way from 1 to 6, like `raise 2` or `raise 6 2`."]
    assert await live.say("ime", "!raise soon") == ["Write `raise`, or one of its ways, like `raise 2` or `raise 6 2`."]


async def test_a_plate_more_is_another_set_up_without_the_old_target(live: Chat) -> None:
    """`raise 1` after a target was set: drill 6 with nine plates, whose card tells no target."""
    await live.say("ime", "!target brisk")
    (card,) = await live.say("ime", "!raise 1")
    assert card.startswith("Rope coil (draft), 9 plates, one row.")
    await live.say("ime", "!publish")
    (published,) = await live.say("ime", "!spec 6B")
    assert "Target" not in published


async def test_a_target_is_set_told_and_shown_on_the_card(live: Chat) -> None:
    """One of the three aims, or a time; bests stay, since it is a wording, and the newest drill is still the newest."""
    await live.run("noor", "3:02 8/8")
    assert await live.say("ime", "!target") == ["Rope coil: the target is 2:44. Opening 3:50, house 2:44, brisk 2:20."]
    assert await live.say("ime", "!target brisk") == [
        "The target of Rope coil is 2:20. The card says so, and bests stay."
    ]
    assert "Target 2:20." in (await live.say("noor", "!spec"))[0].split("\n")
    await live.say("ime", "!target 6 2:30")
    assert await live.say("ime", "!target 6") == [
        "Rope coil: the target is 2:30. Opening 3:50, house 2:44, brisk 2:20."
    ]
    assert await live.say("noor", "!best") == ["Rope coil: 3:02, Monday 23 November, 8 of 8."]


@pytest.mark.parametrize("typed", ["0:54", "8:14", "soon", "6 soon"])
async def test_a_target_that_cannot_be_is_answered_with_one_that_can(live: Chat, typed: str) -> None:
    """Under a third of standard, over three times it, or no time at all: it says what to send and nothing changes."""
    (told,) = await live.say("ime", f"!target {typed}")
    assert "like `target 2:4" in told
    (target,) = await live.say("ime", "!target")
    assert "the target is 2:44" in target


async def test_the_raise_is_by_the_chefs_target(live: Chat) -> None:
    """At a brisk target 2:41 is not enough."""
    await live.say("ime", "!target brisk")
    await practise(live, {"noor": STEADY, "lio": STEADY})
    (told,) = await live.say("ime", "!raise")
    assert told.startswith("Hold Rope coil as it is: 0 of this month's 2 cooks keep 11 in 12 good at 2:20.")


async def test_ready_tells_where_one_stands(live: Chat) -> None:
    """In private: the last three runs, and what a harder version still asks for."""
    assert await live.say("bastian", "!ready") == ["Say `join` first, then `ready` again."]
    await live.run("noor", "2:40 7/8")
    (early,) = await live.say("noor", "!ready")
    assert live.told("noor") == [early]
    assert early.split("\n") == [
        "Kept: you are ready for a harder Rope coil. The chef sees that by your name; `ready off` takes it back.",
        "Your last counted run: 7 of 8 good, median 3:22 for a target of 2:44, 0 days since the first. A harder version"
        " still asks for three counted runs, eleven in twelve good over the three, a median at the target, a week on"
        " it.",
    ]
    await practise(live, {"noor": STEADY}, days=8)
    (late,) = await live.say("noor", "!ready 6")
    assert late.split("\n")[1] == (
        "Your last 3 counted runs: 24 of 24 good, median 2:41 for a target of 2:44, 8 days since the first. That is"
        " what a harder version asks."
    )
