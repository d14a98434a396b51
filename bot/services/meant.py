"""Which drill is meant: the one named, else the one whose thread it is, else the newest."""

from dataclasses import dataclass, replace

from bot.domain.drill import Drill
from bot.errors import UserError
from bot.services.ports.drill_records import LiveDrill, PublishedDrill
from bot.services.said import Said


@dataclass(frozen=True)
class Meant:
    """A drill by its set-up and, where it has been posted, its latest posting."""

    set_up_id: int
    spec_id: int
    drill: Drill
    live: LiveDrill | None


def meant_by(published: PublishedDrill, live: LiveDrill | None = None) -> Meant:
    """A published drill as the one that is meant."""
    return Meant(published.set_up_id, published.spec_id, published.drill, live)


async def drill_meant(said: Said, label: str = "") -> Meant:
    """The drill that the person means; a UserError says how to name one."""
    if label:
        return await _named(said, label)
    live = await _by_thread(said) or await _newest(said)
    if live is None:
        raise UserError("no-drill-yet")
    return Meant(live.set_up_id, live.spec_id, live.drill, live)


async def drill_as_told_now(said: Said, label: str = "") -> Meant:
    """The drill that the person means, in its newest wording and not in the one that it was posted with."""
    meant = await drill_meant(said, label)
    published = await said.work.drills.get(meant.set_up_id)
    return replace(meant, drill=published.drill) if published else meant


async def show_as_told(said: Said, spec_id: int) -> None:
    """Show a drill as it is told by now on the card of every posting of it that somebody may still mean."""
    meant = (await _by_thread(said), await _newest(said))
    for live in {*await said.work.drills.live_in(said.kitchen.room_id), *filter(None, meant)}:
        told = await said.work.drills.get(live.set_up_id)
        if told and live.spec_id == spec_id:
            await said.work.drills.save_live(replace(live, drill=told.drill))


async def own_drill(said: Said, label: str) -> Meant:
    """The drill named, or else the one the person ran last."""
    last = None if label else await said.work.runs.last(said.kitchen.room_id, said.user_id)
    published = await said.work.drills.get(last.set_up_id) if last else None
    return meant_by(published) if published else await drill_meant(said, label)


async def _named(said: Said, label: str) -> Meant:
    published = await said.work.drills.find(said.kitchen.room_id, label)
    if published is None:
        raise UserError("no-such-drill", label=label)
    posted = [p for p in await said.work.drills.live_in(said.kitchen.room_id) if p.set_up_id == published.set_up_id]
    return meant_by(published, posted[0] if posted else None)


async def _by_thread(said: Said) -> LiveDrill | None:
    if said.private or not said.thread:
        return None
    return await said.work.drills.live_by_root(said.kitchen.room_id, said.thread)


async def _newest(said: Said) -> LiveDrill | None:
    return await said.work.drills.last_live(said.kitchen.room_id)
