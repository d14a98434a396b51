"""Fits made in a process of their own, so that the bot's never loads numpy or scipy: cells out and a fit back, as JSON.

Run as a program, this module is that process: a line in, a line out, until the bot closes its end or is gone.
"""

import json
import sys
from collections.abc import Sequence

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.services.ports.fitting import FitFailed
from bot.worker import Worker, WorkerFailed, answer_all, program

PATIENCE_S = 120.0
ONE_THREAD = {"OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1", "MKL_NUM_THREADS": "1"}
NO_FIT = "null"


class FittingProcess:
    """A worker started for the first fit, kept for the next ones, and ended with the bot."""

    def __init__(self, command: Sequence[str] = program("bot.fitting"), patience_s: float = PATIENCE_S) -> None:
        self._worker = Worker(command, patience_s, settings=ONE_THREAD)

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """The fit of these cells; a FitFailed where the worker ended, took too long or could not be started."""
        try:
            answer = await self._worker.ask(json.dumps(cells))
        except WorkerFailed as fault:
            raise FitFailed(str(fault)) from fault
        return _fit_in(answer)

    async def aclose(self) -> None:
        """End the worker, at once and whatever it does."""
        await self._worker.aclose()


class FittingHere:
    """Makes fits where it is asked to, as rehearsals and tests do; loads what it takes with the first."""

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """The fit of these cells."""
        return fit_here(cells)


def fit_here(cells: Sequence[Cell]) -> Fit | None:
    """The fit of these cells, made in this process."""
    from bot.domain.fairness.reml import fit_cells  # noqa: PLC0415 - numpy and scipy are loaded where a fit is made

    return fit_cells(cells)


def answer(question: str) -> str:
    """The line that answers a line."""
    fit = fit_here([Cell(*cell) for cell in json.loads(question)])
    return fit.to_json() if fit else NO_FIT


def _fit_in(line: str) -> Fit | None:
    return None if line.strip() == NO_FIT else Fit.from_json(line)


if __name__ == "__main__":
    answer_all(sys.stdin, sys.stdout, answer)
