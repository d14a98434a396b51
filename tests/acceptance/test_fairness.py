"""A demanding chef on comparing drills and kitchens: alike at standard, and no number without common ground."""

from collections.abc import AsyncIterator
from datetime import timedelta

import pytest

from bot.domain.standard_time import standard_s
from bot.rehearsal import rehearsal
from bot.services.house import Group
from tests.chat import COOKS, KITCHEN, LONDON, MORNING, Chat, user
from tests.domain.kitchen import EVERY, SECONDS

LOCK = "!lock:tern.example"
QUAY = Group("The quay", (KITCHEN, LOCK))
NIGHT_CREW = ("anselm", "sunniva", "bea", "tom")
"""Of the sister site, Upper Lock."""


@pytest.fixture
async def sisters() -> AsyncIterator[Chat]:
    """The Tern & Lantern and Upper Lock, listed together, with four cooks each."""
    async with rehearsal(MORNING, zone=LONDON, groups=(QUAY,)) as stage:
        chat = Chat(stage)
        for room, name, cooks in ((KITCHEN, "Tern & Lantern", COOKS), (LOCK, "Upper Lock", NIGHT_CREW)):
            await stage.open_kitchen(room, name, user("ime"))
            for cook in cooks:
                await stage.come(room, user(cook), cook.capitalize())
                await chat.say(cook, "!join", room=room)
        yield chat


async def run_week(chat: Chat, room: str, label: str, clocks: dict[str, str]) -> None:
    """The drill is posted in a kitchen and each cook runs it three times on three days."""
    await chat.say("ime", f"!post now {label}", room=room)
    start = chat.now
    for day in range(3):
        for cook, clock in clocks.items():
            await chat.say(cook, clock, room=room, thread=True, at=max(chat.now, start + timedelta(days=day)))
    await chat.wait(start + timedelta(days=7, hours=1))


async def test_at_standard_every_drill_shows_the_same_levelled_pace(live: Chat) -> None:
    """Acceptance 5: a cook exactly at standard shows 1.50 levelled on all twelve, 1.34 to 5.37 a plain touch.

    Clocks are whole seconds, so each figure is off by what half a second makes of it. Fixtures of our own model.
    """
    plain = []
    for drill in EVERY:
        await live.wait(live.now + timedelta(days=1))
        await live.say("ime", f"!post now {drill.label}")
        standard, plates = standard_s(drill.spec, drill.set_up, SECONDS), drill.set_up.plates
        await live.say("noor", f"{drill.label} {round(standard)}s {plates}/{plates}")
        await live.whisper("noor", "why")
        levelled, pace = (live.heard[0].note.figures[f"{name}_s"] for name in ("levelled", "pace"))
        assert levelled == pytest.approx(1.5, abs=1.5 * 0.51 / standard), drill.label
        assert isinstance(pace, float)
        plain.append(pace)
    assert min(plain) == pytest.approx(1.34, abs=0.01)
    assert max(plain) == pytest.approx(5.37, abs=0.01)


async def test_sites_without_common_ground_are_not_ranked(sisters: Chat) -> None:
    """Acceptance 6: no shared cook and no shared drill: the group board says so and prints no number."""
    await run_week(sisters, KITCHEN, "6", dict.fromkeys(COOKS, "3:02 8/8"))
    await run_week(sisters, LOCK, "8", dict.fromkeys(NIGHT_CREW, "3:10 10/10"))
    assert await sisters.say("ime", "!board group") == [
        "Tern & Lantern and Upper Lock share no cook and no drill: no common ground yet, so no number across them. "
        "The same drill run in both gives it."
    ]


async def test_sites_with_the_same_drill_are_compared_by_the_clock(sisters: Chat) -> None:
    """With common ground each site is told by its cooks' own lines, and the drill laid out the same by its times."""
    await run_week(
        sisters, KITCHEN, "6", dict(zip(COOKS, ("3:00 8/8", "3:02 8/8", "3:04 8/8", "3:06 8/8"), strict=True))
    )
    await run_week(
        sisters, LOCK, "6", dict(zip(NIGHT_CREW, ("4:00 8/8", "4:02 8/8", "4:04 8/8", "4:06 8/8"), strict=True))
    )
    (text,) = await sisters.say("ime", "!board group")
    lines = text.split("\n")
    assert lines[0] == "The quay, quarter 4 of 2026 so far"
    assert [line.split(":")[0] for line in lines[1:3]] == ["Tern & Lantern", "Upper Lock"]
    assert lines[3] == "Rope coil, 8 plates, laid out the same: Tern & Lantern 3:03, Upper Lock 4:03."
    assert not any(cook.capitalize() in text for cook in (*COOKS, *NIGHT_CREW))
