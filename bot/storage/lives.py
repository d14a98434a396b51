"""Drills as posted, and the boards frozen when their week closed."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import Select, String, bindparam, cast, literal, select

from bot.domain.expected import Fitted
from bot.services.ports.drill_records import ClosedBoard, FrozenBoard, LiveDrill
from bot.storage.repository import Repository, columns_of, values_of
from bot.storage.tables import fitted_weeks, frozen_boards, live_drills, outbox

_LIVE = select(*columns_of(live_drills, LiveDrill))
_LAST = _LIVE.where(live_drills.c.room_id == bindparam("room_id")).order_by(live_drills.c.id.desc()).limit(1)


class Lives(Repository):
    """Keeps the postings."""

    async def save_live(self, live: LiveDrill) -> LiveDrill:
        """Store a posting, new or changed."""
        return await self._save(live_drills, live)

    async def live(self, live_id: int) -> LiveDrill | None:
        """By stored id."""
        return await self._newest_live(_LIVE.where(live_drills.c.id == live_id))

    async def live_in(self, room_id: str) -> list[LiveDrill]:
        """The postings of this room not yet closed, the newest first."""
        unclosed = _LIVE.where(live_drills.c.room_id == room_id, live_drills.c.closed_at.is_(None))
        return await self._lives(unclosed.order_by(live_drills.c.id.desc()))

    async def last_live(self, room_id: str) -> LiveDrill | None:
        """The newest posting, closed or not."""
        found = await self._lives(_LAST, room_id=room_id)
        return found[0] if found else None

    async def live_by_root(self, room_id: str, event_id: str) -> LiveDrill | None:
        """The posting whose thread this is: its root is the event, or the outbox row that became it."""
        sent_as = select(literal("outbox:").concat(cast(outbox.c.id, String))).where(outbox.c.event_id == event_id)
        is_root = (live_drills.c.root == event_id) | live_drills.c.root.in_(sent_as)
        return await self._newest_live(_LIVE.where(live_drills.c.room_id == room_id, is_root))

    async def live_for(self, room_id: str, set_up_id: int, week: str) -> LiveDrill | None:
        """The posting of this set-up in this kitchen week, closed or not."""
        this = (
            (live_drills.c.room_id == room_id) & (live_drills.c.set_up_id == set_up_id) & (live_drills.c.week == week)
        )
        return await self._newest_live(_LIVE.where(this))

    async def to_close(self, now: datetime) -> list[LiveDrill]:
        """Postings not closed whose closing time has come, the first to close first."""
        # An unclosed board is never announced: said here too because the index begins with it.
        due = ~live_drills.c.announced & live_drills.c.closed_at.is_(None) & (live_drills.c.closes_at <= now)
        return await self._lives(_LIVE.where(due).order_by(live_drills.c.closes_at, live_drills.c.id))

    async def to_announce(self) -> list[LiveDrill]:
        """Postings closed and not yet announced, the first closed first."""
        untold = _LIVE.where(~live_drills.c.announced, live_drills.c.closed_at.is_not(None))
        return await self._lives(untold.order_by(live_drills.c.closed_at, live_drills.c.id))

    async def freeze(self, board: FrozenBoard) -> None:
        """Keep a closed board."""
        await self._put(frozen_boards, **values_of(frozen_boards, board))

    async def frozen(self, live_id: int) -> list[FrozenBoard]:
        """The boards kept at the closing of this posting, by kind."""
        kept = select(frozen_boards).where(frozen_boards.c.live_id == live_id).order_by(frozen_boards.c.kind)
        return [FrozenBoard(**row) for row in await self._all(kept)]

    async def keep_fitted(self, live_id: int, cooks: Mapping[str, Fitted]) -> None:
        """Keep what the fit says of these cooks as this posting begins."""
        await self._put(fitted_weeks, live_id=live_id, cooks=dict(cooks))

    async def fitted(self, live_id: int) -> dict[str, Fitted]:
        """What was kept of that; empty where nothing was."""
        row = await self._one(select(fitted_weeks.c.cooks).where(fitted_weeks.c.live_id == live_id))
        return dict(row["cooks"]) if row else {}

    async def closed_boards(self, room_id: str, kind: str, since: str, before: str) -> list[ClosedBoard]:
        """The frozen boards of this kind and room from one ISO week to the one before another, in order."""
        week = live_drills.c.week
        kept = (
            select(live_drills.c.set_up_id, week, frozen_boards.c.board)
            .join(live_drills, live_drills.c.id == frozen_boards.c.live_id)
            .where(live_drills.c.room_id == room_id, frozen_boards.c.kind == kind, week >= since, week < before)
            .order_by(week, live_drills.c.id)
        )
        return [ClosedBoard(**row) for row in await self._all(kept)]

    async def _newest_live(self, query: Select[Any]) -> LiveDrill | None:
        found = await self._lives(query.order_by(live_drills.c.id.desc()).limit(1))
        return found[0] if found else None

    async def _lives(self, query: Select[Any], **values: Any) -> list[LiveDrill]:
        return [LiveDrill(**row) for row in await self._all(query, **values)]
