"""Numbers typed in any script are understood by every word that reads one, and marks copied along are no hindrance."""

import unicodedata

import pytest

from tests.chat import Chat

ARABIC, PERSIAN, BENGALI, DEVANAGARI, FULL_WIDTH = 0x660, 0x6F0, 0x9E6, 0x966, 0xFF10
LINES = ("spec 6", "table 180x70", "slot 25", "mise 2", "pickup 120 in 20", "dots 10 9.5 11", "order 6", "board")
CHEFS = ("post 6 tue 15:00", "dayturn 05:00", "quiet 22:00-09:00", "raise 6")


def in_script(line: str, zero: int) -> str:
    """The line with its digits in the script whose zero this is (Unicode character database, Decimal_Digit_Number)."""
    assert unicodedata.decimal(chr(zero)) == 0
    return "".join(chr(zero + int(c)) if c.isdigit() else c for c in line)


@pytest.mark.parametrize("zero", [ARABIC, PERSIAN, BENGALI, DEVANAGARI, FULL_WIDTH])
async def test_digits_of_any_script(live: Chat, zero: int) -> None:
    """Each word with a number answers the same to the digits of another script."""
    for line in LINES:
        assert await live.say("noor", f"!{in_script(line, zero)}") == await live.say("noor", f"!{line}"), line
    for line in CHEFS:
        plain = await live.say("ime", f"!{line}")
        assert await live.say("ime", f"!{in_script(line, zero)}") == plain, line


async def test_a_whole_draft_in_bengali_digits(live: Chat) -> None:
    """A draft is read to the same card, and its plates are changed."""
    draft = "draft Slipway\nplates 8 rows 2\n1. 7 courgette, shingle, at 10-4\n2. 1 tea jus, sauce, at 7"
    (plain,) = await live.whisper("ime", draft)
    assert await live.whisper("ime", in_script(draft, BENGALI)) == [plain]
    (changed,) = await live.whisper("ime", f"plates {in_script('10', BENGALI)}")
    assert "10 plates" in changed.splitlines()[0]


@pytest.mark.parametrize("typed", ["\u2066!drills\u2069", "\u200f!drills", "!\u2066drills\u2069"])
async def test_marks_copied_along(live: Chat, typed: str) -> None:
    """A word copied out of a right-to-left reply with its unseen marks is the word."""
    assert await live.say("noor", typed) == await live.say("noor", "!drills")
