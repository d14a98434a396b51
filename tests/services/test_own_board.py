"""The headline board and what goes with it: one's own expected time, the house, off boards, frozen and light weeks."""

from datetime import timedelta

import pytest

from tests.chat import COOKS, MORNING, Chat, kitchen

FIRST = {"noor": "3:02 3:06", "kwabena": "3:22 3:26", "lio": "3:50 3:54", "petra": "5:20 5:40"}
"""A first week: each cook's clocks, all plates good."""
SECOND = {"noor": "3:04 3:06", "kwabena": "3:24 3:26", "lio": "3:52 3:54", "petra": "4:40 4:30"}
"""A second in which Petra alone is far from the middle of the first."""


async def run_week(chat: Chat, clocks: dict[str, str], label: str = "6", plates: str = "8/8") -> dict[str, list[str]]:
    """Post the drill and let the cooks run it, watched; each cook's runs."""
    await chat.say("ime", f"!post now {label}")
    return {
        cook: [await chat.run(cook, f"{clock} {plates}") for clock in theirs.split()] for cook, theirs in clocks.items()
    }


async def next_week(chat: Chat, nth: int) -> list[str]:
    """Nine o'clock on the nth Monday after the first; what was said till then."""
    return await chat.wait(MORNING + timedelta(weeks=nth))


async def board(chat: Chat, who: str = "noor", word: str = "!board own") -> list[str]:
    """The lines of a board, its head left out."""
    (text,) = await chat.say(who, word)
    return text.split("\n")[1:]


async def own(chat: Chat, who: str) -> list[str]:
    """What a cook is told of their own place on the headline board, in private."""
    (text,) = await chat.whisper(who, "board own")
    return [line for line in text.split("\n")[1:] if not line.startswith("Against")]


async def test_a_first_week_has_nothing_to_compare_with(live: Chat) -> None:
    """There is no headline board yet, and the house's line names no share."""
    await run_week(live, FIRST)
    assert await board(live) == [
        "No board against their own yet. It needs three cooks with watched runs and earlier ones to compare with."
    ]
    assert await board(live, word="!board house") == ["House: 64 clean plates."]


async def test_own_expected_time_with_its_sum(live: Chat) -> None:
    """Petra alone is shown, and is told in private what was expected: the middle of 5:20 and 5:40, sqrt(320 x 340)."""
    await run_week(live, FIRST)
    await next_week(live, 1)
    await run_week(live, SECOND)
    assert await board(live) == ["Against their own expected time: 1 Petra 17 % faster"]
    assert await own(live, "petra") == [
        "Yours on own: place 1, 17 % faster.",
        "4:35; expected 5:30, the middle of your last 2 runs on this drill.",
    ]
    figures = live.heard[0].note.figures
    assert figures["own.yours.actual_s"] == pytest.approx((280 * 270) ** 0.5)
    assert figures["own.yours.expected_s"] == pytest.approx((320 * 340) ** 0.5)
    assert await board(live, word="!board house") == [
        "House: 25 % of cooks within their own expected time, 64 clean plates."
    ]


async def test_a_new_drill_is_met_with_ones_usual_ratio(live: Chat) -> None:
    """On Slipway, standard 3:07, everybody is measured by their own ratio and by what it took the others."""
    await run_week(live, FIRST)
    await next_week(live, 1)
    await run_week(live, {"noor": "3:30", "kwabena": "3:55", "lio": "4:25", "petra": "5:00"}, "5")
    place, expected = await own(live, "petra")
    assert place == "Yours on own: place 1, 20 % faster."
    assert expected == "5:00; expected 6:17: standard 3:07 x your usual 2.005 x 1.008 as the others found it."


async def test_slow_weeks_loosen_little(live: Chat) -> None:
    """After a week at 4:40 Noor is expected at 2 % more than the 3:04 of before, and told so."""
    await run_week(live, FIRST)
    await next_week(live, 1)
    await run_week(live, {"noor": "4:40 4:42 4:44"})
    await next_week(live, 2)
    await run_week(live, {"noor": "3:02"})
    assert (await own(live, "noor"))[1] == "3:02; expected 3:08, which grows by 2 % a week at most."


