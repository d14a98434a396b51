"""The outbox sender: every stored message goes out once, in its lane's order, whatever happens in between.

One lane has one sender, and the head of its line goes first; lanes do not wait for each other. A row keeps its
transaction id for ever, so that sending it again, after a crash or an answer that was lost, changes nothing.
"""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import replace
from datetime import timedelta
from typing import NoReturn

from bot.matrix.comings import RETRIES_S
from bot.matrix.merging import MOST_LINES, merge
from bot.matrix.pace import Pace
from bot.matrix.references import resolved
from bot.matrix.uploads import with_file
from bot.matrix.world import World
from bot.services.ports.messages import Outgoing, SendRefused, TryLater, Waiting
from bot.services.ports.world import Messenger, Storage, UnitOfWork

log = logging.getLogger(__name__)

OnDead = Callable[[UnitOfWork, Waiting, str], Awaitable[None]]
"""Hears, within the transaction that buries it, of a message that will never be sent, and why."""

_REACTIONS = "#ack"
_SERVER_FORGETS_AFTER_S = 20 * 3600.0
_ODD_FAULTS_BEFORE_BURIAL = 10
_SHORTEST_SLEEP_S = 0.5
_AFTER_A_FAULT_S = 5.0


class Sender:
    """Works off the outbox: ``run`` for as long as the bot lives, or ``flush`` for all that may go now."""

    def __init__(self, storage: Storage, messenger: Messenger, world: World, pace: Pace, *, on_dead: OnDead) -> None:
        self._storage = storage
        self._messenger = messenger
        self._world = world
        self._pace = pace
        self._on_dead = on_dead
        self._woken = asyncio.Event()
        self._busy: set[str] = set()

    def wake(self) -> None:
        """Say that there may be something new to send."""
        self._woken.set()

    async def run(self) -> NoReturn:
        """Go on for ever, each lane in a task of its own."""
        async with asyncio.TaskGroup() as senders:
            while True:
                self._woken.clear()
                sleep_s: float | None = _AFTER_A_FAULT_S
                try:
                    lanes, sleep_s = await self._look()
                    for lane in lanes:
                        self._busy.add(lane)
                        senders.create_task(self._work_off(lane))
                except Exception:
                    log.exception("outbox: the lanes cannot be read")
                await self._sleep(sleep_s)

    async def flush(self) -> None:
        """Send everything that may go now, lane after lane, and return."""
        while lanes := (await self._look())[0]:
            for lane in lanes:
                while await self._send_head(lane):
                    pass

    async def _look(self) -> tuple[list[str], float | None]:
        """The lanes to start on now, and in how many seconds a lane at rest may be tried again."""
        now = self._world.clock()
        async with self._storage.begin() as work:
            waiting = await work.outbox.lanes()
        free = [lane for lane, rests_until in waiting if rests_until is None or rests_until <= now]
        lanes = [lane for lane in free if lane not in self._busy and not self._must_give_way(lane, free)]
        rests = [rests_until for _, rests_until in waiting if rests_until is not None]
        return lanes, (min(rests) - now).total_seconds() if rests else None

    def _must_give_way(self, lane: str, free: Sequence[str] = ()) -> bool:
        """Whether these are reactions of a room with words to send: words are what somebody waits for."""
        room = lane.removesuffix(_REACTIONS)
        return room != lane and (room in self._busy or room in free)

    async def _sleep(self, seconds: float | None) -> None:
        """Sleep until woken, or for so long; a lane that is being worked off now needs no shorter sleep."""
        ends: list[asyncio.Future[object]] = [asyncio.ensure_future(self._woken.wait())]
        if seconds is not None:
            ends.append(asyncio.ensure_future(self._world.rest(max(seconds, _SHORTEST_SLEEP_S))))
        try:
            await asyncio.wait(ends, return_when=asyncio.FIRST_COMPLETED)
        finally:
            for end in ends:
                end.cancel()

    async def _work_off(self, lane: str) -> None:
        try:
            while await self._send_head(lane) and not self._must_give_way(lane):
                pass
        except Exception:
            log.exception("outbox: lane %s rests after an unforeseen fault", lane)
            await self._world.rest(_AFTER_A_FAULT_S)
        finally:
            self._busy.discard(lane)
            self.wake()

    async def _send_head(self, lane: str) -> bool:
        """Try the head of the lane; whether another may follow at once."""
        await self._pace.take(reaction=lane.endswith(_REACTIONS))
        leased = await self._lease(lane)
        if leased is None:
            return False
        waiting, note = leased
        try:
            event_id = await self._deliver(waiting, note)
        except SendRefused as problem:
            return await self._refused(waiting, str(problem))
        except TryLater as problem:
            return await self._postpone(waiting, problem)
        except Exception as problem:
            log.exception("outbox: row %s", waiting.id)
            if waiting.attempts + 1 >= _ODD_FAULTS_BEFORE_BURIAL:
                return await self._bury(waiting, f"an unforeseen {type(problem).__name__}")
            return await self._postpone(waiting, TryLater(f"an unforeseen {type(problem).__name__}"))
        async with self._storage.begin() as work:
            await work.outbox.sent(waiting.id, event_id)
            return await _has_more(work, lane)

    async def _lease(self, lane: str) -> tuple[Waiting, Outgoing] | None:
        """The row to send, with what it absorbs noted, and its note with every reference an event id."""
        async with self._storage.begin() as work:
            head = await work.outbox.head(lane, MOST_LINES)
            if not head:
                return None
            note, absorbed = merge(head)
            if not await work.outbox.lease(head[0].id, absorbed, note, self._world.clock()):
                return None
            return replace(head[0], note=note), await resolved(work, note)

    async def _deliver(self, waiting: Waiting, note: Outgoing) -> str:
        if note.target is None and waiting.note.target is not None:
            raise SendRefused("what it was to be put on was never sent")
        room_id = await self._room(note.to)
        sent = await self._messenger.find_sent(waiting, room_id) if self._is_old(waiting) else None
        if sent:
            return sent
        if note.attachment:
            note = await with_file(self._storage, self._messenger, waiting, room_id, note)
        return await self._messenger.send(waiting, room_id, note)

    def _is_old(self, waiting: Waiting) -> bool:
        """Whether it was first tried so long ago that the server may have forgotten the transaction id."""
        first_s = waiting.first_try_at_s
        return first_s is not None and self._world.clock().timestamp() - first_s > _SERVER_FORGETS_AFTER_S

    async def _room(self, to: str) -> str:
        """The room itself, or the private room of a person, opened if need be."""
        if not to.startswith("@"):
            return to
        async with self._storage.begin() as work:
            known = await work.kitchens.private_room(to)
            if known:
                return known
            first_time = await work.kitchens.start_private(to)
        room_id = await self._messenger.open_private(to, look_first=not first_time)
        async with self._storage.begin() as work:
            await work.kitchens.save_private(to, room_id)
        return room_id

    async def _refused(self, waiting: Waiting, problem: str) -> bool:
        """What is refused is refused for good, but a server may not know yet that the bot may come in."""
        if waiting.note.style == "join" and waiting.attempts < len(RETRIES_S):
            return await self._rest(waiting, RETRIES_S[waiting.attempts], problem)
        return await self._bury(waiting, problem)

    async def _postpone(self, waiting: Waiting, problem: TryLater) -> bool:
        wait_s = self._world.wait_s(waiting.attempts + 1, problem.after_s)
        if problem.after_s is not None:
            self._pace.hold(wait_s)  # the server counts by account, so every lane rests
        return await self._rest(waiting, wait_s, str(problem))

    async def _rest(self, waiting: Waiting, wait_s: float, problem: str) -> bool:
        async with self._storage.begin() as work:
            await work.outbox.postpone(waiting.id, self._world.clock() + timedelta(seconds=wait_s), problem)
        return False

    async def _bury(self, waiting: Waiting, problem: str) -> bool:
        async with self._storage.begin() as work:
            await work.outbox.bury(waiting.id, problem)
            await self._on_dead(work, waiting, problem)
            return await _has_more(work, waiting.lane)


async def _has_more(work: UnitOfWork, lane: str) -> bool:
    return bool(await work.outbox.head(lane, 1))
