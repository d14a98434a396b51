"""What a demanding chef tries with days, nights, lost signal and a bot that was off."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.services.ports.events import Message
from tests.chat import KITCHEN, MORNING, Chat, kitchen, rope_coil, user

MONDAY_NIGHT = datetime(2026, 11, 30, 2, 10, tzinfo=UTC)


async def _full_tide(chat: Chat) -> None:
    """Full tide of twelve live, four cooks counted in."""
    await chat.say("ime", "!post now 11B")
    for cook in ("noor", "kwabena", "lio", "petra"):
        await chat.say(cook, "!join")


async def test_monday_night_is_last_week(live: Chat) -> None:
    """Monday 02:10 where the day turns at 07:00 is last week's board; 07:10 is too late for it."""
    await live.say("ime", "!dayturn 07:00")
    (counted,) = await live.say("noor", "3:31 8/8", at=MONDAY_NIGHT)
    assert counted.endswith("Sunday night's kitchen day, last week's board (open until 07:00). Counted.")
    (kept,) = await live.say("noor", "3:32 8/8", at=MONDAY_NIGHT + timedelta(hours=5))
    assert kept.endswith("Kept; that board is closed.")


async def test_the_hour_that_comes_twice() -> None:
    """Two runs at "02:30" on the night the clocks go back are both kept, and the drill is posted once.

    IANA time zone database: Berlin's clocks went from 03:00 back to 02:00 on 25 October 2026, at 01:00 UTC.
    """
    async with kitchen(start=datetime(2026, 10, 24, 12, 0, tzinfo=UTC), zone="Europe/Berlin") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("ime", "!post 5 sun 02:30")
        await chat.say("noor", "!join")
        first = await chat.say("noor", "3:20 8/8", at=datetime(2026, 10, 25, 0, 30, tzinfo=UTC))
        second = await chat.say("noor", "3:21 8/8", at=datetime(2026, 10, 25, 1, 30, tzinfo=UTC))
        assert [text[:11] for text in (*first, *second)] == ["Heard. 3:20", "Heard. 3:21"]
        assert await chat.say("noor", "!scrap") == ["Your 02:30 run is off. `undo` puts it back."]
        assert await chat.say("noor", "!scrap") == ["Your 02:30 run is off. `undo` puts it back."]
        posted = await chat.wait(datetime(2026, 10, 26, 12, 0, tzinfo=UTC))
        assert [text.startswith("Slipway (drill 5)") for text in posted].count(True) == 1


async def test_a_phone_without_signal(live: Chat) -> None:
    """A line that arrives 50 minutes late keeps its clock and its `at`; nothing is derived from when it came."""
    sent = Message(
        event_id="$walk-in",
        room_id=KITCHEN,
        sender=user("noor"),
        sent_at=live.now + timedelta(minutes=1),
        text="3:02 8/8 at 09:02",
    )
    await live.wait(live.now + timedelta(minutes=51))
    answer, _ = await live.stage.take_now(sent)
    assert answer.note.text.startswith("Heard. 3:02, 8 of 8. 3.25 s a touch")
    await live.say("noor", "3:12 8/8 at 09:01")
    (trend,) = await live.say("noor", "!trend")
    assert "first run of the day: 3:12." in trend


async def test_a_bot_that_was_off() -> None:
    """Forty messages of three hours come at once, some of them twice: each result is taken once, in order, talk not."""
    async with rope_coil() as chat:
        cooks = ("noor", "kwabena", "lio", "petra")
        missed = [
            Message(
                event_id=f"$missed{nth}",
                room_id=KITCHEN,
                sender=user(cooks[nth % 4]),
                sent_at=chat.now + timedelta(minutes=4 * nth),
                text=f"3:{10 + nth} 8/8" if nth % 3 else "the fish is late",
            )
            for nth in range(40)
        ]
        await chat.away(chat.now + timedelta(hours=3))
        heard = await chat.stage.take_now(*missed[:25], *missed[20:], *missed[:5])
        clocks = [text.split()[1] for h in heard if (text := h.note.text).startswith("Heard.")]
        assert clocks == [f"3:{10 + nth}," for nth in range(40) if nth % 3]
        assert [h.note.target for h in heard if h.note.style == "reaction"] == [
            f"$missed{nth}" for nth in range(40) if nth % 3
        ]


async def test_an_edit_after_the_close(chat: Chat) -> None:
    """12/12 to 10/12 once the board is closed: a correction line, and the lost best returns to the former run."""
    await _full_tide(chat)
    await chat.run("noor", "8:10 12/12")
    best = await chat.run("noor", "7:12 12/12")
    for cook in ("kwabena", "lio", "petra"):
        await chat.run(cook, "9:00 12/12")
    await chat.wait(MORNING + timedelta(days=8))
    corrected, returned, board = await chat.edit("noor", best, "7:12 10/12")
    assert corrected.startswith("Net 9:54 (2 redos cost 2:42).")
    assert corrected.endswith("(corrected)")
    assert returned == "Corrected: Noor's best on Full tide is 8:10."
    assert board.startswith("Correction to the closed board of Full tide")
    assert "Fast: 1 Noor 8:10 (2 tries)" in board


@pytest.mark.parametrize("clock", ["8.05", "8,05"])
async def test_a_point_is_asked_about(chat: Chat, clock: str) -> None:
    """8.05 and 8,05 may be minutes in decimals: asked, nothing kept."""
    await _full_tide(chat)
    assert await chat.say("noor", f"{clock} 11/12") == ["Is that 8 min 5 s or 8.05 minutes? Send `8:05` or `8:03`."]
    assert await chat.say("noor", "!why") == ["There is no run of yours to explain yet."]


@pytest.mark.parametrize(
    "line",
    ["8:05 11/12", "8'05\" 11/12", "485s 11/12", "٨:٠٥ ١١/١٢", "８：０５ １１／１２", "8 05 11 of 12", "11/12 8m05"],
)
async def test_a_clock_in_any_writing(chat: Chat, line: str) -> None:
    """8'05", 485s, Arabic-Indic and full-width digits are all 8:05 with 11 of 12."""
    await _full_tide(chat)
    assert await chat.say("noor", line) == ["Net 9:26 (one redo cost 1:21). 2.62 s a touch."]
