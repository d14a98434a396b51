"""All that a cook's first runs on one spec say: the runs, progress or luck, the redos, and the next one."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.domain.first_runs import DayRun, FirstRuns, first_runs, last_of
from bot.domain.forecast import Band, next_run
from bot.domain.plateau import is_level
from bot.domain.progress import Progress, RedoChange, progress_of, redo_change


@dataclass(frozen=True)
class Trend:
    """The last first runs; ``progress`` and ``ahead`` are None where they are too few to call.

    ``newly_level`` while the newest first run is the one by which a cook has become ``level``.
    """

    last: FirstRuns
    progress: Progress | None
    redo: RedoChange
    ahead: Band | None
    level: bool
    newly_level: bool


def trend_of(runs: Iterable[DayRun]) -> Trend:
    """The trend of one cook's runs on one spec, given in the order in which they were run."""
    firsts = first_runs(runs)
    last, nets_s = last_of(firsts), [run.net_s for run in firsts if run.net_s is not None]
    level = is_level(last)
    return Trend(
        last=last,
        progress=progress_of(nets_s),
        redo=redo_change(last.days),
        ahead=next_run(nets_s),
        level=level,
        newly_level=level and not is_level(last_of(firsts[:-1])),
    )
