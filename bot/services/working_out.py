"""From a line that could be read to a run: whose it is, when it was, what it comes to and which board it is for."""

from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

from bot.domain.kitchen_day import kitchen_day, ran_at, week_of
from bot.domain.run import Sent, day_limit, kind_of, read_count, work_out
from bot.errors import UserError
from bot.replies.dates import weekday_text
from bot.services.meant import Meant
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.records import Kitchen, Member, Role
from bot.services.ports.run_records import Run
from bot.services.said import Said

SETTLING_RUNS = 3
LEARNING: tuple[Role, ...] = ("commis", "trainee")
"""The roles of those whose first runs are for settling in, whenever they came."""


async def work_out_line(
    said: Said, number: int, sent: Sent, meant: Meant, runner: str, partner: str | None = None
) -> Run:
    """The run that a line stands for; a UserError where its numbers cannot be."""
    if sent.clock_s is None:
        raise UserError("clock-missing")
    spec, set_up = meant.drill.spec, meant.drill.set_up
    count = read_count(_as_stopped(sent, set_up.plates), set_up.plates, meant.drill.label)
    kitchen = said.kitchen
    when = ran_at(said.sent_at, sent.at, sent.yesterday, kitchen.zone, kitchen.day_turn)
    day = kitchen_day(when, kitchen.zone, kitchen.day_turn)
    newcomer = await is_settling_in(said, runner)
    kind = kind_of(count, newcomer=newcomer) if sent.stopped is None else "stopped"
    today = await said.work.runs.count_day(kitchen.room_id, runner, day)
    over_limit = today >= day_limit(spec, said.house.seconds)
    board = await board_for(said, meant, when) if kind == "counted" and not over_limit else None
    return Run(
        room_id=kitchen.room_id,
        user_id=runner,
        event_id=said.event_id,
        line=number,
        arrived=said.arrived,
        set_up_id=meant.set_up_id,
        spec_id=meant.spec_id,
        live_id=board.id if board else None,
        sent_at=said.sent_at,
        ran_at=when,
        kitchen_day=day,
        week=week_of(day),
        result=work_out(sent.clock_s, count, spec, set_up, said.house.seconds, kind),
        reasons=sent.reasons,
        splits_s=sent.splits_s,
        wipes=sent.wipes,
        over_limit=over_limit,
        partner=partner,
        sent_by=None if runner == said.user_id else said.user_id,
        photo=said.event_id if said.picture else None,
        chat_timed=sent.chat_timed,
    )


def _as_stopped(sent: Sent, plates: int) -> Sent:
    """A run said to have stopped after so many plates: the others were left."""
    if sent.stopped is None:
        return sent
    good = sent.stopped if sent.accepted is None and sent.redo is None else sent.accepted
    return replace(sent, accepted=good, left=max(plates - sent.stopped, 0))


async def is_settling_in(said: Said, runner: str) -> bool:
    """Whether a commis, a trainee, or who joined after the kitchen's first closed board has run fewer than three."""
    own = runner == said.user_id
    member = said.member if own else await said.work.kitchens.member(said.kitchen.room_id, runner)
    if member is None or not is_newcomer(said.kitchen, member):
        return False
    return await said.work.runs.count(said.kitchen.room_id, runner) < SETTLING_RUNS


def is_newcomer(kitchen: Kitchen, member: Member) -> bool:
    """Whether the person is learning, or joined after the kitchen's first closed board."""
    first, since = kitchen.first_closing, member.counted_since
    joined_late = first is not None and since is not None and since > first
    return member.role in LEARNING or joined_late


async def board_for(said: Said, meant: Meant, when: datetime) -> LiveDrill | None:
    """The open posting whose board a run at this time is for; None where that week's board is closed or never was."""
    live = meant.live
    week = week_of(kitchen_day(when, said.kitchen.zone, said.kitchen.day_turn))
    if live is None or not (live.week == week or live.posted_at <= when < live.closes_at):
        live = await said.work.drills.live_for(said.kitchen.room_id, meant.set_up_id, week)
    return live if live and live.closed_at is None else None


async def remarks_on(said: Said, run: Run, meant: Meant) -> list[str]:
    """What else the answer has to say: another day's board, a closed board, the day's limit, settling in."""
    say = said.phrases
    remarks = []
    if run.result.kind == "settling":
        nth = await said.work.runs.count(said.kitchen.room_id, run.user_id)
        remarks.append(say("settling-in", nth=nth, of=SETTLING_RUNS))
    elif run.over_limit:
        today = await said.work.runs.count_day(said.kitchen.room_id, run.user_id, run.kitchen_day)
        remarks.append(say("day-limit", today=today))
    elif run.result.kind == "counted" and run.live_id is None and meant.live is not None:
        remarks.append(say("board-closed"))
    elif run.live_id is not None and _is_last_week(said, run):
        remarks.append(say("last-week", day=weekday_text(say, run.kitchen_day), until=f"{said.kitchen.day_turn:%H:%M}"))
    if run.chat_timed:
        remarks.append(say("chat-timed"))
    return remarks


def _is_last_week(said: Said, run: Run) -> bool:
    """Whether the run belongs to a week other than the one the calendar showed when it was sent."""
    return run.week != week_of(said.sent_at.astimezone(ZoneInfo(said.kitchen.zone)).date())
