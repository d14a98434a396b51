"""Photo verdicts: kept by reference, settled by the stricter, told where they change a result, and blind in private."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.services.ports.events import Message
from tests.chat import KITCHEN, Chat, kitchen, user
from tests.database import tables_that_hold

# Rope coil on 8 plates, worked by hand from domain.md 3 (C, constructed): 3:20 at 7/8 charges one redo 8/7 builds of
# 10 s and one plate alone at the run's own speed, which chat.md prints as 0:49; 3:20 and 0:49 are 4:09.


async def picture(chat: Chat, who: str, reply: str | None = None, text: str = "") -> str:
    """Somebody posts a picture in the drill's thread, as a reply or with a caption; its event."""
    chat.last = chat.stage.new_id()
    moment = chat.now + timedelta(minutes=1)
    event = Message(
        event_id=chat.last,
        room_id=KITCHEN,
        sender=user(who),
        sent_at=moment,
        text=text,
        thread=chat.stage.newest_drill(KITCHEN),
        reply_to=reply,
        picture=True,
    )
    chat.heard = await chat.stage.take(event)
    return chat.last


@pytest.fixture
async def judges(live: Chat) -> Chat:
    """Rope coil live, with Bastian as sous, Petra as judge and the chef Ime to judge."""
    await live.say("ime", "!role @bastian sous")
    await live.say("ime", "!role @petra judge")
    return live


async def shown_run(chat: Chat, who: str = "noor", line: str = "3:20 8/8") -> str:
    """A run in the thread with its picture sent as a reply; the run's event."""
    run = await chat.run(who, line, watched=False)
    await picture(chat, who, run)
    return run


async def test_a_stricter_verdict_redoes_the_result(judges: Chat) -> None:
    """`7 good` on 8 of 8 charges the redo, marked as corrected in the thread; the whole sum follows it."""
    run = await shown_run(judges)
    assert await judges.say("bastian", "7 good", reply=run, thread=True) == [
        "Noor: 7 of 8 good by the judges. Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)",
    ]
    (why,) = await judges.whisper("noor", "why")
    assert why.startswith("Rope coil, 3:20 = 200 s, 7 of 8")


async def test_agree_makes_it_count(judges: Chat) -> None:
    """`agree` changes no number and counts for bests as a witness does."""
    run = await shown_run(judges)
    assert await judges.say("bastian", "agree", reply=run, thread=True) == ["First mark for Noor on Rope coil: 3:20."]


async def test_the_stricter_stands_until_a_third_settles(judges: Chat) -> None:
    """8 and 6 leave 6; a third who says 7 makes it 7, the middle one."""
    run = await shown_run(judges)
    await judges.say("bastian", "agree", reply=run)
    (told,) = [text for text in await judges.say("petra", "6 good", reply=run) if "judges" in text]
    assert told.startswith("Noor: 6 of 8 good by the judges.")
    (told,) = [text for text in await judges.say("ime", "7 good", reply=run) if "judges" in text]
    assert told.startswith("Noor: 7 of 8 good by the judges. Net 4:09")


async def test_no_judge_adds_what_was_not_claimed(judges: Chat) -> None:
    """`8 good` on a run sent as 7 of 8 leaves 7."""
    run = await shown_run(judges, line="3:20 7/8")
    assert await judges.say("bastian", "8 good", reply=run) == []
    (why,) = await judges.whisper("noor", "why")
    assert "7 of 8" in why


async def test_taking_a_verdict_back_gives_the_count_back(judges: Chat) -> None:
    """A verdict whose message is deleted is none; an edited one is the new one."""
    run = await shown_run(judges)
    await judges.say("bastian", "6 good", reply=run)
    verdict = judges.last
    (told,) = await judges.edit("bastian", verdict, "7 good")
    assert told.startswith("Noor: 7 of 8 good by the judges.")
    (told,) = await judges.delete("bastian", verdict)
    assert told == "Noor: 8 of 8 good by the judges. Heard. 3:20, 8 of 8. 3.57 s a touch, 1.82 levelled. (corrected)"


