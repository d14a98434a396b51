"""Words of judges: agree, 9 good, and the queue of runs that wait."""

import re

from bot.domain.durations import fold_digits
from bot.errors import UserError
from bot.services import judges_check, queue
from bot.services.said import Said
from bot.services.verdicts import Words
from bot.words.registry import Word

_VERDICT = re.compile(r"!?\s*(?:agree|agreed|(\d{1,3})\s+good)[.,]?", re.IGNORECASE)


def read_verdict(text: str) -> Words | None:
    """``agree`` or ``9 good``, and nothing else in the message."""
    found = _VERDICT.fullmatch(fold_digits(text).strip())
    if not found:
        return None
    return Words(int(found[1]) if found[1] else None)


async def _judge(said: Said, _: str) -> None:
    await queue.show_next(said)


async def _agree(_said: Said, _: str) -> None:
    """Taken as a verdict before it comes to this; here nothing was answered that could be judged."""
    raise UserError("verdict-how")


async def _check(said: Said, rest: str) -> None:
    """``check`` shows, ``check start`` begins one, ``check ++-+`` answers."""
    signs = "".join(rest.replace("\N{MINUS SIGN}", "-").replace("\N{EN DASH}", "-").split())
    if not rest:
        await judges_check.show_check(said)
    elif rest.casefold() == "start":
        await judges_check.start_check(said)
    elif set(signs) <= {"+", "-"}:
        await judges_check.answer_check(said, signs)
    else:
        raise UserError("check-unreadable")


WORDS = (
    Word("judge", _judge, "judge", private=True),
    Word("agree", _agree, "judge", private=True),
    Word("check", _check, "judge", private=True),
)
