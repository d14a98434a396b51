"""Invitations: accepted from listed people only, tried again for a quarter of an hour, never in anything's way."""

import asyncio
import logging
from collections.abc import Awaitable, Callable
from contextlib import suppress

from bot.errors import OperatorError
from bot.matrix.comings import RETRIES_S
from bot.matrix.faults import Report
from bot.services.ports.messages import SendRefused, TryLater
from bot.services.ports.world import Rest

log = logging.getLogger(__name__)

Allowed = Callable[[str], bool]
"""Whether this person may invite the bot."""


class Invitations:
    """Joins the rooms that the bot is invited to, each in a task of its own."""

    def __init__(self, join: Callable[[str], Awaitable[None]], allowed: Allowed, rest: Rest, report: Report) -> None:
        self._join = join
        self._allowed = allowed
        self._rest = rest
        self._report = report
        self._open: dict[str, asyncio.Task[None]] = {}

    def accept(self, room_id: str, inviter: str) -> None:
        """Start joining, unless that is under way already or the inviter is a stranger."""
        if not self._allowed(inviter):
            log.info("an invitation by %s is left alone", inviter)
        elif room_id not in self._open:
            self._open[room_id] = asyncio.create_task(self._try(room_id))

    def withdraw(self, room_id: str) -> None:
        """Stop trying: the invitation is gone."""
        task = self._open.pop(room_id, None)
        if task:
            task.cancel()

    async def _try(self, room_id: str) -> None:
        try:
            await self._join_in_the_end(room_id)
        except Exception:
            log.exception("invitations: %s is given up after an unforeseen fault", room_id)
        self._open.pop(room_id, None)

    async def _join_in_the_end(self, room_id: str) -> None:
        for wait_s in (*RETRIES_S, None):
            try:
                await self._join(room_id)
                return
            except (SendRefused, TryLater) as problem:
                if wait_s is None:
                    await self._report(
                        OperatorError(f"The bot cannot join {room_id}, to which it is invited: {problem}")
                    )
                else:
                    await self._rest(max(wait_s, getattr(problem, "after_s", None) or 0))

    async def close(self) -> None:
        """Stop every attempt."""
        for task in self._open.values():
            task.cancel()
        for task in self._open.values():
            with suppress(asyncio.CancelledError):
                await task
        self._open.clear()
