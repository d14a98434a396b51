"""Call sheets in the chat: private, repeatable, with a set-up of their own on which runs are worked out."""

import pytest

from tests.chat import Chat, user

SHEET_417 = [
    "Rope coil, calls level 2, sheet 417: 8 plates, 52 touches, standard 3:01.",
    "8 plates 164.5 s + 20 s hands off - 3.6 s left off = 180.9 s.",
    "For the mate who reads it aloud, the clock running; hold a call while a knife, flame or hot pan is in hand.",
    "0:31 “How long?”",
    "1:12 “Send four now.”",
    "1:56 “Plate 6 without oil.”",
    "2:39 “Wait, hands off 20 seconds.”",
    "Write down each answer to “How long?” and compare at the stop. Send the run as `6B 3:01 8/8`.",
]
"""Fixture of the project's own generator: the sheet must stay the same for ever under its number."""


async def test_a_sheet_is_told_in_private(live: Chat) -> None:
    """Whoever asks in the room is told in private, and the room sees nothing of what will be called."""
    assert await live.say("kwabena", "!calls 2 sheet 417") == ["\n".join(SHEET_417)]
    assert {heard.room_id for heard in live.heard} == {f"!private{user('kwabena')}"}
    figures = live.heard[0].note.figures
    assert (figures["plates"], figures["touches"], figures["call.4.at_s"]) == (8, 52, 159)


async def test_the_same_number_is_the_same_sheet(live: Chat) -> None:
    """Asked again by anybody a sheet is the same; without a number every asking gives another."""
    first = await live.say("kwabena", "!calls 2 sheet 417")
    assert await live.whisper("lio", "calls 6 2 sheet 417") == first
    fresh = {(await live.whisper("lio", "calls 2"))[0].split("\n")[0] for _ in range(5)}
    assert len(fresh) == 5


async def test_a_run_is_worked_out_on_the_sheet(live: Chat) -> None:
    """200 s / 52 touches = 3.85 s, 200 / (180.9 / 1.5) = 1.66 levelled; bests are apart from the plain run's."""
    await live.whisper("kwabena", "calls 2 sheet 417")
    await live.say("noor", "6 3:02 8/8")
    assert await live.say("noor", "6B 3:20 8/8") == ["Heard. 3:20, 8 of 8. 3.85 s a touch, 1.66 levelled."]
    (why,) = await live.whisper("noor", "why")
    assert "Standard 180.9 s / 1.5 = 120.6 levelled touches" in why
    (best,) = await live.whisper("noor", "best 6B")
    assert "3:20" in best
    assert "3:02" not in best


async def test_a_plate_more_is_a_plate_to_send(live: Chat) -> None:
    """Full tide at level 3 is thirteen plates, and thirteen is what a run on it counts."""
    (told,) = await live.whisper("kwabena", "calls 11B 3")
    assert "13 plates, 232 touches, standard 9:30." in told
    assert told.split("\n")[-1].endswith("`11D 9:30 13/13`.")
    assert await live.say("noor", "11D 9:30 13/13") == ["Heard. 9:30, 13 of 13. 2.46 s a touch, 1.50 levelled."]


async def test_the_plain_drill_stays_what_its_number_means(live: Chat) -> None:
    """After a sheet `6` is still the plain set-up, live and on its board, and the list has no second line for it."""
    before = len((await live.say("noor", "!drills"))[0].split("\n"))
    await live.whisper("kwabena", "calls 2 sheet 417")
    assert (await live.say("noor", "!spec 6"))[0].startswith("Rope coil (drill 6A), 8 plates")
    assert await live.say("noor", "6 3:02 8/8") == ["Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."]
    assert len((await live.say("noor", "!drills"))[0].split("\n")) == before


async def test_it_may_be_posted_and_asked_for_again(live: Chat) -> None:
    """A chef posts the round with its own board; a sheet asked for in it is one for the same plates and work."""
    await live.whisper("kwabena", "calls 2 sheet 417")
    (card,) = await live.say("ime", "!post now 6B")
    assert "52 in the run. Standard 3:01." in card
    assert "Calls level 2." in card
    (told,) = await live.whisper("kwabena", "calls")
    assert "calls level 2" in told
    assert told.split("\n")[-1].endswith("`6B 3:01 8/8`.")


async def test_last_ferry_has_its_level(chat: Chat) -> None:
    """The twelfth drill of the course says its own level: 14 plates and the spare one, 15 x 18 - 2 touches."""
    (told,) = await chat.whisper("kwabena", "calls 11C")
    assert told.startswith("Last ferry, calls level 3, sheet ")
    assert "15 plates, 268 touches, standard 12:21." in told


@pytest.mark.parametrize(
    ("asked", "answer"),
    [
        (
            "3",
            "This run is too short for level 3: 6 calls at least 30 s apart, none at either end or over heat. "
            "`calls 2` fits.",
        ),
        ("1 1", "This run is too short for calls; lay out more plates first."),
        ("", "Which level? `calls 1`, `calls 2` or `calls 3`, or `calls 6 2` for drill 6."),
        ("4", "Which level? `calls 1`, `calls 2` or `calls 3`, or `calls 6 2` for drill 6."),
        ("loud", "Which level? `calls 1`, `calls 2` or `calls 3`, or `calls 6 2` for drill 6."),
        ("99 2", "There is no drill 99 here. `!drills` lists them."),
    ],
)
async def test_refusals(live: Chat, asked: str, answer: str) -> None:
    """Too short, no level, no such level or no such drill: one kind sentence in private, with what to send."""
    assert await live.say("kwabena", f"!calls {asked}") == [answer]
    assert live.told("kwabena") == [answer]
