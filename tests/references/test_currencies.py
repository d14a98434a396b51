"""Minor units of currencies, against ISO 4217 (the list of its maintenance agency, SIX; values from memory)."""

from decimal import Decimal

import pytest

from bot.errors import UserError
from bot.replies.money import check_currency, check_sum, digits_of, money, money_text
from bot.replies.phrases import english

MINOR_UNITS = {"EUR": 2, "GBP": 2, "USD": 2, "MXN": 2, "JPY": 0, "KRW": 0, "VND": 0, "BHD": 3, "KWD": 3, "TND": 3}


@pytest.mark.parametrize(("code", "digits"), MINOR_UNITS.items())
def test_minor_units(code: str, digits: int) -> None:
    """Cents, none, and thousandths."""
    assert digits_of(code) == digits


@pytest.mark.parametrize(
    ("code", "alone", "shown"),
    [("EUR", "1450.50", "1,450.50 EUR"), ("JPY", "1450", "1,450 JPY"), ("BHD", "1450.500", "1,450.500 BHD")],
)
def test_sums_are_shown_to_the_minor_unit(code: str, alone: str, shown: str) -> None:
    """As many figures behind the point as the currency has, and the code beside it."""
    amount = Decimal("1450.5") if code != "JPY" else Decimal(1450)
    assert money(amount, code) == alone
    assert money_text(english(), amount, code).replace("\N{NO-BREAK SPACE}", " ") == shown


@pytest.mark.parametrize(("code", "amount"), [("JPY", "14.5"), ("EUR", "14.505"), ("BHD", "1.2345")])
def test_finer_than_the_smallest_coin(code: str, amount: str) -> None:
    """A sum that cannot be paid is refused; one that can is kept as it is."""
    with pytest.raises(UserError) as told:
        check_sum(Decimal(amount), code)
    assert told.value.key == "price-too-fine"
    assert check_sum(Decimal(14), code) == 14


def test_codes_are_checked() -> None:
    """A code in any case is known, and a wrong one is refused."""
    assert check_currency("jpy") == "JPY"
    with pytest.raises(UserError) as told:
        check_currency("xyq")
    assert told.value.key == "price-which-currency"
