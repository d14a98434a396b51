"""The trend shows first runs only, and says when they are too few."""

from datetime import date, timedelta
from statistics import median

from hypothesis import given
from hypothesis import strategies as st

from bot.domain.progress import DayRun, FirstRun, Trend, trend_of

MONDAY = date(2026, 11, 2)


def on(day: int, net_s: float | None) -> DayRun:
    """A run of eight plates on the so-manieth day."""
    return DayRun(MONDAY + timedelta(days=day), net_s, 8, 8)


runs = st.lists(
    st.builds(
        DayRun,
        day=st.integers(0, 20).map(lambda n: MONDAY + timedelta(days=n)),
        net_s=st.none() | st.floats(60, 600),
        attempted=st.integers(4, 8),
        plates=st.just(8),
        kind=st.sampled_from(["counted", "short", "stopped", "settling"]),
    ),
    max_size=40,
).map(lambda found: sorted(found, key=lambda run: run.day))


def test_no_runs() -> None:
    """Nothing is said of nobody."""
    assert trend_of([]) == Trend((), None)


def test_first_run_of_each_day() -> None:
    """The second and third run of a day are left out, however fast."""
    trend = trend_of([on(0, 221), on(0, 200), on(1, 215), on(1, 190), on(1, 180)])
    assert [run.net_s for run in trend.runs] == [221, 215]
    assert trend.median_s == 218


def test_five_of_eight() -> None:
    """Five first runs are not enough, eight are."""
    assert not trend_of([on(day, 200) for day in range(5)]).enough
    assert not trend_of([on(day, 200) for day in range(7)]).enough
    assert trend_of([on(day, 200) for day in range(8)]).enough


def test_last_ten() -> None:
    """Of more than ten days the last ten are shown."""
    trend = trend_of([on(day, 300 - day) for day in range(12)])
    assert [run.net_s for run in trend.runs] == [300 - day for day in range(2, 12)]


def test_no_time_is_not_replaced() -> None:
    """A first run without a time is not replaced by the day's second."""
    assert trend_of([on(0, None), on(0, 180), on(1, 200)]).runs == (FirstRun(MONDAY + timedelta(1), 200, short=False),)


def test_short_and_stopped() -> None:
    """A short run stands for the whole set-up by its plates and is marked; a stopped one is passed over."""
    short = DayRun(MONDAY, 130, 6, 8, "short")
    stopped = DayRun(MONDAY, 60, 2, 8, "stopped")
    assert trend_of([stopped, short]).runs == (FirstRun(MONDAY, 130 * 8 / 6, short=True),)


@given(runs)
def test_trend(sent: list[DayRun]) -> None:
    """At most ten days, one run each, in order, and the median is theirs."""
    trend = trend_of(sent)
    days = [run.day for run in trend.runs]
    assert days == sorted(set(days))
    assert len(days) <= 10
    assert trend.median_s == (median(run.net_s for run in trend.runs) if days else None)
    assert all(any(s.day == run.day and s.kind != "stopped" and s.net_s for s in sent) for run in trend.runs)
