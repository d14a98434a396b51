"""The boards rank fairly, share ties, call nothing that is too close, and trust many plates more than few."""

from collections import defaultdict
from collections.abc import Callable
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.boards import Entry, Week, rank_clean, rank_fast, rank_steady
from bot.domain.places import Board, Figure
from bot.domain.run import Kind

COOKS = ["@noor", "@kwabena", "@lio", "@petra", "@anselm", "@sunniva"]
Rank = Callable[[Week], Board]


def sent(cook: str, *nets_s: float | None, witnessed: bool = True, kind: Kind = "counted") -> list[Entry]:
    """A cook's runs of eight plates, all good."""
    return [Entry(cook, net_s, 8, 8, witnessed=witnessed, kind=kind) for net_s in nets_s]


def week_of(entries: list[Entry], noise: float = 0.0) -> Week:
    """A week of cooks who all have this noise; without any, every second tells."""
    return Week(entries, defaultdict(lambda: noise))


def table(board: Board) -> list[tuple[int, str, float]]:
    """Place, cook and value of every row."""
    return [(row.place, row.figure.user_id, row.figure.value) for row in board.rows]


entries = st.lists(
    st.builds(
        Entry,
        user_id=st.sampled_from(COOKS),
        net_s=st.none() | st.integers(150, 170).map(float),
        accepted=st.integers(3, 8),
        attempted=st.just(8),
        rebuilt=st.integers(0, 3),
        witnessed=st.booleans(),
        kind=st.sampled_from(["counted", "settling"]),
    ),
    max_size=40,
)
ranks = st.sampled_from([rank_fast, rank_steady, rank_clean])


def test_fast_is_the_best_of_five_with_its_tries() -> None:
    """The best witnessed run counts, beside it how many runs it took; a sixth run is too late."""
    week = [*sent("@noor", 200, 190, 195, 191, 192, 150), *sent("@lio", 188)]
    assert table(rank_fast(week_of(week))) == [(1, "@lio", 188), (2, "@noor", 190)]
    assert [row.figure.runs for row in rank_fast(week_of(week)).rows] == [1, 5]


def test_fast_needs_a_witness_and_a_time() -> None:
    """An unwatched run, one without a time and one while settling in give no place, yet each is a try."""
    week = [*sent("@noor", 170, witnessed=False), *sent("@noor", None), *sent("@noor", 160, kind="settling")]
    assert rank_fast(week_of(week)).rows == ()
    assert rank_fast(week_of([*week, *sent("@noor", 200)])).rows[0].figure == Figure("@noor", 200, 4, 0.0)


@pytest.mark.parametrize("order", list(permutations(range(3))))
def test_ties_share(order: tuple[int, ...]) -> None:
    """Equal whole seconds share a place, 1, 1, 3, whoever sent first."""
    week = [sent("@lio", 180.2), sent("@noor", 179.9), sent("@petra", 185)]
    assert table(rank_fast(week_of([entry for nth in order for entry in week[nth]]))) == [
        (1, "@lio", 180),
        (1, "@noor", 180),
        (3, "@petra", 185),
    ]


def test_steady_is_the_median_of_three_or_more() -> None:
    """A run with no time is slower than any; two runs are no median; a median without a time is no place."""
    week = [*sent("@noor", 190, 200, 210), *sent("@lio", 180, 181), *sent("@petra", 185, None, 195)]
    week += [*sent("@anselm", None, None, 100), *sent("@kwabena", 180, None, 190, None)]
    assert table(rank_steady(week_of(week))) == [(1, "@petra", 195), (2, "@noor", 200)]


def test_clean_trusts_many_plates_more() -> None:
    """35 of 36 (0.885) stands above 6 of 6 (0.689), too close to call; a rebuilt plate was not right first time."""
    noor = [Entry("@noor", 300, 12, 12, witnessed=True)] * 2 + [Entry("@noor", 300, 12, 12, 1, witnessed=True)]
    rows = rank_clean(week_of([Entry("@lio", 200, 6, 6, witnessed=True), *noor])).rows
    assert [(row.figure.user_id, round(row.figure.value, 3)) for row in rows] == [("@noor", 0.885), ("@lio", 0.689)]
    assert [(row.place, row.close) for row in rows] == [(1, True), (1, True)]
    assert (rows[0].figure.clean, rows[0].figure.attempted) == (35, 36)


def test_clean_with_nothing_good() -> None:
    """A cook with no clean plate has the value nought, and plates nobody watched are no share at all."""
    nothing = [Entry("@lio", None, 0, 8, witnessed=True), Entry("@noor", None, 0, 6, witnessed=True)]
    assert table(rank_clean(week_of(nothing))) == [(1, "@lio", 0.0), (1, "@noor", 0.0)]
    assert rank_clean(week_of(sent("@petra", 200, witnessed=False))).rows == ()


@pytest.mark.parametrize(
    ("net_s", "place"),
    [(212, 1), (213, 2)],
)
def test_fast_tells_apart_by_own_noises(net_s: float, place: int) -> None:
    """With 4 % noise each a run is behind one of 3:18 from 1.28 x sqrt(2) x 4 % = 7.24 % of log net on.

    198 s x exp(0.0724) = 212.9 s (worked out by hand).
    """
    board = rank_fast(week_of([*sent("@noor", 198), *sent("@lio", net_s)], noise=0.04))
    assert [row.place for row in board.rows] == [1, place]


def test_steady_tells_apart_by_the_noises_of_medians() -> None:
    """A median of four has 1.2533 / 2 of the noise: 3:00 and 3:09 are told apart, which a single run of each is not.

    Standard error of the difference 0.04 x 1.2533 / 2 x sqrt(2) = 3.54 %, x 1.28 = 4.54 %; ln(189/180) = 4.88 %.
    """
    week = week_of([*sent("@noor", 180, 180, 180, 180), *sent("@lio", 189, 189, 189, 189)], noise=0.04)
    assert [row.place for row in rank_steady(week).rows] == [1, 2]
    assert [row.place for row in rank_fast(week).rows] == [1, 1]


def test_clean_tells_two_shares_apart() -> None:
    """48 of 48 and 36 of 48 differ by more than chance makes; 48 and 47 of 48 do not."""
    best, worse, near = (
        [Entry(cook, 200, good, 48, witnessed=True)] for cook, good in zip("abc", (48, 36, 47), strict=True)
    )
    assert [row.place for row in rank_clean(week_of([*best, *worse])).rows] == [1, 2]
    assert [row.place for row in rank_clean(week_of([*best, *near])).rows] == [1, 1]


@given(entries, ranks)
def test_places(week: list[Entry], rank: Rank) -> None:
    """Each cook has at most one place; places are those of a shared-place ranking where every second tells."""
    rows = rank(week_of(week)).rows
    assert len({row.figure.user_id for row in rows}) == len(rows)
    assert [row.place for row in rows] == sorted(row.place for row in rows)
    if rank is not rank_clean:
        values = [row.figure.value for row in rows]
        assert [row.place for row in rows] == [1 + sum(value < own for value in values) for own in values]


@given(entries, ranks, st.permutations(COOKS), st.sampled_from([0.0, 0.01, 0.04]))
def test_send_time_breaks_no_tie(week: list[Entry], rank: Rank, order: list[str], noise: float) -> None:
    """Which cook sent first changes nothing: only the order of a cook's own runs counts."""
    sorted_ = sorted(week, key=lambda entry: order.index(entry.user_id))
    assert rank(week_of(week, noise)) == rank(week_of(sorted_, noise))
