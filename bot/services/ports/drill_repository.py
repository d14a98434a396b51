"""What remembers drills. Every call belongs to a unit of work and commits with it."""

from collections.abc import Mapping
from datetime import datetime
from typing import Protocol

from bot.domain.drill import Drill, Spec, Wording
from bot.domain.expected import Fitted
from bot.services.ports.drill_records import ClosedBoard, Draft, FrozenBoard, LiveDrill, PublishedDrill


class Drills(Protocol):
    """Specs, set-ups, wordings, drafts, and the drills that are live."""

    async def next_number(self, room_id: str) -> int:
        """The number that the next new spec of this kitchen gets."""

    async def publish(
        self, room_id: str, drill: Drill, parent: int | None, now: datetime, *, seeded: bool = False
    ) -> PublishedDrill:
        """Store a drill under its number and letter; a spec or set-up known by fingerprint is kept, not doubled.

        A changed wording of a known set-up becomes its next revision. ``only_set_up`` of what is returned is true to
        the store.
        """

    async def reword(self, known: PublishedDrill, wording: Wording, now: datetime) -> PublishedDrill:
        """Store the next revision of how a set-up is told; it was published when it was."""

    async def reprice(self, known: PublishedDrill, spec: Spec, now: datetime) -> PublishedDrill:
        """Store a spec of the same work with other components, labels, lives or prices, as the next revision."""

    async def correct(self, spec_id: int, drill: Drill) -> None:
        """Replace the spec's identity after the chef said that it was only written wrong."""

    async def find(self, room_id: str, label: str) -> PublishedDrill | None:
        """By label: ``6`` (its newest set-up for one cook, without a call sheet) or ``6B``."""

    async def by_fingerprint(self, room_id: str, fingerprint: str) -> PublishedDrill | None:
        """The set-up A of the spec with this fingerprint."""

    async def get(self, set_up_id: int) -> PublishedDrill | None:
        """By stored id."""

    async def first_of(self, spec_id: int) -> PublishedDrill | None:
        """The first set-up of a spec."""

    async def newest(self, room_id: str) -> PublishedDrill | None:
        """The drill published last and not retired, the seeded course apart."""

    async def every(self, room_id: str, *, retired: bool = False) -> list[PublishedDrill]:
        """All set-ups on the kitchen's list, or those taken off it, by number and letter."""

    async def retire(self, set_up_id: int, *, back: bool = False) -> None:
        """Take a set-up off the list, or put it back; its history stays."""

    async def save_draft(self, draft: Draft) -> Draft:
        """Store; a person has one draft in a kitchen."""

    async def draft(self, room_id: str, author: str) -> Draft | None:
        """The open draft of this chef."""

    async def draft_of_event(self, event_id: str) -> Draft | None:
        """The draft written by this message."""

    async def drop_draft(self, draft_id: int) -> None:
        """Erase it."""

    async def save_live(self, live: LiveDrill) -> LiveDrill:
        """Store a posting, new or changed."""

    async def live(self, live_id: int) -> LiveDrill | None:
        """By stored id."""

    async def live_in(self, room_id: str) -> list[LiveDrill]:
        """The postings of this room not yet closed, the newest first."""

    async def last_live(self, room_id: str) -> LiveDrill | None:
        """The newest posting, closed or not."""

    async def live_by_root(self, room_id: str, event_id: str) -> LiveDrill | None:
        """The posting whose thread this is."""

    async def live_for(self, room_id: str, set_up_id: int, week: str) -> LiveDrill | None:
        """The posting of this set-up in this kitchen week, closed or not."""

    async def to_close(self, now: datetime) -> list[LiveDrill]:
        """Postings not closed whose closing time has come."""

    async def to_announce(self) -> list[LiveDrill]:
        """Postings closed and not yet announced."""

    async def freeze(self, board: FrozenBoard) -> None:
        """Keep a closed board."""

    async def frozen(self, live_id: int) -> list[FrozenBoard]:
        """The boards kept at the closing of this posting."""

    async def keep_fitted(self, live_id: int, cooks: Mapping[str, Fitted]) -> None:
        """Keep what the fit says of these cooks as this posting begins."""

    async def fitted(self, live_id: int) -> dict[str, Fitted]:
        """What was kept of that; empty where nothing was."""

    async def closed_boards(self, room_id: str, kind: str, since: str, before: str) -> list[ClosedBoard]:
        """The frozen boards of this kind and room from one ISO week to the one before another, in order."""
