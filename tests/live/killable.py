"""The real bot in a process of its own that kills itself, as a power cut would, at one named step.

``python -m tests.live.killable CONFIG STEP`` runs what ``platepace run`` runs, on a storage and a client that watch the
calls going through them. A step reads ``before inbox.take``, ``after inbox.take`` or ``commit inbox.take``; the last
is the moment after the transaction in which the call was made was stored.
"""

import asyncio
import os
import signal
import sys
from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from functools import partial
from pathlib import Path
from typing import Any

from bot.app import open_bot
from bot.matrix.client import Account, Client
from bot.services.ports.world import Clock, UnitOfWork
from bot.settings import load_secrets, load_settings
from bot.storage.storage import SqlStorage

Pass = Callable[[str], None]
"""Goes past a step; at the fatal one it does not return."""


class _Watched:
    """A repository whose calls are steps; a call with nothing to store is none."""

    def __init__(self, name: str, repository: Any, step: Pass, made: list[str]) -> None:
        self._name = name
        self._repository = repository
        self._step = step
        self._made = made

    def __getattr__(self, call: str) -> Any:
        real = getattr(self._repository, call)
        named = f"{self._name}.{call}"

        async def watched(*args: Any, **kwargs: Any) -> Any:
            if named == "inbox.take" and not args[1]:
                return await real(*args, **kwargs)
            self._step(f"before {named}")
            result = await real(*args, **kwargs)
            if result is not None or named not in {"inbox.oldest"}:
                self._made.append(named)
                self._step(f"after {named}")
            return result

        return watched


class WatchedStorage(SqlStorage):
    """A storage whose units of work are watched, and whose commits are steps."""

    def __init__(self, step: Pass, url: str, clock: Clock) -> None:
        super().__init__(url, clock)
        self._pass = step

    @asynccontextmanager
    async def begin(self) -> AsyncIterator[UnitOfWork]:
        """A transaction of which every call and the commit are steps."""
        made: list[str] = []
        async with super().begin() as work:
            for name, repository in list(vars(work).items()):
                setattr(work, name, _Watched(name, repository, self._pass, made))
            yield work
        for named in made:
            self._pass(f"commit {named}")


class WatchedClient(Client):
    """A client whose sending of messages is a step."""

    def __init__(self, step: Pass, homeserver: str, account: Account) -> None:
        super().__init__(homeserver, account)
        self._pass = step

    async def send(self, room_id: str, event_type: str, content: Mapping[str, object], txn_id: str) -> str:
        """Send, the moments before and after the server has it being steps."""
        self._pass("before client.send")
        event_id = await super().send(room_id, event_type, content, txn_id)
        self._pass("after client.send")
        return event_id


def _die_at(fatal: str) -> Pass:
    def step(named: str) -> None:
        if named == fatal:
            os.kill(os.getpid(), signal.SIGKILL)

    return step


async def run(config: Path, fatal: str) -> None:
    """Run the bot until it dies at the step."""
    settings = load_settings(config)
    step = _die_at(fatal)
    async with open_bot(
        settings,
        load_secrets(settings),
        make_client=partial(WatchedClient, step),
        make_storage=partial(WatchedStorage, step),
    ) as bot:
        await bot.run()


if __name__ == "__main__":
    asyncio.run(run(Path(sys.argv[1]), sys.argv[2]))
