"""Drills that the domain's tests share."""

from bot.domain.drill import Drill
from bot.library.course import load_course
from bot.library.seconds import load_seconds

SECONDS = load_seconds()
_COURSE = {drill.label: drill for drill in load_course()}

SLIPWAY: Drill = _COURSE["5"]
ROPE_COIL: Drill = _COURSE["6"]
LOCK_GATE: Drill = _COURSE["9"]
FULL_TIDE: Drill = _COURSE["11B"]
EVERY: tuple[Drill, ...] = tuple(_COURSE.values())
