"""The runs that wait for a judge: blind, one at a time, and told of as a number at a civil hour."""

from datetime import timedelta

from tests.chat import KITCHEN, Chat
from tests.services.photos import picture, shown_run


async def test_the_queue_is_blind(judges: Chat) -> None:
    """In private a judge sees clock, count and photo, one run at a time, and no name."""
    run = await judges.run("noor", "3:20 8/8", watched=False)
    shot = await picture(judges, "noor", run)
    captioned = await picture(judges, "lio", text="3:12 8/8")
    (first,) = await judges.whisper("bastian", "judge")
    assert first.splitlines()[0] == "2 runs wait. This one: Rope coil, 3:20, sent as 8 of 8."
    assert f"Photo: https://matrix.to/#/{KITCHEN}/{shot}" in first
    assert "Noor" not in first
    told = await judges.whisper("bastian", "7 good")
    private = judges.told("bastian")
    assert private[0] == "Kept: 7 of 8 stands."
    assert private[1].splitlines()[0] == "1 run waits. Rope coil, 3:12, sent as 8 of 8."
    assert captioned in private[1]
    assert [text for text in told if text.startswith("Noor: 7 of 8")]
    await judges.whisper("bastian", "agree")
    assert judges.told("bastian") == ["Kept: 8 of 8 stands."]
    assert await judges.whisper("bastian", "judge") == ["No run waits for you."]


async def test_who_waits_for_whom(judges: Chat) -> None:
    """A judge is not shown their own run; two who differ wait for a third; a watched run waits for nobody."""
    own = await shown_run(judges, "petra")
    assert await judges.whisper("petra", "judge") == ["No run waits for you."]
    await judges.say("bastian", "agree", reply=own)
    await judges.say("ime", "7 good", reply=own)
    assert await judges.whisper("bastian", "judge") == ["No run waits for you."]
    split = await shown_run(judges, "lio", "3:31 8/8")
    await judges.say("bastian", "agree", reply=split)
    await judges.say("ime", "7 good", reply=split)
    (shown,) = await judges.whisper("petra", "judge")
    assert shown.startswith("1 run waits. Rope coil, 3:31, sent as 8 of 8.")
    watched = await shown_run(judges, "noor", "3:33 8/8")
    await judges.react("kwabena", watched)
    (again,) = await judges.whisper("petra", "judge")
    assert again.startswith("1 run waits. Rope coil, 3:31")


async def test_the_queue_is_for_judges(judges: Chat) -> None:
    """A cook is told whose word it is."""
    assert await judges.whisper("lio", "judge") == [
        "That word is for judges. The chef says who judges: `!role @bastian judge`."
    ]


async def test_nudges_come_once_a_day_at_a_civil_hour(judges: Chat) -> None:
    """At nine each judge hears how many wait for them, as a number, once; a run sent after that waits for tomorrow."""
    evening = judges.now.replace(hour=23, minute=0)
    await judges.run("noor", "3:20 8/8", watched=False, at=evening)
    await picture(judges, "noor", judges.last)
    await shown_run(judges, "petra", "3:25 8/8")
    assert await judges.wait(evening + timedelta(hours=9)) == []
    await judges.wait(evening + timedelta(hours=10))
    assert judges.told("bastian") == ["2 runs wait for a judge. `judge` shows them."]
    assert judges.told("petra") == ["1 run waits for a judge. `judge` shows it."]
    assert judges.told("ime") == []
    await shown_run(judges, "lio")
    assert await judges.wait(evening + timedelta(hours=20)) == []
