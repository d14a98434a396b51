"""Amounts of components as said: whole pieces, and measures in as many figures as a scale shows."""

from decimal import Decimal

from bot.domain.amounts import Unit
from bot.replies.phrases import Phrases

_WHOLE_FROM = 10


def amount_text(say: Phrases, amount: Decimal, unit: Unit) -> str:
    """``27``, ``1.3 ml`` or ``251 ml``: two figures below ten, whole from there on."""
    if unit == "piece":
        return say.number(f"{amount.normalize():f}")
    shown = say.number(f"{float(amount):.2g}") if amount < _WHOLE_FROM else f"{amount:.0f}"
    return f"{shown} {unit}"
