"""How fast the bot may send over all rooms together, so that the server need not refuse."""

from datetime import timedelta

from bot.matrix.world import World

_SHORTEST_REST_S = 0.001


class Pace:
    """A bucket of ``burst`` messages that fills at ``rate_per_s``; half of it is kept from reactions.

    A server counts by account, not by room: Synapse allows 0.2 a second after 10 unless its admin says otherwise.
    """

    def __init__(self, world: World, *, rate_per_s: float, burst: float) -> None:
        self._world = world
        self._rate_per_s = rate_per_s
        self._burst = burst
        self._left = burst
        self._counted_at = world.clock()

    async def take(self, *, reaction: bool = False) -> None:
        """Wait until one more may go, and count it."""
        wanted = max(1.0, self._burst / 2) if reaction else 1.0
        while (missing := wanted - self._count()) > 0:
            await self._world.rest(max(missing / self._rate_per_s, _SHORTEST_REST_S))
        self._left -= 1

    def hold(self, seconds: float) -> None:
        """Send nothing for so long, and then one: the server said so."""
        self._left = 1.0
        self._counted_at = self._world.clock() + timedelta(seconds=seconds)

    def _count(self) -> float:
        now = self._world.clock()
        self._left = min(self._burst, self._left + (now - self._counted_at).total_seconds() * self._rate_per_s)
        self._counted_at = now
        return self._left
