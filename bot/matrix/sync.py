"""The sync loop: everything that comes from a room is kept, with the token reached, in one transaction.

It only keeps. What an event means is worked out afterwards, from the inbox.
"""

import asyncio
import logging
from collections.abc import Sequence
from typing import NoReturn, Protocol

from bot.errors import OperatorError
from bot.matrix.envelopes import Envelopes
from bot.matrix.faults import Report, SignedOut, TokenRefused
from bot.matrix.gap import Gaps, Past
from bot.matrix.invitations import Allowed, Invitations
from bot.matrix.reading import read_invitations, read_room
from bot.matrix.secrecy import InTheClear, Secrecy
from bot.matrix.wire import News, RoomNews
from bot.matrix.world import World
from bot.services.ports.events import Incoming, Sealed
from bot.services.ports.messages import TryLater
from bot.services.ports.world import Storage, Wake

log = logging.getLogger(__name__)

_REFUSALS_BEFORE_A_NEW_TOKEN = 3
_WAIT_S = 30.0


class Homeserver(Past, Protocol):
    """What the loop asks of the homeserver."""

    @property
    def user_id(self) -> str:
        """Who the bot is."""

    async def sign_in(self) -> str:
        """Sign in again on the same device."""

    async def sync(self, since: str | None, *, wait_s: float) -> News:
        """What is new since that token, waiting so long for something; without one, how everything stands."""

    async def invitations(self) -> News:
        """The invitations that are open."""

    async def join(self, room_id: str) -> None:
        """Accept an invitation."""


class SyncLoop:
    """Brings the news of every room to the inbox and wakes whoever works it off.

    ``caught_up`` is set from the first good sync on, and ``last_good_s`` is the POSIX time of the newest; 0 before.
    """

    def __init__(
        self,
        homeserver: Homeserver,
        storage: Storage,
        world: World,
        *,
        allowed: Allowed,
        wake: Wake,
        report: Report,
        secrecy: Secrecy | None = None,
    ) -> None:
        self._homeserver = homeserver
        self._storage = storage
        self._own_id = homeserver.user_id
        self._world = world
        self._wake = wake
        self._secrecy = secrecy or InTheClear()
        self._envelopes = Envelopes(self._secrecy, self._own_id)
        self._gaps = Gaps(homeserver, report)
        self._invitations = Invitations(homeserver.join, allowed, world.rest, report)
        self._invitations_looked_up = False
        self._refusals = 0
        self._since: str | None = None
        self.caught_up = asyncio.Event()
        self.last_good_s = 0.0

    async def run(self) -> NoReturn:
        """Go on for ever, leaving the server alone after failures; ``LoggedOut`` ends it."""
        failures = 0
        try:
            while True:
                problem = await self._attempt()
                failures = failures + 1 if problem else 0
                if problem:
                    log.warning("sync: %s", problem)
                    await self._world.rest(self._world.wait_s(failures, problem.after_s))
        finally:
            await self._invitations.close()

    async def _attempt(self) -> TryLater | None:
        """One step; what stood in its way, if it may go later."""
        try:
            await self.step()
        except SignedOut:
            return await self._sign_in_again()
        except TokenRefused as problem:
            self._refusals += 1
            return problem
        except TryLater as problem:
            return problem
        except OperatorError:
            raise
        except Exception as problem:
            log.exception("sync: an unforeseen fault; the token stays where it was, so nothing is lost")
            return TryLater(f"an unforeseen {type(problem).__name__}")
        return None

    async def _sign_in_again(self) -> TryLater:
        try:
            await self._homeserver.sign_in()
        except TryLater as problem:
            return problem
        return TryLater("signed in again")  # with a pause, or a server that forgets every token would be stormed

    async def step(self) -> None:
        """One sync: ask, fill what was left out, keep all of it, wake the worker, and see to the invitations."""
        since = self._since = self._since or await self._kept_token()
        wait_s = _WAIT_S if self.caught_up.is_set() else 0.0
        news = await self._homeserver.sync(None if self._token_is_dead() else since, wait_s=wait_s)
        # Keys first: what they open may come with them, and what they opened once they do not open again.
        self._envelopes.keys_came |= self._secrecy.receive(news)
        rooms = [*news.rooms.join.items(), *news.rooms.leave.items()]
        events = [event for room_id, room in rooms for event in await self._read(room_id, room, since)]
        await self._keep(events, news.next_batch, news)
        self._since = news.next_batch
        self._envelopes.keys_came = False
        self._refusals = 0
        self.last_good_s = self._world.clock().timestamp()
        self.caught_up.set()
        if since and not self._invitations_looked_up:
            # One that came before the bot was last stopped is in no later sync.
            await self._keep([], None, await self._homeserver.invitations())
            self._invitations_looked_up = True
        await self._secrecy.tend()

    async def _kept_token(self) -> str | None:
        async with self._storage.begin() as work:
            return await work.inbox.token(self._own_id)

    def _token_is_dead(self) -> bool:
        return self._refusals >= _REFUSALS_BEFORE_A_NEW_TOKEN

    async def _read(self, room_id: str, news: RoomNews, since: str | None) -> list[Incoming | Sealed]:
        whole = [*news.state.events, *news.timeline.events]
        self._secrecy.look_at(room_id, whole)
        if since is None:
            return read_room(room_id, self._own_id, stream=[], state=whole)
        if self._token_is_dead():
            stream = await self._gaps.since_known(room_id, news, self._known)
            return read_room(room_id, self._own_id, stream=stream, state=whole, state_at=len(stream))
        earlier = await self._gaps.before(room_id, news, since)
        self._secrecy.look_at(room_id, earlier)
        stream = [*earlier, *news.timeline.events]
        return read_room(room_id, self._own_id, stream=stream, state=news.state.events, state_at=len(earlier))

    async def _known(self, event_ids: Sequence[str]) -> set[str]:
        async with self._storage.begin() as work:
            return await work.inbox.known(event_ids)

    async def _keep(self, events: Sequence[Incoming | Sealed], token: str | None, news: News) -> None:
        """Store the events with the token and the invitations, and only then act on them."""
        invited = read_invitations(news, self._own_id, self._world.clock())
        async with self._storage.begin() as work:
            readable = await self._envelopes.open(work, events)
            new = await work.inbox.take(self._own_id, [*readable, *invited], token)
        if new:
            self._wake()
        for invitation in invited:
            self._invitations.accept(invitation.room_id, invitation.sender)
        for room_id in news.rooms.leave:
            self._invitations.withdraw(room_id)
