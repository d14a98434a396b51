"""The week's clockwork: at every tick, post what is due, close what has ended, let unanswered questions lapse.

Each slot is claimed and its messages stored in one transaction, so that a drill is posted once whatever happens.
"""

import logging
from collections.abc import Awaitable
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from bot.domain.kitchen_day import next_slot, quiet_until, slot_due, week_of
from bot.replies.phrases import phrases_in
from bot.services.closing import announce_closing, close_board
from bot.services.faults import tell_admins
from bot.services.house import House
from bot.services.mates import let_go
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.messages import Cause
from bot.services.ports.records import Kitchen, Occurrence, OccurrenceState, Schedule
from bot.services.ports.world import Storage, UnitOfWork, Wake
from bot.services.posting import post_drill
from bot.services.queue import next_nudge, nudge_judges
from bot.services.speaker import Speaker

log = logging.getLogger(__name__)

LATE_AFTER = timedelta(minutes=5)
TOO_LATE_AFTER = timedelta(hours=12)


class Planner:
    """Told by a ticker to look; what it finds it does in one transaction each."""

    def __init__(self, storage: Storage, house: House, wake_sender: Wake) -> None:
        self._storage = storage
        self._house = house
        self._wake_sender = wake_sender

    async def tick(self) -> None:
        """Do everything that has come due."""
        async with self._storage.begin() as work:
            schedules = await work.schedules.enabled()
        for schedule in schedules:
            await self._attempt(f"schedule {schedule.id}", self._look_at(schedule))
        await self._attempt("closing", self._close_ended())
        await self._attempt("questions", self._let_lapse())
        await self._attempt("judges", self._nudge_judges())
        self._wake_sender()

    async def _attempt(self, what: str, doing: Awaitable[None]) -> None:
        """Do one thing; a fault in it must not keep the others from being done, and the next tick tries again."""
        try:
            await doing
        except Exception:
            log.exception("planner: %s failed", what)

    async def next_moment(self) -> datetime | None:
        """The next moment at which a tick would find something due; None where nothing is planned."""
        now = self._house.clock()
        async with self._storage.begin() as work:
            moments = [
                when
                for kitchen in await work.kitchens.all()
                for when in await _moments_of(work, kitchen, now)
                if when > now
            ]
        return min(moments, default=None)

    async def _look_at(self, schedule: Schedule) -> None:
        for week in _weeks_in_question(schedule, self._house.clock()):
            async with self._storage.begin() as work:
                await self._deal_with(work, schedule.id, week)

    async def _deal_with(self, work: UnitOfWork, schedule_id: int, week: str) -> None:
        schedule = await work.schedules.get(schedule_id)
        kitchen = await work.kitchens.get(schedule.room_id) if schedule else None
        if schedule is None or kitchen is None or not schedule.enabled:
            return
        now = self._house.clock()
        due = slot_due(week, schedule.weekday, schedule.at, schedule.zone)
        civil = quiet_until(due, kitchen.zone, kitchen.quiet_from, kitchen.quiet_to) or due
        if due <= schedule.since or civil > now:
            return
        state = _state_of(schedule, week, now - civil)
        slot = Occurrence(schedule_id=schedule.id, slot=week, due_at=due, state=state)
        if not await work.schedules.deal(slot) or state == "skipped":
            return
        speaker = Speaker(work, Cause(schedule_id=schedule.id, slot=week))
        await self._post(work, speaker, kitchen, schedule, slot, late=now - civil > LATE_AFTER)

    async def _post(
        self, work: UnitOfWork, speaker: Speaker, kitchen: Kitchen, schedule: Schedule, slot: Occurrence, *, late: bool
    ) -> None:
        published = await _scheduled_drill(work, schedule)
        if published is None:
            await speaker.notice(kitchen.room_id, phrases_in(kitchen.language)("nothing-published"))
        elif slot.state == "missed":
            await self._miss(work, speaker, kitchen, published.drill.label)
        else:
            await post_drill(self._house, work, speaker, kitchen, published, week=slot.slot, late=late)

    async def _miss(self, work: UnitOfWork, speaker: Speaker, kitchen: Kitchen, drill: str) -> None:
        """Tell the kitchen, and whoever runs the bot, that a post was left out because it came too late."""
        log.warning("a weekly post in %s was missed by more than 12 hours", kitchen.room_id)
        await speaker.notice(kitchen.room_id, phrases_in(kitchen.language)("post-missed", drill=drill))
        told = self._house.phrases("post-missed-in", drill=drill, room=kitchen.room_id)
        await tell_admins(self._house, work, told)

    async def _let_lapse(self) -> None:
        async with self._storage.begin() as work:
            for question in await work.questions.lapse(self._house.clock()):
                if question.kind == "mate":
                    await let_go(work, question.about, question.user_id)

    async def _nudge_judges(self) -> None:
        async with self._storage.begin() as work:
            await nudge_judges(self._house, work)

    async def _close_ended(self) -> None:
        async with self._storage.begin() as work:
            for live in await work.drills.to_close(self._house.clock()):
                await close_board(self._house, work, live)
            for live in await work.drills.to_announce():
                await announce_closing(self._house, work, live)


async def _moments_of(work: UnitOfWork, kitchen: Kitchen, now: datetime) -> list[datetime]:
    """When this kitchen's next posts are due, its live drills end, and its quiet hours are over."""
    slots = [next_slot(s.weekday, s.at, s.zone, now).due_utc for s in await work.schedules.of(kitchen.room_id)]
    ends = [live.closes_at for live in await work.drills.live_in(kitchen.room_id)]
    civil = quiet_until(now, kitchen.zone, kitchen.quiet_from, kitchen.quiet_to)
    nudge = await next_nudge(work, kitchen, now)
    return [*slots, *ends, *(when for when in (civil, nudge) if when)]


def _weeks_in_question(schedule: Schedule, now: datetime) -> tuple[str, str]:
    """The local ISO week now and the one before it: older slots are long past posting."""
    today = now.astimezone(ZoneInfo(schedule.zone)).date()
    return week_of(today - timedelta(days=7)), week_of(today)


def _state_of(schedule: Schedule, week: str, lateness: timedelta) -> OccurrenceState:
    if schedule.hold or schedule.skip_slot == week:
        return "skipped"
    return "missed" if lateness > TOO_LATE_AFTER else "posted"


async def _scheduled_drill(work: UnitOfWork, schedule: Schedule) -> PublishedDrill | None:
    if schedule.set_up_id is None:
        return await work.drills.newest(schedule.room_id)
    return await work.drills.get(schedule.set_up_id)
