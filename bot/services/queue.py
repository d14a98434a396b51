"""The runs that wait for a judge: shown one at a time without a name, and told of as a number at a civil hour."""

from collections.abc import Sequence
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from bot.domain.drill import Drill
from bot.domain.judging import OPEN_FOR, may_judge, settle
from bot.domain.kitchen_day import instant, quiet_until
from bot.domain.pace import clock_text
from bot.errors import UserError
from bot.replies.dates import day_text
from bot.replies.markup import link_to
from bot.replies.phrases import phrases_in
from bot.services.house import House
from bot.services.ports.messages import Cause
from bot.services.ports.records import Kitchen, Member
from bot.services.ports.run_records import Question, Run
from bot.services.ports.world import UnitOfWork
from bot.services.quiet import left_in_peace_until
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.verdicts import JUDGES, Words, is_judge, judge
from bot.services.witnesses import is_namesake

ANSWER_WITHIN = timedelta(hours=12)


async def show_next(said: Said) -> None:
    """Show the judge in private the next run that waits; asked again, the one after the one shown last."""
    if not await is_judge(said):
        raise UserError("judges-only")
    asked = await said.asked("verdict")
    for question in asked:
        await said.work.questions.close(question.id)
    shown = asked[0].about if asked else ""
    await _show(said, _after(await waiting_for(said.work, said.kitchen, said.user_id, said.now), shown))


async def answer_shown(said: Said, question: Question, words: Words) -> None:
    """Take the verdict on the run that was shown, say how it stands, and show the next."""
    runs = [run for run in await said.work.runs.of_event(question.about) if run.status == "kept"]
    if not runs:
        raise UserError("verdict-gone")
    run = await judge(said, runs, words)
    await said.work.questions.close(question.id)
    count = run.result.count
    await said.tell(said.phrases("verdict-kept", good=count.accepted, attempted=count.attempted))
    waiting = await waiting_for(said.work, said.kitchen, said.user_id, said.now)
    if waiting:
        await _show(said, waiting)


async def waiting_for(work: UnitOfWork, kitchen: Kitchen, judge_id: str, now: datetime) -> list[Run]:
    """The runs that this person may judge and that wait: with a photo and no judge yet, or two who differ."""
    found = []
    for run in await work.runs.with_photo(kitchen.room_id, now - OPEN_FOR):
        may = may_judge(judge_id, run.user_id, run.partner) and not await is_namesake(work, run, judge_id)
        if may and run.result.kind != "stopped" and await _is_open(work, run, judge_id):
            found.append(run)
    return found


async def _is_open(work: UnitOfWork, run: Run, judge_id: str) -> bool:
    """Whether nobody has judged it, or two judges differ and this is neither of them; one run a message."""
    if len(await work.runs.of_event(run.event_id)) != 1:
        return False
    verdicts = await work.runs.verdicts(run.event_id)
    claimed = (run.claimed or run.result.count).accepted
    stands = settle(run.user_id, claimed, run.sent_at, verdicts, run.partner)
    return not run.witnesses or (stands.split and judge_id not in {verdict.judge for verdict in verdicts})


def _after(waiting: Sequence[Run], shown: str) -> list[Run]:
    """The runs in turn, beginning behind the one shown last."""
    events = [run.event_id for run in waiting]
    first = events.index(shown) + 1 if shown in events else 0
    return [*waiting[first:], *waiting[:first]]


async def _show(said: Said, waiting: Sequence[Run]) -> None:
    if not waiting:
        await said.tell(said.phrases("judge-none"))
        return
    run = waiting[0]
    published = await said.work.drills.get(run.set_up_id)
    await said.ask("verdict", min(ANSWER_WITHIN, run.sent_at + OPEN_FOR - said.now), about=run.event_id)
    if published:
        lines = _blind_lines(said, run, published.drill, len(waiting))
        good = (run.claimed or run.result.count).accepted
        await said.tell("\n".join(lines), {"waiting": len(waiting), "clock_s": run.result.clock_s, "good": good})


def _blind_lines(said: Said, run: Run, drill: Drill, waiting: int) -> list[str]:
    """The run as a judge sees it: what it was and what it claims, and nothing of who."""
    say, count = said.phrases, run.claimed or run.result.count
    until = (run.sent_at + OPEN_FOR).astimezone(ZoneInfo(said.kitchen.zone))
    return [
        say(
            "judge-this",
            waiting=waiting,
            drill=drill.wording.name,
            clock=clock_text(run.result.clock_s),
            good=count.accepted,
            attempted=count.attempted,
        ),
        *([say("card-accept", accept=drill.spec.accept)] if drill.spec.accept else []),
        say("judge-photo", photo=link_to(said.kitchen.room_id, str(run.photo))),
        say("judge-answers", good=max(count.accepted - 1, 0), until=f"{day_text(say, until.date())} {until:%H:%M}"),
    ]


async def nudge_judges(house: House, work: UnitOfWork) -> None:
    """Tell each judge, once a day after the quiet hours, how many runs have waited since before they ended."""
    for kitchen in await work.kitchens.all():
        now = house.clock()
        if quiet_until(now, kitchen.zone, kitchen.quiet_from, kitchen.quiet_to) is None:
            for member in await _judges(work, kitchen):
                await _nudge(house, work, kitchen, member, now)


async def next_nudge(work: UnitOfWork, kitchen: Kitchen, now: datetime) -> datetime | None:
    """When the quiet hours next end with photos waiting; None where none waits."""
    if not await work.runs.with_photo(kitchen.room_id, now - OPEN_FOR):
        return None
    today = now.astimezone(ZoneInfo(kitchen.zone)).date()
    ends = [instant(today + timedelta(days=days), kitchen.quiet_to, kitchen.zone) for days in (0, 1)]
    return next(end for end in ends if end > now)


async def _judges(work: UnitOfWork, kitchen: Kitchen) -> list[Member]:
    members = await work.kitchens.members(kitchen.room_id)
    return [member for member in members if member.state == "join" and member.role in JUDGES]


async def _nudge(house: House, work: UnitOfWork, kitchen: Kitchen, member: Member, now: datetime) -> None:
    today = now.astimezone(ZoneInfo(kitchen.zone)).date()
    morning = instant(today, kitchen.quiet_to, kitchen.zone)
    waiting = await waiting_for(work, kitchen, member.user_id, now)
    many = sum(run.sent_at <= morning for run in waiting)
    if many and now >= morning:
        once = Speaker(work, Cause(event_id=f"judge:{kitchen.room_id}:{member.user_id}:{today}"))
        then = await left_in_peace_until(house, work, kitchen.room_id, member.user_id)
        say = phrases_in(member.language or kitchen.language)
        await once.tell(member.user_id, say("judge-waiting", runs=many), {"runs": many}, not_before=then)
