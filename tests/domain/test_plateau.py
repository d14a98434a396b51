"""Ten clean first runs at one speed over three weeks are asked about; fewer or faster or unclean ones are not."""

from collections.abc import Sequence
from datetime import date, timedelta

import pytest

from bot.domain.first_runs import FirstRun, FirstRuns
from bot.domain.plateau import is_level

LEVEL = (200, 203, 198, 201, 199, 202, 200, 198, 203, 201)


def spread(nets_s: Sequence[float | None] = LEVEL, *, redo: Sequence[int] = (), days_apart: float = 7 / 3) -> FirstRuns:
    """First runs of eight plates, so far apart, with these redos."""
    redos = [*redo, *[0] * (len(nets_s) - len(redo))]
    start = date(2026, 11, 2)
    return FirstRuns(
        tuple(
            FirstRun(start + timedelta(days=int(nth * days_apart)), net_s, 8, redos[nth])
            for nth, net_s in enumerate(nets_s)
        )
    )


def test_level() -> None:
    """Ten first runs within 2.5 % of each other over three weeks: level."""
    assert spread().days[-1].day - spread().days[0].day == timedelta(weeks=3)
    assert is_level(spread())


@pytest.mark.parametrize(
    "last",
    [
        FirstRuns(()),
        spread(LEVEL[:9], days_apart=3),
        spread(days_apart=2),
        spread([200 * 0.995**nth for nth in range(10)]),
        spread([200 * 1.005**nth for nth in range(10)]),
        spread([198, 198, 198, 198, 198, 205, 205, 205, 205, 205]),
        spread(redo=[1] * 9),
        spread([*LEVEL[:5], None, *LEVEL[5:]], redo=[0, 0, 0, 0, 0, 8, 1]),
    ],
    ids=["none", "nine", "18 days", "4.4 % faster", "4.6 % slower", "halves 3.5 % apart", "9 of 80 redo", "no time"],
)
def test_not_level(last: FirstRuns) -> None:
    """Each of what it takes is needed, and the redos of a day without a time count."""
    assert not is_level(last)


def test_nine_tenths_are_clean() -> None:
    """8 redos of 80 plates leave nine of ten, which is enough."""
    assert is_level(spread(redo=[1] * 8))
