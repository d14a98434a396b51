"""Runs with their witnesses: whoever asks for runs gets both in two queries, however many runs there are."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, delete, func, select

from bot.services.ports.records import Run, RunStatus
from bot.storage.repository import Repository, columns_of
from bot.storage.tables import hands, runs

_RUN = select(*columns_of(runs, Run))
_KEPT = runs.c.status == "kept"
_WHEN_RUN = (runs.c.ran_at, runs.c.arrived, runs.c.line)


class SqlRuns(Repository):
    """Every run, with its witnesses."""

    async def save(self, run: Run) -> Run:
        """Store, new or changed (``witnesses`` are kept by ``raise_hand``, not here)."""
        return await self._save(runs, run, kind=run.result.kind)

    async def get(self, run_id: int) -> Run | None:
        """By stored id."""
        found = await self._runs(runs.c.id == run_id, order=(runs.c.id,))
        return found[0] if found else None

    async def of_event(self, event_id: str) -> list[Run]:
        """The runs of one message, by line, whatever their status."""
        return await self._runs(runs.c.event_id == event_id, order=(runs.c.line,))

    async def last(self, room_id: str, user_id: str, statuses: Sequence[RunStatus] = ("kept",)) -> Run | None:
        """The person's latest run by stream order among these statuses."""
        theirs = (runs.c.room_id == room_id) & (runs.c.user_id == user_id) & runs.c.status.in_(statuses)
        latest = select(runs.c.id).where(theirs).order_by(runs.c.arrived.desc(), runs.c.line.desc()).limit(1)
        found = await self._runs(runs.c.id == latest.scalar_subquery(), order=(runs.c.id,))
        return found[0] if found else None

    async def on_set_up(self, user_id: str, set_up_id: int) -> list[Run]:
        """The person's kept runs on a set-up in order of when they were run, then of arrival."""
        return await self._runs(runs.c.user_id == user_id, runs.c.set_up_id == set_up_id, _KEPT, order=_WHEN_RUN)

    async def on_board(self, live_id: int) -> list[Run]:
        """Kept runs that count for a posting's board, by cook, in order of arrival."""
        return await self._runs(runs.c.live_id == live_id, _KEPT, order=(runs.c.user_id, runs.c.arrived, runs.c.line))

    async def count_day(self, room_id: str, user_id: str, day: date) -> int:
        """How many kept, counted runs the person has on that kitchen day: neither stopped nor over the limit."""
        counted = (runs.c.kitchen_day == day) & (runs.c.kind != "stopped") & ~runs.c.over_limit
        return await self._count(runs.c.room_id == room_id, runs.c.user_id == user_id, counted, _KEPT)

    async def count(self, room_id: str, user_id: str) -> int:
        """How many kept runs the person has in this kitchen."""
        return await self._count(runs.c.room_id == room_id, runs.c.user_id == user_id, _KEPT)

    async def correct_results(self, spec_id: int) -> list[Run]:
        """Kept runs of a spec, for working out again after a correction, in order of arrival."""
        return await self._runs(runs.c.spec_id == spec_id, _KEPT, order=(runs.c.arrived, runs.c.line))

    async def raise_hand(self, event_id: str, witness: str, reaction_id: str) -> bool:
        """Keep a witness of every run of a message; False if that hand was already up."""
        return await self._insert_or_ignore(hands, event_id=event_id, witness=witness, reaction_id=reaction_id)

    async def witnessed_by(self, reaction_id: str) -> list[Run]:
        """The runs of the message on which this reaction put up a hand; empty if it put up none."""
        put_up = hands.alias("put_up")
        message = select(put_up.c.event_id).where(put_up.c.reaction_id == reaction_id).scalar_subquery()
        return await self._runs(runs.c.event_id == message, order=(runs.c.line,))

    async def lower_hand(self, reaction_id: str) -> None:
        """Take back the hand put up by this reaction."""
        await self._do(delete(hands).where(hands.c.reaction_id == reaction_id))

    async def _runs(self, *which: ColumnElement[bool], order: Sequence[ColumnElement[Any]]) -> list[Run]:
        rows = await self._all(_RUN.where(*which).order_by(*order))
        witnesses = await self._witnesses(which) if rows else {}
        return [Run(**row, witnesses=witnesses.get(row["event_id"], ())) for row in rows]

    async def _witnesses(self, which: Sequence[ColumnElement[bool]]) -> dict[str, tuple[str, ...]]:
        """Of each message of these runs, those who raised a hand, the first to do so first."""
        raised = select(hands.c.event_id, hands.c.witness).join(runs, runs.c.event_id == hands.c.event_id)
        by_message: dict[str, dict[str, None]] = defaultdict(dict)
        for row in await self._all(raised.where(*which).order_by(hands.c.id)):
            by_message[row["event_id"]][row["witness"]] = None
        return {event_id: tuple(people) for event_id, people in by_message.items()}

    async def _count(self, *which: ColumnElement[bool]) -> int:
        return int(await self._value(select(func.count()).select_from(runs).where(*which)))
