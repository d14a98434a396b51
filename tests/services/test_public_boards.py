"""Boards: who may be seen where, what a raised hand does, and what nobody is told."""

from datetime import timedelta

import pytest

from tests.chat import COOKS, HAND, MORNING, Chat, rope_coil

NOT_YET = "No board yet. It needs three cooks with runs that somebody watched and raised a hand on."
HEAD = "Rope coil, this week, open until Monday 05:00"
FAR_APART = ("3:02 8/8", "3:20 8/8", "3:40 8/8", "4:10 8/8")
"""Times that are told apart by the noise to begin with, 4 %: each more than 7.2 % behind the one before."""


async def board(chat: Chat, who: str = "noor", word: str = "!board") -> list[str]:
    """The lines of the board as everybody sees it, its head left out."""
    (text,) = await chat.say(who, word)
    head, *lines = text.split("\n")
    assert head == HEAD
    return lines


async def run_all(chat: Chat, *lines: str) -> None:
    """A watched run of each cook in turn."""
    for cook, line in zip(COOKS, lines, strict=True):
        await chat.run(cook, line)


async def next_week(chat: Chat, weeks: int = 1) -> list[str]:
    """So many weeks later in the morning; what the bot said meanwhile."""
    return await chat.wait(MORNING + timedelta(weeks=weeks))


async def test_two_cooks_make_no_board() -> None:
    """With two who were watched there is none, and no word on how many there were."""
    async with rope_coil(cooks=("noor", "kwabena")) as chat:
        await chat.run("noor", "3:02 8/8")
        await chat.run("kwabena", "3:20 8/8")
        assert await board(chat) == [NOT_YET, "House: 16 clean plates."]


async def test_of_four_cooks_two_are_shown_and_nothing_says_how_many_ran(live: Chat) -> None:
    """The slower half is in no public line, and its names and number are nowhere."""
    await run_all(live, *FAR_APART)
    fast, *_ = lines = await board(live)
    assert fast == "Fast: 1 Noor 3:02 (1 try); 2 Kwabena 3:20 (1 try)"
    assert not any(hidden in line for line in lines for hidden in ("Petra", "4:10", "four", " 4 "))


async def test_one_who_is_not_shown_may_ask_in_private(live: Chat) -> None:
    """Petra is told her own place, and nobody else's beyond the public ones."""
    await run_all(live, *FAR_APART)
    (text,) = await live.whisper("petra", "board fast")
    assert text.split("\n")[1:] == [
        "Fast: 1 Noor 3:02 (1 try); 2 Kwabena 3:20 (1 try)",
        "Yours on fast: place 4, 4:10 (1 try).",
    ]
    (text,) = await live.whisper("petra", "board")
    assert text.split("\n")[1:] == [
        "Yours on fast: place 4, 4:10 (1 try).",
        "Yours on clean: place 1, 8/8.",
        "House: 32 clean plates.",
    ]


async def test_what_is_too_close_is_not_called(live: Chat) -> None:
    """Four within 7 % share the first place, so nobody is shown; two of them alone share it in words."""
    await run_all(live, "3:02 8/8", "3:04 8/8", "3:06 8/8", "3:08 8/8")
    assert (await board(live))[0] == "Fast: too close to call"


async def test_a_shared_place_says_so(live: Chat) -> None:
    """Two who are too close to call share the first place, both shown of four."""
    await run_all(live, "3:02 8/8", "3:04 8/8", "3:40 8/8", "4:10 8/8")
    assert (await board(live))[0] == "Fast: 1 Noor 3:02 (1 try); 1 Kwabena 3:04 (1 try), too close to call"


async def test_fast_needs_a_raised_hand(live: Chat) -> None:
    """The quickest run of all stands on no board while nobody has watched it."""
    await run_all(live, *FAR_APART)
    await live.run("petra", "2:30 8/8", watched=False)
    unwatched = live.last
    assert (await board(live))[0].startswith("Fast: 1 Noor 3:02")
    await live.react("bastian", unwatched)
    assert (await board(live))[0].startswith("Fast: 1 Petra 2:30 (2 tries)")


@pytest.mark.parametrize("key", [HAND, f"{HAND}\U0001f3fd", "\N{HAPPY PERSON RAISING ONE HAND}\u200d\u2640\ufe0f"])
async def test_a_hand_of_any_kind_counts(live: Chat, key: str) -> None:
    """Skin tones, variation selectors and a person's sign are looked past."""
    run = await live.run("noor", "3:02 8/8", watched=False)
    assert await live.react("bastian", run, key) == ["First mark for Noor on Rope coil: 3:02."]


@pytest.mark.parametrize("key", ["\N{THUMBS UP SIGN}", "\N{CLAPPING HANDS SIGN}", "8/8", ""])
async def test_no_other_reaction_does_anything(live: Chat, key: str) -> None:
    """No reaction sets a count, publishes or erases."""
    run = await live.run("noor", "3:02 8/8", watched=False)
    assert await live.react("bastian", run, key) == []


async def test_nobody_witnesses_their_own_run(live: Chat) -> None:
    """A runner's own hand is no witness; somebody else's is."""
    run = await live.run("noor", "3:02 8/8", watched=False)
    assert await live.react("noor", run) == []
    assert await live.react("lio", run) == ["First mark for Noor on Rope coil: 3:02."]


async def test_a_hand_taken_back_takes_the_best_with_it(live: Chat) -> None:
    """The earlier best comes back with a correction."""
    await live.run("noor", "3:10 8/8")
    run = await live.run("noor", "3:02 8/8", watched=False)
    assert await live.react("bastian", run) == ["New best for Noor on Rope coil: 3:02, by 8 s."]
    assert await live.delete("bastian", live.last) == ["Corrected: Noor's best on Rope coil is 3:10."]


async def test_a_name_cannot_dress_itself_up(live: Chat) -> None:
    """Markup and direction overrides of a display name do not reach the room."""
    await live.stage.come("!kitchen:tern.example", "@noor:tern.example", "<b>No\u202eor</b>`!post`\u200b")
    await run_all(live, *FAR_APART)
    fast = (await board(live))[0]
    assert "\u202e" not in fast
    assert "`" not in fast
    html = [heard.note.html for heard in live.heard]
    assert not any("<b>" in markup for markup in html)


async def test_own_numbers_are_told_in_private_even_when_asked_in_the_room(live: Chat) -> None:
    """Best, trend and why go to the room of two alone, also where there is nothing to tell."""
    for word in ("best", "trend", "why"):
        assert await live.say("noor", f"!{word}") == live.told("noor") != []
    await live.run("noor", "3:20 7/8 fell")
    for word in ("best", "trend", "why"):
        assert await live.say("noor", f"!{word}") == live.told("noor") != []


async def test_a_higher_power_in_the_private_room_makes_no_chef(live: Chat) -> None:
    """Who is chef is decided by the kitchen's room, whatever the levels of a room of two."""
    private = await live.stage.private_room("@noor:tern.example")
    levels: dict[str, object] = {"users": {"@noor:tern.example": 100}}
    await live.stage.set_state(private, "@noor:tern.example", "m.room.power_levels", levels)
    assert await live.whisper("noor", "post now 5") == ["The chef sets drills. Send yours as an idea?"]
    assert await live.whisper("ime", "post") == ["No weekly post is set yet. Set one like `!post 6 mon 15:00`."]
