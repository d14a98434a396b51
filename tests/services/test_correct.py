"""The chef puts somebody's run right: worked out again in its place, said in the room, and told to the cook."""

import pytest

from tests.chat import Chat

HOW = "Write it like `!correct @noor 3:20 7/8`: the clock and the good plates as they were."
WHICH = "Whose run? Reply to its message with `!correct 3:20 7/8`, or write `!correct @noor 3:20 7/8` for the last one."


async def test_as_a_reply_to_the_run(live: Chat) -> None:
    """Net time, best and board follow, and the cook reads in private who did it and what it comes to."""
    run = await live.run("noor", "3:02 8/8")
    await live.run("noor", "3:30 8/8")
    texts = await live.say("ime", "!correct 3:20 7/8", reply=run)
    assert texts[0] == "Net 4:09 (one redo cost 0:49). 4.45 s a touch. (corrected)"
    (told,) = live.told("noor")
    assert told.startswith("Ime has put your 09:06 run right. Net 4:09 (one redo cost 0:49).")
    assert any("3:30" in text for text in texts if text not in (texts[0], told)), "the best is the other run now"
    await live.say("noor", "why", room=await live.stage.private_room("@noor:tern.example"), reply=run)
    assert "4:09" in live.told("noor")[0]


async def test_by_name_the_last_run(live: Chat) -> None:
    """What the line does not say stays: reasons, and when it was."""
    await live.run("lio", "3:20 7/8 fell at 08:50")
    texts = await live.say("ime", "!correct @lio 3:24 7/8")
    assert "(corrected)" in texts[0]
    async with live.stage.storage.begin() as work:
        run = await work.runs.last("!kitchen:tern.example", "@lio:tern.example")
        assert run is not None
        assert (run.result.clock_s, run.reasons, f"{run.ran_at:%H:%M}") == (204, ("fell",), "08:50")
        assert run.witnesses == ("@bastian:tern.example",)


async def test_said_in_private_it_is_no_secret(live: Chat) -> None:
    """The room reads it under the run, the cook in private, and the chef where it was said."""
    await live.run("lio", "3:20 8/8")
    await live.whisper("ime", "correct @lio 3:20 7/8")
    rooms = [said.room_id for said in live.heard if said.note.text.endswith("(corrected)")]
    assert rooms == ["!kitchen:tern.example", "!private@ime:tern.example"]
    assert len(live.told("lio")) == 1


async def test_both_of_a_pair_are_told(live: Chat) -> None:
    """Neither hears of it from the other first."""
    await live.say("noor", "3:02 8/8 with @lio", thread=True)
    run = live.last
    await live.whisper("lio", "yes")
    await live.say("ime", "!correct 3:10 8/8", reply=run)
    assert [len(live.told(who)) for who in ("noor", "lio")] == [1, 1]


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("!correct", HOW),
        ("!correct @noor", HOW),
        ("!correct @noor 7/8", HOW),
        ("!correct 3:20 7/8", WHICH),
        ("!correct @kwabena 3:20 7/8", WHICH),
        ("!correct @noor 6B 3:20 7/8", None),
        ("!correct @noor 3:20 7/8 for @lio", None),
        ("!correct @noor 3:20 9/8", None),
    ],
)
async def test_what_to_send_instead(live: Chat, typed: str, told: str | None) -> None:
    """What cannot be meant is said, and the run stands."""
    await live.run("noor", "3:02 8/8")
    texts = await live.say("ime", typed)
    assert len(texts) == 1
    assert told is None or texts == [told]
    await live.say("noor", "!best")
    assert "3:02" in live.told("noor")[0]


async def test_not_ones_own_and_not_by_a_cook(live: Chat) -> None:
    """A chef edits the own message as everybody does; the word is the chef's alone."""
    await live.say("ime", "!join")
    own = await live.run("ime", "3:02 8/8")
    assert await live.say("ime", "!correct 2:50 8/8", reply=own) == [
        "A run of your own you put right by editing its message."
    ]
    assert await live.say("noor", "!correct @lio 3:20 7/8") == ["That word is the chef's."]
