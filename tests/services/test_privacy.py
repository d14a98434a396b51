"""What the database holds, and for how long: results of those who joined, and of others nothing that was said."""

from collections.abc import AsyncIterator
from datetime import timedelta
from pathlib import Path

import pytest

from tests.chat import COOKS, KITCHEN, Chat, kitchen, user
from tests.database import tables_in, tables_that_hold

UPPER_LOCK = "!upper-lock:tern.example"


@pytest.fixture
async def kept(file: Path) -> AsyncIterator[Chat]:
    """Rope coil live and the cooks counted in, on a database in a file."""
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        for cook in COOKS:
            await chat.say(cook, "!join")
        yield chat


async def test_nothing_said_outlives_its_transaction(kept: Chat, file: Path) -> None:
    """Talk, its edits, replies to it and reactions to it leave no word: only event ids and states stay."""
    await kept.say("noor", "wildgarlic is in", thread=True)
    talk = kept.last
    await kept.edit("noor", talk, "wildgarlic is out")
    await kept.say("lio", "no wildgarlic?", reply=talk)
    await kept.react("petra", talk, "wildgarlic")
    await kept.say("bastian", "8:05 is late for the wildgarlic 8/8")
    assert tables_that_hold(file, "wildgarlic") == []
    inbox = {row["event_id"]: row for row in tables_in(file)["inbox"]}
    assert (inbox[talk]["state"], inbox[talk]["body"], inbox[talk]["room_id"]) == ("done", None, None)


async def test_answers_leave_with_their_sending(kept: Chat, file: Path) -> None:
    """What the bot says is in the database until it is sent and no longer."""
    await kept.run("noor", "3:20 7/8 fell")
    await kept.say("noor", "!trend")
    assert tables_that_hold(file, "Net 4:09") == []
    assert tables_that_hold(file, "Too early to call") == []
    assert {row["content"] for row in tables_in(file)["outbox"]} == {None}


async def test_a_held_question_holds_numbers_not_words(kept: Chat, file: Path) -> None:
    """What waits for a yes is kept as read, not as written."""
    await kept.say("bastian", "3'02\" 8 of 8, TORN!")
    (question,) = tables_in(file)["question"]
    assert "182" in str(question["held"])
    assert tables_that_hold(file, "TORN") == []
    assert tables_that_hold(file, "3'02") == []
    await kept.say("noor", "0:48 8/8 EDGE")
    assert tables_that_hold(file, "EDGE") == []


async def test_what_is_held_for_two_days_is_erased(kept: Chat, file: Path) -> None:
    """An unanswered first submission leaves no row behind."""
    await kept.say("bastian", "3:02 8/8")
    assert len(tables_in(file)["question"]) == 1
    await kept.away(kept.now + timedelta(hours=47, minutes=59))
    assert len(tables_in(file)["question"]) == 1
    await kept.away(kept.now + timedelta(minutes=1))
    assert tables_in(file)["question"] == []
    assert tables_in(file)["run"] == []


async def test_somebody_who_only_talks_has_no_result(kept: Chat, file: Path) -> None:
    """Of Bastian, who never joined, there is a member's name and state and nothing else."""
    for text in ("table 12?", "!drills", "!board", "!trend"):
        await kept.say("bastian", text)
    assert set(tables_that_hold(file, "@bastian")) <= {"member", "private_room", "outbox"}
    (member,) = [row for row in tables_in(file)["member"] if row["user_id"] == user("bastian")]
    assert member["consent"] is None


async def test_consent_is_a_kitchens_own(kept: Chat) -> None:
    """Joining in one kitchen is not joining in another: what is held for each waits for its own yes."""
    await kept.stage.open_kitchen(UPPER_LOCK, "Upper Lock", user("anselm"))
    await kept.say("anselm", "!post now 5", room=UPPER_LOCK)
    for room in (KITCHEN, UPPER_LOCK):
        await kept.stage.come(room, user("sunniva"), "Sunniva")
    (here,) = await kept.say("sunniva", "3:02 8/8")
    (there,) = await kept.say("sunniva", "4:02 8/8", room=UPPER_LOCK)
    assert here == there
    assert here.startswith("Held, not kept yet.")
    counted, heard = await kept.say("sunniva", "yes", room=UPPER_LOCK)
    assert counted == "Counted in, Sunniva."
    assert heard.startswith("Heard. 4:02")
    _, heard = await kept.say("sunniva", "yes")
    assert heard.startswith("Heard. 3:02")
