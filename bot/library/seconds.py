"""The standard seconds, read from ``seconds.toml``."""

import tomllib
from importlib import resources

from pydantic import BaseModel, Field

from bot.domain.techniques import Seconds, StandIn, Technique


class _Technique(BaseModel, extra="forbid"):
    """A technique as the file has it; ``motion`` names the build-up that its seconds were judged by."""

    name: str
    seconds: float = Field(gt=0)
    tool: str
    stand_in: StandIn
    pieces_a_reach: int = Field(default=1, ge=1)
    others: tuple[str, ...] = ()
    strains: bool = False
    cautions: tuple[str, ...] = ()
    motion: str = ""


class _Seconds(BaseModel, extra="forbid"):
    """The whole file."""

    tool_change_s: float = Field(ge=0)
    column_s: float = Field(ge=0)
    start_stop_s: float = Field(ge=0)
    change_plate_s: float = Field(ge=0)
    laying_out_s: float = Field(ge=0)
    judge_plate_s: float = Field(ge=0)
    reset_plate_s: float = Field(gt=0)
    clearing_s: float = Field(ge=0)
    hands_off_s: float = Field(ge=0)
    techniques: tuple[_Technique, ...]


def load_seconds() -> Seconds:
    """The seconds that a house starts from."""
    file = _Seconds.model_validate(
        tomllib.loads(resources.files(__package__).joinpath("seconds.toml").read_text("utf-8"))
    )
    techniques = {row.name: Technique(**row.model_dump(exclude={"motion"})) for row in file.techniques}
    return Seconds(techniques, **file.model_dump(exclude={"techniques"}))
