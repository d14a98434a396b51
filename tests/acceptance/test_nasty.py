"""What a nasty day brings: odd names, odd drills, people who leave, a bot that is put out and comes back."""

import pytest

from bot.services.ports.events import Membership
from tests.chat import KITCHEN, Chat, user


async def leave(chat: Chat, person: str) -> None:
    """Somebody leaves the kitchen's room."""
    await chat.stage.take_now(
        Membership(
            event_id=chat.stage.new_id(),
            room_id=KITCHEN,
            sender=person,
            sent_at=chat.now,
            person=person,
            state="leave",
        )
    )


async def test_names_equal_to_words(live: Chat) -> None:
    """Cooks called Yes, Trend and All are cooks: their names are neither answers nor words."""
    for name in ("yes", "trend", "all"):
        await live.stage.come(KITCHEN, user(name), name)
        assert (await live.say(name, "!join"))[0].startswith(f"Counted in, {name}.")
    assert await live.say("noor", "3:02 8/8 for yes") == ["Waiting for yes to say yes."]
    assert await live.say("noor", "yes") == []
    assert await live.say("yes", "yes") == ["Kept under your name, yes."]


async def test_names_dressed_up(live: Chat) -> None:
    """Markup, line ends and direction overrides in a name reach the room as plain text, and alert nobody."""
    await live.stage.come(KITCHEN, user("lio"), "\u202e<b>oil</b>\n`!close`\u2066 @room")
    (told,) = await live.say("lio", "!join")
    assert told.split(".")[0] == "Counted in, <b>oil</b>'!close' @room"
    assert "<b>" not in live.heard[0].note.html
    assert live.heard[0].note.mentions == ()


async def test_one_plate(live: Chat) -> None:
    """A drill of one plate whose only step is a wipe has a card, a result, a sum, and no line of labels."""
    (draft,) = await live.say("ime", "!draft Rim\nplates 1\n1. 1 rim, wipe")
    assert "1 touch a plate, 1 in the run. Standard 0:05." in draft
    await live.say("ime", "!publish")
    (card,) = await live.say("ime", "!post now 12")
    assert "On the pass every plate must be good." in card
    assert "By label" not in card
    assert await live.say("noor", "0:04 1/1") == ["Heard. 0:04, 1 of 1. 4.00 s a touch, 1.20 levelled."]
    assert await live.say("lio", "0:04 0/1") == [
        "Kept, without a time: no plate passed this run. Try for one good plate."
    ]
    assert live.told("lio") == []
    (why,) = await live.say("lio", "!why")
    assert "no time" in why


@pytest.mark.parametrize("plates", ["0", "61", "200", "9" * 5000])
async def test_impossible_numbers_of_plates(live: Chat, plates: str) -> None:
    """None and too many are refused with the range, and the live drill stays as it is."""
    assert await live.say("ime", f"!plates {plates}") == ["A drill has 1 to 60 plates; write it like `plates 8`."]
    assert "Heard." in (await live.say("noor", "3:02 8/8"))[0]


@pytest.mark.parametrize(
    "line",
    ["9999999999999999:00 8/8", "NaN 8/8", "inf 8/8", "-3:02 8/8", "3:02 -8/8", "3:02 8/0", "3:02 0/0", "25h 8/8"],
)
async def test_impossible_numbers_in_a_result(live: Chat, line: str) -> None:
    """They are told what to send or taken for talk; nothing is stored."""
    await live.say("noor", line)
    assert await live.say("noor", "!scrap") == ["You have no run to take off."]


async def test_a_mate_who_has_left(live: Chat) -> None:
    """Nothing can be sent for somebody who is not in the room any more; their runs and places stay."""
    await live.run("lio", "3:02 8/8")
    await leave(live, user("lio"))
    assert await live.say("noor", "3:07 8/8 for @lio") == [
        "I cannot tell who @lio is here. Mention them, or write a name that only one person has."
    ]
    await live.run("noor", "3:20 8/8")
    await live.run("kwabena", "3:30 8/8")
    (board,) = await live.say("noor", "!board fast")
    assert "1 Lio 3:02" in board


async def test_put_out_and_back(live: Chat) -> None:
    """Put out of the room the bot posts nothing; invited back it goes on with everything it knew."""
    await live.say("ime", "!post 6 tue 15:00")
    await live.run("noor", "3:02 8/8")
    bot = live.stage.house.bot_id
    await leave(live, bot)
    assert await live.wait(live.now.replace(day=24, hour=16)) == []
    await live.stage.take_now(
        Membership(
            event_id=live.stage.new_id(), room_id=KITCHEN, sender=bot, sent_at=live.now, person=bot, state="join"
        )
    )
    assert (await live.say("noor", "!best"))[0].startswith("Rope coil: 3:02")


async def test_an_edit_before_its_message(live: Chat) -> None:
    """An edit, a reaction and a deletion of what nobody sent do nothing."""
    assert await live.react("lio", "$never") == []
    assert await live.delete("lio", "$never") == []
    assert await live.edit("lio", "$never", "table 12?") == []
