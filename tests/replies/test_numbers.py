"""Numbers as each language writes them: its own decimal sign, Western digits, English word for word as ever."""

from decimal import Decimal

import pytest

from bot.domain.run import Count
from bot.replies.amounts import amount_text
from bot.replies.phrases import Phrases, decimal_sign, english
from bot.replies.results import result_line
from tests.fakes import a_result

COMMA = ("es", "fr", "pt", "pl")
POINT = ("en", "ar", "bn")
"""Unicode CLDR charts, "Numbers: Symbols", decimal sign with Western digits: a comma in Spanish, French, Portuguese and
Polish, a point in English, Arabic and Bengali (from memory; Babel's data is CLDR's)."""


@pytest.mark.parametrize("language", COMMA)
def test_a_comma_where_the_language_has_one(language: str) -> None:
    """The sign of decimals is the language's own."""
    assert decimal_sign(language) == ","


@pytest.mark.parametrize("language", POINT)
def test_a_point_with_western_digits(language: str) -> None:
    """Arabic and Bengali keep the digits that clocks and scales show, and so the point."""
    assert decimal_sign(language) == "."


def test_amounts_and_percents() -> None:
    """Half a millilitre and +17.0 % in Polish; a number without parts stays as it is."""
    polish = Phrases("pl")
    assert amount_text(polish, Decimal("0.5"), "ml") == "0,5 ml"
    assert polish.decimal(17.04, 1, signed=True) == "+17,0"
    assert polish.number("170") == "170"


def test_a_polish_result_has_its_commas_and_its_clock() -> None:
    """3:02 stays as it is typed; the pace is 2,84 s and the levelled one 1,11 s (182/64 and 182/164)."""
    result = a_result(count=Count(plates=8, accepted=8))
    told = result_line(Phrases("pl"), result)
    assert "3:02" in told
    assert "2,84" in told
    assert "1,11" in told
    assert "2.84" in result_line(english(), result)
