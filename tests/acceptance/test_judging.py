"""What a demanding chef tries of the judges: a verdict late in the week, a partner's hand, a photo of nothing."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from tests.chat import LONDON, Chat
from tests.services.photos import picture

SUNDAY = datetime(2026, 11, 29, 18, 0, tzinfo=ZoneInfo(LONDON))


async def test_a_verdict_after_the_board_has_closed(live: Chat) -> None:
    """Within 48 hours of the run, though the week is over: a correction in the thread, and the place list redone."""
    await live.say("ime", "!role @bastian sous")
    clocks = {"noor": "3:02", "kwabena": "3:32", "lio": "4:02", "petra": "4:32"}
    for cook, clock in clocks.items():
        run = await live.run(cook, f"{clock} 8/8", watched=False, at=max(live.now, SUNDAY) + timedelta(minutes=1))
        await picture(live, cook, run)
        await live.say("bastian", "agree", reply=run)
        if cook == "noor":
            noors = run
    closing = await live.wait(SUNDAY + timedelta(hours=16))
    assert any("Fast: 1 Noor 3:02" in text for text in closing)
    told = await live.say("bastian", "5 good", reply=noors)
    kept = "Five clean plates kept. No time this run; try for six."
    assert told[0] == f"Noor: 5 of 8 good by the judges. {kept} (corrected)"
    assert any("Fast: 1 Kwabena 3:32" in text for text in told[1:])