async def test_an_edit_of_the_run_keeps_the_verdict(judges: Chat) -> None:
    """Sent again with another clock, the run still has no more good plates than its judge found."""
    run = await shown_run(judges)
    await judges.say("bastian", "7 good", reply=run)
    (told,) = await judges.edit("noor", run, "3:10 8/8")
    assert told.startswith("Net 3:57")


async def test_a_lost_best_returns_to_the_earlier(judges: Chat) -> None:
    """A verdict under nine tenths takes a best off, and the run before has it again."""
    await judges.run("noor", "3:30 8/8")
    run = await shown_run(judges, line="3:10 8/8")
    await judges.say("bastian", "agree", reply=run)
    told = await judges.say("petra", "6 good", reply=run)
    assert told[-1] == "Corrected: Noor's best on Rope coil is 3:30."


async def test_nobody_judges_their_own(judges: Chat) -> None:
    """A judge's word on their own run is refused in private and changes nothing."""
    run = await shown_run(judges, "petra")
    await judges.say("petra", "6 good", reply=run)
    assert judges.told("petra") == [
        "Nobody judges their own run, nor their partner's. Ask somebody else who was not in it."
    ]
    assert (await judges.whisper("petra", "why"))[0].startswith("Rope coil, 3:20 = 200 s, 8 of 8")


async def test_a_namesake_is_no_witness(judges: Chat) -> None:
    """Somebody who goes by the runner's name may be the runner: the hand does not count, kindly said."""
    await judges.stage.come(KITCHEN, user("noor2"), "NOOR ")
    run = await shown_run(judges)
    await judges.react("noor2", run)
    (told,) = judges.told("noor2")
    assert told.startswith("You and the cook of that run go by the same name here")
    assert await judges.react("kwabena", run) == ["First mark for Noor on Rope coil: 3:20."]


async def test_it_closes_after_48_hours(judges: Chat) -> None:
    """A verdict in the 48th hour counts, one after it is refused."""
    early, late = await shown_run(judges), await shown_run(judges, "lio")
    sent = judges.now
    await judges.wait(sent + timedelta(hours=47))
    assert (await judges.say("bastian", "7 good", reply=early))[0].startswith("Noor: 7 of 8")
    await judges.wait(sent + timedelta(hours=48))
    await judges.say("bastian", "7 good", reply=late)
    assert judges.told("bastian") == ["A run can be judged for 48 hours; this one stands as it is."]


async def test_talk_is_no_verdict(judges: Chat) -> None:
    """The same words from a cook who is no judge, or as a reply to talk, are talk."""
    run = await shown_run(judges)
    assert await judges.say("lio", "agree", reply=run) == []
    await judges.say("noor", "soup is better today")
    assert await judges.say("bastian", "agree", reply=judges.last) == []
    assert await judges.say("bastian", "9 good") == []


async def test_what_cannot_be_a_verdict(judges: Chat) -> None:
    """More plates than were built, or a message of several runs, is answered with what to send instead."""
    run = await shown_run(judges)
    await judges.say("bastian", "9 good", reply=run)
    assert judges.told("bastian") == ["That run has 8 plates; send how many of them passed, like `8 good`."]
    several = await judges.run("noor", "3:25 8/8\n3:26 8/8", watched=False)
    await judges.say("bastian", "7 good", reply=several)
    assert judges.told("bastian")[0].startswith("That message holds several runs.")


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


async def test_a_photo_without_a_run_and_a_deleted_one(judges: Chat) -> None:
    """A picture that answers nothing is nothing; a picture taken back leaves the run and its queue."""
    await picture(judges, "noor")
    assert judges.heard == []
    run = await judges.run("noor", "3:20 8/8", watched=False)
    await picture(judges, "lio", run)
    assert await judges.whisper("bastian", "judge") == ["No run waits for you."]
    shot = await picture(judges, "noor", run)
    await judges.delete("noor", shot)
    assert await judges.whisper("bastian", "judge") == ["No run waits for you."]


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


async def test_a_photo_is_kept_by_reference(tmp_path: Path) -> None:
    """Of a captioned picture only the event stays."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        shot = await picture(chat, "noor", text="3:20 8/8 torn")
        assert tables_that_hold(file, "3:20") == []
        assert "run" in tables_that_hold(file, shot)
