"""The course, read from ``drills.toml``: specs with their set-ups, each as a drill that can be posted."""

import string
import tomllib
from importlib import resources

from pydantic import BaseModel, Field

from bot.domain.drill import Drill, SetUp, Spec, Step, Wording
from bot.domain.techniques import Seconds, StandIn
from bot.library.seconds import load_seconds


class _StandIn(BaseModel, extra="forbid"):
    """What a component is practised with: ``what`` it is, how it handles, and what to look for on its label."""

    handles: StandIn = Field(alias="class")
    what: str
    labels: tuple[str, ...] = ()


class _Step(BaseModel, extra="forbid"):
    """A step; an omitted tool is the technique's."""

    pieces: int = Field(ge=1)
    component: str
    technique: str
    tool: str = ""
    at: str = ""


class _SetUp(BaseModel, extra="forbid"):
    """A set-up with the name it goes by; its notes and cautions come on top of the drill's."""

    name: str
    plates: int = Field(ge=1)
    rows: int = Field(default=1, ge=1, le=2)
    working: str = "component"
    wave: int = 0
    pressure: int = 0
    notes: str = ""
    cautions: tuple[str, ...] = ()


class _Drill(BaseModel, extra="forbid"):
    """A spec with its set-ups, lettered in order from A."""

    number: int
    plate: str = Spec.plate
    accept: str
    notes: str = ""
    cautions: tuple[str, ...]
    steps: tuple[_Step, ...] = Field(min_length=1)
    set_ups: tuple[_SetUp, ...] = Field(min_length=1)


class _Course(BaseModel, extra="forbid"):
    """The whole file."""

    stand_ins: dict[str, _StandIn]
    drills: tuple[_Drill, ...]


def load_course() -> tuple[Drill, ...]:
    """Every drill of the course in every set-up, by number and letter."""
    text = resources.files(__package__).joinpath("drills.toml").read_text("utf-8")
    course, seconds = _Course.model_validate(tomllib.loads(text)), load_seconds()
    return tuple(drill for row in course.drills for drill in _drills_of(row, course, seconds))


def _drills_of(row: _Drill, course: _Course, seconds: Seconds) -> list[Drill]:
    spec = Spec(
        steps=tuple(_step_of(step, course.stand_ins[step.component], seconds) for step in row.steps),
        plate=row.plate,
        accept=row.accept,
    )
    practised_with = [
        f"{name}: {course.stand_ins[name].what}" for name in dict.fromkeys(s.component for s in row.steps)
    ]
    return [
        Drill(
            number=row.number,
            letter=letter,
            spec=spec,
            set_up=SetUp(**way.model_dump(exclude={"name", "notes", "cautions"})),
            wording=Wording(
                name=way.name,
                notes=" ".join(filter(None, (row.notes, way.notes, "; ".join(practised_with) + "."))),
                cautions=row.cautions + way.cautions,
            ),
            only_set_up=len(row.set_ups) == 1,
        )
        for letter, way in zip(string.ascii_uppercase, row.set_ups, strict=False)
    ]


def _step_of(step: _Step, stand_in: _StandIn, seconds: Seconds) -> Step:
    technique = seconds.techniques[step.technique]
    return Step(
        pieces=step.pieces,
        component=step.component,
        technique=technique.name,
        tool=step.tool or technique.tool,
        stand_in=stand_in.handles,
        at=step.at,
        labels=stand_in.labels,
    )
