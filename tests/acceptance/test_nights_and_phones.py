"""When it was run: after midnight, on the night the clocks go back, from a phone that was offline, in any digits.

The night of the clock change in Berlin, 2026-10-25: 03:00 summer time is 02:00 winter time at 01:00 UTC (IANA time
zone database, Europe/Berlin).
"""

from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from tests.chat import KITCHEN, MORNING, Chat, kitchen
from tests.database import tables_in

BERLIN = "Europe/Berlin"
FIRST_HALF_PAST_TWO = datetime(2026, 10, 25, 0, 30, tzinfo=UTC)
SECOND_HALF_PAST_TWO = datetime(2026, 10, 25, 1, 30, tzinfo=UTC)


async def test_clocks_go_back() -> None:
    """Two runs at "02:30" on that night, with the same words, are both kept without being asked about."""
    for instant in (FIRST_HALF_PAST_TWO, SECOND_HALF_PAST_TWO):
        assert f"{instant.astimezone(ZoneInfo(BERLIN)):%H:%M}" == "02:30"
    async with kitchen(start=datetime(2026, 10, 24, 9, 0, tzinfo=UTC), zone=BERLIN) as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        for instant in (FIRST_HALF_PAST_TWO, SECOND_HALF_PAST_TWO):
            (heard,) = await chat.say("noor", "at 02:30 3:31 8/8", at=instant + timedelta(minutes=1))
            assert heard.startswith("Heard. 3:31, 8 of 8.")


async def test_a_phone_offline(tmp_path: Path) -> None:
    """Sent 50 minutes late with `at 14:38`: the clock is as typed, the time of the run as said."""
    file = tmp_path / "platepace.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        sent = datetime(2026, 11, 23, 15, 28, tzinfo=UTC)
        (heard,) = await chat.say("noor", "at 14:38 3:02 8/8", at=sent)
        assert heard == "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."
        (run,) = tables_in(file)["run"]
        assert str(run["ran_at"]).replace("T", " ").startswith("2026-11-23 14:38")
        assert str(run["sent_at"]).replace("T", " ").startswith("2026-11-23 15:28")


async def test_the_night_before_the_day_turn_is_last_week(live: Chat) -> None:
    """Monday 02:10 where the day turns at 07:00 belongs to the week before, for its board too."""
    await live.say("ime", "!dayturn 07:00")
    await live.run("noor", "3:31 8/8", at=datetime(2026, 11, 30, 2, 10, tzinfo=UTC))
    closed = await live.wait(datetime(2026, 11, 30, 9, 1, tzinfo=UTC))
    assert "Together: 8 good plates." in closed[0]


async def test_late_to_a_closed_board(live: Chat) -> None:
    """A run dated in a week whose board is closed is kept for trend and bests, not for that board."""
    tuesday = datetime(2026, 12, 1, 10, 0, tzinfo=UTC)
    (heard,) = await live.say("noor", "3:02 8/8", at=tuesday)
    assert heard == "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled. Kept; that board is closed."


@pytest.mark.parametrize(
    "typed", ["8:05", "8m05", "8'05\"", "485s", "8 05", "٨:٠٥", "۸:۰۵", "৮:০৫", "८:०५", "８：０５", "8’05”"]
)
async def test_read_as_8_05(live: Chat, typed: str) -> None:
    """Every way of writing eight minutes five is heard as 8:05."""
    assert (await live.say("noor", f"{typed} 8/8"))[0].startswith("Heard. 8:05, 8 of 8.")


@pytest.mark.parametrize("typed", ["8.05", "8,05"])
async def test_asked_about(live: Chat, typed: str) -> None:
    """A point or comma may be decimals: it is asked about and nothing is stored."""
    assert await live.say("noor", f"{typed} 8/8") == ["Is that 8 min 5 s or 8.05 minutes? Send `8:05` or `8:03`."]
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("8:65 8/8", "`8:65` cannot be a clock: minutes and seconds go from 00 to 59. Send it again, like `8:05`."),
        ("at 25:00 3:32 8/8", "I could not read 25:00 as a time of day; write it like `at 02:10`."),
        ("3:20 8", ""),
        ("3:20 redo 9", "Good, redo and left have to make 8 plates together; send the count again, like `3:20 8/8`."),
    ],
)
async def test_what_cannot_be_is_refused(live: Chat, line: str, told: str) -> None:
    """One sentence says what to send, or silence where it is no result; nothing is stored."""
    assert await live.say("noor", line) == ([told] if told else [])
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


async def test_forty_lines_after_three_hours_off() -> None:
    """Forty lines that came while the bot was off are each taken once, in order; the weekly post comes once, late."""
    async with kitchen() as chat:
        await chat.say("ime", "!post 6 mon 10:00")
        await chat.say("noor", "!join")
        chat.stage.now = MORNING + timedelta(hours=4)
        posted = await chat.away(chat.now)
        assert [text.split(",")[0] for text in posted] == ["(late) Rope coil (drill 6)"]
        heard = [await chat.say("noor", f"{180 + nth}s 8/8", at=chat.now) for nth in range(40)]
        assert [answer[0].split(",")[0] for answer in heard] == [
            f"Heard. {(180 + nth) // 60}:{(180 + nth) % 60:02d}" for nth in range(40)
        ]
        assert {said.room_id for said in chat.heard} == {KITCHEN}
