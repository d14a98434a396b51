"""A week in half a minute: the clock jumps between the scenes, and the homeserver's times are moved by as much."""

from collections.abc import Callable, Mapping
from datetime import UTC, datetime, timedelta

from bot.matrix.client import Account, Client
from bot.matrix.wire import News, Page


class FastClock:
    """The time of the play: it begins at a moment, runs on as real time does, and jumps."""

    def __init__(self, start: datetime) -> None:
        self.ahead = timedelta(0)
        self.jump(start)

    def __call__(self) -> datetime:
        """The time now, in UTC."""
        return datetime.now(UTC) + self.ahead

    def jump(self, moment: datetime) -> None:
        """It is now this moment."""
        self.ahead += moment - self()


class FastTimeClient(Client):
    """A client to whom the homeserver's events seem to have happened in the time of the play.

    The server stamps them with real time; each is moved by how far the play was ahead when it was read, which is how
    far it was when it happened, for the clock jumps only when everything has been read.
    """

    def __init__(self, homeserver: str, account: Account, clock: FastClock) -> None:
        super().__init__(homeserver, account)
        self._clock = clock

    @classmethod
    def maker(cls, clock: FastClock) -> Callable[[str, Account], Client]:
        """What makes such clients by this clock."""
        return lambda homeserver, account: cls(homeserver, account, clock)

    async def sync(self, since: str | None, *, wait_s: float) -> News:
        """What is new, in the time of the play."""
        news = await super().sync(since, wait_s=wait_s)
        for room in (*news.rooms.join.values(), *news.rooms.leave.values()):
            self._move(room.timeline.events)
            self._move(room.state.events)
        return news

    async def past(self, room_id: str, start: str | None, end: str | None = None, **only: Mapping[str, object]) -> Page:
        """What came before, in the time of the play."""
        page = await super().past(room_id, start, end, **only)
        self._move(page.chunk)
        return page

    def _move(self, events: list[object]) -> None:
        for event in events:
            if isinstance(event, dict) and isinstance(event.get("origin_server_ts"), int):
                event["origin_server_ts"] += round(self._clock.ahead.total_seconds() * 1000)
