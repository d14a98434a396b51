"""Whatever is said, in whatever order it comes: the same events give the same state, and no words make the bot fail."""

import logging
import re
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import TypedDict

from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from bot.replies.phrases import english
from bot.services.ports.events import Edit, Incoming, Message, Reaction, Redaction
from bot.words import vocabulary
from tests.chat import COOKS, HAND, KITCHEN, MORNING, Chat, kitchen, rope_coil, user
from tests.database import Row, Tables, tables_in

UNSHRUNK = (Phase.explicit, Phase.reuse, Phase.generate)
"""A kitchen takes a fifth of a second to open; shrinking a failure would open hundreds."""

LINES = (
    "3:02 8/8",
    "3:20 7/8 fell",
    "3:20 redo 1",
    "3:10 5/8",
    "2:10 6/8 left 2",
    "3:05 7/7",
    "3.20 8/8",
    "3:20 9/8",
    "0:48 8/8",
    "2:58 8/8 for @lio",
    "at 02:10 3:31 8/8",
    "3:12",
    "yes",
    "all",
    "again",
    "a",
    "b",
    "!join",
    "!leave",
    "!scrap",
    "!undo",
    "!best",
    "!trend",
    "!why",
    "!board",
    "!plates 9",
    "!post now 6",
    "!close",
    "table 12?",
)
"""What is said in a kitchen, so that most of it meets what was said before."""

WHO = st.sampled_from(("ime", "noor", "kwabena", "lio"))
EARLIER = st.integers(0, 20)


class Sent(TypedDict):
    """What every event has."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime


@dataclass(frozen=True)
class Doing:
    """What somebody does: says a line, or edits, deletes or raises a hand on an earlier event."""

    who: str
    what: type[Incoming]
    line: str
    target: int

    def event(self, number: int) -> Incoming:
        """The event that it is as the nth of a chat."""
        who, at = user(self.who), MORNING + timedelta(minutes=number)
        sent = Sent(event_id=f"$any{number}", room_id=KITCHEN, sender=who, sent_at=at)
        target = f"$any{self.target % max(number, 1)}"
        if self.what is Message:
            return Message(**sent, text=self.line)
        if self.what is Edit:
            return Edit(**sent, text=self.line, target=target)
        if self.what is Reaction:
            return Reaction(**sent, key=HAND, target=target)
        return Redaction(**sent, target=target)


DOING = st.builds(
    Doing,
    who=WHO,
    what=st.sampled_from((Message, Message, Message, Edit, Reaction, Redaction)),
    line=st.sampled_from(LINES),
    target=EARLIER,
)
OPENING = [
    Doing("ime", Message, "!post now 6", 0),
    Doing("noor", Message, "!join", 0),
    Doing("kwabena", Message, "!join", 0),
]


async def _outcome(batches: list[list[Incoming]]) -> Tables:
    """Everything stored and sent after these batches have come in one after the other."""
    with tempfile.TemporaryDirectory() as directory:
        file = Path(directory) / "platepace.db"
        async with kitchen(url=f"sqlite:///{file}") as chat:
            heard = [said for batch in batches for said in await chat.stage.take_now(*batch)]
        sent: list[Row] = sorted(({"heard": repr(said)} for said in heard), key=repr)
        return {**_in_order(tables_in(file)), "sent": sent}


def _in_order(tables: Tables) -> Tables:
    """The tables without the inbox's own numbers, in which an event sent again leaves a gap; rows stand in order."""
    arrived = re.compile(r'"arrived":\d+')
    return {
        name: [
            {column: arrived.sub("", str(value)) for column, value in row.items() if column not in ("seq", "arrived")}
            for row in rows
        ]
        for name, rows in tables.items()
        if name != "sqlite_sequence"
    }


@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
@given(st.lists(DOING, min_size=5, max_size=20), st.data())
async def test_replays_in_any_grouping_give_the_same(doings: list[Doing], data: st.DataObject) -> None:
    """A chat that comes event by event, and in groups with events sent again, leaves the same rows and messages."""
    events = [doing.event(number) for number, doing in enumerate([*OPENING, *doings])]
    batches: list[list[Incoming]] = [[]]
    for place, event in enumerate(events):
        again = data.draw(st.lists(st.integers(0, place), max_size=2), label="again")
        batches[-1] += [*(events[earlier] for earlier in again if earlier < place), event]
        if data.draw(st.booleans(), label="ends a batch"):
            batches.append([])
    assert await _outcome(batches) == await _outcome([[event] for event in events])


