"""Weekly postings, and the slots that were dealt with, each once."""

from datetime import time
from typing import Any

from sqlalchemy import RowMapping, Select, select

from bot.services.ports.records import Occurrence, Schedule
from bot.storage.repository import Repository, values_of
from bot.storage.tables import kitchens, occurrences, schedules


class SqlSchedules(Repository):
    """Weekly postings and the slots already dealt with."""

    async def save(self, schedule: Schedule) -> Schedule:
        """Store, new or changed."""
        return await self._save(schedules, schedule, hh=schedule.at.hour, mm=schedule.at.minute, tz=schedule.zone)

    async def get(self, schedule_id: int) -> Schedule | None:
        """By stored id."""
        row = await self._one(select(schedules).where(schedules.c.id == schedule_id))
        return _schedule(row) if row else None

    async def of(self, room_id: str) -> list[Schedule]:
        """The schedules of a room not cancelled, in order of weekday and time."""
        return await self._enabled(select(schedules).where(schedules.c.room_id == room_id))

    async def enabled(self) -> list[Schedule]:
        """Every schedule that may come due, those on hold too; not those of kitchens that the bot has left."""
        left = select(kitchens.c.room_id).where(kitchens.c.closed)
        return await self._enabled(select(schedules).where(schedules.c.room_id.not_in(left)))

    async def _enabled(self, query: Select[Any]) -> list[Schedule]:
        week = (schedules.c.weekday, schedules.c.hh, schedules.c.mm, schedules.c.id)
        return [_schedule(row) for row in await self._all(query.where(schedules.c.enabled).order_by(*week))]

    async def occurrence(self, schedule_id: int, slot: str) -> Occurrence | None:
        """Whether and how this slot was dealt with."""
        this = select(occurrences).where(occurrences.c.schedule_id == schedule_id, occurrences.c.slot == slot)
        row = await self._one(this)
        if row is None:
            return None
        return Occurrence(schedule_id=schedule_id, slot=slot, due_at=row["due_utc"], state=row["state"])

    async def deal(self, occurrence: Occurrence) -> bool:
        """Claim a slot; False if it was claimed before, and then nothing is changed."""
        values = values_of(occurrences, occurrence)
        return await self._insert_or_ignore(occurrences, due_utc=occurrence.due_at, **values)


def _schedule(row: RowMapping) -> Schedule:
    values = dict(row)
    return Schedule(at=time(values.pop("hh"), values.pop("mm")), zone=values.pop("tz"), **values)
