"""A worker: a program beside the bot that answers line by line, so that what it loads is not in the bot itself."""

import asyncio
import os
import sys
from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType
from typing import TextIO

LONGEST_LINE = 2**28


class WorkerFailed(Exception):  # noqa: N818 - it says what happened, as SendRefused does
    """No answer came: the worker ended, took too long or could not be started."""


class Worker:
    """Started for the first question, kept for the next ones, and ended when idle for so long or with the bot.

    One question at a time; the others wait.
    """

    def __init__(
        self,
        command: Sequence[str],
        patience_s: float,
        *,
        idle_s: float | None = None,
        settings: Mapping[str, str] = MappingProxyType({}),
    ) -> None:
        self._command = command
        self._patience_s = patience_s
        self._idle_s = idle_s
        self._settings = settings
        self._process: asyncio.subprocess.Process | None = None
        self._turn = asyncio.Lock()
        self._retiring: asyncio.TimerHandle | None = None

    async def ask(self, question: str) -> str:
        """The line that answers this line; a WorkerFailed where there is none, and nothing is then left running."""
        async with self._turn:
            self._stay()
            try:
                async with asyncio.timeout(self._patience_s):
                    answer = await self._ask(question)
            except BaseException as fault:
                await self.aclose()
                if isinstance(fault, TimeoutError | OSError):
                    raise WorkerFailed(f"no answer in {self._patience_s:.0f} s, or no worker") from fault
                raise
            if not answer.endswith("\n"):
                await self.aclose()
                raise WorkerFailed("the worker ended")
            self._retire_when_idle()
        return answer

    async def aclose(self) -> None:
        """End the worker, at once and whatever it does."""
        self._stay()
        process, self._process = self._process, None
        if process and process.returncode is None:
            process.kill()
            await process.wait()

    async def _ask(self, question: str) -> str:
        process = self._process
        if process is None or process.returncode is not None:
            process = self._process = await self._start()
        assert process.stdin and process.stdout  # noqa: PT018, S101 - both are pipes, as asked for
        process.stdin.write(f"{question}\n".encode())
        await process.stdin.drain()
        return (await process.stdout.readline()).decode()

    async def _start(self) -> asyncio.subprocess.Process:
        return await asyncio.create_subprocess_exec(
            *self._command,
            stdin=asyncio.subprocess.PIPE,
            stdout=asyncio.subprocess.PIPE,
            limit=LONGEST_LINE,
            env={**os.environ, **self._settings},
            start_new_session=True,  # what ends the bot from the keyboard is told to the bot alone
        )

    def _retire_when_idle(self) -> None:
        if self._idle_s is not None:
            self._retiring = asyncio.get_running_loop().call_later(self._idle_s, self._retire)

    def _stay(self) -> None:
        if self._retiring:
            self._retiring.cancel()
            self._retiring = None

    def _retire(self) -> None:
        """Let the worker end by itself: it does where its questions end."""
        process, self._process = self._process, None
        if process and process.stdin:
            process.stdin.close()


def program(module: str) -> tuple[str, ...]:
    """The command that runs a module of the bot as a worker."""
    return sys.executable, "-m", module


def answer_all(questions: TextIO, answers: TextIO, answer: Callable[[str], str]) -> None:
    """Answer line by line until there are no more: what a worker does."""
    for question in questions:
        answers.write(f"{answer(question)}\n")
        answers.flush()
