"""A clock that stands still, and records of the Tern & Lantern to test with: name only what the test is about."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any

from bot.domain.drill import Drill, SetUp, Spec, Step, Wording
from bot.domain.run import Count, Result
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.events import Message
from bot.services.ports.messages import EventRef, Outgoing
from bot.services.ports.records import Kitchen, Member, Schedule
from bot.services.ports.run_records import Question, Run

MONDAY = datetime(2026, 11, 23, 15, 0, tzinfo=UTC)
KITCHEN_ROOM = "!pass:tern.example"
NOOR, KWABENA, LIO = "@noor:tern.example", "@kwabena:tern.example", "@lio:tern.example"
IME = "@ime:tern.example"
"""The chef."""


class FixedClock:
    """Tells the time that it was set to."""

    def __init__(self, now: datetime = MONDAY) -> None:
        self.now = now

    def __call__(self) -> datetime:
        """The time now."""
        return self.now

    def advance(self, seconds: float) -> None:
        """Let so many seconds pass."""
        self.now += timedelta(seconds=seconds)

    def set(self, now: datetime) -> None:
        """Make it this time."""
        self.now = now


def a_kitchen(**changes: Any) -> Kitchen:
    """The Tern & Lantern's kitchen."""
    return replace(
        Kitchen(room_id=KITCHEN_ROOM, name="Tern & Lantern", opened_at=MONDAY, zone="Europe/London"), **changes
    )


def a_member(**changes: Any) -> Member:
    """Noor, in the room and not yet asked."""
    return replace(Member(room_id=KITCHEN_ROOM, user_id=NOOR, name="Noor", state="join"), **changes)


def a_drill(**changes: Any) -> Drill:
    """A small drill not yet numbered: seven slices, one sauce, eight plates."""
    steps = (
        Step(7, "courgette", "shingle", "fingers", "firm", at="10-4", price=Decimal("0.02")),
        Step(1, "tea jus", "sauce", "spoon", "thin", at="7", life_s=90, labels=("sulphites",)),
    )
    drill = Drill(0, "", Spec(steps, accept="strip 2 mm"), SetUp(plates=8, rows=2), Wording("Slipway"))
    return replace(drill, **changes)


def a_live_drill(set_up_id: int, spec_id: int, **changes: Any) -> LiveDrill:
    """The drill as posted on Monday for that week."""
    live = LiveDrill(
        room_id=KITCHEN_ROOM,
        set_up_id=set_up_id,
        spec_id=spec_id,
        drill=a_drill(number=1, letter="A"),
        week="2026-W48",
        posted_at=MONDAY,
        closes_at=MONDAY + timedelta(days=6, hours=14),
        root=EventRef("$root"),
    )
    return replace(live, **changes)


def a_result(**changes: Any) -> Result:
    """All eight plates good in 3:02."""
    result = Result(
        kind="counted",
        clock_s=182,
        count=Count(plates=8, accepted=8),
        touches=64,
        standard_s=164.0,
        alone_s=25.0,
        change_s=10.0,
        net_s=182.0,
        pace_s=182 / 64,
        levelled_s=182 / 164,
    )
    return replace(result, **changes)


def a_run(set_up_id: int, spec_id: int, **changes: Any) -> Run:
    """Noor's run on Monday."""
    run = Run(
        room_id=KITCHEN_ROOM,
        user_id=NOOR,
        event_id="$run",
        line=0,
        arrived=1,
        set_up_id=set_up_id,
        spec_id=spec_id,
        live_id=None,
        sent_at=MONDAY,
        ran_at=MONDAY,
        kitchen_day=date(2026, 11, 23),
        week="2026-W48",
        result=a_result(),
    )
    return replace(run, **changes)


def a_schedule(**changes: Any) -> Schedule:
    """Mondays at three."""
    schedule = Schedule(room_id=KITCHEN_ROOM, weekday=0, at=MONDAY.time(), zone="Europe/London", since=MONDAY)
    return replace(schedule, **changes)


def a_question(**changes: Any) -> Question:
    """Noor is asked how many were good, and has twelve hours."""
    question = Question(
        user_id=NOOR, room_id=KITCHEN_ROOM, kind="count", asked_at=MONDAY, lapses_at=MONDAY + timedelta(hours=12)
    )
    return replace(question, **changes)


def a_message(event_id: str = "$said", text: str = "3:02 8/8", **changes: Any) -> Message:
    """Noor sends a time."""
    message = Message(event_id=event_id, room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, text=text)
    return replace(message, **changes)


def a_note(text: str = "Heard.", **changes: Any) -> Outgoing:
    """The bot says something in the kitchen."""
    return replace(Outgoing(to=KITCHEN_ROOM, style="notice", text=text), **changes)
