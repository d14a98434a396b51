"""The answer to a question that is open with somebody: each kind of question knows which words answer it."""

from collections.abc import Awaitable, Callable
from dataclasses import replace

from bot.domain.run import Sent
from bot.domain.splits import add_up
from bot.errors import UserError
from bot.replies.accepted_words import accepted, folded
from bot.services import corrections, forgetting, identity_choice, mates, people, queue
from bot.services.lines import Line, as_said_then
from bot.services.ports.run_records import Question, QuestionKind
from bot.services.said import Said
from bot.services.submit import take_lines
from bot.words.judging import read_verdict
from bot.words.submission import lone_clock, lone_count, lone_steps, read_answer

YES = frozenset({"yes", "y", "yes please", "yes."})
NO = frozenset({"no", "n", "no.", "no thanks"})

Answers = Callable[[Said, Question], Awaitable[bool]]
"""Whether the words answered the question; if they did, what follows has been done."""


async def answer_open_question(said: Said) -> bool:
    """Try what was said on the questions open with the person, the newest first; a no erases what one holds."""
    for question in await said.work.questions.open(said.user_id, said.now):
        answer = _drop if question.held and _is(said, NO) else _ANSWERS.get(question.kind)
        if answer and question.room_id == said.kitchen.room_id and await answer(said, question):
            return True
    return False


def left_over(said: Said) -> UserError | None:
    """What to say to an answer that no question waits for; None where the words are no answer."""
    if _is(said, YES | NO | {"again"}):
        return UserError("nothing-to-answer")
    if _forgets(said):
        return UserError("forget-first")
    return UserError("clock-missing") if lone_count(said.text) else None


async def _drop(said: Said, question: Question) -> bool:
    await said.work.questions.close(question.id)
    await said.answer(said.phrases("not-kept"))
    return True


async def _count(said: Said, question: Question) -> bool:
    answer = read_answer(said.text)
    if answer is None:
        return False
    await _submit_held(said, question, lambda sent: _with_count(sent, answer))
    return True


def _with_count(sent: Sent, answer: Sent) -> Sent:
    return replace(
        sent,
        accepted=answer.accepted,
        plates=answer.plates,
        all_good=answer.all_good,
        redo=answer.redo,
        left=answer.left,
        rebuilt=answer.rebuilt or sent.rebuilt,
        fixed=answer.fixed or sent.fixed,
        reasons=(*sent.reasons, *answer.reasons),
    )


async def _left(said: Said, question: Question) -> bool:
    """Yes: the plates not spoken of were left unbuilt. A count: that one instead."""
    if not _is(said, YES):
        return await _count(said, question)
    await _submit_held(said, question, lambda sent: sent)
    return True


async def _sure(said: Said, question: Question) -> bool:
    if _is(said, YES):
        await _submit_held(said, question, lambda sent: sent)
        return True
    again = lone_clock(said.text)
    if again is None:
        return False
    await _submit_held(said, question, lambda sent: replace(sent, clock_s=again.clock_s))
    return True


async def _steps(said: Said, question: Question) -> bool:
    """Yes: the run without its steps. A clock, the steps, or both: those instead; what still disagrees is left out."""
    again = lone_clock(said.text)
    splits_s = again.splits_s if again else lone_steps(said.text)
    if not (again or splits_s or _is(said, YES)):
        return False

    def settled(sent: Sent) -> Sent:
        clock_s = again.clock_s if again else sent.clock_s
        told = splits_s or (sent.splits_s if again else ())
        return replace(sent, clock_s=clock_s, splits_s=told if clock_s and add_up(told, clock_s) else ())

    await _submit_held(said, question, settled)
    return True


async def _again(said: Said, question: Question) -> bool:
    if not (_is(said, YES) or _is(said, {"again"})):
        return False
    await _submit_held(said, question, lambda sent: sent)
    return True


async def _undo(said: Said, _: Question) -> bool:
    if not _is(said, {"undo"}):
        return False
    await corrections.undo(said)
    return True


async def _mate(said: Said, question: Question) -> bool:
    if not (_is(said, YES) or _is(said, NO)):
        return False
    await said.work.questions.close(question.id)
    await (mates.take_on if _is(said, YES) else mates.decline)(said, question.about)
    return True


async def _join(said: Said, question: Question) -> bool:
    """Yes counts the person in and takes what was held, as of when it was sent."""
    if not (_is(said, YES) or _is(said, {"join", "!join"})):
        return False
    await said.work.questions.close(question.id)
    counted_in = replace(said, member=await people.join(said, told_why=True))
    for held in question.held:
        await take_lines(as_said_then(counted_in, held), [Line(held.line, held.sent)])
    return True


async def _verdict(said: Said, question: Question) -> bool:
    """In private alone, where the run was shown."""
    words = read_verdict(said.text) if said.private else None
    if words is None:
        return False
    await queue.answer_shown(said, question, words)
    return True


async def _forget(said: Said, _: Question) -> bool:
    """In private alone, and in full: nothing shorter erases."""
    if not (said.private and _forgets(said)):
        return False
    await forgetting.forget(said)
    return True


def _forgets(said: Said) -> bool:
    return _plain(said).rstrip(".").replace(",", "") == "yes forget me"


async def _identity(said: Said, question: Question) -> bool:
    choice = _CHOICES.get(_plain(said))
    if choice is None:
        return False
    await choice(said, question)
    await said.work.questions.close(question.id)
    return True


_CHOICES: dict[str, Callable[[Said, Question], Awaitable[None]]] = {
    "a": identity_choice.only_written_wrong,
    "b": identity_choice.new_from_now,
    "c": identity_choice.leave_until_next_week,
}

_ANSWERS: dict[QuestionKind, Answers] = {
    "count": _count,
    "left": _left,
    "sure": _sure,
    "steps": _steps,
    "again": _again,
    "undo": _undo,
    "mate": _mate,
    "join": _join,
    "identity": _identity,
    "verdict": _verdict,
    "forget": _forget,
}
"""By kind of question; which kitchen is meant is answered before anything is understood."""


async def _submit_held(said: Said, question: Question, completed: Callable[[Sent], Sent]) -> None:
    """Take the held line with the answer filled in, this doubt and any settled before it settled."""
    await said.work.questions.close(question.id)
    for held in question.held:
        line = Line(held.line, completed(held.sent), held.settled | {question.kind})
        await corrections.take_settled(as_said_then(said, held), line)


def _is(said: Said, words: frozenset[str] | set[str]) -> bool:
    return _plain(said) in words


def _plain(said: Said) -> str:
    """The words as they are compared, an answer in another language as the English one that it stands for."""
    plain = folded(said.text)
    return accepted("answers").get(plain, plain)
