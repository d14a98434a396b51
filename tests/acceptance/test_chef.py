"""What a demanding chef tries with drills and sums (numbers: the course's own figures, fixtures of the model)."""

from datetime import timedelta

import pytest

from bot.domain.pace import clock_text
from bot.domain.standard_time import reaches, standard_s
from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.words.drafting import read_draft
from tests.chat import COOKS, MORNING, Chat, kitchen

FULL_TIDE = "Full tide (drill 11B), 12 plates, 2 rows."
FOUR_PAIRS = "Four pairs\nplates 8\n1. 8 bean, pair, ring at half radius"
SLIPWAY = """!draft Slipway
plates 8 rows 2
1. 7 courgette, shingle, at 10-4
2. 1 tea jus, sauce, at 7
3. 1 rim, wipe
accept strip 2 mm, no drip"""
SLIPWAY_OTHERWISE = """!draft Cooks' way out
accept no drip, strip 2 mm
1. 7 zucchini, shingle, at 10 to 4
2. 1 brown sauce, sauce, at 7
3. 1 edge, wipe
rows 2
plates 8"""


async def _posted(chat: Chat, label: str) -> None:
    """A drill live, and the cooks counted in."""
    await chat.say("ime", f"!post now {label}")
    for cook in COOKS:
        await chat.say(cook, "!join")


async def test_full_tide_card(chat: Chat) -> None:
    """Full tide 2x6: 18 touches, 216 in the run, standard 8:30, one redo 1:25."""
    (card,) = await chat.say("noor", "!spec 11B")
    head, *lines = card.split("\n")
    assert head == FULL_TIDE
    assert "18 touches a plate, 216 in the run. Standard 8:30." in lines
    assert any(line.startswith("One redo costs about 1:25.") for line in lines)


async def test_four_pairs_by_both_hands(chat: Chat) -> None:
    """Four pairs set by both hands are 8 touches, told on the card, and 4 reaches."""
    (card,) = await chat.say("ime", f"!draft {FOUR_PAIRS}")
    assert "8 touches a plate, 64 in the run." in card
    seconds = load_seconds()
    assert reaches(read_draft(FOUR_PAIRS, seconds).spec, seconds) == 4


async def test_slower_clock_ranks_first(chat: Chat) -> None:
    """7:12 with 12 of 12 stands before 6:40 with 10 of 12, which is 9:11, and `why` shows the sum."""
    await _posted(chat, "11B")
    for cook, line in (
        ("noor", "6:40 10/12"),
        ("kwabena", "7:12 12/12"),
        ("lio", "10:40 12/12"),
        ("petra", "11:00 12/12"),
    ):
        await chat.run(cook, line)
    (board,) = await chat.say("lio", "!board fast")
    assert board.split("\n")[1] == "Fast: 1 Kwabena 7:12 (1 try); 2 Noor 9:11 (1 try)"
    (why,) = await chat.say("noor", "!why")
    assert why.split("\n") == [
        "Full tide, 6:40 = 400 s, 10 of 12 good.",
        "One redo: plate change 10 s + (one plate alone 67.7 s x your speed 400/509.9) = 63.11 s.",
        "2 redo x 12/10 for the chance of failing again x 63.11 s = 151.5 s. Net 400 + 151.5 = 551.5 s = 9:11.",
        "551.5 s / 216 touches = 2.55 s a touch.",
        "Standard 509.9 s / 1.5 = 339.9 levelled touches; 551.5 / 339.9 = 1.62 levelled.",
        "The computed standard 8:30 stands. A fitted one still needs: 11 more runs, cooks who also run another drill.",
    ]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("3:10 5/8", "Five clean plates kept. No time this run; try for six."),
        ("3:10 1/8", "One clean plate kept. No time this run; try for six."),
        ("3:10 0/8", "Kept, without a time: no plate passed this run. Try for 6 good plates."),
    ],
)
async def test_too_few_for_a_time(live: Chat, line: str, told: str) -> None:
    """Under six of eight there is no time and no fault, said kindly; `why` says why."""
    assert await live.say("noor", line) == [told]
    (why,) = await live.say("noor", "!why")
    assert why.endswith("Fewer than 6 of 8 good: a count, no time.")


