"""The chef puts somebody's run right: worked out again in its place, said in the room, and told to its cook."""

from dataclasses import replace

from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.results import result_line
from bot.services.corrections import drill_of, in_place_of, is_named, local_time
from bot.services.declared import is_declared
from bot.services.languages import own_phrases, room_phrases
from bot.services.meant import Meant
from bot.services.ports.messages import EventRef
from bot.services.ports.run_records import Run
from bot.services.quiet import left_in_peace_until
from bot.services.said import Said
from bot.services.standing import tell_changes
from bot.services.verdicts import settled
from bot.services.working_out import work_out_line


async def correct(said: Said, run: Run, sent: Sent) -> None:
    """Let the line stand for the run from now on; when it was, its reasons and its steps stay where it is silent."""
    if said.user_id in (run.user_id, run.partner, run.sent_by):
        raise UserError("correct-own")
    if is_declared(run):
        raise UserError("correct-which")
    meant = await drill_of(said, run)
    if not is_named(sent.drill, meant.drill) or sent.mate or sent.partner:
        raise UserError("edit-moves-run")
    then = replace(said, event_id=run.event_id, sent_at=run.sent_at, arrived=run.arrived)
    fresh = in_place_of(run, await work_out_line(then, run.line, sent, meant, run.user_id, run.partner))
    mended = await settled(said.house, said.work, _with_what_stays(run, fresh, sent))
    await said.work.runs.save(mended)
    await _tell(said, mended, meant)
    await tell_changes(said.house, said.work, said.speaker, [run])


async def _tell(said: Said, run: Run, meant: Meant) -> None:
    """In the drill's thread, under the run, how it reads now; and its cooks in private from whom."""
    if run.result.kind != "stopped":
        say, thread = await room_phrases(said.house, said.work, run.room_id), meant.live.root if meant.live else None
        text = say("corrected", line=result_line(say, run.result))
        await said.speaker.notice(run.room_id, text, thread=thread, reply_to=EventRef(run.event_id))
    if said.private:
        await said.tell(said.phrases("corrected", line=result_line(said.phrases, run.result)))
    for cook in filter(None, (run.user_id, run.partner)):
        when = await left_in_peace_until(said.house, said.work, run.room_id, cook)
        say = await own_phrases(said.house, said.work, run.room_id, cook)
        at, line = local_time(said, run), result_line(say, run.result)
        await said.speaker.tell(cook, say("corrected-by", chef=said.name, at=at, line=line), not_before=when)


def _with_what_stays(run: Run, fresh: Run, sent: Sent) -> Run:
    if not sent.at and not sent.yesterday:
        fresh = replace(fresh, ran_at=run.ran_at, kitchen_day=run.kitchen_day, week=run.week)
    same_clock = fresh.result.clock_s == run.result.clock_s
    return replace(
        fresh,
        reasons=fresh.reasons or run.reasons,
        splits_s=fresh.splits_s or (run.splits_s if same_clock else ()),
        wipes=fresh.wipes or run.wipes,
    )