class _Faults(logging.Handler):
    """Collects what is logged as gone wrong."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.told: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep it."""
        self.told.append(f"{record.getMessage()}: {record.exc_info and record.exc_info[1]!r}")


@contextmanager
def faults() -> Iterator[list[str]]:
    """What goes wrong inside the bot meanwhile."""
    handler, logger = _Faults(), logging.getLogger("bot")
    logger.addHandler(handler)
    try:
        yield handler.told
    finally:
        logger.removeHandler(handler)


ANYTHING = st.one_of(
    st.text(st.characters(exclude_categories=["Cs"]), max_size=60),
    st.builds(
        "{}{} {}".format,
        st.sampled_from(("", "!")),
        st.sampled_from([word.name for word in vocabulary().words]),
        st.text(
            st.sampled_from("0123456789:/.,-+ \n!`@#*_<>&ABbaéß٣８٫½∞\u202e\u200d")
            | st.characters(exclude_categories=["Cs"]),
            max_size=25,
        ),
    ),
    st.lists(
        st.sampled_from(
            (*LINES, "!draft Tide", "plates 8", "1. 2 bean, place", "", "\n", "6", "now", "mon 15:00", "-1")
        )
    ).map(" ".join),
    st.from_regex(
        r"[!]?[0-9]{1,25}[:.,'/][0-9]{1,25} ?[0-9/]{0,9}( (redo|left|at|steps|for) ?[0-9a-z@:]{0,9})?", fullmatch=True
    ),
)


@settings(max_examples=25, deadline=None, phases=UNSHRUNK)
@given(
    st.lists(st.tuples(WHO, ANYTHING, st.sampled_from(("room", "thread", "private", "edit"))), min_size=5, max_size=15)
)
async def test_no_words_make_the_bot_fail(said: list[tuple[str, str, str]]) -> None:
    """Random text, in the room, in private or as an edit, never gets the fixed apology and nothing fails behind it."""
    with faults() as told:
        async with rope_coil() as chat:
            await chat.say("noor", "3:02 8/8")
            run = chat.last
            for who, text, where in said:
                answers = await _saying(chat, who, text, where, run)
                assert english()("my-fault") not in answers
    assert told == []


async def _saying(chat: Chat, who: str, text: str, where: str, run: str) -> list[str]:
    if where == "private":
        return await chat.whisper(who, text)
    if where == "edit":
        return await chat.edit("noor", run, text)
    return await chat.say(who, text, thread=where == "thread")


@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
@given(st.lists(st.tuples(st.integers(90, 900), st.integers(1, 2)), min_size=3, max_size=8, unique=True))
async def test_a_redo_never_pays(runs: list[tuple[int, int]]) -> None:
    """Through the whole chat: leaving plates for the judge is never quicker than rebuilding them inside the clock.

    A plate rebuilt takes the change and the plate alone at the cook's own speed, the model's own sum; clocks are
    whole seconds.
    """
    async with rope_coil(cooks=[*COOKS, "bastian"]) as chat:
        for nth, (clock_s, redo) in enumerate(runs):
            cook = COOKS[nth % len(COOKS)]
            left_bad = await _figures(chat, cook, f"{clock_s}s {8 - redo}/8")
            one_s = left_bad["change_s"] + left_bad["alone_s"] * clock_s / left_bad["standard_s"]
            rebuilt = await _figures(chat, cook, f"{int(clock_s + redo * one_s)}s 8/8 rebuilt {redo}")
            assert left_bad["net_s"] >= rebuilt["net_s"]
            assert left_bad["net_s"] > clock_s


async def _figures(chat: Chat, cook: str, line: str) -> dict[str, float]:
    """The numbers behind the answer to a run."""
    await chat.say(cook, line, thread=True)
    (answer,) = [heard.note for heard in chat.heard if "net_s" in heard.note.figures]
    return {name: float(value) for name, value in answer.figures.items() if isinstance(value, int | float)}
