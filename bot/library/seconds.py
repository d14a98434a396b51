"""The standard seconds, read from ``seconds.toml``."""

import tomllib
from decimal import Decimal
from importlib import resources
from typing import Any

from pydantic import BaseModel, Field

from bot.domain.amounts import A_PIECE, Amount, Keeping
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
    amount: Amount = A_PIECE
    recovered: Decimal | None = Field(default=None, ge=0, le=1)


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
    spare_share: Decimal = Field(ge=0)
    fewest_spare: int = Field(ge=0)
    stays_ml: dict[str, Decimal]
    keeping: dict[StandIn, Keeping]
    techniques: tuple[_Technique, ...]


def load_seconds() -> Seconds:
    """The seconds that a house starts from."""
    file = _Seconds.model_validate(
        tomllib.loads(resources.files(__package__).joinpath("seconds.toml").read_text("utf-8"))
    )
    techniques = {row.name: Technique(**_fields(row, but="motion")) for row in file.techniques}
    return Seconds(techniques, **_fields(file, but="techniques"))


def _fields(read: BaseModel, *, but: str) -> dict[str, Any]:
    """What was read, by field, the values as they are."""
    return {name: value for name, value in read if name != but}
