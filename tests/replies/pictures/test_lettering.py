"""Lettering: lines that fit, in the right direction, each script by its own rules."""

import re
from importlib.resources import as_file, files

import pytest
from fontTools.ttLib import TTFont

from bot.replies.phrases import catalogue
from bot.replies.pictures.lettering import broken, set_line, width_px

WORDS = sorted({word for text in catalogue("en") for word in re.findall(r"[^\s{}$\[\]*]+", text)})
POLISH_AND_FRENCH = ["zażółć", "gęślą", "jaźń", "œuvre", "ŁÓDŹ", "ção", "ñandú", "“8/8”", "23–25"]


@pytest.mark.parametrize("bold", [False, True])
def test_words_come_out_no_wider_than_reckoned(bold: bool) -> None:
    """Against the advance widths in the shipped font itself (its hmtx table): no line is wider than reckoned."""
    with as_file(files("bot.replies.pictures") / "fonts") as fonts:
        font = TTFont(fonts / f"NotoSans-LatinArabicBengali-{'Bold' if bold else 'Regular'}.ttf")
    letters, advances = font.getBestCmap(), font["hmtx"].metrics
    text = [*WORDS, *POLISH_AND_FRENCH]
    for nth in range(0, len(text), 5):
        line = " ".join(text[nth : nth + 5])
        true_px = sum(advances[letters[ord(letter)]][0] for letter in line if ord(letter) in letters) * 14 / 1000
        assert 0.7 * width_px(line, 14, bold=bold) < true_px <= width_px(line, 14, bold=bold), line


def test_lines_fit_and_keep_every_word() -> None:
    """A long rule breaks between words; a word wider than the room is cut rather than run off."""
    rule = "all pieces present, neighbours alike within 10 mm, " + "x" * 120
    lines = broken(rule, 14, 200)
    assert "".join(lines).replace(" ", "") == rule.replace(" ", "")
    assert all(width_px(line, 14) <= 200 for line in lines)


def test_isolates_are_closed_on_every_line() -> None:
    """What is filled into Arabic keeps its own direction on each line that it reaches over (Unicode, annex 9, BD9)."""
    lines = broken("جيد: \u2068all pieces present, neighbours alike\u2069.", 14, 120)
    assert len(lines) > 2
    assert all(line.count("\u2068") == line.count("\u2069") for line in lines)
    assert all("\u2068" in line for line in lines[:-1])


def test_a_line_of_arabic_is_one_isolate() -> None:
    """The renderer begins on the left whatever the line says, so the line says it begins on the right."""
    assert set_line("جيد 8", right_to_left=True) == "\u2067جيد 8\u2069"


def test_bengali_is_set_apart_from_latin_letters() -> None:
    """Behind Latin letters Bengali would not be joined; digits between its words stay with it, markup is escaped."""
    assert set_line("gel & প্লেট 8 টি, dot", right_to_left=False) == "gel &amp; \u2066প্লেট 8 টি\u2069, dot"
