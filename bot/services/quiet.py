"""Quiet hours, and the break of a split shift: in them nobody is told what they did not ask for."""

from dataclasses import replace
from datetime import datetime, time

from bot.domain.kitchen_day import quiet_until
from bot.services.house import House
from bot.services.ports.records import Kitchen
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said


async def left_in_peace_until(house: House, work: UnitOfWork, room_id: str, user_id: str) -> datetime | None:
    """When a person may next be told something unasked; None for now."""
    kitchen, member = await work.kitchens.get(room_id), await work.kitchens.member(room_id, user_id)
    if kitchen is None:
        return None
    breaks = [(kitchen.quiet_from, kitchen.quiet_to)]
    if member and member.rest_from and member.rest_to:
        breaks.append((member.rest_from, member.rest_to))
    now = house.clock()
    when = now
    for _ in breaks:  # the end of one may fall into the other
        ends = [quiet_until(when, kitchen.zone, start, end) for start, end in breaks]
        when = max((end for end in ends if end), default=when)
    return when if when > now else None


async def set_rest(said: Said, hours: tuple[time, time] | None) -> None:
    """Keep the break of the person's split shift, or none."""
    start, end = hours or (None, None)
    await said.work.kitchens.save_member(replace(said.member, rest_from=start, rest_to=end))
    await said.tell(
        said.phrases("rest-set", hours=hours_text(start, end)) if start and end else said.phrases("rest-off")
    )


async def tell_rest(said: Said) -> None:
    """What break is kept of the person, and the kitchen's quiet hours."""
    start, end = said.member.rest_from, said.member.rest_to
    own = said.phrases("rest-set", hours=hours_text(start, end)) if start and end else said.phrases("rest-none")
    await said.tell(f"{own}\n{_quiet_line(said, said.kitchen)}")


async def set_quiet(said: Said, hours: tuple[time, time] | None) -> None:
    """Keep the hours in which the kitchen gets no posts and nudges, or none."""
    start, end = hours or (time(0), time(0))
    kitchen = replace(said.kitchen, quiet_from=start, quiet_to=end)
    await said.work.kitchens.save(kitchen)
    await said.answer(_quiet_line(said, kitchen))


async def tell_quiet(said: Said) -> None:
    """The kitchen's quiet hours."""
    await said.answer(_quiet_line(said, said.kitchen))


async def resting_at(said: Said, moment: datetime) -> int:
    """How many people here have their break at this moment."""
    here = [m for m in await said.work.kitchens.members(said.kitchen.room_id) if m.state == "join"]
    breaks = [(m.rest_from, m.rest_to) for m in here if m.rest_from and m.rest_to]
    return sum(quiet_until(moment, said.kitchen.zone, start, end) is not None for start, end in breaks)


def hours_text(start: time, end: time) -> str:
    """Hours as they are typed."""
    return f"{start:%H:%M}-{end:%H:%M}"


def _quiet_line(said: Said, kitchen: Kitchen) -> str:
    if kitchen.quiet_from == kitchen.quiet_to:
        return said.phrases("quiet-off")
    return said.phrases("quiet-hours", hours=hours_text(kitchen.quiet_from, kitchen.quiet_to))
