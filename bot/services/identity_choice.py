"""A chef changes a live drill: what that does to the work is said, and one of three honest ways is chosen."""

from dataclasses import replace
from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.domain.drill import Drill
from bot.domain.identity import spec_fingerprint, what_changed
from bot.domain.kitchen_day import week_of
from bot.domain.run import work_out
from bot.domain.standard_time import change_percent, standard_s
from bot.errors import UserError
from bot.replies.card import step_lines
from bot.services.closing import announce_closing, close_board
from bot.services.meant import Meant, show_as_told
from bot.services.ports.drill_records import Draft, PublishedDrill
from bot.services.ports.run_records import Question
from bot.services.posting import post_drill
from bot.services.said import Said

CHOSEN_WITHIN = timedelta(hours=12)


async def ask_which_way(said: Said, meant: Meant, changed: Drill) -> None:
    """Say what the change does and ask; one that only tells the drill otherwise is made at once."""
    change = what_changed(meant.drill, changed)
    if change == "nothing":
        raise UserError("nothing-changed", label=meant.drill.label)
    if change == "wording":
        await _tell_otherwise(said, meant, changed)
        return
    draft = Draft(
        room_id=said.kitchen.room_id,
        author=said.user_id,
        event_id=said.event_id,
        drill=replace(changed, number=0 if change == "spec" else changed.number, letter=""),
        parent=meant.spec_id,
    )
    await said.work.drills.save_draft(draft)
    await said.ask("identity", CHOSEN_WITHIN, about=str(meant.set_up_id))
    percent = _percent(said, meant.drill, changed)
    if change == "spec":
        number = await said.work.drills.next_number(said.kitchen.room_id)
        await said.answer(said.phrases("new-spec", percent=percent, number=number, old=meant.drill.number))
    else:
        await said.answer(said.phrases("new-set-up", percent=percent, number=meant.drill.number))


async def _tell_otherwise(said: Said, meant: Meant, changed: Drill) -> None:
    """Keep the same work with another label, life, price or component as the next wording, posted drills too."""
    known = await said.work.drills.get(meant.set_up_id)
    if known is None:
        raise UserError("no-such-drill", label=meant.drill.label)
    await said.work.drills.reprice(known, changed.spec, said.now)
    await show_as_told(said, known.spec_id)
    await said.answer(said.phrases("new-wording", label=known.drill.label))


async def only_written_wrong(said: Said, question: Question) -> None:
    """Everybody did it the new way: the drill is put right, its runs are worked out again, the room is told."""
    draft, old = await _put_to_choice(said, question)
    if what_changed(old.drill, replace(draft.drill, number=old.drill.number)) != "spec":
        raise UserError("set-up-not-misspelt")
    put_right = replace(draft.drill, number=old.drill.number, letter=old.drill.letter)
    known = await said.work.drills.by_fingerprint(said.kitchen.room_id, spec_fingerprint(put_right.spec))
    if known:
        raise UserError("is-another-drill", label=known.drill.label)
    await said.work.drills.correct(old.spec_id, put_right)
    for run in await said.work.runs.of_spec(old.spec_id):
        published = await said.work.drills.get(run.set_up_id)
        if published:
            drill, was = published.drill, run.result
            result = work_out(was.clock_s, was.count, drill.spec, drill.set_up, said.house.seconds, was.kind)
            await said.work.runs.save(replace(run, result=result))
    await said.work.drills.drop_draft(draft.id)
    await show_as_told(said, old.spec_id)
    live_now = await said.work.drills.last_live(said.kitchen.room_id)
    step = step_lines(said.phrases, draft.drill.spec, said.house.seconds)
    text = said.phrases("spec-corrected", label=old.drill.label, steps="\n".join(step))
    await said.speaker.notice(said.kitchen.room_id, text, thread=live_now.root if live_now else None)


async def new_from_now(said: Said, question: Question) -> None:
    """The live board closes as it is, and the changed drill is posted in its place."""
    draft, old = await _put_to_choice(said, question)
    published = await said.work.drills.publish(said.kitchen.room_id, draft.drill, draft.parent, said.now)
    await said.work.drills.drop_draft(draft.id)
    for live in await said.work.drills.live_in(said.kitchen.room_id):
        if live.set_up_id == old.set_up_id:
            await announce_closing(said.house, said.work, await close_board(said.house, said.work, live))
    week = week_of(said.now.astimezone(ZoneInfo(said.kitchen.zone)).date())
    await post_drill(said.house, said.work, said.speaker, said.kitchen, published, week=week)


async def leave_until_next_week(said: Said, question: Question) -> None:
    """The changed drill gets its number and takes the weekly posts of the live one, which goes on until then."""
    draft, old = await _put_to_choice(said, question)
    published = await said.work.drills.publish(said.kitchen.room_id, draft.drill, draft.parent, said.now)
    await said.work.drills.drop_draft(draft.id)
    for schedule in await said.work.schedules.of(said.kitchen.room_id):
        if schedule.set_up_id == old.set_up_id:
            moved = replace(schedule, set_up_id=published.set_up_id, version=schedule.version + 1)
            await said.work.schedules.save(moved)
    await said.answer(said.phrases("left-for-next-week", label=published.drill.label, old=old.drill.label))


async def _put_to_choice(said: Said, question: Question) -> tuple[Draft, PublishedDrill]:
    draft = await said.work.drills.draft(said.kitchen.room_id, said.user_id)
    old = await said.work.drills.get(int(question.about))
    if draft is None or old is None:
        raise UserError("no-draft")
    return draft, old


def _percent(said: Said, old: Drill, new: Drill) -> str:
    seconds = said.house.seconds
    before, after = standard_s(old.spec, old.set_up, seconds), standard_s(new.spec, new.set_up, seconds)
    return said.phrases.decimal(change_percent(before, after), 1, signed=True)
