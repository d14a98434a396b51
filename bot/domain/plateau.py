"""A cook who works cleanly and has stayed at one speed for weeks: reason to ask, not to judge."""

from datetime import timedelta
from statistics import median

from bot.domain.first_runs import LAST, FirstRuns
from bot.domain.progress import progress_of

LEAST_TIME = timedelta(weeks=3)
MOST_CHANGE = 0.03
CLEAN_SHARE = 0.9


def is_level(last: FirstRuns) -> bool:
    """Whether ten first runs over three weeks keep one speed, with nine plates of ten accepted.

    Neither the steady line nor the halves' medians may differ by more than 3 %. With the usual noise of 4 % it notices
    fewer than half of the cooks who do stay level, so it is put as a question.
    """
    timed = last.timed
    if len(timed) < LAST or timed[-1].day - timed[0].day < LEAST_TIME:
        return False
    return _keeps_its_speed(last.nets_s) and _is_clean(last)


def _keeps_its_speed(nets_s: tuple[float, ...]) -> bool:
    progress = progress_of(nets_s)
    halves = median(nets_s[LAST // 2 :]) / median(nets_s[: LAST // 2]) - 1
    return progress is not None and abs(progress.now.change) <= MOST_CHANGE and abs(halves) <= MOST_CHANGE


def _is_clean(last: FirstRuns) -> bool:
    built, redo = sum(run.built for run in last.days), sum(run.redo for run in last.days)
    return built - redo >= CLEAN_SHARE * built
