"""Fits made in a process of their own, so that the bot's never loads numpy or scipy: cells out and a fit back, as JSON.

Run as a program, this module is that process: a line in, a line out, until the bot closes its end or is gone.
"""

import asyncio
import json
import os
import sys
from collections.abc import Sequence
from typing import TextIO

from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.services.ports.fitting import FitFailed

PATIENCE_S = 120.0
LONGEST_LINE = 2**28
ONE_THREAD = {"OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1", "MKL_NUM_THREADS": "1"}
NO_FIT = "null"
WORKER = (sys.executable, "-m", "bot.fitting")


class FittingProcess:
    """A worker started for the first fit, kept for the next ones, and ended with the bot."""

    def __init__(self, command: Sequence[str] = WORKER, patience_s: float = PATIENCE_S) -> None:
        self._command = command
        self._patience_s = patience_s
        self._worker: asyncio.subprocess.Process | None = None
        self._turn = asyncio.Lock()

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """The fit of these cells; a FitFailed where the worker ended, took too long or could not be started."""
        async with self._turn:
            try:
                async with asyncio.timeout(self._patience_s):
                    answer = await self._ask(json.dumps(cells))
            except BaseException as fault:
                await self.aclose()
                if isinstance(fault, TimeoutError | OSError):
                    raise FitFailed(f"no fit in {self._patience_s:.0f} s, or no worker") from fault
                raise
            if not answer.endswith("\n"):
                await self.aclose()
                raise FitFailed("the worker ended")
        return _fit_in(answer)

    async def aclose(self) -> None:
        """End the worker, at once and whatever it does."""
        worker, self._worker = self._worker, None
        if worker and worker.returncode is None:
            worker.kill()
            await worker.wait()

    async def _ask(self, question: str) -> str:
        worker = self._worker = self._worker or await self._start()
        assert worker.stdin and worker.stdout  # noqa: PT018, S101 - both are pipes, as asked for
        worker.stdin.write(f"{question}\n".encode())
        await worker.stdin.drain()
        return (await worker.stdout.readline()).decode()

    async def _start(self) -> asyncio.subprocess.Process:
        return await asyncio.create_subprocess_exec(
            *self._command,
            stdin=asyncio.subprocess.PIPE,
            stdout=asyncio.subprocess.PIPE,
            limit=LONGEST_LINE,
            env=os.environ | ONE_THREAD,
            start_new_session=True,  # what ends the bot from the keyboard is told to the bot alone
        )


class FittingHere:
    """Makes fits where it is asked to, as rehearsals and tests do; loads what it takes with the first."""

    async def fit(self, cells: Sequence[Cell]) -> Fit | None:
        """The fit of these cells."""
        return fit_here(cells)


def fit_here(cells: Sequence[Cell]) -> Fit | None:
    """The fit of these cells, made in this process."""
    from bot.domain.fairness.reml import fit_cells  # noqa: PLC0415 - numpy and scipy are loaded where a fit is made

    return fit_cells(cells)


def answer(questions: TextIO, answers: TextIO) -> None:
    """Answer line by line until there are no more."""
    for question in questions:
        fit = fit_here([Cell(*cell) for cell in json.loads(question)])
        answers.write(f"{fit.to_json() if fit else NO_FIT}\n")
        answers.flush()


def _fit_in(line: str) -> Fit | None:
    return None if line.strip() == NO_FIT else Fit.from_json(line)


if __name__ == "__main__":
    answer(sys.stdin, sys.stdout)
