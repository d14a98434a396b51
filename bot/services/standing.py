"""What a run may change for others to see: its runner's best, and the places of a board already closed.

As it stands after a change and as it stood before are compared, so that a correction says just what is different and
nothing else.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from bot.domain.bests import Judged, best_of, bests_of, usual_difference_s
from bot.domain.pace import clock_text
from bot.replies.dates import week_text
from bot.replies.phrases import Phrases
from bot.services.boards import (
    boards_for,
    boards_of,
    carried_over,
    closing_lines,
    freeze,
    is_light,
    names_of,
    with_forgotten,
)
from bot.services.house import House
from bot.services.languages import own_phrases, room_phrases
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.messages import Cause
from bot.services.ports.run_records import Run
from bot.services.ports.world import UnitOfWork
from bot.services.quiet import left_in_peace_until
from bot.services.speaker import Speaker
from bot.services.week import week_of_posting

Owner = tuple[str, int]
"""A person's id and a set-up's id: a best belongs to both."""


@dataclass(frozen=True)
class Mark:
    """A best as it stands; unwitnessed it is a first mark for its runner alone."""

    run: Run
    net_s: int
    is_first: bool

    @property
    def witnessed(self) -> bool:
        """Whether others may hear of it."""
        return bool(self.run.witnesses)


def judged(run: Run) -> Judged:
    """What of a run decides on bests."""
    count = run.result.count
    return Judged(run.result.net_s, count.accepted, count.plates, run.result.kind, bool(run.witnesses))


def mark_of(runs: Sequence[Run]) -> Mark | None:
    """The best that stands after a cook's runs on a set-up; none over the day's limit, nor timed by the chat."""
    looked_at = _good_for_bests(runs)
    best = best_of([judged(run) for run in looked_at])
    return Mark(looked_at[best.nth], best.net_s, best.is_first_mark) if best else None


def days_of_bests(runs: Sequence[Run]) -> set[tuple[date, int]]:
    """Every best that has stood among a cook's runs on a set-up, by its kitchen day and its whole seconds."""
    looked_at = _good_for_bests(runs)
    return {(looked_at[best.nth].kitchen_day, best.net_s) for best in bests_of([judged(run) for run in looked_at])}


def _good_for_bests(runs: Sequence[Run]) -> list[Run]:
    return [run for run in runs if not (run.over_limit or run.chat_timed)]


async def tell_changes(house: House, work: UnitOfWork, speaker: Speaker, earlier: Sequence[Run]) -> None:
    """Say in the drill's thread which best is new, gone or another, and which closed board reads differently.

    ``earlier`` are the runs that have changed, as they were before.
    """
    for owner in dict.fromkeys((run.user_id, run.set_up_id) for run in earlier):
        runs = await work.runs.on_set_up(*owner)
        theirs = [run for run in earlier if (run.user_id, run.set_up_id) == owner]
        was, now = mark_of(sorted(_before(runs, theirs), key=_when_run)), mark_of(runs)
        if was != now:
            await _tell_best(house, work, speaker, owner, was, now)
    for live_id in dict.fromkeys(run.live_id for run in earlier if run.live_id):
        live = await work.drills.live(live_id)
        if live and live.closed_at:
            await _compare_closed(house, work, speaker, live, [run for run in earlier if run.live_id == live_id])


def _before(runs: Sequence[Run], earlier: Sequence[Run]) -> list[Run]:
    """The kept runs as they stood when some of them were as they were earlier."""
    changed = {run.id for run in earlier}
    return [run for run in runs if run.id not in changed] + [run for run in earlier if run.status == "kept"]


def _when_run(run: Run) -> tuple[datetime, int, int]:
    return run.ran_at, run.arrived, run.line


def _when_sent(run: Run) -> tuple[int, int]:
    return run.arrived, run.line


async def _compare_closed(
    house: House, work: UnitOfWork, speaker: Speaker, live: LiveDrill, earlier: Sequence[Run]
) -> None:
    """Let the frozen boards carry a change of their runs, and say so where they have been told."""
    runs, light = await work.runs.on_board(live.id), await is_light(work, live)
    runs_before = sorted(_before(runs, earlier), key=_when_sent)
    frozen = await boards_for(work, live)
    before = with_forgotten(await week_of_posting(work, live, runs_before), frozen)
    now = boards_of(carried_over(before, await week_of_posting(work, live, runs)), light=light)
    if boards_of(before, light=light) == now:
        return
    say = await room_phrases(house, work, live.room_id)
    told = await closing_lines(work, say, live, frozen)
    await freeze(work, live, now, live.closed_at or house.clock())
    lines = await closing_lines(work, say, live, now)
    if live.announced and lines != told:
        of = {"drill": live.drill.wording.name, "week": week_text(say, live.week)}
        text = say("board-correction", board="\n".join(lines), **of)
        await speaker.notice(live.room_id, text, thread=live.root)


async def _tell_best(
    house: House, work: UnitOfWork, speaker: Speaker, owner: Owner, was: Mark | None, now: Mark | None
) -> None:
    key = _change_of_best(was, now)
    published = await work.drills.get(owner[1])
    if key is None or published is None:
        return
    changed = now.run if now else was.run if was else None
    by_s = was.net_s - now.net_s if was and now else 0
    say = await room_phrases(house, work, published.room_id)
    text = say(
        key,
        name=await whose(say, work, owner[0], changed),
        drill=published.drill.wording.name,
        time=clock_text(now.net_s) if now else "",
        by=by_s,
    )
    live = await work.drills.last_live(published.room_id)
    await speaker.notice(published.room_id, text, thread=live.root if live else None)
    if key == "new-best":
        await _tell_luck(house, work, published.room_id, owner, by_s)


async def whose(say: Phrases, work: UnitOfWork, cook: str, run: Run | None) -> str:
    """The cook's name; of a pair's run both names, the sender's first."""
    names, unknown = await names_of(work, run.room_id) if run else {}, say("a-cook")
    if run is None or run.partner is None:
        return names.get(cook, unknown)
    one, other = names.get(run.user_id, unknown), names.get(run.partner, unknown)
    return say("pair-names", one=one, other=other)


def _change_of_best(was: Mark | None, now: Mark | None) -> str | None:
    """The sentence that tells the change, None where others have nothing to hear."""
    had, has = was is not None and was.witnessed, now is not None and now.witnessed
    if now is None or not has:
        return "best-gone" if had else None
    if had and was is not None and (now.run.id == was.run.id or now.net_s >= was.net_s):
        return "best-again" if now.net_s != was.net_s else None
    if was is not None and now.net_s < was.net_s:
        return "new-best"
    return "first-mark" if now.is_first else "best-again"


async def _tell_luck(house: House, work: UnitOfWork, room_id: str, owner: Owner, by_s: int) -> None:
    """In private, at most once a day, how much a new best may owe to luck, where there are runs enough to say."""
    counted = [run for run in await work.runs.on_set_up(*owner) if run.result.kind == "counted" and not run.over_limit]
    nets_s = [run.result.net_s for run in counted if run.result.net_s is not None]
    usual = usual_difference_s(nets_s)
    if usual:
        once_a_day = Speaker(work, Cause(event_id=f"luck:{owner[0]}:{house.clock().date()}"))
        then = await left_in_peace_until(house, work, room_id, owner[0])
        say = await own_phrases(house, work, room_id, owner[0])
        await once_a_day.tell(owner[0], say("best-luck", by=by_s, noise=usual), not_before=then)
