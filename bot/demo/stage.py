"""Where the play happens: people do things at their clients, the bot finishes with them, the room is printed."""

import asyncio
from collections.abc import Awaitable, Callable
from datetime import datetime, timedelta
from functools import partial
from time import monotonic

from bot.app.bot import Bot
from bot.demo.fast_time import FastClock
from bot.demo.people import CAST, ZONE, Cast
from bot.demo.transcript import HAND, Transcript
from bot.errors import OperatorError

FIRST_MONDAY = datetime(2026, 11, 23, tzinfo=ZONE)
_LOOK_EVERY_S = 0.02
_PATIENCE_S = 20.0


class Stage:
    """The bot, the cast and the kitchen's room; every move is waited for before the next."""

    def __init__(self, bot: Bot, bot_id: str, cast: Cast, clock: FastClock, transcript: Transcript) -> None:
        self._bot = bot
        self._bot_id = bot_id
        self._clock = clock
        self._transcript = transcript
        self.cast = cast
        self.room_id = ""
        self._pinned: dict[str, object] | None = None
        self._showing = asyncio.Lock()

    async def open_room(self, name: str, day: int, time: str) -> None:
        """On that day at that time the chef makes the kitchen's room and invites the bot; everybody comes in."""
        self._clock.jump(_moment(day, time))
        chef, *others = CAST
        order = {
            "name": name,
            "preset": "private_chat",
            "invite": [self._bot_id, *(self.cast.user_id(other) for other in others)],
            "power_level_content_override": {"users": {self._bot_id: 50}},
        }
        self.room_id = await self.cast[chef].client.create_room(order)
        for other in others:
            await self.cast[other].client.join(self.room_id)
        await self._until(self._kitchen_is_open)
        await self._settle()

    async def at(self, day: int, time: str) -> None:
        """It is this time, so many days after the first Monday; whatever comes due on the way is done in its turn."""
        moment = _moment(day, time)
        while (due := await self._bot.planner.next_moment()) and self._clock() < due < moment:
            await self._jump(due)
        await self._jump(moment)

    async def say(self, name: str, text: str, *, in_thread: bool = False) -> str:
        """Somebody says something in the kitchen's room; its event id."""
        thread = await self._thread() if in_thread else None
        return await self._done(await self.cast[name].say(self.room_id, text, thread=thread))

    async def run(self, name: str, text: str) -> str:
        """Somebody sends a result in the drill's thread."""
        return await self.say(name, text, in_thread=True)

    async def say_privately(self, name: str, text: str) -> str:
        """Somebody says something in their private room with the bot."""
        async with self._bot.storage.begin() as work:
            private = await work.kitchens.private_room(self.cast.user_id(name))
        if private is None:
            raise OperatorError(f"the bot has opened no private room with {name}")
        return await self._done(await self.cast[name].say(private, text))

    async def edit(self, name: str, event_id: str, text: str) -> None:
        """Somebody changes what they said."""
        await self._done(await self.cast[name].edit(self.room_id, event_id, text))

    async def delete(self, name: str, event_id: str) -> None:
        """Somebody takes a message or a reaction back."""
        await self._done(await self.cast[name].delete(self.room_id, event_id))

    async def raise_hand(self, name: str, event_id: str) -> str:
        """Somebody says that they watched a run; the reaction's event id."""
        return await self._done(await self.cast[name].react(self.room_id, event_id, HAND))

    async def show(self) -> None:
        """Print what is new in the kitchen's room and in the private ones."""
        async with self._showing:
            await self._show()

    async def _show(self) -> None:
        chef = self.cast[CAST[0]]
        async with self._bot.storage.begin() as work:
            private = {name: await work.kitchens.private_room(self.cast.user_id(name)) for name in self.cast.people}
        rooms = [(await chef.read(), self.room_id, "")]
        rooms += [(await self.cast[name].read(), room_id, name) for name, room_id in private.items() if room_id]
        self._transcript.show(rooms)
        pinned = await chef.client.state(self.room_id, "m.room.pinned_events")
        if pinned != self._pinned:
            self._pinned = pinned
            self._transcript.note("pinned")

    async def _jump(self, moment: datetime) -> None:
        self._clock.jump(moment)
        await self._bot.planner.tick()
        await self._settle()

    async def _done(self, event_id: str) -> str:
        await self._settle(event_id)
        return event_id

    async def _settle(self, *event_ids: str) -> None:
        """Wait until the bot has dealt with these events and has nothing left to do, then print."""
        await self._until(partial(self._is_at_rest, event_ids))
        await self.show()

    async def _until(self, true: Callable[[], Awaitable[bool]]) -> None:
        """Look into the bot's storage until something is so."""
        deadline = monotonic() + _PATIENCE_S
        while not await true():
            if monotonic() > deadline:
                raise OperatorError(f"the demo broke off: the bot was not done after {_PATIENCE_S:.0f} s")
            await asyncio.sleep(_LOOK_EVERY_S)

    async def _is_at_rest(self, event_ids: tuple[str, ...]) -> bool:
        async with self._bot.storage.begin() as work:
            known = await work.inbox.known(event_ids)
            return len(known) == len(event_ids) and not await work.inbox.oldest() and not await work.outbox.lanes()

    async def _kitchen_is_open(self) -> bool:
        async with self._bot.storage.begin() as work:
            return await work.kitchens.get(self.room_id) is not None

    async def _thread(self) -> str | None:
        """The root of the newest drill's thread."""
        async with self._bot.storage.begin() as work:
            live = await work.drills.last_live(self.room_id)
            return await work.outbox.event_of(live.root) if live else None


def _moment(day: int, time: str) -> datetime:
    """That time, so many days after the first Monday."""
    hour, minute = map(int, time.split(":"))
    return FIRST_MONDAY + timedelta(days=day, hours=hour, minutes=minute)
