"""Fitted quarters, and the sums that fits are made from: one GROUP BY over the compared runs of the quarter."""

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Float, bindparam, case, cast, exists, func, select

from bot.domain.fairness.cells import Cell
from bot.domain.quarter import quarter_days
from bot.services.ports.fitting import FittedQuarter, Gathered
from bot.storage.repository import Repository, values_of
from bot.storage.tables import fits, hands, runs

_COMPARED = (
    runs.c.room_id.in_(bindparam("rooms", expanding=True))
    & runs.c.day_number.between(bindparam("first"), bindparam("last"))
    & (runs.c.status == "kept")
    & runs.c.log_ratio.is_not(None)
)
_MARK = select(func.count(), func.sum(runs.c.log_ratio), func.sum(runs.c.day_number)).where(_COMPARED)
_RUN_NUMBER = func.row_number().over(partition_by=runs.c.user_id, order_by=(runs.c.ran_at, runs.c.arrived, runs.c.line))
_WITNESSED = case((exists().where(hands.c.event_id == runs.c.event_id), 1), else_=0)
_NUMBERED = (
    select(
        runs.c.room_id,
        runs.c.user_id,
        runs.c.set_up_id,
        runs.c.day_number,
        runs.c.log_ratio.label("y"),
        ((runs.c.day_number - bindparam("first")) / cast(7.0, Float)).label("t"),
        func.ln(cast(_RUN_NUMBER, Float), type_=Float).label("p"),
        _WITNESSED.label("witnessed"),
        (runs.c.clean * _WITNESSED).label("clean"),
        (runs.c.attempted * _WITNESSED).label("attempted"),
    )
    .where(_COMPARED)
    .subquery()
)
_N = _NUMBERED.c
_SUMS = (
    select(
        *(_N.room_id, _N.user_id, _N.set_up_id, func.count()),
        *(func.sum(_N.y), func.sum(_N.y * _N.y), func.sum(_N.t), func.sum(_N.t * _N.t), func.sum(_N.t * _N.y)),
        *(func.sum(_N.p), func.sum(_N.p * _N.p), func.sum(_N.p * _N.y), func.sum(_N.t * _N.p)),
        *(func.sum(_N.witnessed), func.sum(_N.clean), func.sum(_N.attempted)),
    )
    .where(_N.day_number >= bindparam("since"))
    .group_by(_N.room_id, _N.user_id, _N.set_up_id)
    .order_by(_N.room_id, _N.user_id, _N.set_up_id)
)


class SqlFits(Repository):
    """Fitted quarters, and the sums of runs that fits are made from."""

    async def save(self, fitted: FittedQuarter) -> None:
        """Store, new or in the place of the one before."""
        await self._put(fits, **values_of(fits, fitted))

    async def get(self, whose: str, quarter: str) -> FittedQuarter | None:
        """The last one stored."""
        row = await self._one(select(fits).where(fits.c.whose == whose, fits.c.quarter == quarter))
        return FittedQuarter(**row) if row else None

    async def mark(self, whose: str, quarter: str) -> tuple[str, bool] | None:
        """What runs the stored one was made from, and whether it is closed; None where there is none."""
        this = select(fits.c.mark, fits.c.closed_at).where(fits.c.whose == whose, fits.c.quarter == quarter)
        row = await self._one(this)
        return (row["mark"], row["closed_at"] is not None) if row else None

    async def mark_of_runs(self, rooms: Sequence[str], quarter: str) -> str:
        """What changes whenever the compared runs of these rooms in the quarter do."""
        found = await self._all(_MARK, **_within(rooms, quarter))
        many, ratios, days = found[0].values()
        return f"{many} {ratios or 0.0:.9f} {days or 0}"

    async def gather(self, rooms: Sequence[str], quarter: str, since_day: int = 0) -> list[Gathered]:
        """The sums of the quarter's compared runs, from a day on where one is given.

        A cook's runs are numbered over all the rooms, and over the whole quarter whatever day is given.
        """
        rows = await self._all(_SUMS, **_within(rooms, quarter), since=since_day)
        return [_gathered(*row.values()) for row in rows]


def _within(rooms: Sequence[str], quarter: str) -> dict[str, Any]:
    first, last = quarter_days(quarter)
    return {"rooms": list(rooms), "first": first.toordinal(), "last": last.toordinal()}


def _gathered(room_id: str, *sums: Any) -> Gathered:
    """A row of the sums, in the order of the records' fields."""
    return Gathered(room_id, Cell(*sums[:-3]), *sums[-3:])
