"""The line that answers a run, read off the sentences themselves; the figures are fixtures of the project's model."""

from dataclasses import replace

import pytest

from bot.domain.run import Count, Result
from bot.replies.phrases import english
from bot.replies.results import rebuilt_hint, result_line
from tests.fakes import a_result


def of(count: Count, **changes: object) -> Result:
    """A run of Rope coil with this count."""
    return replace(a_result(count=count, touches=56, standard_s=164.5, net_s=182.0, levelled_s=1.66), **changes)  # type: ignore[arg-type] # fields by name


@pytest.mark.parametrize(
    ("result", "told"),
    [
        (of(Count(8, 8)), "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."),
        (of(Count(8, 8, rebuilt=1)), "Heard. 3:02, 8 of 8, 1 rebuilt. 3.25 s a touch, 1.66 levelled."),
        (of(Count(8, 7, redo=1), net_s=231.4), "Net 3:51 (one redo cost 0:49). 4.13 s a touch."),
        (of(Count(8, 6, redo=2), net_s=290.0), "Net 4:50 (2 redos cost 1:48). 5.18 s a touch."),
        (of(Count(8, 1, redo=7), net_s=None), "One clean plate kept. No time this run; try for six."),
        (of(Count(8, 0, redo=8), net_s=None), "Kept, without a time: no plate passed this run. Try for 6 good plates."),
        (of(Count(8, 1, left=7), kind="stopped"), "Stopped after 1 plate. Kept for you alone, on no board."),
    ],
)
def test_one_line(result: Result, told: str) -> None:
    """Numbers first; one redo in words, several in figures; no time said kindly."""
    assert result_line(english(), result) == told


def test_rebuilt_hint_is_a_line_to_send() -> None:
    """The hint holds the whole line that says the same as a rebuild."""
    hint = rebuilt_hint(english(), of(Count(8, 7, redo=1)))
    assert hint == "If it was rebuilt inside the clock: `3:02 8/8 rebuilt 1`."
