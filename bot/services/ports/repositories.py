"""What remembers the records. Every call belongs to the unit of work it was reached through and commits with it."""

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any, Protocol

from bot.domain.drill import Drill, Spec, Wording
from bot.domain.expected import Fitted
from bot.domain.judging import Verdict
from bot.services.ports.records import (
    ClosedBoard,
    Draft,
    FrozenBoard,
    Kitchen,
    LiveDrill,
    Member,
    Occurrence,
    PhotoCheck,
    PublishedDrill,
    Question,
    Run,
    RunStatus,
    Schedule,
)


class Kitchens(Protocol):
    """Rooms, their settings, who is in them, and the bot's private rooms of two."""

    async def save(self, kitchen: Kitchen) -> None:
        """Store the kitchen, new or changed."""

    async def get(self, room_id: str) -> Kitchen | None:
        """The kitchen of this room."""

    async def all(self) -> list[Kitchen]:
        """Every kitchen."""

    async def of(self, user_id: str) -> list[Kitchen]:
        """The kitchens that this person is now in, the longest opened first."""

    async def close(self, room_id: str) -> None:
        """The bot is no longer in this room: its schedules rest; nothing is lost."""

    async def save_member(self, member: Member) -> None:
        """Store who a person is in a room."""

    async def member(self, room_id: str, user_id: str) -> Member | None:
        """What is known of this person in this room."""

    async def members(self, room_id: str) -> list[Member]:
        """Everybody ever seen in this room, those who left too."""

    async def save_state(self, room_id: str, type_: str, content: dict[str, object], sender: str) -> None:
        """Keep the raw content (and sender) of a state event; the newest replaces the former."""

    async def state(self, room_id: str, type_: str) -> tuple[dict[str, object], str] | None:
        """The raw content and sender of a state event."""

    async def private_room(self, user_id: str) -> str | None:
        """The private room of two with this person."""

    async def private_person(self, room_id: str) -> str | None:
        """Whose private room this is; None of any other room."""

    async def start_private(self, user_id: str) -> bool:
        """Note that a private room is about to be opened; False if that was noted before and never finished."""

    async def save_private(self, user_id: str, room_id: str | None) -> None:
        """Keep the private room of this person; None where it is gone."""


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

    async def every(self, room_id: str) -> list[PublishedDrill]:
        """All set-ups, by number and letter."""

    async def retire(self, set_up_id: int) -> None:
        """Take a set-up out of the list; its history stays."""

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


class Schedules(Protocol):
    """Weekly postings and the slots already dealt with."""

    async def save(self, schedule: Schedule) -> Schedule:
        """Store, new or changed."""

    async def get(self, schedule_id: int) -> Schedule | None:
        """By stored id."""

    async def of(self, room_id: str) -> list[Schedule]:
        """The schedules of a room not cancelled, in order of weekday and time."""

    async def enabled(self) -> list[Schedule]:
        """Every schedule that may come due."""

    async def occurrence(self, schedule_id: int, slot: str) -> Occurrence | None:
        """Whether and how this slot was dealt with."""

    async def deal(self, occurrence: Occurrence) -> bool:
        """Claim a slot; False if it was claimed before, and then nothing is changed."""


class Runs(Protocol):
    """Every run, with its witnesses."""

    async def save(self, run: Run) -> Run:
        """Store, new or changed (``witnesses`` are kept by ``raise_hand``, not here)."""

    async def get(self, run_id: int) -> Run | None:
        """By stored id."""

    async def of_event(self, event_id: str) -> list[Run]:
        """The runs of one message, by line, whatever their status."""

    async def last(self, room_id: str, user_id: str, statuses: Sequence[RunStatus] = ("kept",)) -> Run | None:
        """The person's latest run by stream order among these statuses."""

    async def on_set_up(self, user_id: str, set_up_id: int) -> list[Run]:
        """The person's kept runs on a set-up, in pairs too, in order of when they were run, then of arrival."""

    async def on_spec(self, user_id: str, spec_id: int) -> list[Run]:
        """The person's kept runs on all set-ups of a spec, in the same order."""

    async def in_days(self, room_id: str, user_id: str, first: date, last: date) -> list[Run]:
        """The person's kept runs in this kitchen on these kitchen days, in order of when they were run."""

    async def on_board(self, live_id: int) -> list[Run]:
        """Kept runs that count for a posting's board, by cook, in order of arrival."""

    async def count_day(self, room_id: str, user_id: str, day: date) -> int:
        """How many kept, counted runs the person has on that kitchen day."""

    async def count_on_spec(self, room_id: str, user_id: str, spec_id: int, day: date) -> int:
        """How many kept, counted runs the person has on a spec on that kitchen day."""

    async def count(self, room_id: str, user_id: str) -> int:
        """How many kept runs the person has in this kitchen."""

    async def of_spec(self, spec_id: int) -> list[Run]:
        """Everybody's kept runs on all set-ups of a spec, in order of arrival."""

    async def raise_hand(self, event_id: str, witness: str, reaction_id: str) -> bool:
        """Keep a witness of every run of a message; False if that hand was already up."""

    async def pass_verdict(self, event_id: str, verdict: Verdict, said_id: str) -> None:
        """Keep what a judge says of the one run of a message, in the place of what the judge said before."""

    async def verdicts(self, event_id: str) -> list[Verdict]:
        """What judges have said of the run of this message; a raised hand says no number."""

    async def with_photo(self, room_id: str, since: datetime) -> list[Run]:
        """The kept runs of a kitchen that have a photo and were sent since, in order of arrival."""

    async def unbuilt(self, user_id: str, set_up_id: int) -> list[Run]:
        """The person's kept runs of no plates on a set-up that count for a board: declared, or stopped at once."""

    async def with_verdict(self, room_id: str, user_id: str) -> list[Run]:
        """The person's kept runs in this kitchen on which a judge has said a number, in order of arrival."""

    async def save_check(self, check: PhotoCheck) -> None:
        """Keep the kitchen's check of its judges, in the place of the one before."""

    async def check(self, room_id: str) -> PhotoCheck | None:
        """The kitchen's last check of its judges."""

    async def of_photo(self, event_id: str) -> list[Run]:
        """The runs whose photo this is."""

    async def witnessed_by(self, reaction_id: str) -> list[Run]:
        """The runs of the message on which this reaction put up a hand; empty if it put up none."""

    async def lower_hand(self, reaction_id: str) -> None:
        """Take back the hand put up by this reaction."""


class Questions(Protocol):
    """Open questions."""

    async def ask(self, question: Question) -> Question:
        """Store."""

    async def open(self, user_id: str, now: datetime) -> list[Question]:
        """What is open with this person and has not lapsed, the newest first."""

    async def close(self, question_id: int) -> None:
        """Erase, answered or not."""

    async def close_about(self, event_id: str) -> None:
        """Erase what was asked about this message, which has been deleted."""

    async def lapse(self, now: datetime) -> list[Question]:
        """Erase what has lapsed; what was erased."""


Holdings = dict[str, list[dict[str, Any]]]
"""What is kept about a person, by table: rows of their own, and what rows of others say of them."""


class Persons(Protocol):
    """Everything about one person, over all kitchens."""

    async def held(self, user_id: str) -> Holdings:
        """Everything about the person; that they are in a room, and nothing else, is left out."""

    async def erase(self, user_id: str) -> None:
        """Erase it: what others need, such as a frozen board's sums, stays without the person's id."""
