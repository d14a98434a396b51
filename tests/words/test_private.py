"""The private room of two: words stand bare there, and authority comes from the kitchen's room."""

import pytest

from bot.services.ports.events import Membership
from tests.chat import KITCHEN, Chat, kitchen, user


@pytest.mark.parametrize("word", ["words", "!words", "Words"])
async def test_words_stand_bare(live: Chat, word: str) -> None:
    """In private a word needs no mark, and may have it."""
    (told,) = await live.whisper("noor", word)
    assert told.startswith("Send: the clock and the good plates")
    assert live.told("noor") == [told]


async def test_private_answers_alert(live: Chat) -> None:
    """A private answer is sent as text, which alerts; in the room an answer is a notice, which does not."""
    await live.whisper("noor", "drills")
    assert [heard.note.style for heard in live.heard] == ["text"]
    await live.say("noor", "!drills")
    assert [heard.note.style for heard in live.heard] == ["notice"]


async def test_a_result_in_private_counts_for_the_kitchens_board(live: Chat) -> None:
    """A whole line is read in private too, answered there, and is a run of the live drill."""
    assert await live.whisper("noor", "3:02 8/8") == ["Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."]
    assert {heard.room_id for heard in live.heard} == {f"!private{user('noor')}"}
    (best,) = await live.whisper("noor", "best")
    assert "3:02" in best


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("hello chef", "I do not know that word. `!words` lists the ones I know."),
        ("bord", "I do not know that word. Near it: `!board`, `!boards`, `!words`. `!words` lists them all."),
        ("8/8", "I need the clock too, like `3:02 8/8`."),
        ("yes", "No question is open with you now. If it was about a run, send the run again, like `3:02 8/8`."),
        ("post mon", "The chef sets drills. Send yours as an idea?"),
    ],
)
async def test_every_line_is_answered(live: Chat, said: str, told: str) -> None:
    """In private whatever is said is for the bot, and is told what to send instead."""
    assert await live.whisper("noor", said) == [told]


async def test_a_chef_is_one_by_the_kitchens_room(live: Chat) -> None:
    """The chef's words work in private for whoever is chef in the kitchen, and for nobody else."""
    assert (await live.whisper("ime", "post 6 mon 15:00"))[0].startswith("Set. Monday 15:00")
    private = await live.stage.private_room(user("noor"))
    await live.stage.set_state(private, user("noor"), "m.room.power_levels", {"users": {user("noor"): 100}})
    assert await live.whisper("noor", "close") == ["That word is the chef's."]


async def test_a_person_of_no_kitchen_is_not_answered(live: Chat) -> None:
    """Somebody who shares no kitchen with the bot hears nothing, and nothing is kept."""
    assert await live.whisper("stranger", "3:02 8/8") == []
    assert live.heard == []


async def test_a_person_of_two_kitchens_is_asked_which() -> None:
    """The number named is the kitchen meant, and what was said first is done there."""
    upper_lock = "!upper-lock:tern.example"
    async with kitchen() as chat:
        await chat.stage.open_kitchen(upper_lock, "Upper Lock", user("anselm"))
        await chat.stage.come(upper_lock, user("noor"), "Noor")
        assert await chat.whisper("noor", "drills") == [
            "You are in 2 kitchens. Which one? `1` Tern & Lantern, `2` Upper Lock"
        ]
        (told,) = await chat.whisper("noor", "2")
        assert told.startswith("1 Harbour clock")
        left = Membership(
            event_id=chat.stage.new_id(),
            room_id=KITCHEN,
            sender=user("noor"),
            sent_at=chat.now,
            person=user("noor"),
            state="leave",
        )
        await chat.stage.take_now(left)
        assert (await chat.whisper("noor", "drills"))[0].startswith("1 Harbour clock")
