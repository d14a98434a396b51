"""What to practise next: the course, what steps and redo reasons tell, and nothing that is not known.

Rope coil has eight plates and three steps (twirl, lean, bead); its figures are fixtures of the project's own model.
"""

from tests.chat import KITCHEN, Chat, rope_coil, user
from tests.services.practice import DAY, practise

LEANING = ("2:50 8/8 steps 1:25 0:46 0:39", "2:52 8/8 steps 1:26 0:49 0:37", "2:51 8/8 steps 1:26 0:47 0:38")
"""The lean has 37.9 s of standard time and took 46, 49 and 47: 8.1 s over it each time."""


async def test_next_is_one_drill_and_one_reason(live: Chat) -> None:
    """In private: the drill at the cook's level, what is lost on it every time, and the step beside its usual."""
    await practise(live, {"noor": LEANING}, days=3)
    (told,) = await live.say("noor", "!next")
    assert live.told("noor") == [told]
    assert told.split("\n") == [
        "Rope coil, 8 plates. The lean cost you 8 s or more over standard in each of your last 3 runs with steps.",
        "The lean in your last steps on Rope coil: 5.88 s a touch; your usual 5.88, standard 4.74.",
    ]
    figures = live.heard[0].note.figures
    assert (figures["technique"], figures["quarter_s"]) == ("lean", None)
    assert round(float(str(figures["lost_s"])), 1) == 8.1


async def test_next_singles_nothing_out_of_even_runs(live: Chat) -> None:
    """Three runs with every step within two seconds of standard: nothing is asked for and nothing made up."""
    await practise(live, {"noor": ("2:45 8/8 steps 1:27 0:38 0:40",) * 3}, days=3)
    assert await live.say("noor", "!next") == [
        "By your steps no technique cost over 2 s more than standard three times running, and no redo reason came"
        " twice: nothing to single out."
    ]


async def test_the_quickest_quarter_is_told_where_five_people_sent_steps() -> None:
    """Five cooks lean at 40, 42, 44, 46 and 47 s a row of eight: the quarter is the second of them, 5.25 s a touch."""
    cooks = ("noor", "kwabena", "lio", "petra", "anselm")
    async with rope_coil(cooks=()) as chat:
        await chat.stage.come(KITCHEN, user("anselm"), "Anselm")
        for cook in cooks:
            await chat.say(cook, "!join")
        for cook, lean in zip(cooks[1:], (40, 42, 44, 46), strict=True):
            await chat.run(cook, f"2:50 8/8 steps 1:26 0:{lean} 0:{84 - lean}")
        await practise(chat, {"noor": LEANING}, days=3)
        (told,) = await chat.say("noor", "!next")
    assert told.endswith("your usual 5.88, standard 4.74, the quickest quarter of the house 5.25.")


async def test_next_hears_a_reason_that_comes_twice(live: Chat) -> None:
    """`fell` in two of three runs is of the lean; once is not enough to say anything."""
    await live.run("noor", "2:50 7/8 fell")
    (asked,) = await live.say("noor", "!next")
    assert asked.startswith("I cannot say yet. It takes steps with three runs (so far 0 of 3)")
    await live.run("noor", "2:51 8/8")
    await live.run("noor", "2:52 7/8 fell")
    assert await live.say("noor", "!next") == [
        "Rope coil, 8 plates. `fell` came with 2 of your last 3 runs, and is of the lean."
    ]


async def test_next_says_when_nothing_within_reach_trains_it(live: Chat) -> None:
    """Since the lean was lost on Rope coil the level is Harbour clock's, 1:09, where no drill has a lean."""
    await practise(live, {"noor": LEANING}, days=3)
    for line in ("1 1:20 8/8", "1 1:19 8/8", "1 1:18 8/8"):
        await live.say("noor", line)
    (told,) = await live.say("noor", "!next")
    assert told.split("\n")[:2] == [
        "The lean cost you 8 s or more over standard in each of your last 3 runs with steps.",
        "No drill here with the lean is near your level: 0.8 to 1.3 times 1:09 of standard time.",
    ]


async def test_a_newcomer_is_led_through_the_course(live: Chat) -> None:
    """Who has run nothing begins with drill 1; a commis stays in the course, by their own weeks, two on drill 5."""
    assert await live.say("petra", "!next") == [
        "Harbour clock, 8 plates. The course comes to it: week 1 of 1 on this drill."
    ]
    await live.say("ime", "!role petra commis")
    for drill in (1, 2, 3, 4, 5):
        await live.say("petra", f"{drill} 3:30 8/8", at=live.now + DAY)
    assert await live.say("petra", "!next") == ["Slipway, 8 plates. The course comes to it: week 2 of 2 on this drill."]
