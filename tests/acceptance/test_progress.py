"""What a demanding chef tries with the trend: too few runs, luck, speed at the cost of plates, other plates, a plateau.

Times without redos are their own net times; the figures of Full tide are the course's own (fixtures of the model).
"""

from collections.abc import Sequence
from datetime import timedelta

import pytest

from tests.chat import Chat

PAIRS = "!draft Four pairs\nplates 8\n1. 8 bean, pair, ring at half radius"
LEVEL = ("3:20 8/8", "3:17 8/8", "3:22 8/8", "3:19 8/8")
SPLITS = (" steps 1:10 1:20 0:50", " steps 1:09 1:18 0:50", " steps 1:11 1:21 0:50", " steps 1:10 1:19 0:50")


async def daily(chat: Chat, cook: str, lines: Sequence[str], *, days: int = 1) -> list[str]:
    """A first run every day, or every so many days, told in private; what the bot told them beside the results."""
    beside = []
    for line in lines:
        beside += (await chat.whisper(cook, line))[1:]
        await chat.wait(chat.now + timedelta(days=days))
    return beside


def figures(chat: Chat) -> dict[str, float | int | str | None]:
    """The numbers behind the answer before."""
    return dict(chat.heard[0].note.figures)


async def test_five_first_runs(live: Chat) -> None:
    """Five first runs are shown and nothing is called, however much faster; second runs of a day are not among them."""
    for clock in ("4:00", "3:50", "3:40", "3:30", "3:20"):
        await daily(live, "noor", [f"{clock} 8/8"], days=0)
        await daily(live, "noor", ["3:00 8/8"])
    assert await live.whisper("noor", "trend") == [
        "5 of 8 first runs. Too early to call.\n"
        "Rope coil, first run of the day: 4:00, 3:50, 3:40, 3:30, 3:20.\n"
        "Median 3:40."
    ]


async def test_real_progress(live: Chat) -> None:
    """1.6 % less a run from 3:41 comes to 3:11 at the tenth run (221 x 0.984^9 = 191) and 3:08 at the next (188)."""
    clocks = ("3:41", "3:37", "3:34", "3:31", "3:27", "3:24", "3:21", "3:17", "3:14", "3:11")
    await daily(live, "noor", [f"{clock} 8/8" for clock in clocks])
    (told,) = await live.whisper("noor", "trend")
    assert told.split("\n") == [
        "Rope coil, first run of the day, last 10: 3:41 to 3:11, about 1.6 % a run, two looks agree: real.",
        "Redo 0 % to 0 %: faster, as clean as before.",
        "The runs: 3:41, 3:37, 3:34, 3:31, 3:27, 3:24, 3:21, 3:17, 3:14, 3:11.",
        "Next run: about 3:07 to 3:08, four times in five.",
    ]


@pytest.mark.parametrize(
    ("earlier", "later", "verdict"),
    [
        ("3:30 7/8", "3:10 8/8", "Redo 12 % to 0 %: faster and cleaner."),
        ("4:00 8/8", "2:40 7/8", "Redo 0 % to 12 %: faster, more redos: hold the speed."),
        ("2:40 7/8", "4:00 8/8", "Redo 12 % to 0 %: slower but cleaner: good, keep it."),
        ("3:10 8/8", "3:30 7/8", "Redo 0 % to 12 %: slower, more redos: try a lighter week."),
    ],
)
async def test_speed_and_redo_together(live: Chat, earlier: str, later: str, verdict: str) -> None:
    """Five runs with 5 redos of 40 plates and five with none: one verdict on both, and nothing harder advised."""
    beside = await daily(live, "noor", [earlier] * 5 + [later] * 5)
    (told,) = await live.whisper("noor", "trend")
    assert told.split("\n")[1] == verdict
    assert "harder" not in told
    assert beside == []


async def test_both_looks_stand_behind_it(live: Chat) -> None:
    """Behind it are both looks: S of ten runs in falling order is -45, of the nine before -36, the chance 1 in 10!."""
    await daily(live, "noor", [f"{clock}s 8/8" for clock in range(221, 171, -5)])
    await live.whisper("noor", "trend")
    behind = figures(live)
    assert (behind["now.S"], behind["before.S"]) == (-45, -36)
    assert behind["now.p"] == pytest.approx(1 / 3_628_800)
    assert behind["now.shows"] == behind["before.shows"] == "faster"


