"""The trend: the first run of each day, the steady line with one's own noise about it, and the redo share beneath."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date
from math import ceil, exp

from bot.domain.bests import own_noise, whole_s
from bot.domain.first_runs import FirstRun
from bot.domain.pace import clock_text
from bot.domain.trend import Trend
from bot.replies.dates import day_text
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import BAND, CHINA, FAINT, INK, MARK, SOFT, Drawing, Point, Sheet, new_sheet
from bot.replies.pictures.lettering import width_px

PLOT_PX, REDO_PX, LABELS_PX = 180.0, 34.0, 38.0
LEAST_NUMBERED_PX = 16.0
SMALL_PX, WORDS_PX = 12, 14
POINT_PX, RING_PX = 4.5, 8.5
REDO_TINT = "#eaa93a"
_STEPS_S = (1, 2, 5, 10, 15, 20, 30, 60, 120, 300, 600, 1200, 3600)
_MOST_STEPS = 5


Mark = tuple[date, int]
"""A best by its kitchen day and its whole seconds."""


def trend_picture(say: Phrases, lines: Sequence[str], trend: Trend, bests: Collection[Mark]) -> Drawing:
    """The first runs with what the text says of them; ``bests`` are those that have stood, of which some are such runs.

    A line that cannot yet be told from luck is dashed; where the runs are too few there is none.
    """
    sheet = new_sheet(say)
    sheet.paragraph(lines[0], WORDS_PX, bold=True)
    sheet.gap(12)
    plot = _Plot(sheet, trend, sheet.below, _scale(trend))
    plot.steps()
    plot.steady()
    plot.ahead()
    for nth, run in enumerate(trend.last.days):
        plot.run(nth, run, best=_mark(run) in bests)
    sheet.gap(PLOT_PX + 14)
    _redo(sheet, say, trend, plot)
    sheet.gap(2)
    for line in lines[1:]:
        sheet.paragraph(line, SMALL_PX)
    sheet.gap(2)
    keys = [*([say("picture-line")] if trend.progress else []), *([say("picture-ring")] if bests else [])]
    sheet.paragraph(" ".join(keys), SMALL_PX, ink=SOFT)
    return sheet.finished()


def _mark(run: FirstRun) -> Mark | None:
    return None if run.net_s is None else (run.day, whole_s(run.net_s))


@dataclass(frozen=True)
class _Scale:
    """The seconds shown, from the bottom to the top, and how far apart the lines with a time are."""

    low_s: float
    high_s: float
    step_s: int


def _scale(trend: Trend) -> _Scale:
    """Round times that take in every run, the steady line with its band, and the next run."""
    seconds = [*trend.last.nets_s, *([trend.ahead.low_s, trend.ahead.high_s] if trend.ahead else [])]
    low, high = min(seconds) * 0.98, max(seconds) * 1.02
    step = next((s for s in _STEPS_S if (high - low) / s <= _MOST_STEPS), _STEPS_S[-1])
    return _Scale(low // step * step, ceil(high / step) * step, step)


class _Plot:
    """The runs over the days, time upwards, and in a right-to-left language from the right."""

    def __init__(self, sheet: Sheet, trend: Trend, top: float, scale: _Scale) -> None:
        self._sheet = sheet
        self._trend = trend
        self._top = top
        self._scale = scale
        slots = len(trend.last.days) + (1 if trend.ahead else 0)
        self.slot_px = (sheet.room - LABELS_PX) / slots

    def x(self, nth: float) -> float:
        """Where the day of this place, from 0, stands."""
        return self._sheet.across(self._sheet.margin + LABELS_PX + (nth + 0.5) * self.slot_px)

    def y(self, seconds: float) -> float:
        """How high a time stands; the largest is at the top."""
        scale = self._scale
        return self._top + PLOT_PX * (scale.high_s - seconds) / (scale.high_s - scale.low_s)

    def steps(self) -> None:
        """A faint line at every round time, with the time where the lines begin."""
        sheet, scale = self._sheet, self._scale
        anchor = "start" if sheet.right_to_left else "end"
        for nth in range(round((scale.high_s - scale.low_s) / scale.step_s) + 1):
            seconds = scale.low_s + nth * scale.step_s
            ends = [
                (sheet.across(sheet.margin + LABELS_PX), self.y(seconds)),
                (sheet.across(sheet.width - sheet.margin), self.y(seconds)),
            ]
            sheet.line(ends, stroke=FAINT, broad=1)
            at = (sheet.across(sheet.margin + LABELS_PX - 6), self.y(seconds) + 4)
            sheet.words(at, clock_text(seconds), SMALL_PX, ink=SOFT, anchor=anchor)

    def steady(self) -> None:
        """The Theil-Sen line through the runs with a time, and one's own noise on both sides of it."""
        progress, noise = self._trend.progress, own_noise(self._trend.last.nets_s)
        if progress is None or noise is None:
            return
        timed = [nth for nth, run in enumerate(self._trend.last.days) if run.net_s is not None]
        logs = [(nth, progress.now.line.at(place)) for place, nth in enumerate(timed)]
        above = [(self.x(nth), self._within(exp(log + noise))) for nth, log in logs]
        below = [(self.x(nth), self._within(exp(log - noise))) for nth, log in logs]
        outline = "L".join(f"{x:.1f} {y:.1f}" for x, y in (*above, *reversed(below)))
        self._sheet.path(f"M{outline}Z", fill=BAND, stroke="none")
        line = [(self.x(nth), self.y(exp(log))) for nth, log in logs]
        self._sheet.line(line, stroke=MARK, broad=2.2, dashes="" if progress.speed else "5 5")

    def ahead(self) -> None:
        """Where the next first run is expected."""
        band = self._trend.ahead
        if band:
            x, wide = self.x(len(self._trend.last.days)), min(self.slot_px * 0.5, 14.0)
            high, low = self.y(band.high_s), self.y(band.low_s)
            self._sheet.rectangle((x - wide / 2, high), (wide, low - high), fill=CHINA, stroke=SOFT, corner=3)

    def run(self, nth: int, run: FirstRun, *, best: bool) -> None:
        """One first run: a dot, hollow where it is short or carried over; a cross at the bottom where it has none."""
        if run.net_s is None:
            self._cross((self.x(nth), self._top + PLOT_PX - 6))
            return
        at = self.x(nth), self.y(run.net_s)
        whole = not run.short and not run.carried_from
        if best:
            self._sheet.circle(at, RING_PX, stroke=INK, broad=1.6)
            self._sheet.words((at[0], at[1] - RING_PX - 4), clock_text(run.net_s), SMALL_PX, bold=True)
        self._sheet.circle(at, POINT_PX, fill=INK if whole else CHINA, stroke=INK, broad=1.6)
        if run.carried_from:
            self._sheet.words((at[0], at[1] + RING_PX + 10), run.carried_from, SMALL_PX, ink=SOFT)

    def _cross(self, at: Point) -> None:
        for slope in (-1, 1):
            self._sheet.line([(at[0] - 4, at[1] - 4 * slope), (at[0] + 4, at[1] + 4 * slope)], broad=1.6)

    def _within(self, seconds: float) -> float:
        return min(max(self.y(seconds), self._top), self._top + PLOT_PX)


