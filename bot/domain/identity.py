"""When two drills are the same: the fields that make a spec and a set-up, told from those that only tell of them."""

import hashlib
import json
import re
from dataclasses import replace
from typing import Literal

from bot.domain.drill import NOT_CALLED, Drill, SetUp, Spec, Step

Change = Literal["nothing", "wording", "set-up", "spec"]
"""The deepest thing that differs: a new spec, a new set-up of it, a new wording of that, or nothing."""

_MEASURE = re.compile(r"\d+(?:[-–.,]\d+)*\s*(?:mm|cm|ml|g)\b")
_NUMBER = re.compile(r"\d+")
_HOURS = range(1, 13)


def spec_fingerprint(spec: Spec) -> str:
    """Equal for specs that ask for the same work, whatever their components are called and however they are spaced."""
    return _hash(_spec_identity(spec))


def set_up_fingerprint(spec: Spec, set_up: SetUp) -> str:
    """Equal for the same spec laid out, worked and called in the same way."""
    return _hash([_spec_identity(spec), _set_up_identity(set_up)])


def what_changed(old: Drill, new: Drill) -> Change:
    """The deepest difference between two drills; number, letter and revision are none."""
    if spec_fingerprint(old.spec) != spec_fingerprint(new.spec):
        return "spec"
    if _set_up_identity(old.set_up) != _set_up_identity(new.set_up):
        return "set-up"
    same_words = old.spec == new.spec and old.wording == replace(new.wording, revision=old.wording.revision)
    return "nothing" if same_words else "wording"


def _spec_identity(spec: Spec) -> list[object]:
    accept = sorted(filter(None, map(_plain, spec.accept.split(","))))
    return [
        [_step_identity(step) for step in spec.steps],
        accept,
        *map(_plain, (spec.plate, spec.mise, spec.start, spec.stop)),
    ]


def _step_identity(step: Step) -> list[object]:
    return [step.technique, _plain(step.tool), step.pieces, step.stand_in, _hours(step)]


def _set_up_identity(set_up: SetUp) -> list[object]:
    wave = set_up.wave if set_up.working == "waves" else 0
    pattern = [set_up.plates, set_up.rows, float(set_up.gap_cm), float(set_up.edge_cm)]
    called = set_up.called
    calls = [] if called == NOT_CALLED else [[called.one_more, float(called.hands_off_s), list(called.without)]]
    return [*pattern, set_up.working, wave, set_up.cooks, set_up.pressure, *calls]


def _hours(step: Step) -> list[int]:
    """Hours of the clock that a place names, sizes apart. One a piece are marks in no order; else they are a course."""
    named = [int(n) for n in _NUMBER.findall(_MEASURE.sub(" ", step.at.casefold()))]
    hours = [hour for hour in named if hour in _HOURS]
    return sorted(hours) if len(hours) == step.pieces else hours


def _plain(words: str) -> str:
    return " ".join(words.casefold().split())


def _hash(identity: list[object]) -> str:
    return hashlib.sha256(json.dumps(identity).encode()).hexdigest()
