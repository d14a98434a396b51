"""Specs, set-ups and wordings: what is written twice is known again by its fingerprint and kept once."""

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime
from itertools import chain, count, product
from string import ascii_uppercase
from typing import Any

from sqlalchemy import ColumnElement, RowMapping, func, select, update

from bot.domain.drill import NOT_CALLED, Drill, SetUp, Spec, Wording
from bot.domain.identity import set_up_fingerprint, spec_fingerprint, what_changed
from bot.services.ports.drill_records import PublishedDrill
from bot.storage.repository import Repository
from bot.storage.tables import set_ups, specs, wordings

_LABEL = re.compile(r"([0-9]{1,6})([A-Za-z]{0,2})")
_SISTERS, _REVISIONS = set_ups.alias("sisters"), wordings.alias("revisions")
_HOW_MANY = select(func.count()).where(_SISTERS.c.spec_id == set_ups.c.spec_id).scalar_subquery()
_LATEST = select(func.max(_REVISIONS.c.revision)).where(_REVISIONS.c.set_up_id == set_ups.c.id).scalar_subquery()
_PUBLISHED = (
    select(set_ups, specs.c.room_id, specs.c.number, specs.c.spec, specs.c.parent, wordings.c.wording)
    .add_columns(_HOW_MANY.label("set_ups"))
    .join(specs, specs.c.id == set_ups.c.spec_id)
    .join(wordings, wordings.c.set_up_id == set_ups.c.id)
    .where(wordings.c.revision == _LATEST)
)
_BY_LABEL = (specs.c.number, func.length(set_ups.c.letter), set_ups.c.letter)
_NEWEST = (set_ups.c.retired, set_ups.c.published_at.desc(), set_ups.c.id.desc())


