"""One timed attempt: what was sent, and what it comes to once the redos are charged."""

from dataclasses import dataclass
from typing import Literal

from bot.domain.drill import SetUp, Spec
from bot.domain.pace import clock_text, levelled_s, pace_s
from bot.domain.standard_time import alone_s, run_touches, standard_s
from bot.domain.techniques import Seconds
from bot.errors import UserError

Kind = Literal["counted", "short", "stopped", "settling"]
"""counted: all plates attempted; short: at least half and four; stopped: fewer, private; settling: a newcomer's."""


@dataclass(frozen=True)
class Count:
    """What became of every plate: ``accepted + redo + left == plates``; rebuilt and fixed are among the accepted."""

    plates: int
    accepted: int
    redo: int = 0
    left: int = 0
    rebuilt: int = 0
    fixed: int = 0

    @property
    def attempted(self) -> int:
        """Plates built, good or not."""
        return self.accepted + self.redo


@dataclass(frozen=True)
class Sent:
    """A submission as read from one line, before the drill is known.

    ``accepted`` and ``plates`` are None where the line left them to be asked or inferred (``8:05 redo 1`` gives only
    ``redo``; ``all`` gives ``all_good``). Times are whole seconds. ``drill`` is a label such as ``6B`` or empty.
    ``chat_timed`` where the clock is the time between two messages.
    """

    clock_s: int | None
    accepted: int | None = None
    plates: int | None = None
    all_good: bool = False
    redo: int | None = None
    left: int | None = None
    rebuilt: int = 0
    fixed: int = 0
    wipes: int = 0
    reasons: tuple[str, ...] = ()
    splits_s: tuple[int, ...] = ()
    at: str = ""
    yesterday: bool = False
    mate: str = ""
    partner: str = ""
    drill: str = ""
    stopped: int | None = None
    chat_timed: bool = False


@dataclass(frozen=True)
class Result:
    """A run worked out: seconds, touches and what they give. ``net_s`` and both paces are None where there is no time.

    ``standard_s`` is the standard time of the plates attempted, ``alone_s`` of one plate built by itself.
    """

    kind: Kind
    clock_s: int
    count: Count
    touches: int
    standard_s: float
    alone_s: float
    change_s: float
    net_s: float | None
    pace_s: float | None
    levelled_s: float | None


SHORTEST_RUN = 4
"""Plates that a run must have attempted to be worth a pace, where it was not finished."""

RUNS_A_DAY = 5
STRAINED_RUNS_A_DAY = 3
"""Counted runs a day that are safe for the hands; fewer where a technique strains (common practice, no source)."""


def day_limit(spec: Spec, seconds: Seconds) -> int:
    """How many counted runs of this spec a day are safe for the hands."""
    strained = any(seconds.techniques[step.technique].strains for step in spec.steps)
    return STRAINED_RUNS_A_DAY if strained else RUNS_A_DAY


def read_count(sent: Sent, plates: int, label: str) -> Count:
    """What became of every plate of a drill of so many, filled in from what was sent; a UserError where it cannot be.

    ``label`` is the drill's, for the answer. A redo alone leaves the rest good; a count alone leaves the rest redo.
    """
    _refuse_other_plates(sent, plates, label)
    left, redo, accepted = sent.left, sent.redo, sent.accepted
    if sent.all_good:
        accepted, redo = plates - (left or 0), redo or 0
    if accepted is None and redo is None and (left or 0) < plates:
        raise UserError("how-many-good", plates=plates - (left or 0))
    if redo is None:
        redo = plates - (left or 0) - (accepted or 0)
    if accepted is None:
        accepted = plates - (left or 0) - redo
    if left is None:
        left = plates - accepted - redo
    return _checked(Count(plates, accepted, redo, left, sent.rebuilt, sent.fixed))


def _checked(count: Count) -> Count:
    parts = (count.accepted, count.redo, count.left)
    if min(parts) < 0 or sum(parts) != count.plates:
        raise UserError("count-does-not-add-up", plates=count.plates)
    if count.rebuilt + count.fixed > count.accepted:
        raise UserError("more-mended-than-good", mended=count.rebuilt + count.fixed, good=count.accepted)
    return count


def _refuse_other_plates(sent: Sent, plates: int, label: str) -> None:
    """Refuse ``9/8`` and ``7/10`` on eight plates; ask about ``7/7``, which may mean that one was left."""
    good, built = sent.accepted or 0, plates if sent.plates is None else sent.plates
    over = max(good, built) - plates
    if over > 0:
        clock = "" if sent.clock_s is None else clock_text(sent.clock_s)
        good = min(good, plates)
        key = "too-many-plates" if over <= good else "far-too-many-plates"
        raise UserError(key, drill=label, plates=plates, over=over, good=good, clock=clock)
    if 0 < built < plates and sent.left is None and good <= built:
        raise UserError("one-left", drill=label, plates=plates, left=plates - built, again=f"{good}/{plates}")
    if built < plates and (sent.left != plates - built or good > built):
        raise UserError("count-does-not-add-up", plates=plates)


def time_gate(attempted: int) -> int:
    """The fewest accepted plates for which a run of so many attempted has a time: three quarters, rounded up."""
    return -(-3 * attempted // 4)


def half_run(plates: int) -> int:
    """The fewest plates that a run of a drill of so many may build and still be worth a pace."""
    return min(max(-(-plates // 2), SHORTEST_RUN), plates)


def kind_of(count: Count, *, newcomer: bool) -> Kind:
    """What a run that went on to its end is kept as; ``newcomer`` is anyone still in their first three runs."""
    if count.left:
        return "short" if count.attempted >= half_run(count.plates) else "stopped"
    return "settling" if newcomer else "counted"


def charge_s(clock_s: float, count: Count, standard: float, alone: float, change_s: float) -> float | None:
    """What the redos cost: each a clean plate built alone at the run's own speed, with its chance of failing again.

    None where too few were accepted for a time, and where nothing was attempted.
    """
    if count.accepted == 0 or count.accepted < time_gate(count.attempted):
        return None
    builds = count.redo * count.attempted / count.accepted
    return builds * (change_s + alone * clock_s / standard)


def card_redo_s(spec: Spec, set_up: SetUp, seconds: Seconds) -> float | None:
    """What one redo costs at standard speed; None where the set-up is so small that one redo leaves no time."""
    standard = standard_s(spec, set_up, seconds)
    one = Count(plates=set_up.plates, accepted=set_up.plates - 1, redo=1)
    return charge_s(standard, one, standard, alone_s(spec, seconds), seconds.change_plate_s)


def work_out(clock_s: int, count: Count, spec: Spec, set_up: SetUp, seconds: Seconds, kind: Kind) -> Result:
    """A run worked out on the plates attempted. A stopped run has no time."""
    done = run_touches(spec, set_up, count.attempted)
    standard, alone = standard_s(spec, set_up, seconds, count.attempted), alone_s(spec, seconds)
    charge = None if kind == "stopped" else charge_s(clock_s, count, standard, alone, seconds.change_plate_s)
    net = None if charge is None else clock_s + charge
    return Result(
        kind=kind,
        clock_s=clock_s,
        count=count,
        touches=done,
        standard_s=standard,
        alone_s=alone,
        change_s=seconds.change_plate_s,
        net_s=net,
        pace_s=None if net is None else pace_s(net, done),
        levelled_s=None if net is None else levelled_s(net, standard),
    )
