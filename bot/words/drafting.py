"""A whole drill as a chef writes it: a name, numbered steps, and lines for plates and rules."""

import re
from collections.abc import Iterable
from dataclasses import dataclass, field

from bot.domain.drill import SetUp, Spec, Step, Wording, laid_out
from bot.domain.techniques import Seconds
from bot.errors import UserError
from bot.words.step_line import LONGEST_LINE, number, quoted, read_step, tidy

MOST_STEPS = 20
LONGEST_NAME = 60

_NAME = re.compile(r"(?:!?draft\b)?\s*(.*)", re.IGNORECASE)
_NUMBERED = re.compile(r"(?:step\s+(\d{1,3})\s*[.):]?\s|(\d{1,3})\s*[.)])\s*(\S.*)", re.IGNORECASE)
_PLATES = re.compile(r"plates\s+(\d+)(?:,?\s+rows\s+(\d+))?", re.IGNORECASE)
_ROWS = re.compile(r"rows\s+(\d+)", re.IGNORECASE)
_RULE = re.compile(r"(accept|plate|mise|start|stop)\s+(.+)", re.IGNORECASE)
_WORKING = re.compile(r"working\s+(?:(component|plate)(?:\s+by\s+\1)?|(waves)(?:\s+of)?\s+(\d+))", re.IGNORECASE)


@dataclass(frozen=True)
class DraftText:
    """A drill as read from a draft, before it has a number."""

    spec: Spec
    set_up: SetUp
    wording: Wording


@dataclass
class _Lines:
    """What the lines read so far have said."""

    steps: list[Step] = field(default_factory=list)
    layout: dict[str, int] = field(default_factory=dict)
    working: tuple[str, int] | None = None
    rules: dict[str, str] = field(default_factory=dict)


def read_draft(text: str, seconds: Seconds) -> DraftText:
    """The drill that these lines write; a UserError, one kind sentence, where they write none.

    The first line is the name, with or without the word ``draft`` before it. The others may stand in any order, the
    steps in theirs.
    """
    first, *others = [line for line in map(tidy, text.splitlines()) if line] or [""]
    name = _name(first)
    lines = _Lines()
    for line in others:
        _take(line, lines, seconds)
    if not lines.steps:
        raise UserError("no-steps")
    if "plates" not in lines.layout:
        raise UserError("no-plates")
    working, wave = lines.working or ("component", 0)
    return DraftText(
        spec=Spec(tuple(lines.steps), **lines.rules),
        set_up=laid_out(SetUp(lines.layout["plates"], lines.layout.get("rows", 1), working=working, wave=wave)),
        wording=Wording(name),
    )


def read_number(text: str) -> int:
    """The one number of a line such as that of ``plates 14`` after its word; a UserError where it is none."""
    digits = tidy(text)
    if not digits.isdecimal():
        raise UserError("not-a-number", word=quoted(digits))
    return number(digits)


def _name(line: str) -> str:
    named = _NAME.fullmatch(line)
    name = named[1] if named else ""
    if not name or len(name) > LONGEST_NAME or _NUMBERED.fullmatch(name):
        raise UserError("draft-name", most=LONGEST_NAME)
    return name


def _take(line: str, lines: _Lines, seconds: Seconds) -> None:
    """Read one line into what has been said; a line of two meanings or of none is a UserError."""
    if len(line) > LONGEST_LINE:
        raise UserError("unreadable-line", line=quoted(line))
    if step := _NUMBERED.fullmatch(line):
        _take_step(number(step[1] or step[2]), step[3], lines, seconds)
    elif plates := _PLATES.fullmatch(line):
        _note(lines.layout, zip(("plates", "rows"), plates.groups(), strict=True), line)
    elif rows := _ROWS.fullmatch(line):
        _note(lines.layout, [("rows", rows[1])], line)
    elif (working := _WORKING.fullmatch(line)) and lines.working is None:
        lines.working = ((working[1] or working[2]).casefold(), number(working[3] or "0"))
    elif (rule := _RULE.fullmatch(line)) and rule[1].casefold() not in lines.rules:
        lines.rules[rule[1].casefold()] = rule[2]
    else:
        raise UserError("unreadable-line", line=quoted(line))


def _take_step(nth: int, text: str, lines: _Lines, seconds: Seconds) -> None:
    wanted = len(lines.steps) + 1
    if nth != wanted:
        raise UserError("steps-out-of-order", read=nth, wanted=wanted)
    if nth > MOST_STEPS:
        raise UserError("too-many-steps", most=MOST_STEPS)
    lines.steps.append(read_step(text, seconds))


def _note(layout: dict[str, int], said: Iterable[tuple[str, str | None]], line: str) -> None:
    for word, digits in said:
        if digits is not None:
            if word in layout:
                raise UserError("unreadable-line", line=quoted(line))
            layout[word] = number(digits)
