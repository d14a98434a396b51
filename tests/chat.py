"""A kitchen to talk to: the Tern & Lantern on the real words, services and storage, with no server.

``await chat.say("noor", "3:02 8/8")`` gives what the bot says to it. Names are short for ``@noor:tern.example``.
"""

from collections.abc import AsyncIterator, Iterable
from contextlib import asynccontextmanager
from datetime import UTC, datetime, timedelta

from bot.rehearsal import IN_MEMORY, Heard, Rehearsal, rehearsal
from bot.services.ports.events import Edit, Message, Reaction, Redaction

KITCHEN = "!kitchen:tern.example"
LONDON = "Europe/London"
HAND = "\N{RAISED HAND}"
MINUTE = timedelta(minutes=1)
MORNING = datetime(2026, 11, 23, 9, 0, tzinfo=UTC)
"""Monday of week 48."""

PEOPLE = ("ime", "bastian", "noor", "kwabena", "lio", "petra")
COOKS = PEOPLE[2:]


def user(name: str) -> str:
    """The user id of somebody here, given in short or in full."""
    return name if name.startswith("@") else f"@{name}:tern.example"


class Chat:
    """The bot, its kitchen, and the people in it; every doing is a minute after the one before unless said."""

    def __init__(self, stage: Rehearsal) -> None:
        self.stage = stage
        self.last = ""
        """The event that was sent last."""
        self.heard: list[Heard] = []
        """What the bot said to it."""
        self.all_heard: list[Heard] = []
        """Everything that it said since the people came."""

    @property
    def now(self) -> datetime:
        """The time in the chat."""
        return self.stage.now

    async def say(
        self,
        who: str,
        text: str,
        *,
        at: datetime | None = None,
        room: str = KITCHEN,
        thread: bool | str = False,
        reply: str | None = None,
    ) -> list[str]:
        """Somebody says something, in the newest drill's thread or another; the texts that the bot answers with."""
        self.last, moment = self.stage.new_id(), at or self.now + MINUTE
        root = self.stage.newest_drill(room) if thread is True else thread or None
        await self.stage.wait_until(moment)
        return self._texts(
            await self.stage.take_now(
                Message(
                    event_id=self.last,
                    room_id=room,
                    sender=user(who),
                    sent_at=moment,
                    text=text,
                    thread=root,
                    reply_to=reply,
                )
            )
        )

    async def whisper(self, who: str, text: str) -> list[str]:
        """Somebody says something in their private room of two with the bot."""
        return await self.say(who, text, room=await self.stage.private_room(user(who)))

    async def edit(self, who: str, target: str, text: str) -> list[str]:
        """Somebody edits an earlier message."""
        self.last = self.stage.new_id()
        event = Edit(
            event_id=self.last, room_id=KITCHEN, sender=user(who), sent_at=self.now + MINUTE, target=target, text=text
        )
        return self._texts(await self.stage.take(event))

    async def react(self, who: str, target: str, key: str = HAND) -> list[str]:
        """Somebody reacts to a message: with a raised hand unless said."""
        self.last = self.stage.new_id()
        event = Reaction(
            event_id=self.last, room_id=KITCHEN, sender=user(who), sent_at=self.now + MINUTE, target=target, key=key
        )
        return self._texts(await self.stage.take(event))

    async def delete(self, who: str, target: str) -> list[str]:
        """Somebody deletes a message or takes a reaction back."""
        self.last = self.stage.new_id()
        event = Redaction(
            event_id=self.last, room_id=KITCHEN, sender=user(who), sent_at=self.now + MINUTE, target=target
        )
        return self._texts(await self.stage.take(event))

    async def run(self, who: str, line: str, *, watched: bool = True, at: datetime | None = None) -> str:
        """A run in the drill's thread, with Bastian's raised hand on it unless said; its event."""
        await self.say(who, line, thread=True, at=at)
        run = self.last
        if watched:
            await self.react("bastian", run)
        return run

    async def wait(self, until: datetime) -> list[str]:
        """Time passes; the texts that the bot says of itself."""
        return self._texts(await self.stage.wait_until(until))

    async def away(self, until: datetime) -> list[str]:
        """The bot is off until then; the texts that it says on its return."""
        return self._texts(await self.stage.wake_at(until))

    def _texts(self, heard: list[Heard]) -> list[str]:
        self.heard = heard
        self.all_heard += heard
        return [said.note.text for said in heard if said.note.style in ("text", "notice")]

    def told(self, who: str) -> list[str]:
        """Of what the bot said last, what it said to this person in private."""
        return [said.note.text for said in self.heard if said.room_id == f"!private{user(who)}"]


@asynccontextmanager
async def kitchen(
    *, start: datetime = MORNING, zone: str = LONDON, people: Iterable[str] = PEOPLE, url: str = IN_MEMORY
) -> AsyncIterator[Chat]:
    """The Tern & Lantern, its chef Ime, and these people in its room; nobody is counted in yet."""
    async with rehearsal(start, zone=zone, url=url) as stage:
        chat = Chat(stage)
        await stage.open_kitchen(KITCHEN, "Tern & Lantern", user("ime"))
        for name in people:
            await stage.come(KITCHEN, user(name), name.capitalize())
        yield chat


@asynccontextmanager
async def rope_coil(*, cooks: Iterable[str] = COOKS, start: datetime = MORNING) -> AsyncIterator[Chat]:
    """The same with drill 6, Rope coil, live since a minute and these cooks counted in."""
    async with kitchen(start=start) as chat:
        await chat.say("ime", "!post now 6")
        for cook in cooks:
            await chat.say(cook, "!join")
        yield chat