async def test_a_cook_at_standard(chat: Chat) -> None:
    """At standard every drill shows 1.50 levelled, while the plain pace runs from 1.34 to 5.37.

    Clocks are whole seconds, so the levelled pace may lie half a second's worth beside 1.50.
    """
    await chat.say("noor", "!join")
    paces = []
    for day, drill in enumerate(load_course()[:12]):
        plates = drill.set_up.plates
        standard = clock_text(standard_s(drill.spec, drill.set_up, load_seconds()))
        at = MORNING + timedelta(days=day, hours=1)
        await chat.say("noor", f"{drill.number}{drill.letter} {standard} {plates}/{plates}", at=at)
        figures = chat.heard[0].note.figures
        standard_seconds, levelled = float(figures["standard_s"] or 0), float(figures["levelled_s"] or 0)
        assert abs(levelled - 1.5) <= 1.5 * 0.5 / standard_seconds
        paces.append(standard_seconds / int(figures["touches"] or 0))
    assert (f"{min(paces):.2f}", f"{max(paces):.2f}") == ("1.34", "5.37")


async def test_technique_changed_bests_stay(live: Chat) -> None:
    """A live spec whose technique changes is a new spec; bests of the old one stay with it."""
    await live.run("noor", "3:20 8/8")
    (asked,) = await live.say("ime", "!step 3 4 oil, dot, right edge")
    assert "so it is a new drill (12), not 6." in asked
    await live.say("ime", "b")
    await live.run("noor", "3:30 8/8")
    (bests,) = await live.say("noor", "!best")
    assert bests.split("\n") == [
        "Rope coil: 3:20, Monday 23 November, 8 of 8.",
        "Rope coil: 3:30, Monday 23 November, 8 of 8.",
    ]


async def test_wording_changed_bests_stay(chat: Chat) -> None:
    """Another name for the same work and layout is the same drill in another wording: bests stay."""
    await chat.say("ime", SLIPWAY)
    await chat.say("ime", "!publish")
    await _posted(chat, "12")
    await chat.run("noor", "3:20 8/8")
    await chat.say("ime", SLIPWAY.replace("Slipway", "Launching ramp"))
    assert (await chat.say("ime", "!publish"))[0].startswith("Published as drill 12, Launching ramp.")
    assert await chat.say("noor", "!best") == ["Launching ramp: 3:20, Monday 23 November, 8 of 8."]


async def test_plates_changed(chat: Chat) -> None:
    """Twelve plates changed to sixteen: the same spec, a new set-up, a new board, and bests of its own."""
    await _posted(chat, "11B")
    for cook in COOKS:
        await chat.run(cook, "8:40 12/12")
    assert (await chat.say("ime", "!plates 16"))[0].startswith(
        "That changes the work by +31.5 %: still drill 11, but a new set-up with its own bests and boards."
    )
    await chat.say("ime", "b")
    assert (await chat.say("lio", "!board"))[0].split("\n")[0] == "Full tide, this week, open until Monday 05:00"
    assert "No board yet." in (await chat.say("lio", "!board"))[0]
    (told,) = await chat.say("noor", "11:10 16/16")
    assert "s a touch" in told
    (bests,) = await chat.say("noor", "!best")
    assert "8:40" in bests
    assert "11:10" in bests


async def test_same_work_by_another_chef_is_recognised() -> None:
    """The same spec typed by another chef, its fields in another order and its stand-ins renamed, is recognised."""
    async with kitchen(people=("ime", "bastian")) as chat:
        await chat.stage.set_state(
            "!kitchen:tern.example",
            "@ime:tern.example",
            "m.room.power_levels",
            {"users": {"@ime:tern.example": 100, "@bastian:tern.example": 50}},
        )
        await chat.say("ime", SLIPWAY)
        await chat.say("ime", "!publish")
        (card,) = await chat.say("bastian", SLIPWAY_OTHERWISE)
        assert "This is drill 12." in card.split("\n")
