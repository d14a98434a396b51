"""Answers what is measured on a plate: whether dots are even, of the size that was called, or graded."""

from dataclasses import asdict

from bot.domain.dots import measure_even, measure_graded
from bot.errors import UserError
from bot.replies.dots import even_line, graded_line
from bot.services.said import Said


async def answer_dots(said: Said, widths_mm: list[float], called_mm: list[float]) -> None:
    """Accept or redo; ``called_mm`` is empty, one width for equal dots, or one for each of graded ones."""
    if len(called_mm) > 1:
        if len(called_mm) != len(widths_mm):
            raise UserError("dots-how-called")
        dots = measure_graded(widths_mm, called_mm)
        text = graded_line(said.phrases, widths_mm, called_mm, dots)
    else:
        called = called_mm[0] if called_mm else None
        dots = measure_even(widths_mm, called)
        text = even_line(said.phrases, widths_mm, called, dots)
    await said.answer(text, figures=asdict(dots))
