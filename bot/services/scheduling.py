"""The chef's weekly postings: set, listed, moved, skipped, held and cancelled; and a drill posted or closed by hand."""

from dataclasses import dataclass, replace
from datetime import datetime, time
from zoneinfo import ZoneInfo

from bot.domain.kitchen_day import next_slot, week_of
from bot.errors import UserError
from bot.replies.dates import day_text
from bot.services.closing import announce_closing, close_board
from bot.services.meant import drill_meant
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.records import Schedule
from bot.services.posting import post_drill
from bot.services.quiet import resting_at
from bot.services.said import Said

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
"""As a chef types them, in every language."""


@dataclass(frozen=True)
class Slot:
    """A weekday (0 is Monday) and a local wall time."""

    weekday: int
    at: time


async def set_schedule(said: Said, slot: Slot, label: str = "") -> None:
    """Post every week at this slot: the drill named, or else whichever was published last.

    A schedule that already has that weekday is moved to the new time and goes on if it was held.
    """
    published = await _named(said, label) if label else None
    if published is None and await said.work.drills.newest(said.kitchen.room_id) is None:
        raise UserError("post-what")
    same = [s for s in await said.work.schedules.of(said.kitchen.room_id) if s.weekday == slot.weekday]
    set_up_id = published.set_up_id if published else None
    if same:
        moved = replace(_moved(said, same[0], slot), set_up_id=set_up_id)
        schedule = await said.work.schedules.save(moved)
    else:
        schedule = await said.work.schedules.save(
            Schedule(
                room_id=said.kitchen.room_id,
                weekday=slot.weekday,
                at=slot.at,
                zone=said.kitchen.zone,
                set_up_id=set_up_id,
                since=said.now,
            )
        )
    await _tell_set(said, schedule)


async def _tell_set(said: Said, schedule: Schedule) -> None:
    """Say what is posted when, and how many have their break then: a drill does not belong in it."""
    lines = [said.phrases("scheduled", post=await _described(said, schedule))]
    resting = await resting_at(said, _next_due(schedule, said.now))
    if resting:
        lines.append(said.phrases("resting-then", people=resting))
    await said.answer("\n".join(lines))


async def move(said: Said, nth: int, slot: Slot) -> None:
    """Move the nth schedule of the list to another slot."""
    schedule = await said.work.schedules.save(_moved(said, await _nth(said, nth), slot))
    await _tell_set(said, schedule)


async def cancel(said: Said, nth: int | None) -> None:
    """Cancel the nth schedule of the list, or the only one."""
    schedule = await _nth(said, nth)
    await said.work.schedules.save(replace(schedule, enabled=False, version=schedule.version + 1))
    await said.answer(said.phrases("cancelled", when=_when(said, schedule)))


async def skip(said: Said, nth: int | None) -> None:
    """Leave out the next posting of the nth schedule, or of the only one."""
    schedule = await _nth(said, nth)
    left_out = next_slot(schedule.weekday, schedule.at, schedule.zone, said.now)
    after = next_slot(schedule.weekday, schedule.at, schedule.zone, left_out.due_utc)
    await said.work.schedules.save(replace(schedule, skip_slot=left_out.week, version=schedule.version + 1))
    await said.answer(said.phrases("skipping", day=_day(said, left_out.due_utc), after=_day(said, after.due_utc)))


async def hold_posting(said: Said, nth: int | None) -> None:
    """Post nothing from the nth schedule, or the only one, until it is set again."""
    schedule = await _nth(said, nth)
    await said.work.schedules.save(replace(schedule, hold=True, version=schedule.version + 1))
    await said.answer(said.phrases("holding", when=_when(said, schedule), again=await _typed(said, schedule)))


async def list_schedules(said: Said) -> None:
    """Say what is posted when, numbered."""
    schedules = await said.work.schedules.of(said.kitchen.room_id)
    if not schedules:
        raise UserError("no-schedule")
    lines = [f"{n}. {await _described(said, s)}" for n, s in enumerate(schedules, 1)]
    await said.answer("\n".join([*lines, said.phrases("schedule-help")]))


async def post_now(said: Said, label: str = "") -> None:
    """Post a drill at once, for the rest of this calendar week."""
    published = await _named(said, label) if label else await said.work.drills.newest(said.kitchen.room_id)
    if published is None:
        raise UserError("post-what")
    week = week_of(said.now.astimezone(ZoneInfo(said.kitchen.zone)).date())
    live = await post_drill(said.house, said.work, said.speaker, said.kitchen, published, week=week)
    if live is None:
        raise UserError("already-posted", drill=published.drill.label)


async def close_now(said: Said, label: str = "") -> None:
    """Close the drill that is meant before its week ends."""
    live = (await drill_meant(said, label)).live
    if live is None or live.closed_at is not None:
        raise UserError("nothing-to-close")
    if not await announce_closing(said.house, said.work, await close_board(said.house, said.work, live)):
        await said.answer(said.phrases("closed", drill=live.drill.wording.name))


async def _named(said: Said, label: str) -> PublishedDrill:
    published = await said.work.drills.find(said.kitchen.room_id, label)
    if published is None:
        raise UserError("no-such-drill", label=label)
    if published.retired:
        raise UserError("drill-retired", label=published.drill.label)
    return published


async def _nth(said: Said, nth: int | None) -> Schedule:
    schedules = await said.work.schedules.of(said.kitchen.room_id)
    if not schedules:
        raise UserError("no-schedule")
    if nth is None and len(schedules) == 1:
        return schedules[0]
    if nth is None or not 1 <= nth <= len(schedules):
        raise UserError("which-schedule", most=len(schedules))
    return schedules[nth - 1]


def _moved(said: Said, schedule: Schedule, slot: Slot) -> Schedule:
    return replace(
        schedule,
        weekday=slot.weekday,
        at=slot.at,
        zone=said.kitchen.zone,
        hold=False,
        skip_slot=None,
        since=said.now,
        version=schedule.version + 1,
    )


def _next_due(schedule: Schedule, now: datetime) -> datetime:
    """When it posts next, the week left out passed over."""
    slot = next_slot(schedule.weekday, schedule.at, schedule.zone, now)
    if slot.week == schedule.skip_slot:
        slot = next_slot(schedule.weekday, schedule.at, schedule.zone, slot.due_utc)
    return slot.due_utc


def _day(said: Said, when: datetime) -> str:
    return day_text(said.phrases, when.astimezone(ZoneInfo(said.kitchen.zone)).date())


def _when(said: Said, schedule: Schedule) -> str:
    return said.phrases("weekly-at", weekday=said.phrases(f"weekday-{schedule.weekday + 1}"), at=f"{schedule.at:%H:%M}")


async def _typed(said: Said, schedule: Schedule) -> str:
    """How the chef would type this slot and its drill."""
    drill = await said.work.drills.get(schedule.set_up_id) if schedule.set_up_id else None
    label = f"{drill.drill.label} " if drill else ""
    return f"!post {label}{WEEKDAYS[schedule.weekday]} {schedule.at:%H:%M}"


async def _described(said: Said, schedule: Schedule) -> str:
    published = await said.work.drills.get(schedule.set_up_id) if schedule.set_up_id else None
    drill = published.drill if published else None
    what = (
        said.phrases("drill-named", label=drill.label, name=drill.wording.name) if drill else said.phrases("the-newest")
    )
    next_due = said.phrases("held") if schedule.hold else _day(said, _next_due(schedule, said.now))
    return said.phrases("schedule-line", when=_when(said, schedule), zone=schedule.zone, what=what, next=next_due)