async def test_the_fit_is_that_of_the_weeks_before(live: Chat) -> None:
    """With runs enough the expected time is fitted, and no run of the week itself moves it."""
    await run_week(live, {cook: " ".join([theirs, theirs]) for cook, theirs in FIRST.items()})
    await next_week(live, 1)
    await run_week(live, {"noor": "3:04"})
    _, before = await own(live, "noor")
    assert before.endswith(", fitted from your earlier runs.")
    expected_s = live.heard[0].note.figures["own.yours.expected_s"]
    await live.run("kwabena", "2:20 8/8")
    await live.wait(live.now + timedelta(days=1))
    await own(live, "noor")
    assert live.heard[0].note.figures["own.yours.expected_s"] == expected_s


async def test_off_boards_and_on_again(live: Chat) -> None:
    """Who is off is in no public line and in no half, sees their own in private, and comes back with one word."""
    await run_week(live, {"noor": "3:02", "kwabena": "3:20", "lio": "3:40", "petra": "4:10"})
    assert await live.say("noor", "!boards off") == live.told("noor") != []
    assert await board(live, word="!board fast") == ["Fast: 1 Kwabena 3:20 (1 try)"]
    (text,) = await live.whisper("noor", "board fast")
    assert text.split("\n")[1:] == ["Fast: 1 Kwabena 3:20 (1 try)", "Yours on fast: place 1, 3:02 (1 try)."]
    (best,) = await live.whisper("noor", "best")
    assert "3:02" in best
    assert await live.whisper("noor", "boards on") == ["You are on public boards again."]
    assert await board(live, word="!board fast") == ["Fast: 1 Noor 3:02 (1 try); 2 Kwabena 3:20 (1 try)"]
    assert await live.whisper("noor", "boards") == ["Send `boards off` or `boards on`."]


async def test_a_closed_board_is_read_as_it_stood(live: Chat) -> None:
    """Later runs change nothing of it; a later deletion does, and it then reads as the correction said."""
    runs = await run_week(live, {"noor": "3:02", "kwabena": "3:20", "lio": "3:40", "petra": "4:10"})
    closed = (await next_week(live, 1))[-1].split("\n")[1]
    assert closed == "Fast: 1 Noor 3:02 (1 try); 2 Kwabena 3:20 (1 try)"
    for clock in ("2:10", "3:50", "2:10", "3:50", "2:10"):
        await live.run("lio", f"{clock} 8/8")
    assert (await board(live, word="!board"))[0] == closed
    *_, correction = await live.delete("noor", runs["noor"][0])
    corrected = "Fast: 1 Kwabena 3:20 (1 try)"
    assert corrected in correction
    assert corrected in await board(live, word="!board")
    await live.say("kwabena", "!boards off")
    assert "Fast: 1 a cook 3:20 (1 try)" in await board(live, word="!board")


async def test_a_change_before_the_closing_is_told_is_in_what_is_told(live: Chat) -> None:
    """A board closed at five and told at nine is told with the deletion of seven o'clock, and no correction follows."""
    runs = await run_week(live, {"noor": "3:02", "kwabena": "3:20", "lio": "3:40", "petra": "4:10"})
    await live.wait(MORNING + timedelta(weeks=1, hours=-2))
    assert await live.delete("noor", runs["noor"][0]) == ["Corrected: Noor has no witnessed best on Rope coil now."]
    (told,) = await next_week(live, 1)
    assert "Fast: 1 Kwabena 3:20 (1 try)" in told.split("\n")


async def test_a_light_week_has_no_board_but_the_house() -> None:
    """In the fifth week nobody is ranked, not while it is open and not when it is closed."""
    async with kitchen() as chat:
        await next_week(chat, 4)
        for cook in COOKS:
            await chat.say(cook, "!join")
        await run_week(chat, {"noor": "3:02", "kwabena": "3:20", "lio": "3:40"})
        light = ["A light week: short, tidy, no board.", "House: 24 clean plates."]
        assert await board(chat, word="!board") == light
        assert (await next_week(chat, 5))[-1].split("\n")[1:] == light
