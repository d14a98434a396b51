"""The rooms as they are, printed for people who read them on paper: who said what, where and when."""

import re
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from textwrap import wrap

from bot.demo.people import ZONE, Cast
from bot.matrix.wire import News, RawEvent, Reacted, Redacted, Said, parsed

HAND = "\N{RAISED HAND}"
_MEMO = "\N{MEMO}"
_WIDTH = 96
_NAME_WIDTH = 9
_LONGEST_QUOTE = 30
_IN_ROOM, _IN_THREAD, _IN_PRIVATE = "", "   ", "      "
_CODE = re.compile(r"`[^`]*`")
_UNBROKEN = "\N{NO-BREAK SPACE}"


@dataclass(frozen=True)
class _Told:
    """What an event is to its readers: what somebody says or does, and how far to the right."""

    text: str
    indent: str = _IN_ROOM


class Transcript:
    """Prints each event once, under its day's heading."""

    def __init__(self, bot_id: str, cast: Cast) -> None:
        self._names = {bot_id: "Platepace"} | {cast.user_id(name): name for name in cast.people}
        self._known: dict[str | None, tuple[str, str]] = {}
        self._seen: set[str] = set()
        self._day: date | None = None
        self._private_with = ""

    def show(self, rooms: Sequence[tuple[News, str, str]]) -> None:
        """Print what is new in some rooms (the news, the room, whom it is private with), the earliest first.

        A memo pad that a message has got by now stands beside it, as in any client.
        """
        new = [
            (event, private_with)
            for news, room_id, private_with in rooms
            if room_id in news.rooms.join
            for event in (parsed(RawEvent, raw) for raw in news.rooms.join[room_id].timeline.events)
            if event and event.event_id not in self._seen
        ]
        self._seen.update(event.event_id for event, _ in new)
        marks = _marks_beside([event for event, _ in new])
        for event, private_with in sorted(new, key=lambda each: each[0].origin_server_ts):
            told = None if event.event_id in marks.values() else self._told(event, private_with)
            if told:
                self._print(event, told, private_with, f"  {_MEMO}" if event.event_id in marks else "")

    def note(self, text: str) -> None:
        """Print what happened to the room rather than in it."""
        sys.stdout.write(f"{'':7}({text})\n")

    def _told(self, event: RawEvent, private_with: str) -> _Told | None:
        """None for what nobody sees."""
        match event.type:
            case "m.room.message":
                return self._message(event, private_with)
            case "m.reaction":
                return self._reaction(event)
            case "m.room.redaction":
                target = event.redacts or (parsed(Redacted, event.content) or Redacted()).redacts
                return _Told(f"takes back {self._quote(target, event)}", _IN_THREAD)
        return self._change_of_room(event, private_with)

    def _message(self, event: RawEvent, private_with: str) -> _Told | None:
        said = parsed(Said, event.content)
        if said is None:
            return None
        kind, target = said.relates_to.rel_type, said.relates_to.event_id
        new = parsed(Said, said.new_content) if kind == "m.replace" else None
        if new:
            before = self._quote(target, event)
            self._known[target] = self._name(event), _quoted(new.body)
            return _Told(f"changes {before} to {_quoted(new.body)}", _IN_THREAD)
        self._known[event.event_id] = self._name(event), _quoted(said.body)
        shown = f"{said.body}\n[{said.filename}]" if said.filename else said.body
        return _Told(shown, _IN_PRIVATE if private_with else _IN_THREAD if kind == "m.thread" else _IN_ROOM)

    def _reaction(self, event: RawEvent) -> _Told | None:
        reacted = parsed(Reacted, event.content)
        if reacted is None:
            return None
        key, what = reacted.relates_to.key, self._quote(reacted.relates_to.event_id, event)
        self._known[event.event_id] = self._name(event), f"the {key} on {what}"
        return _Told(f"{'raises a hand' if key == HAND else 'puts'} {key} on {what}", _IN_THREAD)

    def _change_of_room(self, event: RawEvent, private_with: str) -> _Told | None:
        match event.type, event.content.get("membership"), self._names.get(event.state_key or ""):
            case "m.room.name", None, _:
                return _Told(f"opens the room “{event.content.get('name')}”")
            case "m.room.member", "invite", "Platepace":
                return _Told("invites Platepace")
            case "m.room.member", "join", "Platepace":
                return _Told("opens a room of two", _IN_PRIVATE) if private_with else _Told("comes in")
        return None

    def _name(self, event: RawEvent) -> str:
        return self._names.get(event.sender, event.sender)

    def _quote(self, event_id: str | None, quoting: RawEvent) -> str:
        """A message or a mark as somebody would speak of it; of their own without their name."""
        speaker = self._name(quoting)
        name, what = self._known.get(event_id, (speaker, "something"))
        return what if name == speaker else f"{name}'s {what}"

    def _print(self, event: RawEvent, told: _Told, private_with: str, mark: str) -> None:
        when = datetime.fromtimestamp(event.origin_server_ts / 1000, UTC).astimezone(ZONE)
        if when.date() != self._day:
            self._day = when.date()
            sys.stdout.write(f"\n{when:%A} {when.day} {when:%B}\n\n")
        if private_with and private_with != self._private_with:
            sys.stdout.write(f"{'':7}{_IN_PRIVATE}(in private with {private_with})\n")
        self._private_with = private_with
        head = f"{when:%H:%M}  {told.indent}{self._name(event):<{_NAME_WIDTH}}  "
        lines = [part for line in told.text.splitlines() for part in _wrapped(line, _WIDTH - len(head))]
        sys.stdout.write(head + f"\n{'':{len(head)}}".join(lines) + f"{mark}\n")


def _marks_beside(events: Sequence[RawEvent]) -> dict[str | None, str]:
    """The memo pads on messages among these events, by message."""
    ids = {event.event_id for event in events}
    marks = [(event, parsed(Reacted, event.content)) for event in events if event.type == "m.reaction"]
    return {
        mark.relates_to.event_id: event.event_id
        for event, mark in marks
        if mark and mark.relates_to.key == _MEMO and mark.relates_to.event_id in ids
    }


def _quoted(text: str) -> str:
    """The beginning of what was said, enough to know it by."""
    line = text.splitlines()[0] if text else ""
    return f"“{line}”" if len(line) <= _LONGEST_QUOTE else f"“{line[:_LONGEST_QUOTE]}...”"


def _wrapped(line: str, width: int) -> list[str]:
    """The line in parts that fit, words to type kept whole."""
    whole = _CODE.sub(lambda code: code[0].replace(" ", _UNBROKEN), line)
    return [part.replace(_UNBROKEN, " ") for part in wrap(whole, width)] or [""]
