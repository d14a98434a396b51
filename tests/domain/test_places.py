"""Of a board at most half is for everybody, a shared place whole or not at all, and nobody is left alone unnamed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.places import Board, Figure, board, how_many_shown


def slower_by(seconds: float, *values: float, off: frozenset[str] = frozenset()) -> Board:
    """A board of cooks ``0``, ``1`` ... with these times, told apart from so many seconds on."""
    figures = [Figure(str(nth), value, 1) for nth, value in enumerate(values)]
    return board(figures, lambda one, other: other.value - one.value >= seconds, lambda figure: figure.value, off)


def places(of: Board) -> list[tuple[int, str, bool]]:
    """Place, cook and whether it is too close to call, of every row."""
    return [(row.place, row.figure.user_id, row.close) for row in of.rows]


def test_a_place_is_one_more_than_those_distinguishably_better() -> None:
    """Who is too near to somebody ahead shares the place of those as many are better than; an exact tie is no doubt."""
    assert places(slower_by(5, 180, 183, 186, 200, 200)) == [
        (1, "0", True),
        (1, "1", True),
        (2, "2", False),
        (4, "3", False),
        (4, "4", False),
    ]


@pytest.mark.parametrize(
    ("at", "shown"),
    [
        ([1, 2], 0),
        ([1, 2, 3], 1),
        ([1, 2, 3, 4], 2),
        ([1, 2, 3, 4, 5, 6, 7, 8], 3),
        ([1, 1, 3, 4], 2),
        ([1, 2, 2, 4, 5], 1),
        ([1, 2, 2, 2], 1),
        ([1, 1, 1, 4], 0),
        ([1, 1, 1], 0),
        ([1, 1, 1, 4, 5, 6], 3),
        ([1, 1, 1, 1, 5, 6, 7, 8], 0),
        ([], 0),
    ],
)
def test_at_most_half_is_shown_and_three(at: list[int], shown: int) -> None:
    """Nothing below three cooks; a tie that crosses the edge is left out, or three of four would leave one unnamed."""
    assert how_many_shown(at) == shown


@given(st.lists(st.integers(180, 190).map(float), max_size=12), st.sampled_from([0.5, 3, 6]))
def test_nobody_is_shown_last(values: list[float], apart: float) -> None:
    """At least as many cooks are unnamed as named, and everybody named has a better place than everybody unnamed."""
    of = slower_by(apart, *values)
    unnamed = of.rows[of.shown :]
    assert len(of.public) <= min(len(unnamed), 3)
    assert all(named.place < other.place for named in of.public for other in unnamed)


def test_all_shown_nothing_is_too_close_to_call() -> None:
    """Where nobody can be shown for the ties that is what is said; below three cooks it is not."""
    assert slower_by(5, 180, 181, 182).too_close
    assert not slower_by(5, 180, 181).too_close
    assert not slower_by(5, 180, 190, 200).too_close


def test_who_is_off_boards_counts_for_nobodys_place_and_no_half() -> None:
    """Without the fastest of four there are three: one is shown, at place 1; the one who is off still has a place."""
    of = slower_by(5, 180, 190, 200, 210, off=frozenset("0"))
    assert places(of) == [(1, "1", False), (2, "2", False), (3, "3", False)]
    assert [row.figure.user_id for row in of.public] == ["1"]
    own = of.row_of("0")
    assert own is not None
    assert own.place == 1
    assert [place for place, *_ in places(slower_by(5, 180, 190, 200, off=frozenset("2")))] == [1, 2]
    assert slower_by(5, 180, 190, 200, off=frozenset("2")).shown == 0
