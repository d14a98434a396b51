"""First marks, bests and matches: who may set them, by how much, and how often luck alone would."""

import random
from itertools import permutations
from math import isclose

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.bests import Best, Judged, best_of, own_noise, usual_difference_s, whole_s
from bot.domain.pace import clock_text
from bot.domain.run import Kind

H12 = sum(1 / n for n in range(1, 13))
"""The twelfth harmonic number, 3.103: the records to be expected in 12 exchangeable values.

Source: A. Renyi, 1962, on outstanding values (from memory; recomputed here).
"""


def run(net_s: float | None, accepted: int = 8, kind: Kind = "counted", *, witnessed: bool = True) -> Judged:
    """A run on eight plates."""
    return Judged(net_s, accepted, 8, kind, witnessed)


judged = st.builds(
    Judged,
    net_s=st.none() | st.floats(60, 600),
    accepted=st.integers(0, 8),
    plates=st.just(8),
    kind=st.sampled_from(["counted", "short", "stopped", "settling"]),
    witnessed=st.booleans(),
)


def test_first_mark_then_best() -> None:
    """The first good run is a first mark; three seconds less is a new best."""
    assert best_of([run(185)]) == Best(185, 0, is_first_mark=True)
    assert best_of([run(185), run(182)]) == Best(182, 1, is_first_mark=False)


def test_equal_is_no_best() -> None:
    """Equal in whole seconds leaves the best with the run that set it; so does a second more."""
    assert best_of([run(182), run(181.6)]) == best_of([run(182), run(183)]) == Best(182, 0, is_first_mark=True)


@pytest.mark.parametrize(
    "new",
    [
        *(run(170, witnessed=False), run(170, 7), run(None)),
        *(run(170, kind="short"), run(170, kind="stopped"), run(170, kind="settling")),
    ],
)
def test_no_best(new: Judged) -> None:
    """Unwatched, under nine tenths, without a time, short, stopped or settling in: no best, however fast."""
    assert best_of([run(185), new]) == Best(185, 0, is_first_mark=True)


@pytest.mark.parametrize(
    ("accepted", "plates", "good"), [(11, 12, True), (10, 12, False), (9, 10, True), (7, 8, False)]
)
def test_nine_tenths(accepted: int, plates: int, good: bool) -> None:
    """At least ceil(0.9 P) must be accepted: 11 of 12, 9 of 10, 8 of 8."""
    assert (best_of([Judged(300, accepted, plates, "counted", witnessed=True)]) is not None) == good


def test_first_mark_is_ones_own() -> None:
    """A first mark needs no witness and may be set while settling in; the time to beat is then that one."""
    for first in (run(200, witnessed=False), run(200, kind="settling", witnessed=False)):
        assert best_of([first]) == Best(200, 0, is_first_mark=True)
        assert best_of([first, run(190)]) == Best(190, 1, is_first_mark=False)


def test_voided_best_gives_way() -> None:
    """Without the best run, or with its witness taken back, the earlier best stands again."""
    runs = [run(200), run(190), run(180)]
    assert best_of(runs) == Best(180, 2, is_first_mark=False)
    assert best_of(runs[:2]) == best_of([*runs[:2], run(180, witnessed=False)]) == Best(190, 1, is_first_mark=False)


@given(st.lists(judged, max_size=12), judged)
def test_a_run_makes_a_best_by_a_second_or_more(earlier: list[Judged], new: Judged) -> None:
    """A run changes the standing best only to itself, and after a first mark only by a whole second or more."""
    before, after = best_of(earlier), best_of([*earlier, new])
    if after != before:
        assert after is not None
        assert after.nth == len(earlier)
        assert before is None or after.net_s <= before.net_s - 1


@given(st.floats(1, 90_000))
def test_whole_seconds_are_those_shown(net_s: float) -> None:
    """Bests are compared on the very seconds that a reply shows."""
    assert clock_text(whole_s(net_s)) == clock_text(net_s)


def bests_in(nets_s: list[int]) -> int:
    """How many first marks and bests there are among these runs in this order."""
    standing = [best_of([run(net_s) for net_s in nets_s[: nth + 1]]) for nth in range(len(nets_s))]
    return sum(best is not None and best.nth == nth for nth, best in enumerate(standing))


def test_luck_over_every_order() -> None:
    """Over all orders of six unequal runs the bests average the sixth harmonic number, 1 + 1/2 + ... + 1/6."""
    counts = [bests_in(list(order)) for order in permutations(range(180, 186))]
    assert isclose(sum(counts) / len(counts), sum(1 / n for n in range(1, 7)))


def test_luck_in_twelve_runs() -> None:
    """Twelve runs of an unchanged cook give 3.1 bests on average, counting the first: H12, within 4 standard errors."""
    draw = random.Random(12)  # noqa: S311 - a simulation
    rounds = 2_000
    mean = sum(bests_in(draw.sample(range(1_000, 9_000), 12)) for _ in range(rounds)) / rounds
    variance = H12 - sum(1 / n**2 for n in range(1, 13))
    assert round(H12, 1) == 3.1
    assert abs(mean - H12) < 4 * (variance / rounds) ** 0.5


def test_too_few_for_noise() -> None:
    """Two runs say nothing about how far a cook's runs lie apart."""
    assert own_noise([180.0, 190.0]) is usual_difference_s([180.0, 190.0]) is None


def test_usual_difference() -> None:
    """Runs that step by 5 % about 3:00 usually differ by 9 s."""
    assert usual_difference_s([180.0, 189.0, 180.0, 189.0, 180.0]) == 9


@given(st.lists(st.floats(60, 600), min_size=3, max_size=30), st.floats(0.5, 2))
def test_noise_is_relative(nets_s: list[float], slower: float) -> None:
    """Noise is of log net: the same for a drill that takes twice as long, and never negative."""
    noise, scaled = own_noise(nets_s), own_noise([net_s * slower for net_s in nets_s])
    assert noise is not None
    assert scaled is not None
    assert noise >= 0
    assert isclose(noise, scaled, abs_tol=1e-9)
