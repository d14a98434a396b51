"""The raised hand: somebody other than the runner watched, which bests and boards need."""

from bot.domain.judging import may_judge
from bot.replies.markup import plain_name
from bot.services.house import House
from bot.services.languages import own_phrases
from bot.services.ports.events import Reaction
from bot.services.ports.run_records import Run
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
    """Keep the sender as witness of the runs of that message; a runner cannot witness their own, nor a pair partner."""
    runs = [run for run in await work.runs.of_event(event.target) if run.status in ("kept", "pending")]
    if (
        not is_raised_hand(event.key)
        or not runs
        or not all(may_judge(event.sender, r.user_id, r.partner) for r in runs)
    ):
        return
    if any([await is_namesake(work, run, event.sender) for run in runs]):
        say = await own_phrases(house, work, runs[0].room_id, event.sender)
        await speaker.tell(event.sender, say("hand-same-name"))
        return
    if await work.runs.raise_hand(event.target, event.sender, event.event_id):
        await tell_changes(house, work, speaker, runs)


async def is_namesake(work: UnitOfWork, run: Run, person: str) -> bool:
    """Whether the person goes by the name of a cook of the run: a second account of theirs, as far as can be known."""
    members = [await work.kitchens.member(run.room_id, user_id) for user_id in (person, run.user_id, run.partner or "")]
    name, *cooks = [plain_name(member.name).casefold() if member and member.name.strip() else "" for member in members]
    return bool(name) and name in cooks
