"""What remembers kitchens, weeks and people. Every call belongs to a unit of work and commits with it."""

from typing import Any, Protocol

from bot.services.ports.messages import EventRef
from bot.services.ports.records import Kitchen, Member, Occurrence, Schedule


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

    async def states(self, type_: str) -> list[tuple[str, dict[str, object], str]]:
        """Room, raw content and sender of every state event of this type."""

    async def private_room(self, user_id: str) -> str | None:
        """The private room of two with this person."""

    async def private_person(self, room_id: str) -> str | None:
        """Whose private room this is; None of any other room."""

    async def start_private(self, user_id: str) -> bool:
        """Note that a private room is about to be opened; False if that was noted before and never finished."""

    async def save_private(self, user_id: str, room_id: str | None) -> None:
        """Keep the private room of this person; None where it is gone."""


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


class Moves(Protocol):
    """A kitchen's room that is replaced by another."""

    async def carry_over(self, old: str, new: str, thread: EventRef | None) -> None:
        """Make everything of the kitchen in the old room that of the new one, the room's own state apart.

        Drills whose week goes on continue in this thread, if there is one. What was never tried to be sent goes to the
        new room, a reaction to something in the old room apart. Who is not in the new room yet counts as having left.
        """


Holdings = dict[str, list[dict[str, Any]]]
"""What is kept about a person, by table: rows of their own, and what rows of others say of them."""


class Persons(Protocol):
    """Everything about one person, over all kitchens."""

    async def held(self, user_id: str) -> Holdings:
        """Everything about the person; that they are in a room, and nothing else, is left out."""

    async def erase(self, user_id: str) -> None:
        """Erase it: what others need, such as a frozen board's sums, stays without the person's id."""
