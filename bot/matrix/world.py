"""What decides when things happen, passed in so that a test or a rehearsal decides it."""

from collections.abc import Callable
from dataclasses import dataclass

from bot.services.ports.world import Clock, Rest

_LEAST_S = 1.0
_MOST_S = 300.0


@dataclass(frozen=True)
class World:
    """The clock, the way to sleep, and ``chance``, which draws a number from 0 to 1, 1 excluded."""

    clock: Clock
    rest: Rest
    chance: Callable[[], float]

    def wait_s(self, failures: int, asked_s: float | None = None) -> float:
        """How long to leave a server alone: as it asked, else doubling from 1 to 300 s with each failure in a row.

        Both are spread a little, so that several bots do not come back in the same instant after a server's restart.
        """
        if asked_s is not None:
            return max(_LEAST_S, asked_s * (1 + self.chance() / 10))
        whole = min(_MOST_S, _LEAST_S * 2.0 ** min(failures, 10))
        return max(_LEAST_S, whole * (1 + self.chance()) / 2)
