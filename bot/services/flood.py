"""Patience with one person: who sends more than anybody in a kitchen would is told so once, and then not answered.

What is limited is answers to words and hints. A result that can be read is kept and acknowledged whatever its number.
"""

from dataclasses import dataclass
from datetime import datetime

from bot.services.said import Said

AT_ONCE = 60
"""Lines that are answered however fast they come: more than the forty of a backlog and the several of a Friday."""

A_MINUTE = 10
"""Lines a minute that are answered for ever, and what must have eased before anything is answered again."""


@dataclass
class _Patience:
    """What is left for one person, as it was ``at`` a moment; ``seq`` is the line that was counted last."""

    left: float
    at: datetime
    seq: int = -1
    answers: bool = True


class Flood:
    """Counts the lines of each person that ask for an answer; only those who have lately said any are remembered."""

    def __init__(self) -> None:
        self._people: dict[str, _Patience] = {}

    async def lets_through(self, said: Said) -> bool:
        """Whether this line is answered; the first that is not gets one kind sentence instead."""
        patience = self._of(said.user_id, said.now)
        if patience.seq == said.arrived:
            return patience.answers
        patience.seq = said.arrived
        if not patience.answers and patience.left < A_MINUTE:
            patience.left = max(0.0, patience.left - 1)
            return False
        patience.answers = patience.left >= 1
        patience.left = max(0.0, patience.left - 1)
        if not patience.answers:
            await said.answer(said.phrases("flooding"))
        return patience.answers

    def _of(self, user_id: str, now: datetime) -> _Patience:
        """What is left for this person now; those with whom patience is whole again are forgotten."""
        for patience in self._people.values():
            minutes = max(0.0, (now - patience.at).total_seconds() / 60)
            patience.left, patience.at = min(AT_ONCE, patience.left + A_MINUTE * minutes), now
        self._people = {who: patience for who, patience in self._people.items() if patience.left < AT_ONCE}
        return self._people.setdefault(user_id, _Patience(left=AT_ONCE, at=now))
