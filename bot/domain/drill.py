"""A drill as written: the spec (what the plate is), the set-up (how it is laid out), the wording (how it is told)."""

import re
from dataclasses import dataclass
from decimal import Decimal

from bot.domain.techniques import StandIn
from bot.errors import UserError

MOST_PLATES = 60
MOST_ROWS = 2
SMALLEST_WAVE = 2
"""What one bench of practice holds, and how deep a cook reaches from one side (common practice, no source)."""

_PLATE_WIDTH = re.compile(r"\b(\d{1,3}(?:\.\d)?) ?cm\b")


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
class Called:
    """What the calls of a pressure round do to the work: a plate more, seconds of hands off, a step left off.

    ``without`` numbers the steps, from 1, that one plate goes without.
    """

    one_more: int = 0
    hands_off_s: float = 0.0
    without: tuple[int, ...] = ()


NOT_CALLED = Called()


@dataclass(frozen=True)
class SetUp:
    """How a run of the spec is laid out.

    ``working`` is ``component`` (one step along the whole row, then the next), ``plate`` (one plate finished, then
    the next) or ``waves`` of ``wave`` plates. ``pressure`` is the level of called interruptions, 0 for none;
    ``called`` what they do to the work, its plate more being one of ``plates`` already.
    """

    plates: int
    rows: int = 1
    gap_cm: float = 2.0
    edge_cm: float = 3.0
    working: str = "component"
    wave: int = 0
    cooks: int = 1
    pressure: int = 0
    called: Called = NOT_CALLED

    @property
    def columns(self) -> int:
        """Plates in the longest row."""
        return -(-self.plates // self.rows)


@dataclass(frozen=True)
class Wording:
    """How the drill is told; changing it makes a new revision and keeps every best.

    ``dish_price`` is what a guest pays for the real plate: the chef's, and never shown in the room.
    """

    name: str
    notes: str = ""
    cautions: tuple[str, ...] = ()
    target_s: int | None = None
    revision: int = 1
    dish_price: Decimal | None = None


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


def laid_out(set_up: SetUp) -> SetUp:
    """The same set-up, if it can be laid and reached; else a UserError says what to send instead."""
    if not 1 <= set_up.plates <= MOST_PLATES:
        raise UserError("plates-out-of-range", most=MOST_PLATES)
    if not 1 <= set_up.rows <= MOST_ROWS:
        raise UserError("rows-out-of-reach", most=MOST_ROWS)
    if set_up.rows > set_up.plates:
        raise UserError("more-rows-than-plates", rows=set_up.rows, plates=set_up.plates)
    if set_up.working == "waves" and not SMALLEST_WAVE <= set_up.wave < set_up.plates:
        raise UserError("waves-do-not-fit", plates=set_up.plates)
    return set_up


def plate_cm(spec: Spec) -> float | None:
    """How wide the plate is, where the spec says it: ``flat 27 cm china``."""
    named = _PLATE_WIDTH.search(spec.plate)
    return float(named[1]) if named else None


def table_cm(set_up: SetUp, plate_cm: float) -> tuple[float, float]:
    """Length and depth that the pattern takes of a table worked from one side."""
    along = set_up.columns * plate_cm + (set_up.columns - 1) * set_up.gap_cm + 2 * set_up.edge_cm
    deep = set_up.edge_cm + set_up.rows * plate_cm + (set_up.rows - 1) * set_up.gap_cm
    return along, deep
