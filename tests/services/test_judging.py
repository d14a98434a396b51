"""Dots measured, in the chat."""

import pytest

from tests.chat import Chat


@pytest.mark.parametrize(
    ("measured", "answer"),
    [
        ("10 10 9 11 10", "Mean 10.0, spread 7 %: accept."),
        ("10mm, 10 mm, 9, 11.0 10 mm", "Mean 10.0, spread 7 %: accept."),
        ("١٠ ١٠ ٩ ١١ ١٠", "Mean 10.0, spread 7 %: accept."),
        ("10 10 9 11 14", "Mean 10.8, spread 17.8 %: redo, at most 10 % is even."),
        ("10 10 9 11 10 of 10", "Mean 10.0, spread 7 %, each within 1 mm of 10: accept."),
        ("10 10 9 12 10 of 10", "Mean 10.2, spread 11 %: redo, dot 4 (12) is more than 1 mm off 10."),
        (
            "14 12 10 8 6 of 14-12-10-8-6",
            "5 dots, each at least 1 mm smaller, the ends within 1.5 mm of 14 and 6: accept.",
        ),
        (
            "14 12 12 8 6 of 14 12 10 8 6",
            "Redo: dot 3 (12) is not at least 1 mm smaller than the one before (12).",
        ),
        ("12 11 10 8 6 of 14 12 10 8 6", "Redo: dot 1 (12) is more than 1.5 mm off 14."),
    ],
)
async def test_measured(chat: Chat, measured: str, answer: str) -> None:
    """Even, of the called width, graded: accept, or redo with the dot that is at fault."""
    assert await chat.say("noor", f"!dots {measured}") == [answer]


@pytest.mark.parametrize(
    ("measured", "answer"),
    [
        ("", "Measure two dots or more, like `dots 10 10 9 11 10`."),
        ("10", "Measure two dots or more, like `dots 10 10 9 11 10`."),
        (
            "10 0 10",
            "A dot is more than 0 and at most 100 mm wide; send the widths again, like `dots 10 10 9 11 10`.",
        ),
        (
            "10 400",
            "A dot is more than 0 and at most 100 mm wide; send the widths again, like `dots 10 10 9 11 10`.",
        ),
        (
            "ten `nine`",
            "I could not read “ten” as a width in mm; write widths with spaces between, like `dots 10 9.5 11`.",
        ),
        (
            "10,5 9",
            "I could not read “10,5” as a width in mm; write widths with spaces between, like `dots 10 9.5 11`.",
        ),
        (
            "10 -3",
            "I could not read “-3” as a width in mm; write widths with spaces between, like `dots 10 9.5 11`.",
        ),
        (
            "10 10 10 of 9 9",
            "After `of` write one width, like `dots 10 10 9 of 10`, "
            "or one for each dot, like `dots 14 12 9 of 14 12 10`.",
        ),
        ("9 " * 51, "Measure at most 50 dots; it is a spot check."),
    ],
)
async def test_refusals(chat: Chat, measured: str, answer: str) -> None:
    """Fewer than two, none, too wide, or no numbers: one kind sentence with what to send instead."""
    assert await chat.say("noor", f"!dots {measured}") == [answer]
