"""The same twelve photos to every judge, and a cook's own count against the judges'."""

from tests.chat import Chat
from tests.services.photos import picture, shown_run


async def _twelve_photos(chat: Chat) -> None:
    """Three cooks' captioned pictures, four each."""
    for nth in range(4):
        for cook in ("noor", "kwabena", "lio"):
            await picture(chat, cook, text=f"3:2{nth} 8/8")


async def test_the_check_of_judges(judges: Chat) -> None:
    """Every judge answers the same twelve photos in one line; each two are told how often and how far beyond chance.

    By hand (R, Cohen 1960): both yes 8, both no 2, each alone yes 1: 10 of 12 alike; by chance (81 + 9) / 144 = 0.625;
    (0.8333 - 0.625) / 0.375 = 0.56.
    """
    await judges.whisper("ime", "check start")
    assert judges.told("ime") == ["A check needs 12 photos of the last month; there are 0."]
    await _twelve_photos(judges)
    await judges.whisper("ime", "check start")
    (shown,) = await judges.whisper("bastian", "check")
    assert len(shown.splitlines()) == 13
    (alone,) = await judges.whisper("bastian", "check ++++++++ -- + -")
    assert alone.startswith("Kept. No other judge has answered yet")
    told = ["Bastian and Petra: 10 of 12 alike (83 %). Kappa 0.56."]
    assert await judges.whisper("petra", "check ++++++++ -- - +") == told
    assert await judges.whisper("bastian", "check") == told
    assert await judges.whisper("ime", "check") == told


async def test_judges_who_accept_everything(judges: Chat) -> None:
    """Where both accept every plate kappa is undefined, and that is said."""
    await _twelve_photos(judges)
    await judges.whisper("ime", "check start")
    await judges.whisper("bastian", f"check {'+' * 12}")
    assert await judges.whisper("petra", f"check {'+' * 12}") == [
        "Bastian and Petra: 12 of 12 alike (100 %). Kappa undefined: both said the same of every photo."
    ]


async def test_answers_that_are_none(judges: Chat) -> None:
    """Too few signs, other words, no check, and people who do not judge are told what to send or whose it is."""
    assert (await judges.whisper("petra", "check"))[0].startswith("No check of judges is open.")
    await _twelve_photos(judges)
    await judges.whisper("ime", "check start")
    assert await judges.whisper("petra", "check ++-") == ["I read 3 signs; there are 12 photos. Send the line again."]
    assert (await judges.whisper("petra", "check yes no"))[0].startswith("Answer with twelve signs")
    assert (await judges.whisper("lio", "check"))[0].startswith("That word is for judges.")
    assert await judges.whisper("petra", "check start") == ["That word is the chef's."]


async def test_own_count_against_the_judges(judges: Chat) -> None:
    """From five judged runs on a cook is told in private what was sent as good and what judges found; not before."""
    for nth in range(5):
        (why,) = await judges.whisper("noor", "why") if nth else ("",)
        assert "judged runs" not in why
        run = await shown_run(judges, line=f"3:2{nth} 8/8")
        await judges.say("bastian", "7 good" if nth < 2 else "agree", reply=run)
    (why,) = await judges.whisper("noor", "why")
    assert why.endswith("In 5 judged runs you sent 40 plates as good; the judges found 38 of them good.")
