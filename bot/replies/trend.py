"""What a cook's first runs say, in at most six lines."""

from collections.abc import Mapping
from dataclasses import asdict
from math import exp

from bot.domain.first_runs import FirstRun
from bot.domain.pace import clock_text
from bot.domain.progress import NEEDED, Look, Progress, RedoChange
from bot.domain.trend import Trend
from bot.replies.phrases import Phrases

Figures = dict[str, float | int | str | None]


def trend_lines(say: Phrases, drill: str, trend: Trend, standards_s: Mapping[str, float], slowest: str) -> list[str]:
    """The lines for first runs of which one at least has a time.

    ``standards_s`` are the standard times by letter of the set-up asked about (under an empty letter) and of those
    that runs were carried over from; ``slowest`` is the technique of the step that costs most, empty if unknown.
    """
    runs = ", ".join(_run_text(run) for run in trend.last.timed)
    if trend.progress is None:
        few = say("trend-few", count=len(trend.last.timed), needed=NEEDED)
        lines = [few, say("trend-runs", drill=drill, runs=runs), say("trend-median", median=_median_text(trend))]
    else:
        lines = [_speed_line(say, drill, trend, trend.progress), _redo_line(say, trend.progress, trend.redo)]
        lines.append(say("trend-all", runs=runs))
    if trend.ahead:
        lines.append(say("trend-next", low=clock_text(trend.ahead.low_s), high=clock_text(trend.ahead.high_s)))
    lines += [" ".join(notes)] if (notes := _notes(say, trend, standards_s)) else []
    return [*lines, say("trend-slowest", technique=slowest)] if slowest else lines


def level_question(say: Phrases, drill: str, trend: Trend) -> str:
    """The question for a cook who stays level, with its five answers, what changes least first."""
    return say("level-question", drill=drill, count=len(trend.last.timed))


def figures_of_trend(trend: Trend) -> Figures:
    """The numbers behind it, both looks among them."""
    figures: Figures = {f"run.{nth}.net_s": net_s for nth, net_s in enumerate(trend.last.nets_s, 1)}
    figures |= {"median_s": trend.last.median_s, "needed": NEEDED, "level": int(trend.level)}
    figures |= {f"redo.{name}": value for name, value in asdict(trend.redo).items()}
    if trend.progress:
        figures |= _figures_of_look("now", trend.progress.now)
        figures |= _figures_of_look("before", trend.progress.before) if trend.progress.before else {}
    if trend.ahead:
        figures |= {"next.low_s": trend.ahead.low_s, "next.high_s": trend.ahead.high_s}
    return figures


def _run_text(run: FirstRun) -> str:
    mark = f" ({run.carried_from})" if run.carried_from else ""
    return clock_text(run.net_s or 0) + ("*" if run.short else "") + mark


def _median_text(trend: Trend) -> str:
    return clock_text(trend.last.median_s or 0)


def _speed_line(say: Phrases, drill: str, trend: Trend, progress: Progress) -> str:
    """The steady line from its first run to its last where two looks agree on it; else the median and no change."""
    look = progress.now
    if progress.speed is None:
        return say("trend-luck", drill=drill, count=look.runs, median=_median_text(trend))
    return say(
        "trend-real",
        drill=drill,
        count=look.runs,
        first=clock_text(exp(look.line.at(0))),
        last=clock_text(exp(look.line.at(look.runs - 1))),
        percent=say.decimal(100 * abs(exp(look.line.slope) - 1), 1),
    )


def _redo_line(say: Phrases, progress: Progress, redo: RedoChange) -> str:
    """The redos of both halves and, where the speed is real, what the two come to together."""
    verdict = f"{progress.speed}-{redo.redos or 'same'}" if progress.speed else "none"
    was, now = _percent(redo.was, redo.was_built), _percent(redo.now, redo.now_built)
    return say("trend-redo", was=was, now=now, verdict=verdict)


def _percent(part: int, whole: int) -> str:
    return f"{100 * part / whole:.0f}"


def _notes(say: Phrases, trend: Trend, standards_s: Mapping[str, float]) -> list[str]:
    """What the marks behind the runs mean."""
    letters = dict.fromkeys(run.carried_from for run in trend.last.timed if run.carried_from)
    short = [say("trend-short")] if any(run.short for run in trend.last.timed) else []
    here = clock_text(standards_s[""])
    return short + [
        say("trend-carried", letter=letter, there=clock_text(standards_s[letter]), here=here) for letter in letters
    ]


def _figures_of_look(name: str, look: Look) -> Figures:
    found = {"runs": look.runs, "slope": look.line.slope, "change": look.change, "S": look.s, "p": look.chance}
    return {f"{name}.{key}": value for key, value in found.items()} | {f"{name}.shows": look.shows}
