"""What a demanding chef tries with boards: a beginner is never shown last and may head the one that counts."""

from datetime import timedelta

from tests.chat import COOKS, MORNING, Chat


async def _week(chat: Chat, first_clocks: dict[str, int]) -> list[str]:
    """A week of Rope coil, watched: three runs of each cook from so many seconds on; the lines told at its closing."""
    await chat.say("ime", "!post now 6")
    for cook, seconds in first_clocks.items():
        for more in (4, 0, 2):
            await chat.run(cook, f"{seconds + more}s 8/8")
    told = await chat.wait(chat.now + timedelta(days=7))
    return next(text for text in told if "the week is closed" in text).split("\n")


async def test_a_beginner_heads_the_headline_and_is_nowhere_last(live: Chat) -> None:
    """Petra is the slowest of four in both weeks: no public line shows her last, and the headline has her first."""
    others = {"noor": 180, "kwabena": 200, "lio": 228}
    first = await _week(live, {**others, "petra": 330})
    assert not any("Petra" in line for line in first)
    await live.wait(MORNING + timedelta(weeks=1))
    second = await _week(live, {**others, "petra": 275})
    assert second[1] == "Against their own expected time: 1 Petra 17 % faster"
    assert not any("Petra" in line for line in second[2:])


async def test_the_closing_message_is_six_short_lines(live: Chat) -> None:
    """A week with every board is told in a head, four boards and the house."""
    await _week(live, dict.fromkeys(COOKS, 200))
    await live.wait(MORNING + timedelta(weeks=1))
    lines = await _week(live, dict(zip(COOKS, (200, 170, 220, 250), strict=True)))
    assert [line.split(":")[0] for line in lines] == [
        "Rope coil",
        "Against their own expected time",
        "Fast",
        "Steady",
        "Clean",
        "House",
    ]
