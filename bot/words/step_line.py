"""One step of a drill as a chef writes it: ``2 triangle, lean, with tweezers, at 11 ; class firm ; label wheat``."""

import re
import unicodedata
from dataclasses import replace
from decimal import Decimal
from typing import get_args

from bot.domain.drill import Step
from bot.domain.techniques import Seconds, StandIn, Technique, find_technique, near_techniques
from bot.errors import UserError

MOST_PIECES = 99
LONGEST_LINE = 200
LONGEST_QUOTE = 40

_COUNTED = re.compile(r"(\d+)(?:\s*[x×])?\s+(\S.*)")
_LIFE = re.compile(r"(\d{1,5})\s*(s|sec|m|min|h)")
_PRICE = re.compile(r"\d{1,7}(?:[.,]\d{1,4})?")
_MARKUP = re.compile(r"<[^>]*>|[`*_~<>\[\]\\|]")
_UNSEEN = {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}
_UNIT_S = {"s": 1, "sec": 1, "m": 60, "min": 60, "h": 3600}
_LONGEST_NUMBER = 6
_LONGEST_LIFE_S = 24 * 3600


def read_step(text: str, seconds: Seconds) -> Step:
    """The step that a line without its number writes; a UserError says what to send instead.

    An omitted technique is the one that the component is called by (``2 leaf``), an omitted tool or class the
    technique's own. A plain ``quenelle`` is one with one spoon; ``quenelle two spoons`` says the other. A place may
    stand without ``at`` behind the technique, as the card shows it.
    """
    line = tidy(text)
    body, *details = line.split(";")
    what, *parts = body.split(",")
    counted = _COUNTED.fullmatch(what.strip())
    if counted is None or len(line) > LONGEST_LINE:
        raise unreadable_step(line)
    component = counted[2].strip()
    words, tool, at = _clauses(parts, line)
    technique, bare_place = _technique(words or component, seconds)
    step = Step(
        pieces=_pieces(counted[1], line),
        component=component,
        technique=technique.name,
        tool=tool or technique.tool,
        stand_in=technique.stand_in,
        at=", ".join(filter(None, (bare_place, at))),
    )
    for detail in details:
        step = _with_detail(step, detail.strip())
    return step


def number(digits: str) -> int:
    """The number that these digits of any script write; very long ones count as a number past every limit."""
    return int(digits) if len(digits) <= _LONGEST_NUMBER else 10**_LONGEST_NUMBER


def tidy(text: str) -> str:
    """One line in plain characters: single spaces, commas and digits of one width, nothing unseen, no code marks."""
    spaced = re.sub(r"\s", " ", unicodedata.normalize("NFKC", text)).replace("،", ",").replace("、", ",")
    seen = "".join(c for c in spaced if unicodedata.category(c) not in _UNSEEN)
    return " ".join(seen.replace("`", "'").split())


def quoted(text: str) -> str:
    """What was read, for saying back: markup stripped, at most forty characters."""
    bare = " ".join(_MARKUP.sub(" ", text).split())
    return bare if len(bare) <= LONGEST_QUOTE else bare[: LONGEST_QUOTE - 1] + "…"


def unreadable_step(line: str) -> UserError:
    """The answer to a step that does not read as one."""
    return UserError("unreadable-step", line=quoted(line))


def _clauses(parts: list[str], line: str) -> tuple[str, str, str]:
    """The words of the technique, the tool and the place.

    A part that opens none of them goes on with the last; behind a tool it is the place, as the card shows it.
    """
    clauses: dict[str, list[str]] = {"": []}
    current = ""
    for part in filter(None, map(str.strip, parts)):
        opening, _, rest = part.partition(" ")
        opens = opening.casefold() in ("with", "at")
        if opens:
            current = opening.casefold()
            if current in clauses or not rest:
                raise unreadable_step(line)
        elif current == "with":
            current = "at"
        clauses.setdefault(current, []).append(rest if opens else part)
    words, tool, at = (", ".join(clauses.get(clause, ())) for clause in ("", "with", "at"))
    return words, tool, at


def _pieces(digits: str, line: str) -> int:
    pieces = number(digits)
    if not 1 <= pieces <= MOST_PIECES:
        raise UserError("pieces-out-of-range", line=quoted(line), most=MOST_PIECES)
    return pieces


def _technique(words: str, seconds: Seconds) -> tuple[Technique, str]:
    """The technique that these words name, or else begin by naming, and the rest of them."""
    parts = words.split(", ")
    for length in range(len(parts), 0, -1):
        technique = find_technique(seconds, ", ".join(parts[:length]))
        if technique:
            return technique, ", ".join(parts[length:])
    near = near_techniques(seconds, parts[0])
    key = "unknown-technique" if near else "unknown-technique-no-hint"
    offered = ", ".join(f"`{name}`" for name in near or seconds.techniques)
    raise UserError(key, word=quoted(parts[0]), near=offered)


def _with_detail(step: Step, detail: str) -> Step:
    """The step with one of the details that stand after a semicolon."""
    word, _, value = detail.partition(" ")
    value = value.strip()
    match word.casefold():
        case "":
            return step
        case "class":
            return replace(step, stand_in=_stand_in(value))
        case "label" if value:
            return replace(step, labels=(*step.labels, *filter(None, map(str.strip, value.split(",")))))
        case "life" if (life_s := _life_s(value)) is not None:
            return replace(step, life_s=life_s)
        case "price" if _PRICE.fullmatch(value):
            return replace(step, price=Decimal(value.replace(",", ".")))
    raise UserError("unreadable-detail", detail=quoted(detail))


def _stand_in(value: str) -> StandIn:
    classes: tuple[StandIn, ...] = get_args(StandIn)
    for stand_in in classes:
        if stand_in == value.casefold():
            return stand_in
    raise UserError("unknown-class", word=quoted(value), classes=", ".join(f"`{name}`" for name in classes))


def _life_s(value: str) -> int | None:
    life = _LIFE.fullmatch(value.casefold())
    life_s = int(life[1]) * _UNIT_S[life[2]] if life else 0
    return life_s if 0 < life_s <= _LONGEST_LIFE_S else None