def _redo(sheet: Sheet, say: Phrases, trend: Trend, plot: _Plot) -> None:
    """The share of redos of each day as a bar with its percent, and the first and the last day beneath."""
    days = trend.last.days
    shares = [run.redo / run.built for run in days]
    sheet.paragraph(say("picture-redo-share"), SMALL_PX, ink=SOFT)
    floor = sheet.below + REDO_PX + SMALL_PX
    for nth, share in enumerate(shares):
        high, wide = REDO_PX * share / max(*shares, 0.25), min(plot.slot_px * 0.6, 18.0)
        sheet.rectangle((plot.x(nth) - wide / 2, floor - high), (wide, high), fill=REDO_TINT, stroke=INK, broad=0.8)
        if plot.slot_px >= LEAST_NUMBERED_PX:
            sheet.words((plot.x(nth), floor - high - 3), f"{100 * share:.0f}", SMALL_PX - 1, ink=INK if share else SOFT)
    sheet.line([(plot.x(-0.5), floor), (plot.x(len(days) - 0.5), floor)], stroke=SOFT)
    sheet.below = floor + 3
    _first_and_last(sheet, say, plot, days)


def _first_and_last(sheet: Sheet, say: Phrases, plot: _Plot, days: Sequence[FirstRun]) -> None:
    """The first day where the bars begin and the last where they end, in two lines where one is too short."""
    size = SMALL_PX - 1
    begin, end = ("end", "start") if sheet.right_to_left else ("start", "end")
    first, last = day_text(say, days[0].day), day_text(say, days[-1].day)
    sheet.gap(SMALL_PX)
    sheet.words((plot.x(-0.5), sheet.below), first, size, ink=SOFT, anchor=begin)
    if len(days) > 1:
        if width_px(f"{first}  {last}", size) > plot.slot_px * len(days):
            sheet.gap(SMALL_PX + 2)
        sheet.words((plot.x(len(days) - 0.5), sheet.below), last, size, ink=SOFT, anchor=end)
    sheet.gap(5)
