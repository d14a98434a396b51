"""Acceptance 20: forgetting leaves sums and no person; and what is held before it is handed out whole."""

import csv
import io
import json
import re
from collections.abc import AsyncIterator, Sequence
from datetime import timedelta
from pathlib import Path

import pytest

from tests.chat import COOKS, KITCHEN, Chat, kitchen, user
from tests.database import Row, tables_in, tables_that_hold

A_WEEK = timedelta(days=8)
WAYS_TO_REACH = {"member", "private_room"}
"""Where the id of anybody stands who is in the room and never joined."""


@pytest.fixture
async def closed(file: Path) -> AsyncIterator[Chat]:
    """A closed week of Rope coil with four cooks on its boards; Noor raised a hand on every run but her own."""
    async with kitchen(url=f"sqlite:///{file}") as chat:
        await chat.say("ime", "!post now 6")
        for nth, cook in enumerate(COOKS):
            await chat.say(cook, "!join")
            run = await chat.run(cook, f"{170 + 20 * nth}s 8/8", watched=cook == "noor")
            await chat.react("noor", run)
        await chat.wait(chat.now + A_WEEK)
        yield chat


async def _forget(chat: Chat, who: str) -> list[str]:
    await chat.whisper(who, "forget me")
    return await chat.whisper(who, "yes, forget me")


def _named_in(file: Path, who: str) -> set[str]:
    """The tables that name somebody; a private room's id, which has the name only in these tests, apart."""
    here = f"!private{user(who)}"
    return {
        name
        for name, rows in tables_in(file).items()
        if any(user(who) in str(value).replace(here, "") for row in rows for value in row.values())
    }


def _figures(boards: Sequence[Row]) -> list[list[str]]:
    """Every figure on every kept board."""
    wanted = r'"(?:value|runs|clean|attempted|place|actual_s|compared|met|clean_plates|shown)":[^,}\]]+'
    return [sorted(re.findall(wanted, str(row["board"]))) for row in boards]


async def test_nothing_names_the_forgotten_and_the_sums_stay(closed: Chat, file: Path) -> None:
    """The id and the name stand nowhere but where any stranger's does; every figure of every frozen board stays."""
    boards = tables_in(file)["frozen_board"]
    assert any(user("noor") in str(row["board"]) for row in boards)
    (told,) = await _forget(closed, "noor")
    assert told.startswith("Forgotten.")
    assert "Backups made before are kept by whoever runs me: ask them." in told
    assert _named_in(file, "noor") == WAYS_TO_REACH
    assert tables_that_hold(file, "Noor") == []
    assert _figures(tables_in(file)["frozen_board"]) == _figures(boards)


async def test_frozen_boards_read_a_cook(closed: Chat) -> None:
    """The board of the closed week shows the same times at the same places, the first of them of a cook."""
    (named,) = await closed.say("ime", "!board fast")
    await _forget(closed, "noor")
    (unnamed,) = await closed.say("ime", "!board fast")
    assert named.endswith("Fast: 1 Noor 2:50 (1 try); 2 Kwabena 3:10 (1 try)")
    assert unnamed == named.replace("Noor", "a cook")


async def test_a_correction_keeps_the_sums_of_the_forgotten(closed: Chat) -> None:
    """Kwabena's run of the closed week is put right: the place of a cook and the house's plates are still there."""
    run = (await closed.say("ime", "!board fast"))[0]
    assert run.endswith("Fast: 1 Noor 2:50 (1 try); 2 Kwabena 3:10 (1 try)")
    await _forget(closed, "noor")
    texts = await closed.say("ime", "!correct @kwabena 3:12 8/8")
    (corrected,) = [text for text in texts if text.startswith("Correction to the closed board")]
    assert "Fast: 1 a cook 2:50 (1 try); 2 Kwabena 3:12 (1 try)" in corrected
    assert "32 clean plates" in corrected


