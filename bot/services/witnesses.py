"""The raised hand: somebody other than the runner watched, which bests and boards need; given and taken back."""

from bot.services.house import House
from bot.services.ports.events import Reaction
from bot.services.ports.records import Run
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker
from bot.services.standing import tell_changes

_HANDS = frozenset("\N{RAISED HAND}\N{RAISED BACK OF HAND}\N{HAPPY PERSON RAISING ONE HAND}")
_VARIATION = "\N{VARIATION SELECTOR-16}"
_SKIN_TONES = {chr(code) for code in range(0x1F3FB, 0x1F400)}


def is_raised_hand(key: str) -> bool:
    """Whether the emoji is a raised hand, of any skin tone, with or without a variation selector or a person's sign."""
    person, _, _ = key.partition("\N{ZERO WIDTH JOINER}")
    bare = "".join(c for c in person if c != _VARIATION and c not in _SKIN_TONES)
    return bare in _HANDS


async def raise_hand(house: House, work: UnitOfWork, speaker: Speaker, event: Reaction) -> None:
    """Keep the sender as witness of the runs of that message; a runner cannot witness their own."""
    runs = [run for run in await work.runs.of_event(event.target) if run.status in ("kept", "pending")]
    if not is_raised_hand(event.key) or not runs or not all(may_witness(event.sender, run) for run in runs):
        return
    if await work.runs.raise_hand(event.target, event.sender, event.event_id):
        await tell_changes(house, work, speaker, runs)


async def lower_hand(house: House, work: UnitOfWork, speaker: Speaker, reaction_id: str) -> bool:
    """Take back the hand put up by this reaction; False if it put up none."""
    witnessed = await work.runs.witnessed_by(reaction_id)
    if not witnessed:
        return False
    await work.runs.lower_hand(reaction_id)
    await tell_changes(house, work, speaker, witnessed)
    return True


def may_witness(person: str, run: Run) -> bool:
    """Never the runner or the pair partner."""
    return person not in (run.user_id, run.partner)
