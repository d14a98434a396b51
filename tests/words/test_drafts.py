"""The chef writes a drill in the chat: drafted, changed, published, posted; faults are told with what to send."""

import pytest

from tests.chat import Chat

SLIPWAY = """!draft Night tide
plates 8 rows 2
1. 7 courgette, shingle, at 10-4
2. 1 tea jus, sauce, at 7
3. 1 rim, wipe
accept strip 2 mm, no drip"""


async def test_the_card_as_parsed(chat: Chat) -> None:
    """The answer to a draft is its card with touches, standard time and the redo charge."""
    (card,) = await chat.say("ime", SLIPWAY)
    lines = card.split("\n")
    assert lines[:5] == [
        "Night tide (draft), 8 plates, 2 rows.",
        "1. 7 courgette, shingle, at 10-4",
        "2. 1 tea jus, sauce, at 7",
        "3. 1 rim, wipe",
        "Good when: strip 2 mm, no drip.",
    ]
    assert "9 touches a plate, 72 in the run. Standard 3:07." in lines
    assert lines[-1] == "`!publish` gives it its number; editing your message reads it again."


async def test_published_and_posted(chat: Chat) -> None:
    """`publish` gives it the next number; it is then the newest, which `post now` posts, with its cautions."""
    await chat.say("ime", SLIPWAY)
    assert await chat.say("ime", "!publish") == [
        "Published as drill 12, Night tide. `!post mon 15:00` posts it every week, `!post now` at once."
    ]
    (card,) = await chat.say("ime", "!post now")
    assert card.startswith("Night tide (drill 12), 8 plates, 2 rows.")
    assert "Read each label, “may contain” too: courgette, tea jus." in card
    assert card.endswith("Local food-safety, employment and safety rules, and your chef, come first.")


async def test_an_edit_reads_it_again(chat: Chat) -> None:
    """Editing the message is a new reading; one that cannot be read changes nothing; deleting it drops the draft."""
    await chat.say("ime", SLIPWAY)
    draft = chat.last
    (card,) = await chat.edit("ime", draft, SLIPWAY.replace("7 courgette", "6 courgette"))
    assert "8 touches a plate" in card
    assert await chat.edit("ime", draft, SLIPWAY.replace("shingle", "shingel")) == [
        "I do not know the technique “shingel”. Near it: `shingle`, `line`, `pull`."
    ]
    assert "8 touches a plate" in (await chat.say("ime", "!draft"))[0]
    assert await chat.delete("ime", draft) == []
    assert (await chat.say("ime", "!publish"))[0].startswith("There is no draft of yours.")


async def test_changed_step_by_step(chat: Chat) -> None:
    """`step`, `plates` and `rows` change the open draft, and the card is told each time."""
    await chat.say("ime", SLIPWAY)
    assert "2. 2 oil, dot" in (await chat.say("ime", "!step 2 2 oil, dot"))[0]
    assert "4. 1 leaf" in (await chat.say("ime", "!step 4 1 leaf"))[0]
    assert "10 plates, 2 rows" in (await chat.say("ime", "!plates 10"))[0]
    assert "10 plates, one row" in (await chat.say("ime", "!rows 1"))[0]
    assert await chat.say("ime", "!step 9 1 oil, dot") == [
        "Steps here go from 1 to 5. Write it like `!step 2 2 triangle, lean`."
    ]


async def test_a_changed_step_keeps_what_it_leaves_unsaid(chat: Chat) -> None:
    """The same component and technique keep their place, life and labels; another technique starts afresh."""
    await chat.say("ime", SLIPWAY.replace("at 10-4", "at 10-4; life 90s; label wheat"))
    (same,) = await chat.say("ime", "!step 1 6 courgette, shingle")
    assert "1. 6 courgette, shingle, at 10-4" in same
    await chat.say("ime", "!publish")
    assert "wheat" in (await chat.say("ime", "!post now"))[0]
    await chat.say("ime", SLIPWAY.replace("at 10-4", "at 10-4; life 90s; label wheat"))
    (other,) = await chat.say("ime", "!step 1 6 courgette, place")
    assert "1. 6 courgette, place\n" in other


async def test_a_copy_with_one_more_plate(chat: Chat) -> None:
    """`draft 5` begins from drill 5; another number of plates is another set-up of it, with its change in work."""
    (copy,) = await chat.say("ime", "!draft 5")
    assert "This is drill 5." in copy
    (changed,) = await chat.say("ime", "!plates 9")
    assert "This is drill 5 in another set-up; each set-up has bests and boards of its own." in changed
    assert "Against drill 5: +12.3 % work." in changed
    assert (await chat.say("ime", "!publish"))[0].startswith("Published as drill 5B, Slipway.")


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("!draft Zero\nplates 8", "A drill needs steps; write them like `1. 7 courgette, shingle, at 10-4`."),
        ("!draft Bare\n1. 1 bean, place", "How many plates? Add a line like `plates 8 rows 2`."),
        ("!draft Many\nplates 200\n1. 1 bean, place", "A drill has 1 to 60 plates; write it like `plates 8`."),
        ("!draft None\nplates 0\n1. 1 bean, place", "A drill has 1 to 60 plates; write it like `plates 8`."),
        (
            "!draft Gap\nplates 8\n2. 1 bean, place",
            "I read step 2 where step 1 comes next; number the steps 1, 2, 3.",
        ),
        ("!draft 99", "There is no drill 99 here. `!drills` lists them."),
        ("!step", "Write it like `!step 2 2 triangle, lean`."),
        ("!plates many", "Write one whole number after the word, like `!plates 14`."),
    ],
)
async def test_what_cannot_be_drafted(chat: Chat, said: str, told: str) -> None:
    """One sentence says what to send instead, and there is no draft of it."""
    assert await chat.say("ime", said) == [told]
    assert (await chat.say("ime", "!publish"))[0].startswith("There is no draft of yours.")


async def test_a_draft_is_its_authors(chat: Chat) -> None:
    """Another chef's `publish` finds no draft of their own."""
    await chat.stage.set_state(
        "!kitchen:tern.example",
        "@ime:tern.example",
        "m.room.power_levels",
        {"users": {"@ime:tern.example": 100, "@bastian:tern.example": 50}},
    )
    await chat.say("ime", SLIPWAY)
    assert (await chat.say("bastian", "!publish"))[0].startswith("There is no draft of yours.")
    assert (await chat.say("ime", "!publish"))[0].startswith("Published as drill 12")
