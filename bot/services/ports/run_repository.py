"""What remembers runs and questions. Every call belongs to a unit of work and commits with it."""

from collections.abc import Sequence
from datetime import date, datetime
from typing import Protocol

from bot.domain.judging import Verdict
from bot.services.ports.run_records import Past, PhotoCheck, Question, Ran, Run, RunStatus


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

    async def on_spec(self, user_id: str, spec_id: int, most: int | None = None) -> list[Past]:
        """The person's kept runs on all set-ups of a spec, none over the day's limit; at most so many, the last."""

    async def in_days(self, room_id: str, user_id: str, first: date, last: date) -> list[Run]:
        """The person's kept runs in this kitchen on these kitchen days, in order of when they were run."""

    async def whole_in_days(self, room_id: str, user_ids: Sequence[str], first: date, last: date) -> list[Ran]:
        """These persons' whole runs in this kitchen on these kitchen days, in order of when they were run.

        Whole is a kept run of one cook with every plate attempted, within the day's safe number; settling in or not.
        """

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