async def test_a_fresh_export_holds_nothing(closed: Chat) -> None:
    """After it `records` has nothing to hand out, and a run sent then is a stranger's: held, not kept."""
    await _forget(closed, "noor")
    assert await closed.whisper("noor", "records") == ["I hold nothing about you but that you are in the room."]
    await closed.say("ime", "!post now 6")
    (held,) = await closed.say("noor", "3:02 8/8")
    assert held.startswith("Held, not kept yet.")


async def test_runs_that_a_forgotten_judge_watched_stay_watched(closed: Chat, file: Path) -> None:
    """Others' runs keep the count of hands: a best that Noor witnessed stays one, and no hand is hers."""
    hands = len(tables_in(file)["hand"])
    await _forget(closed, "noor")
    kept = tables_in(file)["hand"]
    assert len(kept) == hands - 1  # the hand on her own run went with it
    assert await closed.whisper("lio", "best 6") == ["Rope coil: 3:30, Monday 23 November, 8 of 8."]


async def test_only_the_whole_sentence_in_private_erases(closed: Chat, file: Path) -> None:
    """Asked for in the room it is answered in private; in the room nothing erases, nor does a bare yes."""
    await closed.say("noor", "!forget me")
    assert [heard.room_id for heard in closed.heard] == [f"!private{user('noor')}"]
    for room, words in ((KITCHEN, "yes, forget me"), (KITCHEN, "!yes, forget me"), (f"!private{user('noor')}", "yes")):
        await closed.say("noor", words, room=room)
        assert "run" in _named_in(file, "noor")
    assert (await closed.whisper("noor", "Yes forget me."))[0].startswith("Forgotten.")


async def test_without_the_question_nothing_is_erased(closed: Chat, file: Path) -> None:
    """`yes, forget me` out of nowhere, or after 12 hours, asks to say `forget me` first."""
    asked = ["Say `forget me` first; then I ask once."]
    assert await closed.whisper("noor", "yes, forget me") == asked
    await closed.whisper("noor", "forget me")
    await closed.wait(closed.now + timedelta(hours=12))
    assert await closed.whisper("noor", "yes, forget me") == asked
    assert "run" in _named_in(file, "noor")


async def test_only_oneself(closed: Chat) -> None:
    """Nobody else can be forgotten by one's word."""
    assert await closed.whisper("noor", "forget lio") == ["Only you yourself: `forget me`."]


async def test_what_waits_for_a_mate_goes_too(closed: Chat, file: Path) -> None:
    """A run sent for Lio that he has not taken is erased with the question to him; one that he took stays his."""
    await closed.say("ime", "!post now 6")
    await closed.say("noor", "2:58 8/8 for @lio", thread=True)
    await closed.say("lio", "yes")
    await closed.say("noor", "2:51 8/8 for @lio", thread=True)
    assert tables_that_hold(file, "pending") == ["run"]
    await _forget(closed, "noor")
    assert tables_that_hold(file, "pending") == []
    assert tables_in(file)["question"] == []
    (best,) = await closed.whisper("lio", "why")
    assert "2:58" in best


async def test_records_hold_what_the_tables_hold(closed: Chat, file: Path) -> None:
    """Every table that names Noor is in the JSON with as many rows, and the CSV has the same values a line each."""
    (head,) = await closed.whisper("noor", "records")
    (text,) = [said.note.attachment.source for said in closed.heard if said.note.attachment]
    held = json.loads(text)
    assert head.startswith("Held about you, as kept, by table: ")
    assert held.keys() == _named_in(file, "noor") - {"private_room", "outbox"}
    (run,) = held["run"]
    assert (run["result"]["clock_s"], run["user_id"]) == (170, user("noor"))
    assert len(held["hand"]) == 3
    assert not any(user(other) in text for other in COOKS if other != "noor")
    _, *parts = await closed.whisper("noor", "records text")
    assert json.loads("".join(parts)).keys() == held.keys()
    await closed.whisper("noor", "records csv")
    (table,) = [said.note.attachment.source for said in closed.heard if said.note.attachment]
    lines = list(csv.DictReader(io.StringIO(table)))
    assert {line["table"] for line in lines} == held.keys()
    assert {"table": "run", "row": "1", "field": "user_id", "value": f"'{user('noor')}"} in lines
