"""Fits are made beside the bot: in a process of their own, which may die, hang or never start without harm."""

import subprocess
import sys
from collections.abc import Sequence

import pytest

from bot.domain.fairness.cells import TimedRun, cells_of
from bot.fitting import FittingProcess, fit_here
from bot.services.ports.fitting import FitFailed

CELLS = cells_of(
    TimedRun(cook, set_up, 0.05 * skill + 0.02 * set_up + 0.01 * (week % 3), week)
    for week in range(4)
    for skill, cook in enumerate(("noor", "kwabena", "lio", "petra"))
    for set_up in (6, 9)
)


async def test_the_worker_gives_the_same_fit() -> None:
    """What comes back is the fit as made here, and the worker answers again; of no run there is none."""
    fitting = FittingProcess()
    try:
        assert await fitting.fit(CELLS) == await fitting.fit(CELLS) == fit_here(CELLS)
        assert await fitting.fit(()) is None
    finally:
        await fitting.aclose()


@pytest.mark.parametrize(
    ("program", "patience_s"),
    [("raise SystemExit(1)", 30.0), ("input(); print('half', end='')", 30.0), ("input(); input()", 0.5)],
    ids=["ends at once", "ends in the middle", "never answers"],
)
async def test_a_worker_that_fails(program: str, patience_s: float) -> None:
    """It is told as a fault of the fit, each time anew, and nothing of it is left running."""
    fitting = FittingProcess((sys.executable, "-c", program), patience_s)
    for _ in range(2):
        with pytest.raises(FitFailed):
            await fitting.fit(CELLS)


async def test_a_worker_that_cannot_be_started() -> None:
    """A program that is not there is a fault of the fit too."""
    with pytest.raises(FitFailed):
        await FittingProcess(("/nowhere/at/all",)).fit(CELLS)


@pytest.mark.parametrize("modules", [("bot.app", "bot.rehearsal"), ("bot.matrix.crypto.encryption",)])
def test_the_bots_own_process_loads_neither_numpy_nor_scipy(modules: Sequence[str]) -> None:
    """In a fresh interpreter, after everything that a running bot imports."""
    program = f"import sys, {', '.join(modules)}; print([m for m in ('numpy', 'scipy') if m in sys.modules])"
    ended = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert ended.stdout == "[]\n"
