"""Runs with their witnesses: whoever asks for runs gets both in two queries, however many runs there are."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import date, datetime
from math import log
from typing import Any

from sqlalchemy import ColumnElement, RowMapping, bindparam, delete, exists, func, select

from bot.domain.judging import Verdict
from bot.services.ports.run_records import Past, PhotoCheck, Ran, Run, RunStatus
from bot.storage.repository import Repository, columns_of, values_of
from bot.storage.tables import hands, photo_checks, runs

HAND = "hand"
"""How somebody judged who only raised a hand: no number."""

DATED_BACK_DAYS = 8

_RUN = select(*columns_of(runs, Run))
_KEPT = runs.c.status == "kept"
_WHEN_RUN = (runs.c.ran_at, runs.c.arrived, runs.c.line)
_THEIRS = (runs.c.room_id == bindparam("room_id")) & (runs.c.user_id == bindparam("user_id"))
_OF_A_DAY = (runs.c.kitchen_day == bindparam("day")) & (runs.c.kind != "stopped") & ~runs.c.over_limit
_HOW_MANY = select(func.count()).select_from(runs).where(_THEIRS, _KEPT)
_HOW_MANY_THAT_DAY = _HOW_MANY.where(_OF_A_DAY)
_HOW_MANY_ON_SPEC = _HOW_MANY_THAT_DAY.where(runs.c.spec_id == bindparam("spec_id"))
_WHOLE = (
    select(*(runs.c[name] for name in Ran._fields))
    .where(runs.c.room_id == bindparam("room_id"), runs.c.user_id.in_(bindparam("user_ids", expanding=True)))
    .where(runs.c.kitchen_day.between(bindparam("first"), bindparam("last")), _KEPT)
    .where(runs.c.kind.in_(("counted", "settling")), ~runs.c.over_limit, runs.c.partner.is_(None))
    .order_by(*_WHEN_RUN)
)
_ON_SPEC = (
    select(*(runs.c[name] for name in Past._fields))
    .where(runs.c.user_id == bindparam("user_id"), runs.c.spec_id == bindparam("spec_id"), _KEPT, ~runs.c.over_limit)
    .order_by(*(column.desc() for column in _WHEN_RUN))
)
_IS_LATEST = runs.c.id == (
    select(runs.c.id)
    .where(_THEIRS, runs.c.status.in_(bindparam("statuses", expanding=True)))
    .order_by(runs.c.arrived.desc(), runs.c.line.desc())
    .limit(1)
    .scalar_subquery()
)
_RAISED = select(hands.c.event_id, hands.c.witness).join(runs, runs.c.event_id == hands.c.event_id).order_by(hands.c.id)
_UNBUILT = _RUN.where(
    runs.c.user_id == bindparam("user_id"),
    runs.c.set_up_id == bindparam("set_up_id"),
    (runs.c.kind == "stopped") & (runs.c.attempted == 0) & runs.c.live_id.is_not(None) & _KEPT,
).order_by(runs.c.arrived)
_CHECK = select(photo_checks).where(photo_checks.c.room_id == bindparam("room_id"))
_OF_MESSAGE = hands.c.event_id == bindparam("event_id")
_VERDICTS = select(hands).where(_OF_MESSAGE, hands.c.good.is_not(None)).order_by(hands.c.id)
_LATEST, _RAISED_ON_LATEST = _RUN.where(_IS_LATEST), _RAISED.where(_IS_LATEST)


class SqlRuns(Repository):
    """Every run, with its witnesses."""

    async def save(self, run: Run) -> Run:
        """Store, new or changed (``witnesses`` are kept by ``raise_hand``, not here)."""
        return await self._save(runs, run, **asked_by(run))

    async def get(self, run_id: int) -> Run | None:
        """By stored id."""
        found = await self._runs(runs.c.id == run_id, order=(runs.c.id,))
        return found[0] if found else None

    async def of_event(self, event_id: str) -> list[Run]:
        """The runs of one message, by line, whatever their status."""
        return await self._runs(runs.c.event_id == event_id, order=(runs.c.line,))

    async def last(self, room_id: str, user_id: str, statuses: Sequence[RunStatus] = ("kept",)) -> Run | None:
        """The person's latest run by stream order among these statuses."""
        which = {"room_id": room_id, "user_id": user_id, "statuses": list(statuses)}
        found = _with_hands(await self._all(_LATEST, **which), await self._all(_RAISED_ON_LATEST, **which))
        return found[0] if found else None

    async def on_set_up(self, user_id: str, set_up_id: int) -> list[Run]:
        """The person's kept runs on a set-up, in pairs too, in order of when they were run, then of arrival."""
        theirs = (runs.c.user_id == user_id) | (runs.c.partner == user_id)
        return await self._runs(theirs, runs.c.set_up_id == set_up_id, _KEPT, order=_WHEN_RUN)

    async def on_spec(self, user_id: str, spec_id: int, most: int | None = None) -> list[Past]:
        """The person's kept runs on all set-ups of a spec, none over the day's limit; at most so many, the last."""
        rows = await self._all(_ON_SPEC.limit(most), user_id=user_id, spec_id=spec_id)
        return [Past(**row) for row in reversed(rows)]

    async def in_days(self, room_id: str, user_id: str, first: date, last: date) -> list[Run]:
        """The person's kept runs in this kitchen on these kitchen days, in order of when they were run."""
        theirs = (runs.c.room_id == room_id) & (runs.c.user_id == user_id)
        return await self._runs(theirs, runs.c.kitchen_day.between(first, last), _KEPT, order=_WHEN_RUN)

    async def whole_in_days(self, room_id: str, user_ids: Sequence[str], first: date, last: date) -> list[Ran]:
        """These persons' whole runs in this kitchen on these kitchen days, in order of when they were run."""
        rows = await self._all(_WHOLE, room_id=room_id, user_ids=list(user_ids), first=first, last=last)
        return [Ran(**row) for row in rows]

    async def on_board(self, live_id: int) -> list[Run]:
        """Kept runs that count for a posting's board, by cook, in order of arrival."""
        return await self._runs(runs.c.live_id == live_id, _KEPT, order=(runs.c.user_id, runs.c.arrived, runs.c.line))

    async def count_day(self, room_id: str, user_id: str, day: date) -> int:
        """How many kept, counted runs the person has on that kitchen day: neither stopped nor over the limit."""
        return int(await self._value(_HOW_MANY_THAT_DAY, room_id=room_id, user_id=user_id, day=day))

    async def count_on_spec(self, room_id: str, user_id: str, spec_id: int, day: date) -> int:
        """How many kept, counted runs the person has on a spec on that kitchen day."""
        which = {"room_id": room_id, "user_id": user_id, "spec_id": spec_id, "day": day}
        return int(await self._value(_HOW_MANY_ON_SPEC, **which))

    async def count(self, room_id: str, user_id: str) -> int:
        """How many kept runs the person has in this kitchen."""
        return int(await self._value(_HOW_MANY, room_id=room_id, user_id=user_id))

    async def of_spec(self, spec_id: int) -> list[Run]:
        """Everybody's kept runs on all set-ups of a spec, in order of arrival."""
        return await self._runs(runs.c.spec_id == spec_id, _KEPT, order=(runs.c.arrived, runs.c.line))

    async def raise_hand(self, event_id: str, witness: str, reaction_id: str) -> bool:
        """Keep a witness of every run of a message; False if that hand was already up."""
        return await self._insert_or_ignore(hands, event_id=event_id, witness=witness, reaction_id=reaction_id, by=HAND)

    async def pass_verdict(self, event_id: str, verdict: Verdict, said_id: str) -> None:
        """Keep what a judge says of the one run of a message, in the place of what the judge said before."""
        this = {"event_id": event_id, "witness": verdict.judge, "by": verdict.by}
        former = (hands.c.event_id == event_id) & (hands.c.witness == verdict.judge) & (hands.c.by == verdict.by)
        await self._do(delete(hands).where(former | (hands.c.reaction_id == said_id)))
        await self._insert(hands, **this, reaction_id=said_id, good=verdict.good, at=verdict.at)

    async def verdicts(self, event_id: str) -> list[Verdict]:
        """What judges have said of the run of this message; a raised hand says no number."""
        rows = await self._all(_VERDICTS, event_id=event_id)
        return [Verdict(row["witness"], row["by"], row["good"], row["at"]) for row in rows]

    async def with_photo(self, room_id: str, since: datetime) -> list[Run]:
        """The kept runs of a kitchen that have a photo and were sent since, in order of arrival."""
        # The day stands here because the index does; nobody dates a run back further than that.
        recent = (runs.c.day_number >= since.toordinal() - DATED_BACK_DAYS) & (runs.c.sent_at >= since)
        shown = runs.c.photo.is_not(None)
        return await self._runs(runs.c.room_id == room_id, recent, shown, _KEPT, order=(runs.c.arrived, runs.c.line))

    async def unbuilt(self, user_id: str, set_up_id: int) -> list[Run]:
        """The person's kept runs of no plates on a set-up that count for a board: declared, or stopped at once."""
        rows = await self._all(_UNBUILT, user_id=user_id, set_up_id=set_up_id)
        return [Run(**row) for row in rows]

    async def with_verdict(self, room_id: str, user_id: str) -> list[Run]:
        """The person's kept runs in this kitchen on which a judge has said a number, in order of arrival."""
        theirs = (runs.c.room_id == room_id) & (runs.c.user_id == user_id)
        numbers = hands.alias("numbers")
        said = exists().where(numbers.c.event_id == runs.c.event_id, numbers.c.good.is_not(None))
        return await self._runs(theirs, said, _KEPT, order=(runs.c.arrived, runs.c.line))

    async def save_check(self, check: PhotoCheck) -> None:
        """Keep the kitchen's check of its judges, in the place of the one before."""
        await self._put(photo_checks, **values_of(photo_checks, check))

    async def check(self, room_id: str) -> PhotoCheck | None:
        """The kitchen's last check of its judges."""
        row = await self._one(_CHECK, room_id=room_id)
        return PhotoCheck(**row) if row else None

    async def of_photo(self, event_id: str) -> list[Run]:
        """The runs whose photo this is."""
        return await self._runs(runs.c.photo == event_id, order=(runs.c.line,))

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
        return _with_hands(rows, await self._all(_RAISED.where(*which)) if rows else ())


def asked_by(run: Run) -> dict[str, Any]:
    """What of a run stands in columns of its own, as queries ask for it."""
    count = run.result.count
    return {
        "kind": run.result.kind,
        "net_s": run.result.net_s,
        "standard_s": run.result.standard_s,
        "log_ratio": _log_ratio(run),
        "day_number": run.kitchen_day.toordinal(),
        "clean": count.accepted - count.rebuilt,
        "attempted": count.attempted,
    }


def _log_ratio(run: Run) -> float | None:
    """What a fit compares: ln(net / standard) of one cook's counted run with their own clock; None of any other."""
    result = run.result
    if result.kind != "counted" or result.net_s is None or run.over_limit or run.partner or run.chat_timed:
        return None
    return log(result.net_s / result.standard_s)


def _with_hands(rows: Iterable[RowMapping], raised: Iterable[RowMapping]) -> list[Run]:
    """The runs with those who raised a hand on their messages, the first to do so first."""
    by_message: dict[str, dict[str, None]] = defaultdict(dict)
    for hand in raised:
        by_message[hand["event_id"]][hand["witness"]] = None
    return [Run(**row, witnesses=tuple(by_message[row["event_id"]])) for row in rows]
