"""Sums of money as said: in the currency's own minor unit, whole where it has none (CLDR, by Babel)."""

from decimal import Decimal

from babel.numbers import format_currency, get_currency_precision, is_currency

from bot.errors import UserError
from bot.replies.phrases import Phrases


def check_currency(code: str) -> str:
    """The ISO 4217 code in capitals; a UserError where there is no such currency."""
    capital = code.upper()
    if not is_currency(capital):
        raise UserError("price-which-currency", code=code)
    return capital


def check_sum(amount: Decimal, currency: str) -> Decimal:
    """A sum that can be paid in this currency; a UserError where it has a smaller part than the smallest coin."""
    digits = digits_of(currency)
    if amount != round(amount, digits):
        raise UserError("price-too-fine", currency=currency, digits=digits, example=money(amount, currency))
    return amount


def digits_of(currency: str) -> int:
    """How many figures a sum in this currency has behind the point."""
    return int(get_currency_precision(currency))


def money(amount: Decimal, currency: str) -> str:
    """The amount alone, to the minor unit: ``14.50``, and ``1450`` where there is none."""
    return f"{amount:.{digits_of(currency)}f}"


def money_text(say: Phrases, amount: Decimal, currency: str) -> str:
    """The amount with its currency's code, as the language writes it."""
    return str(format_currency(amount, currency, format="#,##0.00\N{NO-BREAK SPACE}¤¤", locale=say.language))
