"""Photo verdicts: kept by reference, settled by the stricter, and told where they change a result."""

from datetime import timedelta
from pathlib import Path

from tests.chat import KITCHEN, Chat, kitchen, user
from tests.database import tables_that_hold
from tests.services.photos import picture, shown_run

# By hand (C, constructed of technique seconds): standard 164.5 s, one plate alone 17.1 + 10 = 27.1 s. 3:20 at 7 of 8
# charges 8/7 x (10 + 27.1 x 200 / 164.5) = 49.1 s: net 249.1 s, over 56 touches 4.45 s. Clean: 300 / 164.5 = 1.82.


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


async def test_a_photo_is_kept_by_reference(tmp_path: Path) -> None:
    """Of a captioned picture only the event stays."""
    file = tmp_path / "kitchen.db"
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        await chat.say("noor", "!join")
        shot = await picture(chat, "noor", text="3:20 8/8 torn")
        assert tables_that_hold(file, "3:20") == []
        assert "run" in tables_that_hold(file, shot)
