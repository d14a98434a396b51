"""The people of a script, who do on the stage what its lines say."""

from datetime import UTC, datetime
from typing import TypedDict

from bot.errors import BAD_SCRIPT, OperatorError
from bot.rehearsal import Heard, Rehearsal
from bot.rehearse.script import DRILL, HOME, PRIVATE, Line
from bot.services.ports.events import Edit, Incoming, Message, Reaction, Redaction


class _Sent(TypedDict):
    """What every event has."""

    event_id: str
    room_id: str
    sender: str
    sent_at: datetime


class Players:
    """Do on the stage what the lines say, coming into their rooms as they first speak there."""

    def __init__(self, stage: Rehearsal) -> None:
        self._stage = stage
        self._names: dict[tuple[str, str], str] = {}
        self._levels: dict[str, dict[str, int]] = {}
        self._events: dict[str, str] = {}

    async def play(self, where: str, line: Line) -> list[Heard]:
        """Everything that the bot says up to this line, and to it."""
        heard = await self._stage.wait_until(line.time.astimezone(UTC))
        room_id = await self._stage.private_room(line.person) if line.room == PRIVATE else f"!{line.room}:{HOME}"
        if line.room != PRIVATE:
            heard += await self._enter(room_id, line)
        event = self._event(where, room_id, line)
        return heard + (await self._stage.take_now(event) if event else [])

    async def _enter(self, room_id: str, line: Line) -> list[Heard]:
        """Make the room where there is none; come in, or take another name; get another power."""
        heard, person = [], line.person
        if room_id not in self._levels:
            self._levels[room_id] = {person: 100}
            heard = await self._stage.open_kitchen(room_id, line.room, person)
        known = self._names.get((room_id, person))
        name = line.name or known or person[1:].split(":")[0].capitalize()
        if name != known:
            self._names[room_id, person] = name
            await self._stage.come(room_id, person, name)
        levels = self._levels[room_id]
        if line.power is not None:
            levels[person] = line.power
            await self._stage.set_state(room_id, next(iter(levels)), "m.room.power_levels", {"users": dict(levels)})
        return heard

    def _event(self, where: str, room_id: str, line: Line) -> Incoming | None:
        """What the line comes in as; None where it says nothing."""
        sent = _Sent(event_id=self._stage.new_id(), room_id=room_id, sender=line.person, sent_at=self._stage.now)
        if line.id:
            self._events[line.id] = sent["event_id"]
        target, reply_to, thread = (
            self._id_of(where, room_id, name) for name in (line.target, line.reply, line.thread)
        )
        match line:
            case Line(delete=str()):
                return Redaction(**sent, target=target)
            case Line(react=str(), key=str(key)):
                return Reaction(**sent, target=target, key=key)
            case Line(edit=str(), text=str(text)):
                return Edit(**sent, target=target, text=text)
            case Line(text=str(text)):
                return Message(**sent, text=text, reply_to=reply_to or None, thread=thread or None)
        return None

    def _id_of(self, where: str, room_id: str, name: str | None) -> str:
        """The event that a line is spoken of by; empty for none."""
        if name == DRILL:
            posted = self._stage.newest_drill(room_id)
            if posted is None:
                raise OperatorError(f"{where}: no drill has been posted here yet", BAD_SCRIPT)
            return posted
        return self._events[name] if name else ""
