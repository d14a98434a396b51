"""The mise in words: a line a component, then the china and tools, what comes back, what is binned, and the labels."""

from decimal import Decimal

from bot.domain.drill import Drill
from bot.domain.mise import Mise, Need
from bot.domain.pace import clock_text
from bot.replies.amounts import amount_text
from bot.replies.card import labels_lines
from bot.replies.phrases import Phrases


def mise_lines(say: Phrases, drill: Drill, mise: Mise) -> list[str]:
    """Everything for so many runs, closing with the labels to read and the local rules."""
    return [
        say(
            "mise-head",
            name=drill.wording.name,
            label=drill.label,
            runs=mise.runs,
            plates=mise.plates,
            total=mise.plates + mise.spare_plates,
            spare=_percent(mise.spare_share),
        ),
        *(_need_line(say, need) for need in mise.needs),
        *([say("mise-tools", tools=", ".join(mise.tools))] if mise.tools else []),
        *_afterwards_lines(say, mise),
        *labels_lines(say, drill.spec),
        say("caution-never-served"),
        say("caution-local-rules"),
    ]


def figures_of_mise(mise: Mise) -> dict[str, float | int | str | None]:
    """The numbers behind a mise, by component."""
    figures: dict[str, float | int | str | None] = {"plates": mise.plates + mise.spare_plates, "runs": mise.runs}
    for need in mise.needs:
        name = f"{need.component}.{need.unit}"
        figures[f"{name}.a_plate"] = float(need.a_plate)
        figures[f"{name}.used"] = float(need.used)
        figures[name] = float(need.total)
        if need.stays_in:
            figures[f"{name}.stays"] = float(need.stays)
    return figures


def _need_line(say: Phrases, need: Need) -> str:
    return say(
        "mise-need",
        component=need.component,
        total=amount_text(say, need.total, need.unit),
        plate=amount_text(say, need.a_plate, need.unit),
        where=_where(need),
        tool=need.stays_in,
        stays=amount_text(say, need.stays, "ml"),
    )


def _where(need: Need) -> str:
    """Whether nothing stays in a tool, so much does, or as much as it holds."""
    if not need.stays_in:
        return "nowhere"
    return "measured" if need.stays else "unmeasured"


def _afterwards_lines(say: Phrases, mise: Mise) -> list[str]:
    """What comes back for another run, how long it keeps on the plate, and what is binned the same day."""
    back = [_back_text(say, need) for need in mise.needs if need.keeping.recovered]
    lives = [
        say("mise-life", component=need.component, life=clock_text(need.life_s)) for need in mise.needs if need.life_s
    ]
    binned = [need.component for need in mise.needs if need.keeping.same_day]
    lines = []
    if back:
        lines.append(say("mise-back", list=", ".join(back)))
    if lives:
        lines.append(say("mise-lives", list=", ".join(lives)))
    if binned:
        lines.append(say("mise-same-day", list=", ".join(dict.fromkeys(binned))))
    return lines


def _back_text(say: Phrases, need: Need) -> str:
    percent = _percent(need.keeping.recovered)
    return say("mise-back-share", component=need.component, percent=percent, runs=need.keeping.runs or 0)


def _percent(share: Decimal) -> str:
    return f"{100 * share:.0f}"
