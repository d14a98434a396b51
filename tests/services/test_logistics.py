"""Mise, table and order through the chat: which drill is meant, what fits, and what is refused."""

import pytest

from tests.chat import Chat

SLATE = "!draft Slate\nplates 4\nplate black slate\n1. 2 bean, place"
WIPE = "!draft Rims\nplates 8\n1. 1 rim, wipe"
MISE_HOW = "Say for how many runs, from 1 to 20, and which drill, like `mise 2` or `mise 2 11B`."
TABLE_HOW = "Write the table's length and depth in cm, like `table 180x70`, or `table 11B` for what a drill takes."


def _head(told: list[str]) -> str:
    return told[0].split("\n")[0]


async def test_mise_is_of_the_live_drill(live: Chat) -> None:
    """Bare it is one run of what is live; a number is runs, a letter a drill; figures go with it."""
    one = "Mise for Rope coil (drill 6), one run of 8 plates, 10 % spare in it. China: 10."
    two = "Mise for Rope coil (drill 6), 2 runs of 8 plates, 10 % spare in it. China: 10, washed between runs."
    assert _head(await live.say("noor", "!mise")) == one
    assert _head(await live.say("noor", "!mise ٢")) == two
    figures = live.heard[0].note.figures
    assert (figures["triangle.piece"], figures["noodle.g"], figures["noodle.g.a_plate"]) == (18, 422.4, 24)
    assert "drill 11A" in _head(await live.say("noor", "!mise 11a"))
    assert "drill 5), 3 runs" in _head(await live.say("noor", "!mise 3 5"))
    assert _head(await live.whisper("noor", "mise 2")) == two


@pytest.mark.parametrize("line", ["!mise 0", "!mise 21", "!mise many", "!mise 2 6 7", "!mise -1"])
async def test_mise_is_asked_for_some_runs(live: Chat, line: str) -> None:
    """Anything but 1 to 20 runs and one drill is answered with how to write it."""
    assert await live.say("noor", line) == [MISE_HOW]


async def test_mise_tells_lives_and_called_sizes(chat: Chat) -> None:
    """A life on a step is told, a called amount replaces the usual, and a wipe needs no component."""
    await chat.say("ime", "!draft Well\nplates 4\n1. 1 jus, sauce, at 7, 20 ml ; life 2m\n2. 1 rim, wipe")
    await chat.say("ime", "!publish")
    lines = (await chat.say("ime", "!mise 1 12"))[0].split("\n")
    assert lines[1:4] == ["- jus: 88 ml (20 ml a plate)", "Tools: sauce spoon, cloth.", "Keeps on the plate: jus 2:00."]
    await chat.say("ime", WIPE)
    await chat.say("ime", "!publish")
    lines = (await chat.say("ime", "!mise 1 13"))[0].split("\n")
    assert lines[1] == "Tools: cloth."
    assert len(lines) == 4


async def test_table_alone_is_the_drills_own(live: Chat) -> None:
    """Without a table it is what the drill's own pattern takes, drawn."""
    row = "One row: 1 2 3 4 5 6 7 8. Walk there on one step and back on the next, so that nobody walks empty."
    own = f"Rope coil (drill 6): 1 x 8 takes a table of 236 x 30 cm.\n{row}"
    assert await live.say("noor", "!table") == [own]
    assert await live.say("noor", "!table 6") == [own]
    (told,) = await live.say("noor", "!table 11b")
    assert told.split("\n")[1].startswith("Far row: 12 11 10 9 8 7; near row: 1 2 3 4 5 6.")


@pytest.mark.parametrize("table", ["240x60", "60 x 240", "240 × 60 cm", "240.0x60", "٢٤٠x٦٠"])
async def test_what_fits_is_drawn(live: Chat, table: str) -> None:
    """Both patterns of Rope coil fit 240 x 60 cm, however it is written and turned; a third row does not."""
    lines = (await live.say("noor", f"!table {table}"))[0].split("\n")
    assert lines[0] == "Rope coil (drill 6), 8 plates of 27 cm, on a table of 240 x 60 cm:"
    assert [line for line in lines if line.startswith("-")] == [
        "- 1 x 8: 236 x 30 cm, fits.",
        "- 2 x 4: 120 x 59 cm, fits.",
        "- 3 x 3: 91 x 88 cm, refused, the third row is out of reach from one side; 28 cm too deep.",
    ]
    assert "Far row: 8 7 6 5; near row: 1 2 3 4. Walked in that order of numbers, there and back." in lines
    assert live.heard[0].note.figures["3x3.short_depth_cm"] == 28


async def test_a_table_for_nothing(live: Chat) -> None:
    """A table that takes no plate says so."""
    (told,) = await live.say("noor", "!table 30x20")
    assert told.endswith("\nNot one plate fits.")


async def test_wide_plates_are_walked_from_both_sides(chat: Chat) -> None:
    """Two rows of 31 cm plates are 67 cm deep: too far to reach from one side."""
    await chat.say("ime", "!draft Wide\nplates 4 rows 2\nplate flat 31 cm china\n1. 2 bean, place")
    await chat.say("ime", "!publish")
    (told,) = await chat.say("noor", "!table 12")
    assert told.endswith("Two rows: walk both sides; 67 cm is too far to reach from one.")


@pytest.mark.parametrize("line", ["!table 180", "!table 180x70x2", "!table 0x70", "!table 9999x70", "!table long"])
async def test_a_table_is_two_sides(live: Chat, line: str) -> None:
    """One side, three, none, or an impossible one is answered with how to write it."""
    assert await live.say("noor", line) == [TABLE_HOW]


async def test_the_drill_may_stand_on_either_side(live: Chat) -> None:
    """`table 11B 170x70` and `table 170x70 11B` ask for the same."""
    assert await live.say("noor", "!table 170x70 11B") == await live.say("noor", "!table 11B 170x70")


async def test_plates_of_unknown_width(chat: Chat) -> None:
    """A drill that does not say how wide its plate is gets no table, and is told what to write."""
    await chat.say("ime", SLATE)
    await chat.say("ime", "!publish")
    assert await chat.say("noor", "!table 12 180x70") == [
        "I cannot tell how wide the plate is (black slate). The drill says it like `plate flat 27 cm china`."
    ]


async def test_order_of_dry_pieces(chat: Chat) -> None:
    """Harbour clock has nothing that minds waiting: times alone, plate by plate the fastest."""
    (told,) = await chat.say("noor", "!order 1")
    lines = told.split("\n")
    assert lines[1] == "- step by step (as set) 1:09"
    assert lines[-2] == "- plate by plate 1:04"
    assert lines[-1].startswith("Fastest: plate by plate.")
    assert chat.heard[0].note.figures["plate.standard_s"] == pytest.approx(63.9)


async def test_the_order_in_use_is_marked(chat: Chat) -> None:
    """Last ferry is worked in waves of 4; that size is shown and marked though larger ones come before it."""
    (told,) = await chat.say("noor", "!order 11C")
    marked = [line for line in told.split("\n") if "(as set)" in line]
    assert len(marked) == 1
    assert marked[0].startswith("- waves of 4 (as set) 11:20")


async def test_a_life_that_nothing_keeps(chat: Chat) -> None:
    """Where even plate by plate is too slow for a life, it is said."""
    await chat.say("ime", "!draft Foam\nplates 4\n1. 1 foam, sauce ; life 5s\n2. 7 courgette, shingle")
    await chat.say("ime", "!publish")
    (told,) = await chat.say("noor", "!order 12")
    assert told.endswith("\nNone keeps every life. Fewer plates, or a longer life.")
