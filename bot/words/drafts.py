"""The chef's words about what: draft, step, plates, rows, publish, rename, retire."""

import re

from bot.domain.drill import Drill
from bot.errors import UserError
from bot.services import drafting, drill_list
from bot.services.ports.drill_records import Draft
from bot.services.said import Said
from bot.words.drafting import LONGEST_NAME, read_draft, read_number
from bot.words.registry import Word
from bot.words.step_line import read_step, tidy

_LABEL = re.compile(r"\d{1,4}[A-Za-z]{0,2}")
_STEP = re.compile(r"(\d{1,3})[.)]?\s+(.+)", re.DOTALL)


async def reread(said: Said, draft: Draft) -> None:
    """Read an edited draft again; nothing changes where it cannot be read."""
    text = said.text.strip().removeprefix("!").removeprefix("draft")
    await drafting.reread_draft(said, draft, _drill_in(said, text))


async def _draft(said: Said, rest: str) -> None:
    """``draft NAME`` with its lines, ``draft 6`` to copy, ``draft`` to see it."""
    if not rest:
        await drafting.show_draft(said)
    elif _LABEL.fullmatch(rest):
        await drafting.copy_to_draft(said, rest)
    else:
        await drafting.start_draft(said, _drill_in(said, rest))


async def _step(said: Said, rest: str) -> None:
    found = _STEP.fullmatch(rest)
    if not found:
        raise UserError("which-step")
    await drafting.change_step(said, int(found[1]), read_step(found[2], said.house.seconds))


async def _plates(said: Said, rest: str) -> None:
    await drafting.change_plates(said, read_number(rest))


async def _rows(said: Said, rest: str) -> None:
    await drafting.change_rows(said, read_number(rest))


async def _publish(said: Said, _: str) -> None:
    await drafting.publish(said)


async def _rename(said: Said, rest: str) -> None:
    """``rename 6 Rope coil, wide``: all of drill 6; ``rename 6B ...``: that set-up alone."""
    label, _, name = tidy(rest).partition(" ")
    if not (_LABEL.fullmatch(label) and 0 < len(name) <= LONGEST_NAME):
        raise UserError("rename-how", most=LONGEST_NAME)
    await drill_list.rename(said, label, name)


async def _retire(said: Said, rest: str) -> None:
    """``retire 6``, ``retire 6B``, ``retire 6 back``."""
    match rest.split():
        case [label] if _LABEL.fullmatch(label):
            await drill_list.retire(said, label.upper())
        case [label, back] if _LABEL.fullmatch(label) and back.casefold() == "back":
            await drill_list.bring_back(said, label.upper())
        case _:
            raise UserError("retire-how")


def _drill_in(said: Said, text: str) -> Drill:
    read = read_draft(text, said.house.seconds)
    return Drill(number=0, letter="", spec=read.spec, set_up=read.set_up, wording=read.wording)


WORDS = (
    Word("draft", _draft, chef=True),
    Word("step", _step, chef=True),
    Word("plates", _plates, chef=True),
    Word("rows", _rows, chef=True),
    Word("publish", _publish, chef=True),
    Word("rename", _rename, chef=True),
    Word("retire", _retire, chef=True),
)