async def test_luck(live: Chat) -> None:
    """Ten runs with no order in them: the median and no change, no percent a run."""
    await daily(live, "noor", ["3:20 8/8", "3:12 8/8", "3:26 8/8", "3:18 8/8", "3:09 8/8"] * 2)
    (told,) = await live.whisper("noor", "trend")
    speed, redo, *_ = told.split("\n")
    assert speed == "Rope coil, first run of the day, last 10: median 3:18, no change that can be told from luck."
    assert redo == "Redo 0 % to 0 %."
    assert "% a run" not in told


async def test_twelve_plates_changed_to_fourteen(chat: Chat) -> None:
    """Another number of plates is another set-up of the same spec: its own runs and best, and the trend carries on.

    8:30 on twelve plates, exactly at standard, stands as 9:50 on fourteen: 18 touches x 14 plates at standard.
    """
    await chat.say("ime", "!post now 11B")
    await chat.say("noor", "!join")
    await daily(chat, "noor", ["8:30 12/12"] * 4)
    await chat.say("ime", "!plates 14")
    (card, *_) = [text for text in await chat.say("ime", "b") if text.startswith("Full tide (drill 11D)")]
    assert "Standard 9:50." in card
    await daily(chat, "noor", ["9:40 14/14", "8:15 12/12 left 2"])
    (few,) = await chat.whisper("noor", "trend")
    assert few.split("\n") == [
        "6 of 8 first runs. Too early to call.",
        "Full tide, first run of the day: 9:50 (B), 9:50 (B), 9:50 (B), 9:50 (B), 9:40, 9:38*.",
        "Median 9:50.",
        "* a short run, scaled to the full set-up by its touches. (B) run on set-up B, carried over by levelled pace: "
        "standard 8:30 there, 9:50 here.",
    ]
    assert "8:30" not in (await chat.whisper("noor", "best 11D"))[0]


async def test_other_work_is_not_carried_over(chat: Chat) -> None:
    """A run under calls, or in another working order, never stands beside one without: each has a trend of its own."""
    await chat.say("ime", "!post now 11C")
    await chat.say("noor", "!join")
    for draft in (PAIRS, f"{PAIRS}\nworking plate"):
        await chat.say("ime", draft)
        await chat.say("ime", "!publish")
    await daily(chat, "noor", ["11C 11:20 14/14", "11B 8:30 12/12", "12A 1:20 8/8", "12A 1:21 8/8", "12B 1:15 8/8"])
    firsts = {label: (await chat.whisper("noor", f"trend {label}"))[0][:6] for label in ("11B", "11C", "12A", "12B")}
    assert firsts == {"11B": "1 of 8", "11C": "1 of 8", "12A": "2 of 8", "12B": "1 of 8"}


async def test_slowest_step(live: Chat) -> None:
    """With splits the step that costs most against standard in each of the last three runs is named."""
    await daily(live, "noor", [line + splits for line, splits in zip(LEVEL, SPLITS, strict=True)] * 2)
    (told,) = await live.whisper("noor", "trend")
    assert told.split("\n")[-1] == "Slowest against standard: the lean."


async def test_plateau(live: Chat) -> None:
    """Ten level, clean first runs over three weeks: a question with five answers, unasked only on becoming so."""
    beside = await daily(live, "noor", [*LEVEL, *LEVEL, *LEVEL], days=3)
    (question,) = beside
    assert question.split("\n") == [
        "Rope coil: your last 10 first runs stay within 3 %, 90 % of the plates or more good. Would one of these help?",
        "1. Change the working order: `order` compares them.",
        "2. Train the costliest step alone.",
        "3. Fewer plates with a tougher rule.",
        "4. A light week.",
        "5. A harder step.",
    ]
    assert (await live.whisper("noor", "trend"))[1:] == [question]
    assert (await live.whisper("noor", "trend"))[1:] == []
    await live.wait(live.now + timedelta(days=1))
    assert (await live.whisper("noor", "trend"))[1:] == [question]
