"""Steps taken or asked about, and a word when a drill is too much or a week is light.

Rope coil has eight plates and three steps (twirl, lean, bead); its figures are fixtures of the project's own model.
"""

import pytest

from tests.chat import MORNING, Chat
from tests.services.practice import DAY, HOUR, WEEK

OFF_CLOCK = (
    "The steps make 3:12 and the clock says 3:02. Which is right? `3:02` keeps the run without its steps, `3:12` takes"
    " that for the clock; or send the steps again."
)
OTHER_NUMBER = (
    "Drill 6 has 3 steps and I read 2 of their times. Send them again, like `steps 0:41 0:33`, or `yes` to keep the run"
    " without them."
)


async def test_steps_that_make_the_clock_are_kept_without_a_word(live: Chat) -> None:
    """Within two seconds of the clock nothing is asked, and the answer is the usual line."""
    assert await live.say("noor", "3:02 8/8 steps 1:35 0:43 0:46") == [
        "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."
    ]


@pytest.mark.parametrize(
    ("answer", "heard"),
    [("3:02", "Heard. 3:02"), ("3:12", "Heard. 3:12"), ("steps 1:33 0:43 0:46", "Heard. 3:02"), ("yes", "Heard. 3:02")],
)
async def test_steps_off_the_clock_are_asked_about_once(live: Chat, answer: str, heard: str) -> None:
    """Nothing is kept before the answer: either clock, the steps again, or yes."""
    assert await live.say("noor", "3:02 8/8 steps 1:35 0:49 0:48") == [OFF_CLOCK]
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]
    (kept,) = await live.say("noor", answer)
    assert kept.startswith(heard)


@pytest.mark.parametrize("answer", ["yes", "steps 1:35 0:41 0:46"])
async def test_steps_of_another_number_are_asked_about(live: Chat, answer: str) -> None:
    """Two times for three steps: the run is held until the steps are sent again or left out."""
    assert await live.say("noor", "3:02 8/8 steps 1:35 1:27") == [OTHER_NUMBER]
    (kept,) = await live.say("noor", answer)
    assert kept.startswith("Heard. 3:02, 8 of 8.")


async def test_waves_have_no_steps(chat: Chat) -> None:
    """Where the row is not worked a step at a time, the steps are said to mean nothing and the run may stand alone."""
    await chat.say("ime", "!post now 11C")
    await chat.say("noor", "!join")
    (asked,) = await chat.say("noor", "11:00 14/14 steps 5:00 6:00")
    assert asked.startswith(
        "Steps are kept of a row worked one step at a time and without calls, which drill 11C is not."
    )
    (kept,) = await chat.say("noor", "yes")
    assert kept.startswith("Heard. 11:00")


async def test_an_edit_that_puts_the_steps_off_the_clock_is_asked_about(live: Chat) -> None:
    """The run stands as it was until the question is answered."""
    await live.say("noor", "3:02 8/8 steps 1:35 0:43 0:46")
    asked = await live.edit("noor", live.last, "3:02 8/8 steps 1:35 0:49 0:48")
    assert asked == [OFF_CLOCK]


async def test_two_poor_runs_of_three_bring_a_kind_word_in_private_once_a_day(live: Chat) -> None:
    """Under three quarters good twice: one suggestion to the cook alone, and none more that day."""
    await live.say("petra", "3:10 5/8")
    told = await live.say("petra", "3:12 5/8")
    assert live.told("petra") == [told[-1]]
    assert told[-1] == (
        "Two of your last three runs on Rope coil had under three quarters good. For the next ones let the clock be"
        " and aim for 6 of 8."
    )
    await live.say("petra", "3:13 5/8")
    assert live.told("petra") == []
    await live.say("petra", "3:14 5/8", at=live.now + DAY)
    assert len(live.told("petra")) == 1


async def test_two_stopped_runs_bring_fewer_plates(live: Chat) -> None:
    """Both in private, as stopped runs are."""
    await live.say("petra", "1:10 stopped 3")
    await live.say("petra", "1:12 stopped 3")
    assert live.told("petra")[-1] == (
        "Two of your last three runs on Rope coil were stopped. Build 4 of the 8 next, at an easy pace, and send the"
        " others as `left 4`."
    )


async def test_the_card_of_a_light_week_says_so(chat: Chat) -> None:
    """The fifth Monday's post, and neither the one before it nor the one after."""
    await chat.say("ime", "!post 6 mon 15:00")
    light = []
    for week in range(6):
        posted = await chat.wait(MORNING + week * WEEK + 7 * HOUR)
        light.append(
            any("A light week: short, tidy, no board. 4 of the 8 plates are enough" in text for text in posted)
        )
    assert light == [False, False, False, False, True, False]
