"""The quarter's board and the fitted difficulty: given where there is ground for them, frozen at the end."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.domain.fairness.fit import Fit
from tests.chat import COOKS, Chat
from tests.services.practice import practise

SIX = {
    "noor": ("3:02 8/8", "3:00 8/8", "2:58 8/8", "3:01 8/8"),
    "kwabena": ("3:22 8/8", "3:26 8/8", "3:20 8/8", "3:21 8/8"),
    "lio": ("3:50 8/8", "3:44 8/8", "3:41 8/8", "3:43 8/8"),
    "petra": ("5:20 8/8", "5:12 8/8", "5:05 8/8", "5:10 8/8"),
}
FIVE = {
    "noor": ("3:30 8/8", "3:26 8/8", "3:28 8/8", "3:29 8/8"),
    "kwabena": ("3:52 8/8", "3:56 8/8", "3:50 8/8", "3:51 8/8"),
    "lio": ("4:20 8/8", "4:14 8/8", "4:11 8/8", "4:16 8/8"),
    "petra": ("5:50 8/8", "5:42 8/8", "5:35 8/8", "5:38 8/8"),
}


async def two_weeks(chat: Chat) -> None:
    """Everybody runs drill 6 in one week and drill 5 in the next, watched."""
    await practise(chat, SIX)
    await chat.say("ime", "!post now 5")
    await practise(chat, FIVE)


async def fit_of(chat: Chat) -> Fit:
    """The fit as stored."""
    async with chat.stage.storage.begin() as work:
        fitted = await work.fits.get("!kitchen:tern.example", "2026-Q4")
    assert fitted
    assert fitted.fit
    return fitted.fit


async def test_one_drill_is_no_ground(live: Chat) -> None:
    """Sixteen runs by four cooks on one drill say nothing across drills; what is missing is told."""
    await practise(live, SIX)
    assert await live.say("noor", "!board quarter") == [
        "The computed standard stands. A pace across drills needs 15 counted runs by 4 cooks, 3 of whom also ran "
        "another drill. Missing: cooks who also run another drill."
    ]


async def test_the_board_is_a_band_and_shows_the_first_half(live: Chat) -> None:
    """Two of four are shown, each with a band that holds the fitted pace; the last reads their place alone."""
    await two_weeks(live)
    assert await live.say("kwabena", "!board quarter") == [
        "Quarter 4 of 2026 so far, levelled pace over all its drills\n"
        "1 Noor about 1.6 to 1.7; 2 Kwabena about 1.8 to 1.9"
    ]
    fit = await fit_of(live)
    pace = fit.levelled_s("@noor:tern.example", z=1.28)
    figures = live.heard[0].note.figures
    assert pace
    assert figures["quarter.1.levelled_s"] == pytest.approx(pace.value)
    assert figures["quarter.1.low_s"] == pytest.approx(pace.low)
    (private,) = await live.whisper("petra", "board quarter")
    assert private.endswith("\nYours: place 4, about 2.7 to 2.9 s a levelled touch, from 8 runs.")
    assert live.heard[0].note.figures["quarter.yours.place"] == 4


async def test_off_boards_is_off_this_one(live: Chat) -> None:
    """Who is off public boards is neither shown nor counted; three are left, of whom one is shown."""
    await two_weeks(live)
    await live.whisper("noor", "boards off")
    (text,) = await live.say("lio", "!board quarter")
    assert text.split("\n")[1:] == ["1 Kwabena about 1.8 to 1.9"]


async def test_why_shows_how_hard_the_runs_make_it(live: Chat) -> None:
    """The factor on the computed standard, its band, and what it is from; the figures are the stored fit's."""
    await two_weeks(live)
    (why,) = await live.whisper("noor", "why")
    figures = live.heard[0].note.figures
    factor, low, high = (figures[f"fitted.{name}"] for name in ("factor", "low", "high"))
    assert why.split("\n")[-1] == (
        f"Computed standard 3:07; the kitchen's runs say x {factor:.2f} ({low:.2f} to {high:.2f}), "
        "from 16 runs by 4 cooks."
    )
    async with live.stage.storage.begin() as work:
        published = await work.drills.find("!kitchen:tern.example", "5")
    assert published
    fitted = (await fit_of(live)).difficulty(published.set_up_id)
    assert fitted
    assert factor == pytest.approx(fitted.value)


async def test_why_says_that_the_computed_standard_stands(live: Chat) -> None:
    """With one run there is nothing more to say of the drill than what was computed, and what it would take."""
    await live.run("noor", "3:02 8/8")
    (why,) = await live.whisper("noor", "why")
    assert why.split("\n")[-1].startswith("The computed standard 2:44 stands. A fitted one still needs: 14 more runs")


async def test_a_closed_quarter_stays_as_it_closed(live: Chat) -> None:
    """In the next quarter the last board is shown, frozen: a run taken off after it changes nothing of it."""
    await two_weeks(live)
    (before,) = await live.say("noor", "!board quarter")
    await live.wait(datetime(2027, 1, 5, 12, tzinfo=UTC))
    (closed,) = await live.say("noor", "!board quarter")
    assert closed.split("\n")[0] == "Quarter 4 of 2026, closed: levelled pace over all its drills"
    assert closed.split("\n")[1:] == before.split("\n")[1:]
    await live.whisper("noor", "scrap")
    await live.wait(live.now + timedelta(hours=2))
    assert await live.say("noor", "!board quarter") == [closed]


async def test_no_common_ground_no_number(live: Chat) -> None:
    """Cooks who share no drill with the others have no place among them, and everybody is told so."""
    crew = {cook: SIX[cook] for cook in COOKS}
    await practise(live, crew)
    await live.say("ime", "!post now 5")
    await practise(live, {cook: FIVE[cook] for cook in COOKS})
    for stranger in ("anselm", "sunniva"):
        await live.stage.come("!kitchen:tern.example", f"@{stranger}:tern.example", stranger.capitalize())
        await live.say(stranger, "!join")
    await live.say("ime", "!post now 8")
    apart = ("3:20 10/10", "3:10 10/10", "3:14 10/10", "3:12 10/10", "3:11 10/10", "3:13 10/10")
    await practise(live, {"anselm": apart, "sunniva": apart[::-1]})
    (text,) = await live.say("noor", "!board quarter")
    assert text.split("\n")[-1] == (
        "Some share no cook and no drill with the others: no common ground yet, so no number across them."
    )
    (own,) = await live.whisper("anselm", "board quarter")
    assert own.split("\n")[-1].endswith("No place: your drills and the others' have no common ground yet.")
