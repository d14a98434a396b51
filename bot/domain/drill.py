"""A drill as written: the spec (what the plate is), the set-up (how it is laid out) and the wording (how it is told)."""

from dataclasses import dataclass
from decimal import Decimal

from bot.domain.techniques import StandIn


@dataclass(frozen=True)
class Step:
    """One step of the spec: so many pieces of a component a plate, by one technique, with one tool.

    ``technique`` is a key of ``Seconds.techniques``; ``at`` is where on the plate in the chef's words (``10-4``);
    ``life_s`` how long the component keeps once placed; ``labels`` its allergens by label; ``price`` of one piece.
    """

    pieces: int
    component: str
    technique: str
    tool: str
    stand_in: StandIn
    at: str = ""
    life_s: int | None = None
    labels: tuple[str, ...] = ()
    price: Decimal | None = None


@dataclass(frozen=True)
class Spec:
    """What has to be on the plate and when it is good. Every field but the steps has the trade's default."""

    steps: tuple[Step, ...]
    plate: str = "flat 27 cm china"
    accept: str = ""
    mise: str = "portioned"
    start: str = "hands off"
    stop: str = "hands off"


@dataclass(frozen=True)
class SetUp:
    """How a run of the spec is laid out.

    ``working`` is ``component`` (one step along the whole row, then the next), ``plate`` (one plate finished, then
    the next) or ``waves`` of ``wave`` plates. ``pressure`` is the level of called interruptions, 0 for none.
    """

    plates: int
    rows: int = 1
    gap_cm: float = 2.0
    edge_cm: float = 3.0
    working: str = "component"
    wave: int = 0
    cooks: int = 1
    pressure: int = 0

    @property
    def columns(self) -> int:
        """Plates in the longest row."""
        return -(-self.plates // self.rows)


@dataclass(frozen=True)
class Wording:
    """How the drill is told; changing it makes a new revision and keeps every best."""

    name: str
    notes: str = ""
    cautions: tuple[str, ...] = ()
    target_s: int | None = None
    revision: int = 1


@dataclass(frozen=True)
class Drill:
    """A spec in one set-up and one wording, as spoken of: drill ``number``, set-up ``letter``."""

    number: int
    letter: str
    spec: Spec
    set_up: SetUp
    wording: Wording
    only_set_up: bool = True

    @property
    def label(self) -> str:
        """``6``, or ``6B`` where the spec has more than one set-up."""
        return str(self.number) if self.only_set_up else f"{self.number}{self.letter}"
