"""Progress is called on two looks running, by its size and by chance; redos by what became of the plates."""

from datetime import date, timedelta
from math import exp, log

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.first_runs import FirstRun
from bot.domain.progress import Progress, RedoChange, progress_of, redo_change

MONDAY = date(2026, 11, 2)


def steady(percent: float, runs: int = 10) -> list[float]:
    """Runs that each take so many percent less than the one before, from 3:41."""
    return [221 * (1 - percent / 100) ** nth for nth in range(runs)]


def days(*redo_of_built: tuple[int, int]) -> list[FirstRun]:
    """First runs with so many redos of so many plates built."""
    return [FirstRun(MONDAY + timedelta(days=nth), 200, built, redo) for nth, (redo, built) in enumerate(redo_of_built)]


def test_too_few() -> None:
    """Seven first runs are not looked at, eight are once, nine twice; of eleven each look sees ten."""
    assert progress_of(steady(1.6, 7)) is None
    eight, nine, eleven = (progress_of(steady(1.6, runs)) for runs in (8, 9, 11))
    assert eight is not None
    assert eight.before is None
    assert eight.speed is None
    assert nine is not None
    assert nine.before == eight.now
    assert nine.speed == "faster"
    assert eleven is not None
    assert eleven.before is not None
    assert (eleven.before.runs, eleven.now.runs) == (10, 10)


def test_steady_gain() -> None:
    """1.6 % less a run over ten runs comes to 13.5 % less, which is 0.984 to the ninth power; slower alike."""
    gain, loss = progress_of(steady(1.6)), progress_of(steady(1.6)[::-1])
    assert gain is not None
    assert gain.now.change == pytest.approx(0.984**9 - 1)
    assert (gain.now.s, gain.speed) == (-45, "faster")
    assert loss is not None
    assert (loss.now.s, loss.speed) == (45, "slower")


def test_small_gain() -> None:
    """However steady, less than 4 % in all is not called: 0.4 % a run is 3.5 % over ten runs, 0.6 % is 5.3 %."""
    small, large = progress_of(steady(0.4)), progress_of(steady(0.6))
    assert small is not None
    assert small.now.chance < 1e-6
    assert small.speed is None
    assert large is not None
    assert large.speed == "faster"


def test_one_look_is_not_enough() -> None:
    """S = -16 of eight runs may be chance (0.031); -24 of nine is not (0.006), and is called when the tenth agrees."""
    nets_s = [200 + 5 * rank for rank in (7, 6, 5, 4, 3, 2, 8, 1, 0, -1)]
    looks = [progress_of(nets_s[:runs]) for runs in (8, 9, 10)]
    assert [look and (look.now.s, look.now.shows, look.speed) for look in looks] == [
        (-16, None, None),
        (-24, "faster", None),
        (-33, "faster", "faster"),
    ]


def test_opposite_looks_never_agree() -> None:
    """Two looks agree only where both show the same way."""
    gain, loss = progress_of(steady(1.6)), progress_of(steady(1.6)[::-1])
    assert gain is not None
    assert loss is not None
    assert (gain.now.shows, loss.now.shows) == ("faster", "slower")
    assert Progress(gain.now, loss.now).speed is Progress(loss.now, gain.now).speed is None


@given(st.lists(st.floats(60, 600), min_size=8, max_size=24), st.floats(0.2, 5))
def test_progress_is_relative(nets_s: list[float], slower: float) -> None:
    """The change is a share: a drill that takes twice as long shows the same, up to the rounding of logs."""
    told, scaled = progress_of(nets_s), progress_of([exp(log(net_s) + log(slower)) for net_s in nets_s])
    assert told is not None
    assert scaled is not None
    assert told.now.change == pytest.approx(scaled.now.change, abs=1e-9)


def test_redos_by_halves() -> None:
    """4 redos of 45 plates and then 2 of 45 are 9 % and 4 %: fewer; the other way round more."""
    halves = [(1, 9)] * 4 + [(0, 9)], [(1, 9)] * 2 + [(0, 9)] * 3
    fewer = redo_change(days(*halves[0], *halves[1]))
    assert fewer == RedoChange(4, 45, 2, 45)
    assert fewer.redos == "fewer"
    assert redo_change(days(*halves[1], *halves[0])).redos == "more"


def test_a_single_redo_is_no_difference() -> None:
    """One plate more or less is as clean; on fewer plates too, by their share."""
    assert redo_change([]).redos is redo_change(days((3, 8))).redos is None
    assert redo_change(days(*[(0, 8)] * 4, (1, 8), *[(0, 8)] * 5)).redos is None
    assert RedoChange(was=0, was_built=80, now=1, now_built=40).redos is None
    assert RedoChange(was=2, was_built=80, now=3, now_built=40).redos == "more"


def test_odd_number_and_no_time() -> None:
    """The middle day of an odd number is left out; a day without a time counts with its redos."""
    assert redo_change(days((3, 8), (8, 8), (0, 8))) == RedoChange(3, 8, 0, 8)
    without = FirstRun(MONDAY + timedelta(days=2), None, 8, 5)
    assert redo_change([*days((0, 8), (0, 8)), without, *days((0, 8))]).redos == "more"
