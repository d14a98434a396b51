"""The first run of each day stands for it, on one scale, and the last ten with a time are looked at."""

from datetime import date, timedelta
from statistics import median

from hypothesis import given
from hypothesis import strategies as st

from bot.domain.first_runs import DayRun, FirstRun, FirstRuns, first_runs, last_of
from bot.domain.run import Count

MONDAY = date(2026, 11, 2)
EIGHT = Count(8, 8)


def on(day: int, net_s: float | None) -> DayRun:
    """A run of eight plates on the so-manieth day."""
    return DayRun(MONDAY + timedelta(days=day), net_s, EIGHT)


runs = st.lists(
    st.builds(
        DayRun,
        day=st.integers(0, 20).map(lambda n: MONDAY + timedelta(days=n)),
        net_s=st.none() | st.floats(60, 600),
        count=st.integers(4, 8).map(lambda good: Count(8, good, left=8 - good)),
        kind=st.sampled_from(["counted", "short", "stopped", "settling"]),
    ),
    max_size=40,
).map(lambda found: sorted(found, key=lambda run: run.day))


def test_no_runs() -> None:
    """Nothing is said of nobody."""
    assert last_of(first_runs([])) == FirstRuns(())
    assert FirstRuns(()).median_s is None


def test_first_run_of_each_day() -> None:
    """The second and third run of a day are left out, however fast."""
    last = last_of(first_runs([on(0, 221), on(0, 200), on(1, 215), on(1, 190), on(1, 180)]))
    assert list(last.nets_s) == [221, 215]
    assert last.median_s == 218


def test_last_ten_with_a_time() -> None:
    """The last ten with a time are looked at, and with them every day without one that came after their first."""
    days = [on(day, None if day in (1, 5) else 300 - day) for day in range(13)]
    last = last_of(first_runs(days))
    assert last.nets_s == tuple(300 - day for day in range(2, 13) if day != 5)
    assert [run.day.day for run in last.days if run.net_s is None] == [7]


def test_no_time_is_not_replaced() -> None:
    """A first run without a time is not replaced by the day's second."""
    without, with_one = first_runs([on(0, None), on(0, 180), on(1, 200)])
    assert (without.net_s, with_one.net_s) == (None, 200)


def test_short_and_stopped() -> None:
    """A short run stands for all plates by its touches and is marked; a stopped one is passed over."""
    short = DayRun(MONDAY, 130, Count(8, 5, redo=1, left=2), "short")
    stopped = DayRun(MONDAY, 60, Count(8, 2, left=6), "stopped")
    assert first_runs([stopped, short]) == (FirstRun(MONDAY, 130 * 8 / 6, built=6, redo=1, short=True),)


def test_carried_over() -> None:
    """A run on another set-up is carried over by the ratio of standard times, and keeps that set-up's letter."""
    elsewhere = DayRun(MONDAY, 300, Count(12, 12), carried_from="A", onto=0.7)
    assert first_runs([elsewhere]) == (FirstRun(MONDAY, 210, built=12, redo=0, carried_from="A"),)


@given(runs)
def test_last_ten(sent: list[DayRun]) -> None:
    """At most ten times, one run a day, in order, and the median is theirs."""
    last = last_of(first_runs(sent))
    days = [run.day for run in last.days]
    assert days == sorted(set(days))
    assert len(last.timed) == len(last.nets_s) <= 10
    assert last.median_s == (median(last.nets_s) if last.nets_s else None)
    assert all(any(s.day == run.day and s.kind != "stopped" and s.net_s for s in sent) for run in last.timed)
