"""What a posting's boards are made of, gathered from what is kept: its runs, and what each cook's earlier runs say."""

from collections.abc import Sequence

from bot.domain.boards import Entry, Week
from bot.domain.noise import noises
from bot.services.expectations import days_looked_at, expectations
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.run_records import Ran, Run
from bot.services.ports.world import UnitOfWork


async def week_of_posting(work: UnitOfWork, live: LiveDrill, runs: Sequence[Run]) -> Week:
    """The week of this posting with these runs on its board; later weeks change nothing of it."""
    kept: dict[str, list[Ran]] = {run.user_id: [] for run in runs}
    for ran in await work.runs.whole_in_days(live.room_id, list(kept), *days_looked_at(live)):
        kept[ran.user_id].append(ran)
    members = await work.kitchens.members(live.room_id)
    return Week(
        entries=[_entry(run) for run in runs],
        noise=noises({cook: _nets_s(theirs, live.set_up_id) for cook, theirs in kept.items()}),
        expected=await expectations(work, live, runs, kept),
        off=frozenset(member.user_id for member in members if not member.on_boards),
    )


def _nets_s(runs: Sequence[Ran], set_up_id: int) -> list[float]:
    return [run.net_s for run in runs if run.set_up_id == set_up_id and run.net_s is not None]


def _entry(run: Run) -> Entry:
    """The run as the boards see it; one timed by the chat's messages is a try, and good for no place."""
    count = run.result.count
    return Entry(
        user_id=run.user_id,
        net_s=run.result.net_s,
        accepted=count.accepted,
        attempted=count.attempted,
        rebuilt=count.rebuilt,
        witnessed=bool(run.witnesses) and not run.chat_timed,
        kind=run.result.kind,
    )
