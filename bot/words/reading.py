"""The lines of a message as the services take them."""

from collections.abc import Collection

from bot.errors import UserError
from bot.services.lines import Line
from bot.words.submission import lone_clock, read_lines


def lines_in(text: str, names: Collection[str]) -> list[Line]:
    """The lines of a message of results; none where it is talk."""
    return [Line(number, read) for number, (_, read) in enumerate(read_lines(text, names))]


def lone_clock_in(text: str, names: Collection[str]) -> Line | None:
    """A clock alone, whose count is to be asked; None where the text is anything else."""
    try:
        sent = lone_clock(text, names)
    except UserError as problem:
        return Line(0, problem)
    return Line(0, sent) if sent else None
