"""The boards rank fairly, share ties, and show nobody's last place."""

from collections.abc import Callable
from itertools import permutations
from math import ceil

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.boards import Entry, Figure, Row, public, rank_clean, rank_fast, rank_steady
from bot.domain.run import Kind

COOKS = ["@noor", "@kwabena", "@lio", "@petra", "@anselm", "@sunniva"]
Rank = Callable[[list[Entry]], tuple[Row, ...]]


def sent(cook: str, *nets_s: float | None, witnessed: bool = True, kind: Kind = "counted") -> list[Entry]:
    """A cook's runs of eight plates, all good."""
    return [Entry(cook, net_s, 8, 8, witnessed=witnessed, kind=kind) for net_s in nets_s]


def table(rows: tuple[Row, ...]) -> list[tuple[int, str, float]]:
    """Place, cook and value of every row."""
    return [(row.place, row.figure.user_id, row.figure.value) for row in rows]


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


def rows_of(places: list[int]) -> tuple[Row, ...]:
    """Rows with these places."""
    return tuple(Row(place, Figure(f"@{nth}", float(place), 1)) for nth, place in enumerate(places))


def test_fast_is_the_best_of_five_with_its_tries() -> None:
    """The best witnessed run counts, beside it how many runs it took; a sixth run is too late."""
    week = [*sent("@noor", 200, 190, 195, 191, 192, 150), *sent("@lio", 188)]
    assert table(rank_fast(week)) == [(1, "@lio", 188), (2, "@noor", 190)]
    assert [row.figure.tries for row in rank_fast(week)] == [1, 5]


def test_fast_needs_a_witness_and_a_time() -> None:
    """An unwatched run, one without a time and one while settling in give no place, yet each is a try."""
    week = [*sent("@noor", 170, witnessed=False), *sent("@noor", None), *sent("@noor", 160, kind="settling")]
    assert rank_fast(week) == ()
    assert rank_fast([*week, *sent("@noor", 200)])[0].figure == Figure("@noor", 200, 4)


@pytest.mark.parametrize("order", list(permutations(range(3))))
def test_ties_share(order: tuple[int, ...]) -> None:
    """Equal whole seconds share a place, 1, 1, 3, whoever sent first."""
    week = [sent("@lio", 180.2), sent("@noor", 179.9), sent("@petra", 185)]
    rows = rank_fast([entry for nth in order for entry in week[nth]])
    assert table(rows) == [(1, "@lio", 180), (1, "@noor", 180), (3, "@petra", 185)]


def test_steady_is_the_median_of_three_or_more() -> None:
    """A run with no time is slower than any; two runs are no median; a median without a time is no place."""
    week = [*sent("@noor", 190, 200, 210), *sent("@lio", 180, 181), *sent("@petra", 185, None, 195)]
    week += [*sent("@anselm", None, None, 100), *sent("@kwabena", 180, None, 190, None)]
    assert table(rank_steady(week)) == [(1, "@petra", 195), (2, "@noor", 200)]


def test_clean_trusts_many_plates_more() -> None:
    """35 of 36 (0.885) stands above 6 of 6 (0.689); a rebuilt plate was not right first time."""
    noor = [Entry("@noor", 300, 12, 12, witnessed=True)] * 2 + [Entry("@noor", 300, 12, 12, 1, witnessed=True)]
    rows = rank_clean([Entry("@lio", 200, 6, 6, witnessed=True), *noor])
    assert [(row.place, row.figure.user_id, round(row.figure.value, 3)) for row in rows] == [
        (1, "@noor", 0.885),
        (2, "@lio", 0.689),
    ]
    assert (rows[0].figure.clean, rows[0].figure.attempted) == (35, 36)


def test_clean_with_nothing_good() -> None:
    """A cook with no clean plate has the value nought, and plates nobody watched are no share at all."""
    rows = rank_clean([Entry("@lio", None, 0, 8, witnessed=True), Entry("@noor", None, 0, 6, witnessed=True)])
    assert table(rows) == [(1, "@lio", 0.0), (1, "@noor", 0.0)]
    assert rank_clean(sent("@petra", 200, witnessed=False)) == ()


def test_too_close_to_call() -> None:
    """With a rule for what is distinguishable, a place is one more than the cooks distinguishably better."""
    week = [*sent("@noor", 180), *sent("@lio", 183), *sent("@petra", 186), *sent("@anselm", 200)]
    rows = rank_fast(week, better=lambda one, other: other.value - one.value >= 5)
    assert table(rows) == [(1, "@lio", 183), (1, "@noor", 180), (2, "@petra", 186), (4, "@anselm", 200)]


@pytest.mark.parametrize(
    ("places", "ran", "shown"),
    [
        ([1, 2], 2, []),
        ([1, 2, 3], 3, [1]),
        ([1, 2, 3, 4], 4, [1, 2]),
        ([1, 2, 3, 4, 5, 6, 7, 8], 8, [1, 2, 3]),
        ([1, 1, 3, 4], 4, [1, 1]),
        ([1, 2, 2, 4, 5], 5, [1, 2, 2]),
        ([1, 2, 2, 2], 4, [1]),
        ([1, 1, 1], 3, [1, 1, 1]),
        ([1, 2, 3], 6, [1, 2, 3]),
        ([1], 4, [1]),
        ([], 4, []),
    ],
)
def test_public(places: list[int], ran: int, shown: list[int]) -> None:
    """Nothing below three cooks; the first half, three at most, and ties; only the shared first if ties show all."""
    assert [row.place for row in public(rows_of(places), ran)] == shown


@given(entries, ranks)
def test_places(week: list[Entry], rank: Rank) -> None:
    """Each cook has at most one place; places are those of a shared-place ranking; the order of cooks is free."""
    rows = rank(week)
    values = [row.figure.value for row in rows]
    assert len({row.figure.user_id for row in rows}) == len(rows)
    ahead = max if rank is rank_clean else min
    assert [row.place for row in rows] == [1 + sum(ahead(v, own) != own for v in values) for own in values]


@given(entries, ranks, st.permutations(COOKS))
def test_send_time_breaks_no_tie(week: list[Entry], rank: Rank, order: list[str]) -> None:
    """Which cook sent first changes nothing: only the order of a cook's own runs counts."""
    assert rank(week) == rank(sorted(week, key=lambda entry: order.index(entry.user_id)))


@given(entries, ranks)
def test_nobody_is_shown_last(week: list[Entry], rank: Rank) -> None:
    """The public rows are a head of the board of at most half of those who ran, or one shared place."""
    ran = len({entry.user_id for entry in week})
    rows = rank(week)
    shown = public(rows, ran)
    assert rows[: len(shown)] == shown
    places = {row.place for row in shown}
    assert places <= {1} or len({row.figure.user_id for row in shown}) < max(ran, len(rows))
    assert sum(row.place < max(places, default=1) for row in shown) <= min(3, ran // 2)
    assert ran >= 3 or shown == ()


@given(st.integers(3, 60))
def test_half_of_many(ran: int) -> None:
    """Without ties exactly floor(n / 2) are shown, three at most."""
    shown = public(rows_of(list(range(1, ran + 1))), ran)
    assert len(shown) == min(3, ran - ceil(ran / 2))
