"""One timed attempt: what was sent, and what it comes to once the redos are charged."""

from dataclasses import dataclass
from typing import Literal

Kind = Literal["counted", "short", "stopped", "settling"]
"""counted: all plates attempted; short: at least half and four; stopped: fewer, private; settling: a newcomer's."""


@dataclass(frozen=True)
class Count:
    """What became of every plate: ``accepted + redo + left == plates``; rebuilt and fixed are among the accepted."""

    plates: int
    accepted: int
    redo: int = 0
    left: int = 0
    rebuilt: int = 0
    fixed: int = 0

    @property
    def attempted(self) -> int:
        """Plates built, good or not."""
        return self.accepted + self.redo


@dataclass(frozen=True)
class Sent:
    """A submission as read from one line, before the drill is known.

    ``accepted`` and ``plates`` are None where the line left them to be asked or inferred (``8:05 redo 1`` gives only
    ``redo``; ``all`` gives ``all_good``). Times are whole seconds. ``drill`` is a label such as ``6B`` or empty.
    """

    clock_s: int | None
    accepted: int | None = None
    plates: int | None = None
    all_good: bool = False
    redo: int | None = None
    left: int | None = None
    rebuilt: int = 0
    fixed: int = 0
    wipes: int = 0
    reasons: tuple[str, ...] = ()
    splits_s: tuple[int, ...] = ()
    at: str = ""
    yesterday: bool = False
    mate: str = ""
    partner: str = ""
    drill: str = ""


@dataclass(frozen=True)
class Result:
    """A run worked out: seconds, touches and what they give. ``net_s`` and both paces are None where there is no time.

    ``standard_s`` is the standard time of the plates attempted, ``alone_s`` of one plate built by itself.
    """

    kind: Kind
    clock_s: int
    count: Count
    touches: int
    standard_s: float
    alone_s: float
    change_s: float
    net_s: float | None
    pace_s: float | None
    levelled_s: float | None