class Specs(Repository):
    """Keeps the published drills."""

    async def next_number(self, room_id: str) -> int:
        """The number that the next new spec of this kitchen gets."""
        highest = await self._value(select(func.max(specs.c.number)).where(specs.c.room_id == room_id))
        return (highest or 0) + 1

    async def publish(
        self, room_id: str, drill: Drill, parent: int | None, now: datetime, *, seeded: bool = False
    ) -> PublishedDrill:
        """Store a drill under its number and letter; a spec or set-up known by fingerprint is kept, not doubled.

        A number of 0, or one that another spec has, means the next. A changed wording of a known set-up becomes its
        next revision; seeding changes nothing that is already there. ``only_set_up`` of what is returned is true to
        the store.
        """
        same = (specs.c.room_id == room_id) & (specs.c.fingerprint == spec_fingerprint(drill.spec))
        spec_id = await self._value(select(specs.c.id).where(same))
        if spec_id is None:
            spec_id = await self._add_spec(room_id, drill, parent)
        alike = set_ups.c.fingerprint == set_up_fingerprint(drill.spec, drill.set_up)
        known = await self._first(set_ups.c.spec_id == spec_id, alike)
        if not seeded:
            await self._do(update(specs).where(specs.c.id == spec_id).values(spec=drill.spec))
        if known is None:
            return await self._add_set_up(spec_id, drill, now, seeded=seeded)
        return known if seeded else await self._publish_again(known, drill, now)

    async def reword(self, known: PublishedDrill, wording: Wording, now: datetime) -> PublishedDrill:
        """Store the next revision of how a set-up is told; it was published when it was."""
        await self._word(known.set_up_id, replace(wording, revision=known.drill.wording.revision + 1), now)
        return await self._stored(known.set_up_id)

    async def reprice(self, known: PublishedDrill, spec: Spec, now: datetime) -> PublishedDrill:
        """Store a spec of the same work with other components, labels, lives or prices, as the next revision."""
        await self._do(update(specs).where(specs.c.id == known.spec_id).values(spec=spec))
        return await self.reword(known, known.drill.wording, now)

    async def correct(self, spec_id: int, drill: Drill) -> None:
        """Replace the spec's identity after the chef said that it was only written wrong."""
        right = {"spec": drill.spec, "fingerprint": spec_fingerprint(drill.spec)}
        await self._do(update(specs).where(specs.c.id == spec_id).values(right))
        for row in await self._all(select(set_ups.c.id, set_ups.c.set_up).where(set_ups.c.spec_id == spec_id)):
            mark = set_up_fingerprint(drill.spec, row["set_up"])
            await self._do(update(set_ups).where(set_ups.c.id == row["id"]).values(fingerprint=mark))

    async def find(self, room_id: str, label: str) -> PublishedDrill | None:
        """By label: ``6`` (its newest set-up for one cook, without a call sheet) or ``6B``, in either case."""
        read = _LABEL.fullmatch(label.strip())
        if read is None:
            return None
        named = [specs.c.room_id == room_id, specs.c.number == int(read[1])]
        if read[2]:
            named.append(set_ups.c.letter == read[2].upper())
        found = await self._published(*named, order=_NEWEST)
        return next((one for one in found if read[2] or _is_plain(one.drill.set_up)), None)

    async def by_fingerprint(self, room_id: str, fingerprint: str) -> PublishedDrill | None:
        """The first set-up of the spec with this fingerprint."""
        return await self._first(specs.c.room_id == room_id, specs.c.fingerprint == fingerprint)

    async def get(self, set_up_id: int) -> PublishedDrill | None:
        """By stored id."""
        return await self._first(set_ups.c.id == set_up_id)

    async def first_of(self, spec_id: int) -> PublishedDrill | None:
        """The first set-up of a spec."""
        return await self._first(specs.c.id == spec_id)

    async def newest(self, room_id: str) -> PublishedDrill | None:
        """The drill published last and not retired, the seeded course apart."""
        return await self._first(specs.c.room_id == room_id, ~set_ups.c.retired, ~set_ups.c.seeded, order=_NEWEST)

    async def every(self, room_id: str, *, retired: bool = False) -> list[PublishedDrill]:
        """All set-ups on the kitchen's list, or those taken off it, by number and letter."""
        return await self._published(specs.c.room_id == room_id, set_ups.c.retired.is_(retired))

    async def retire(self, set_up_id: int, *, back: bool = False) -> None:
        """Take a set-up off the list, or put it back; its history stays."""
        await self._do(update(set_ups).where(set_ups.c.id == set_up_id).values(retired=not back))

    async def _add_spec(self, room_id: str, drill: Drill, parent: int | None) -> int:
        taken = await self._value(select(specs.c.id).where(specs.c.room_id == room_id, specs.c.number == drill.number))
        number = drill.number if drill.number and taken is None else await self.next_number(room_id)
        mark = spec_fingerprint(drill.spec)
        return await self._insert(
            specs, room_id=room_id, number=number, fingerprint=mark, spec=drill.spec, parent=parent
        )

    async def _add_set_up(self, spec_id: int, drill: Drill, now: datetime, *, seeded: bool) -> PublishedDrill:
        set_up_id = await self._insert(
            set_ups,
            spec_id=spec_id,
            letter=await self._letter(spec_id, drill),
            fingerprint=set_up_fingerprint(drill.spec, drill.set_up),
            set_up=drill.set_up,
            published_at=now,
            seeded=seeded,
            retired=False,
        )
        await self._word(set_up_id, replace(drill.wording, revision=1), now)
        return await self._stored(set_up_id)

    async def _publish_again(self, known: PublishedDrill, drill: Drill, now: datetime) -> PublishedDrill:
        if what_changed(known.drill, drill) != "nothing":
            await self.reword(known, drill.wording, now)
        anew = {"published_at": now, "seeded": False, "retired": False}
        await self._do(update(set_ups).where(set_ups.c.id == known.set_up_id).values(anew))
        return await self._stored(known.set_up_id)

    async def _word(self, set_up_id: int, words: Wording, now: datetime) -> None:
        await self._insert(wordings, set_up_id=set_up_id, revision=words.revision, wording=words, published_at=now)

    async def _letter(self, spec_id: int, drill: Drill) -> str:
        """The drill's own letter if the spec bears its number and the letter is free, else the next."""
        number = await self._value(select(specs.c.number).where(specs.c.id == spec_id))
        own = [drill.letter] if drill.letter and number == drill.number else []
        taken = {row["letter"] for row in await self._all(select(set_ups.c.letter).where(set_ups.c.spec_id == spec_id))}
        return next(letter for letter in chain(own, _letters()) if letter not in taken)

    async def _stored(self, set_up_id: int) -> PublishedDrill:
        return (await self._published(set_ups.c.id == set_up_id))[0]

    async def _first(
        self, *which: ColumnElement[bool], order: tuple[ColumnElement[Any], ...] = _BY_LABEL
    ) -> PublishedDrill | None:
        row = await self._one(_PUBLISHED.where(*which).order_by(*order).limit(1))
        return _published_drill(row) if row else None

    async def _published(
        self, *which: ColumnElement[bool], order: tuple[ColumnElement[Any], ...] = _BY_LABEL
    ) -> list[PublishedDrill]:
        return [_published_drill(row) for row in await self._all(_PUBLISHED.where(*which).order_by(*order))]


def _is_plain(set_up: SetUp) -> bool:
    """Laid out for one cook and without calls, as a number alone means it."""
    return set_up.called == NOT_CALLED and set_up.cooks == 1


def _letters() -> Iterator[str]:
    """A to Z, then AA."""
    return ("".join(letters) for length in count(1) for letters in product(ascii_uppercase, repeat=length))


def _published_drill(row: RowMapping) -> PublishedDrill:
    only = row["set_ups"] == 1
    return PublishedDrill(
        set_up_id=row["id"],
        spec_id=row["spec_id"],
        room_id=row["room_id"],
        drill=Drill(row["number"], row["letter"], row["spec"], row["set_up"], row["wording"], only_set_up=only),
        published_at=row["published_at"],
        parent=row["parent"],
        retired=row["retired"],
    )
