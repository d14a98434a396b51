"""Coaching in words: hold or raise and by how much, targets, where one stands, what to practise next."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import floor

from bot.domain.drill import Drill
from bot.domain.harder import Change, Fit, Harder, Pieces, Plates
from bot.domain.lighter import Strain
from bot.domain.next_drill import EASIEST, HARDEST, NextDrill
from bot.domain.pace import clock_text
from bot.domain.readiness import Standing
from bot.domain.run import half_run, time_gate
from bot.domain.splits import StepTime
from bot.domain.standard_time import targets
from bot.errors import UserError
from bot.replies.phrases import Phrases

Figures = dict[str, float | int | str | None]


@dataclass(frozen=True)
class StepPaces:
    """One step of the last run with splits on a drill, and the seconds a touch that it stands beside.

    ``usual_s`` is the cook's own median, ``quarter_s`` what the quickest quarter of the house reaches, if it is told.
    """

    drill: str
    technique: str
    last: StepTime
    usual_s: float
    quarter_s: float | None


def hold_line(say: Phrases, drill: Drill, ready: int, cooks: int, target: int) -> str:
    """Why the drill stays as it is."""
    name = drill.wording.name
    if not cooks:
        return say("raise-nobody", drill=name)
    return say("raise-hold", drill=name, ready=ready, cooks=cooks, target=clock_text(target))


def ready_lines(say: Phrases, drill: Drill, ready: int, cooks: int, target: int, names: Sequence[str]) -> list[str]:
    """That the drill is ready for a harder version, and who said so of themselves."""
    head = say("raise-ready", drill=drill.wording.name, ready=ready, cooks=cooks, target=clock_text(target))
    return [head, *([say("raise-said-ready", names=", ".join(names))] if names else [])]


def way_lines(say: Phrases, drill: Drill, ways: Sequence[Harder]) -> list[str]:
    """The ways up, a line for those that fit, one for the others and one for what is refused, and how to take one."""
    numbered = list(enumerate(ways, 1))
    groups: dict[str, tuple[Fit, ...]] = {
        "raise-fitting": ("fitting",),
        "raise-others": ("small", "large"),
        "raise-refused": ("refused",),
    }
    lines = []
    for key, fits in groups.items():
        items = [_item(say, drill, nth, way) for nth, way in numbered if way.fit in fits]
        if items:
            lines.append(say(key, ways="; ".join(items)))
    best = [nth for fit in ("fitting", "small", "large") for nth, way in numbered if way.fit == fit]
    return [*lines, say("raise-how", label=drill.label, nth=best[0])] if best else lines


def too_much(say: Phrases, drill: Drill, way: Harder) -> UserError:
    """Why a way up is refused, and by how much."""
    return UserError("raise-too-much", way=_what(say, drill, way.change), percent=say.decimal(way.percent, 1))


def figures_of_raise(ready: int, cooks: int, target: int, ways: Sequence[Harder]) -> Figures:
    """The numbers behind hold or raise."""
    percents = {f"way.{nth}.percent": way.percent for nth, way in enumerate(ways, 1)}
    return {"ready": ready, "cooks": cooks, "target_s": target, **percents}


def standing_line(say: Phrases, standing: Standing, target: int) -> str:
    """Where one's own runs stand beside what a harder version asks, and what is still to come."""
    if standing.median_s is None:
        return say("standing-none")
    told = say(
        "standing",
        runs=standing.runs,
        accepted=standing.accepted,
        attempted=standing.attempted,
        median=clock_text(standing.median_s),
        target=clock_text(target),
        days=standing.days,
    )
    lacks = ", ".join(say(f"lack-{lack}") for lack in standing.lacks)
    return f"{told} {say('standing-lacks', lacks=lacks) if lacks else say('standing-enough')}"


def aims_line(say: Phrases, drill: Drill, standard: float, target: int) -> str:
    """The three aims and the target."""
    aims = targets(standard)
    return say(
        "target-is",
        drill=drill.wording.name,
        target=clock_text(target),
        opening=clock_text(aims.opening_s),
        house=clock_text(aims.house_s),
        brisk=clock_text(aims.brisk_s),
    )


def step_back_line(say: Phrases, drill: Drill, strain: Strain) -> str:
    """A kind suggestion to a cook for whom the drill is too much now."""
    plates = drill.set_up.plates
    if strain == "redo":
        return say("step-back-redo", drill=drill.wording.name, gate=time_gate(plates), plates=plates)
    few = half_run(plates)
    return say("step-back-stopped", drill=drill.wording.name, plates=plates, few=few, left=plates - few)


def course_line(say: Phrases, drill: Drill, week: int, of: int) -> str:
    """The drill that the course comes to."""
    return say("next-course", drill=drill.wording.name, plates=drill.set_up.plates, week=week, of=of)


def next_lines(say: Phrases, advice: NextDrill, paces: StepPaces | None) -> list[str]:
    """The drill and its reason, and how the step that it trains stands."""
    reason = _reason(say, advice)
    if advice.drill is None:
        level = clock_text(advice.level_s)
        lines = [reason, say("next-nothing-near", technique=advice.technique, low=EASIEST, high=HARDEST, level=level)]
    else:
        lines = [f"{say('next-drill', drill=advice.drill.wording.name, plates=advice.drill.set_up.plates)} {reason}"]
    return [*lines, *([_paces_line(say, paces)] if paces else [])]


def figures_of_next(advice: NextDrill, paces: StepPaces | None) -> Figures:
    """The numbers behind what to practise next."""
    figures: Figures = {
        "technique": advice.technique,
        "lost_s": advice.costs.lost_s,
        "redo_s": advice.costs.redo_s,
        "level_s": advice.level_s,
    }
    if paces is None:
        return figures
    step = paces.last
    beside = {"usual_s": paces.usual_s, "quarter_s": paces.quarter_s, "standard_s": step.standard_s / step.touches}
    return {**figures, "pace_s": step.pace_s, **beside}


def _item(say: Phrases, drill: Drill, nth: int, way: Harder) -> str:
    return say("raise-item", nth=nth, way=_what(say, drill, way.change), percent=say.decimal(way.percent, 1))


def _what(say: Phrases, drill: Drill, change: Change) -> str:
    match change:
        case Plates(more):
            return say("way-plates", more=more)
        case Pieces(more, nth):
            step = drill.spec.steps[nth - 1]
            technique = "same" if step.technique == step.component else step.technique
            return say("way-pieces", more=more, component=step.component, technique=technique)
    return say("way-waves", of=change.of)


def _reason(say: Phrases, advice: NextDrill) -> str:
    """Seconds lost every time where there are such, rounded down so that they are true of each run; else the redos."""
    costs = advice.costs
    if costs.lost_s or costs.mentions is None:
        return say("next-lost", technique=advice.technique, lost=floor(costs.lost_s))
    told = costs.mentions
    return say("next-redo", technique=advice.technique, reason=told.reason, times=told.times, runs=told.of_runs)


def _paces_line(say: Phrases, paces: StepPaces) -> str:
    step = paces.last
    return say(
        "next-paces",
        technique=paces.technique,
        drill=paces.drill,
        pace=say.decimal(step.pace_s, 2),
        usual=say.decimal(paces.usual_s, 2),
        standard=say.decimal(step.standard_s / step.touches, 2),
        quarter="none" if paces.quarter_s is None else say.decimal(paces.quarter_s, 2),
    )
