"""The measuring end: a person in a room with one bot, who sends lines and notes when each is answered."""

import asyncio
import itertools
import re
import time
from dataclasses import dataclass, field

from bot.domain.pace import clock_text
from bot.matrix.client import Client

_HEARD = re.compile(r"(?:Heard\. |^)(\d+:\d\d)")
_PATIENCE_S = 60.0
_REST_S = 0.3


@dataclass
class Room:
    """A room of Noor's with one bot; ``answers`` are the bot's texts with the moment at which each came."""

    client: Client
    room_id: str
    bot_id: str
    answers: list[tuple[float, str]] = field(default_factory=list)
    _sent: int = 0
    _next_clock_s: int = 510
    _came: asyncio.Event = field(default_factory=asyncio.Event)

    async def listen(self) -> None:
        """Note the bot's texts for ever."""
        since = (await self.client.sync(None, wait_s=0)).next_batch
        while True:
            news = await self.client.sync(since, wait_s=10)
            now_s, since = time.perf_counter(), news.next_batch
            room = news.rooms.join.get(self.room_id)
            for raw in room.timeline.events if room else ():
                if isinstance(raw, dict) and raw["sender"] == self.bot_id and raw["type"] == "m.room.message":
                    self.answers.append((now_s, str(raw["content"].get("body"))))
            self._came.set()

    async def say(self, text: str) -> None:
        """Send a text."""
        self._sent += 1
        content = {"msgtype": "m.text", "body": text}
        await self.client.send(self.room_id, "m.room.message", content, f"{self.bot_id}.{time.time_ns()}")

    def next_clock(self) -> str:
        """A clock that was not sent before."""
        self._next_clock_s += 1
        return clock_text(self._next_clock_s)

    async def answers_after(self, seen: int) -> list[tuple[float, str]]:
        """The answers beyond the first ``seen``, once there is one."""
        async with asyncio.timeout(_PATIENCE_S):
            while len(self.answers) <= seen:
                self._came.clear()
                await self._came.wait()
        return self.answers[seen:]

    async def answer_s(self) -> float:
        """Seconds from sending a result with one redo to its answer, the room being at rest."""
        await asyncio.sleep(_REST_S)
        seen, sent_s = len(self.answers), time.perf_counter()
        await self.say(f"{self.next_clock()} 11/12")
        return (await self.answers_after(seen))[0][0] - sent_s

    async def first_answer_s(self, started_s: float) -> float:
        """Seconds from a process's start to its first answer, asked for every twentieth of a second."""
        seen = len(self.answers)
        while len(self.answers) == seen:
            await self.say(f"{self.next_clock()} 12/12")
            await asyncio.sleep(0.05)
        first_s = self.answers[seen][0] - started_s
        await self.settle()
        return first_s

    async def settle(self) -> None:
        """Wait until nothing has come for a second."""
        seen = -1
        while seen != len(self.answers):
            seen = len(self.answers)
            await asyncio.sleep(1)

    async def burst(self, size: int) -> tuple[float, int, int]:
        """Send many lines at once: seconds to the last answer, lines not answered, lines answered out of order."""
        clocks = [self.next_clock() for _ in range(size)]
        seen, sent_s = len(self.answers), time.perf_counter()
        for clock in clocks:
            await self.say(f"{clock} 12/12")
        await self.settle()
        came = [(at_s, clock) for at_s, text in self.answers[seen:] for clock in heard_in(text)]
        order = [clocks.index(clock) for _, clock in came if clock in clocks]
        lost = size - len(set(order))
        late = sum(before > after for before, after in itertools.pairwise(order))
        return came[-1][0] - sent_s if came else 0.0, lost, late


def heard_in(text: str) -> list[str]:
    """The clocks that an answer, or several in one message, speaks of."""
    return [found[1] for line in text.splitlines() if (found := _HEARD.search(line))]
