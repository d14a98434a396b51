"""What a posting's boards are made of, gathered from what is kept: its runs, and what each cook's earlier runs say."""

from collections.abc import Sequence

from bot.domain.boards import Entry, Week
from bot.domain.noise import noises
from bot.services.expectations import days_looked_at, expectations
from bot.services.ports.records import LiveDrill, Run
from bot.services.ports.world import UnitOfWork


async def week_of_posting(work: UnitOfWork, live: LiveDrill, runs: Sequence[Run]) -> Week:
    """The week of this posting with these runs on its board; later weeks change nothing of it."""
    days, cooks = days_looked_at(live), dict.fromkeys(run.user_id for run in runs)
    kept = {cook: _whole(await work.runs.in_days(live.room_id, cook, *days)) for cook in cooks}
    members = await work.kitchens.members(live.room_id)
    return Week(
        entries=[_entry(run) for run in runs],
        noise=noises({cook: _nets_s(theirs, live.set_up_id) for cook, theirs in kept.items()}),
        expected=await expectations(work, live, runs, kept),
        off=frozenset(member.user_id for member in members if not member.on_boards),
    )


def _whole(runs: Sequence[Run]) -> list[Run]:
    """Those of one cook in which every plate was attempted, within the day's safe number; settling in or not."""
    return [run for run in runs if run.result.kind in ("counted", "settling") and not (run.over_limit or run.partner)]


def _nets_s(runs: Sequence[Run], set_up_id: int) -> list[float]:
    return [run.result.net_s for run in runs if run.set_up_id == set_up_id and run.result.net_s is not None]


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
