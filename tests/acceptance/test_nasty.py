"""Nasty extras: odd names, odd drills, people and a bot that come and go."""

import re

import pytest

from bot.services.ports.events import Membership
from tests.chat import COOKS, KITCHEN, Chat, kitchen, user

LEFT = "@platepace:tern.example"


async def _goes(chat: Chat, person: str, state: str = "leave") -> list[str]:
    """Somebody, or the bot, leaves the kitchen's room or comes back; what the bot says to it."""
    heard = await chat.stage.take_now(
        Membership(
            event_id=chat.stage.new_id(),
            room_id=KITCHEN,
            sender=user("ime"),
            sent_at=chat.now,
            person=user(person),
            state="join" if state == "join" else "leave",
        )
    )
    return [said.note.text for said in heard]


@pytest.mark.parametrize("name", ["yes", "8:05 11/12", "!post now 5", "all", "for", "<img src=x>", "\u202e\u200b", " "])
async def test_a_name_that_looks_like_something_else(live: Chat, name: str) -> None:
    """A display name that is a word, a result, markup or nothing at all is printed as a harmless name."""
    await live.stage.come(KITCHEN, user("noor"), name)
    await live.run("noor", "3:02 8/8")
    (mark,) = [said.note for said in live.heard]
    assert mark.text.startswith("First mark for ")
    assert mark.text.endswith(" on Rope coil: 3:02.")
    assert "\u202e" not in mark.text
    assert "<img" not in mark.html


async def test_a_name_equal_to_a_word_can_be_a_mate(live: Chat) -> None:
    """Somebody called Rim can be sent a run for, and is asked."""
    await live.stage.come(KITCHEN, user("lio"), "Rim")
    assert await live.say("noor", "2:58 8/8 for Rim") == ["Waiting for Rim to say yes."]
    assert await live.say("lio", "yes") == ["Kept under your name, Rim."]


@pytest.mark.parametrize(
    ("draft", "told"),
    [
        ("!draft Nothing\nplates 8", "A drill needs steps; write them like `1. 7 courgette, shingle, at 10-4`."),
        ("!draft Banquet\nplates 200\n1. 1 disc, set", "A drill has 1 to 60 plates; write it like `plates 8`."),
        ("!draft Void\nplates 0\n1. 1 disc, set", "A drill has 1 to 60 plates; write it like `plates 8`."),
    ],
)
async def test_drills_that_cannot_be(chat: Chat, draft: str, told: str) -> None:
    """No steps, two hundred plates or none are refused with what to write instead."""
    assert await chat.say("ime", draft) == [told]


@pytest.mark.parametrize(
    ("drill", "card", "line", "heard"),
    [
        (
            "One plate\nplates 1\n1. 4 bean, place",
            "4 touches a plate, 4 in the run.",
            "0:09 1/1",
            "Heard. 0:09, 1 of 1.",
        ),
        ("Rims\nplates 8\n1. 1 rim, wipe", "1 touch a plate, 8 in the run.", "0:24 8/8", "Heard. 0:24, 8 of 8."),
    ],
)
async def test_small_drills(chat: Chat, drill: str, card: str, line: str, heard: str) -> None:
    """One plate, or a single wipe, is a drill like any other, from card to result."""
    (draft,) = await chat.say("ime", f"!draft {drill}")
    assert card in draft
    await chat.say("ime", "!publish")
    (posted,) = await chat.say("ime", "!post now")
    assert card in posted
    await chat.say("noor", "!join")
    (told,) = await chat.say("noor", line)
    assert told.startswith(heard)
    (none,) = await chat.say("noor", line.replace(line.split()[1], f"0/{line.split('/')[1]}"))
    assert none.startswith("Kept, without a time")


async def test_a_mate_who_has_left(live: Chat) -> None:
    """Nothing is sent for somebody who is no longer in the room; their place on the board stays theirs."""
    for cook, clock in zip(COOKS, ("3:02", "3:10", "3:20", "3:30"), strict=True):
        await live.run(cook, f"{clock} 8/8")
    await _goes(live, "noor")
    (asked,) = await live.say("lio", "2:58 8/8 for noor")
    assert asked.startswith("I cannot tell who noor is here.")
    (board,) = await live.say("lio", "!board fast")
    assert "1 Noor 3:02" in board


async def test_a_judge_of_their_own_run(live: Chat) -> None:
    """A runner's own hand is no witness, nor does it make a best or a place."""
    run = await live.run("noor", "3:02 8/8", watched=False)
    assert await live.react("noor", run) == []
    (best,) = await live.say("noor", "!best")
    assert best.endswith("It becomes a best when somebody who watched raises a hand.")


async def test_the_bot_kicked_and_back(chat: Chat) -> None:
    """While it is out nothing is posted; when it is back its drills, people and posts are as they were."""
    await chat.say("ime", "!post 6 tue 15:00")
    await chat.say("noor", "!join")
    await _goes(chat, LEFT)
    assert await chat.wait(chat.now.replace(day=25)) == []
    assert await _goes(chat, LEFT, "join") == []
    assert (await chat.say("ime", "!post"))[0].startswith("1. Tuesday 15:00 (Europe/London): drill 6, Rope coil.")
    (heard,) = await chat.say("noor", "6 3:02 8/8")
    assert heard.startswith("Heard. 3:02")


async def test_one_cook_alone() -> None:
    """A home trainee alone in a room with the bot has drills, results and a trend, and no board."""
    async with kitchen(people=("sunniva",)) as chat:
        await chat.stage.open_kitchen("!home:tern.example", "Sunniva's table", user("sunniva"))
        home = "!home:tern.example"
        await chat.say("sunniva", "!post now 1", room=home)
        await chat.say("sunniva", "!join", room=home)
        (heard,) = await chat.say("sunniva", "1:20 8/8", room=home)
        assert heard.startswith("Heard. 1:20")
        (board,) = await chat.say("sunniva", "!board", room=home)
        assert "No board yet." in board


@pytest.mark.parametrize(
    "line", ["!spec \u202e<b>6</b>", "!order x \u202e3:02", "!best <script>x</script>", "!role \u2066a sous"]
)
async def test_what_was_typed_comes_back_harmless(live: Chat, line: str) -> None:
    """An answer that says back what it could not read turns no line around and carries no markup."""
    answers = await live.say("ime", line)
    assert answers
    for told in answers:
        assert not re.search("[\u202a-\u202e\u2066-\u2069]|<[a-z/]", told)
