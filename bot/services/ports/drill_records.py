"""Drills written, published and posted, and their closed boards. ``id`` is 0 until the record is stored."""

from dataclasses import dataclass
from datetime import datetime

from bot.domain.drill import Drill
from bot.domain.own_board import Together
from bot.domain.places import Board
from bot.services.ports.messages import EventRef


@dataclass(frozen=True, kw_only=True)
class Draft:
    """A drill being written; editing the message ``event_id`` re-parses it, ``parent`` is the spec it came from."""

    room_id: str
    author: str
    event_id: str
    drill: Drill
    parent: int | None = None
    id: int = 0


@dataclass(frozen=True, kw_only=True)
class PublishedDrill:
    """A set-up that can be posted, with its stored ids."""

    set_up_id: int
    spec_id: int
    room_id: str
    drill: Drill
    published_at: datetime
    parent: int | None = None
    retired: bool = False


@dataclass(frozen=True, kw_only=True)
class LiveDrill:
    """A drill as posted for one kitchen week: ``root`` is its thread, ``closes_at`` the day turn that ends it.

    ``announced`` once the closed board was told to the room, which in quiet hours is later than its closing.
    """

    room_id: str
    set_up_id: int
    spec_id: int
    drill: Drill
    week: str
    posted_at: datetime
    closes_at: datetime
    root: EventRef
    closed_at: datetime | None = None
    announced: bool = False
    id: int = 0


@dataclass(frozen=True, kw_only=True)
class FrozenBoard:
    """A closed board as it stood, with every cook's figures, not only those shown; or what the house did together."""

    live_id: int
    kind: str
    closed_at: datetime
    board: Board | Together


@dataclass(frozen=True, kw_only=True)
class ClosedBoard:
    """A frozen board of places with the set-up and the week that it was of."""

    set_up_id: int
    week: str
    board: Board
