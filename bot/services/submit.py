"""Taking results: a line becomes a run, or one question, or one sentence that says what to send instead."""

from collections.abc import Sequence

from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.results import rebuilt_hint, result_line
from bot.replies.sums import figures_of_result
from bot.services.coaching import advise_step_back
from bot.services.declared import in_place_of_declared
from bot.services.doubts import raise_doubts
from bot.services.lines import Line, ask_about
from bot.services.mates import hold_for_mate, laid_for, partner_of, runner_of
from bot.services.meant import Meant, drill_meant
from bot.services.people import hold_until_joined
from bot.services.ports.run_records import Run
from bot.services.said import Said
from bot.services.trend import ask_when_level
from bot.services.working_out import remarks_on, work_out_line

LAPSING = ("count", "left", "sure", "steps", "again", "undo")


async def take_lines(said: Said, lines: Sequence[Line]) -> None:
    """Take each line of one message singly; a bad one is named and the others stand."""
    if said.member.consent != "in":
        await _take_before_joining(said, lines)
        return
    await _lapse_questions(said)
    kept = False
    for line in lines:
        try:
            kept = await _take(said, line) or kept
        except UserError as problem:
            await ask_about(said, line, problem, among=len(lines))
    if kept:
        await said.noted()


async def _take_before_joining(said: Said, lines: Sequence[Line]) -> None:
    """Hold what can be read until the person says yes; the rest is asked about as ever."""
    for line in lines:
        if isinstance(line.read, UserError):
            await ask_about(said, line, line.read, among=len(lines))
    readable = [line for line in lines if isinstance(line.read, Sent)]
    if readable:
        await hold_until_joined(said, readable)


async def _lapse_questions(said: Said) -> None:
    """What was asked about an earlier line lapses with the next submission; a mate's or a chef's question stays."""
    for question in await said.work.questions.open(said.user_id, said.now):
        if question.kind in LAPSING:
            await said.work.questions.close(question.id)


async def _take(said: Said, line: Line) -> bool:
    """Keep the run that a line stands for; False where it waits for a mate's yes."""
    if isinstance(line.read, UserError):
        raise line.read
    runner = await runner_of(said, line.read)
    meant = await laid_for(said, line.read, await drill_meant(said, line.read.drill))
    partner = await partner_of(said, line.read, meant)
    run = await work_out_line(said, line.number, line.read, meant, runner, partner)
    await raise_doubts(said, line, run, meant.drill)
    if run.sent_by or run.partner:
        await hold_for_mate(said, run, meant)
        return False
    kept = await said.work.runs.save(await in_place_of_declared(said, run))
    hints = [rebuilt_hint(said.phrases, kept.result)] if _by_redo_alone(line.read) else []
    await _answer_for(said, kept, meant, hints)
    await advise_step_back(said, kept, meant)
    await ask_when_level(said, kept, meant)
    return True


def _by_redo_alone(sent: Sent) -> bool:
    """Whether only the redos were named, which some mean as plates rebuilt inside the clock."""
    return bool(sent.redo) and sent.accepted is None


async def _answer_for(said: Said, run: Run, meant: Meant, hints: Sequence[str]) -> None:
    """Answer for a run that was kept: the result and the charge in the drill's thread, a stopped run in private."""
    aside = run.result.kind == "stopped"
    told = said.answered_aside() if aside else said
    text = " ".join([result_line(told.phrases, run.result), *await remarks_on(told, run, meant), *hints])
    if aside:
        await said.tell(text, figures_of_result(run.result))
    elif said.kitchen.replies == "full" or said.private:
        await said.answer(text, meant.live, figures_of_result(run.result))
