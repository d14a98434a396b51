"""Words about what a drill takes: mise, table, order, and for the chef what it costs."""

import re
from decimal import Decimal

from bot.domain.durations import fold_digits
from bot.domain.table import Table
from bot.errors import UserError
from bot.services import logistics, prices
from bot.services.said import Said
from bot.words.registry import Word

MOST_RUNS = 20
LONGEST_TABLE_CM = 2000

_LABEL = r"\d{1,4}[a-z]{0,2}"
_MISE = re.compile(
    rf"(?:(?P<runs>\d{{1,4}})(?:\s+(?P<label>{_LABEL}))?|(?P<lone>\d{{1,4}}[a-z]{{1,2}}))?", re.IGNORECASE
)
_CM = r"\d{1,4}(?:[.,]\d)?"
_TABLE = re.compile(
    rf"(?:(?P<label>{_LABEL})\s+)?(?P<one>{_CM})\s*(?:cm\s*)?[x×*]\s*(?P<other>{_CM})(?:\s*cm)?(?:\s+(?P<after>{_LABEL}))?",
    re.IGNORECASE,
)
_CURRENCY = re.compile(r"[a-z]{3}", re.IGNORECASE)
_PRICE = re.compile(
    rf"(?:(?P<label>{_LABEL})(?:\s+|$))?(?:(?P<what>\S.*?)\s+(?P<amount>\d{{1,7}}(?:[.,]\d{{1,4}})?))?", re.IGNORECASE
)
_OWN_TABLE = re.compile(r"(?:\d{1,2}[a-z]{0,2}|\d{3,4}[a-z]{1,2})?", re.IGNORECASE)
"""From a hundred on a drill is named with its letter: a bare number is a length that lacks its depth."""


async def _mise(said: Said, rest: str) -> None:
    found = _MISE.fullmatch(fold_digits(rest))
    runs = int(found["runs"] or 1) if found else 0
    if not found or not 1 <= runs <= MOST_RUNS:
        raise UserError("mise-how", most=MOST_RUNS)
    await logistics.tell_mise(said, runs, found["label"] or found["lone"] or "")


async def _table(said: Said, rest: str) -> None:
    text = fold_digits(rest)
    if _OWN_TABLE.fullmatch(text):
        await logistics.tell_own_table(said, text)
        return
    found = _TABLE.fullmatch(text)
    sides = sorted(float(found[side].replace(",", ".")) for side in ("one", "other")) if found else [0.0, 0.0]
    if not found or not 0 < sides[0] <= sides[1] <= LONGEST_TABLE_CM:
        raise UserError("table-how")
    await logistics.tell_table(
        said, Table(length_cm=sides[1], depth_cm=sides[0]), found["label"] or found["after"] or ""
    )


async def _order(said: Said, label: str) -> None:
    await logistics.tell_orders(said, label)


async def _price(said: Said, rest: str) -> None:
    """``price``, ``price 6``, ``price EUR``, ``price dish 14.50``, ``price 6 courgette 0.04``."""
    text = fold_digits(rest)
    if _CURRENCY.fullmatch(text):
        await prices.set_currency(said, text)
        return
    found = _PRICE.fullmatch(text)
    if not found:
        raise UserError("price-how")
    label, what = found["label"] or "", found["what"]
    if what is None:
        await prices.tell_cost(said, label)
        return
    amount = Decimal(found["amount"].replace(",", "."))
    if what.casefold() == "dish":
        await prices.set_dish_price(said, label, amount)
    else:
        await prices.set_price(said, label, what, amount)


WORDS = (
    Word("mise", _mise, "practise"),
    Word("table", _table, "practise"),
    Word("order", _order, "practise"),
    Word("price", _price, chef=True, private=True),
)
