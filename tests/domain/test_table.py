"""Tables and patterns. Expected centimetres are fixtures of the project's own rule, added up by hand."""

from dataclasses import replace

import pytest

from bot.domain.drill import MOST_ROWS, SetUp
from bot.domain.table import Pattern, Table, most_that_fit, pattern_of, patterns_on, walked

TWELVE = SetUp(plates=12, rows=2)


def _shape(pattern: Pattern | None) -> tuple[int, int, int] | None:
    return (pattern.set_up.plates, pattern.set_up.rows, pattern.set_up.columns) if pattern else None


def test_what_a_pattern_takes() -> None:
    """Two rows of six plates of 27 cm take 178 x 59 cm."""
    pattern = pattern_of(TWELVE, 27)
    assert (pattern.length_cm, pattern.depth_cm, pattern.fits) == (178, 59, True)


def test_170_cm_are_8_short() -> None:
    """On 170 x 100 cm two rows of six are 8 cm short, one row 182, and a third row is out of reach though it fits."""
    one, two, three = patterns_on(TWELVE, 27, Table(170, 100))
    assert (one.short_length_cm, two.short_length_cm, three.short_length_cm) == (182, 8, 0)
    assert [p.fits for p in (one, two, three)] == [False, False, False]
    assert [p.in_reach for p in (one, two, three)] == [True, True, False]
    assert (three.length_cm, three.depth_cm, three.short_depth_cm) == (120, 88, 0)


def test_depth_counts_too() -> None:
    """A table of 50 cm is 9 cm too shallow for two rows."""
    _, two, _ = patterns_on(TWELVE, 27, Table(300, 50))
    assert (two.short_length_cm, two.short_depth_cm, two.fits) == (0, 9, False)


@pytest.mark.parametrize(
    ("table", "shape"),
    [
        (Table(170, 70), (10, 2, 5)),
        (Table(178, 59), (12, 2, 6)),
        (Table(177, 59), (10, 2, 5)),
        (Table(236, 58), (8, 1, 8)),
        (Table(33, 30), (1, 1, 1)),
        (Table(33, 29), None),
        (Table(32, 200), None),
    ],
)
def test_the_most_plates_that_fit(table: Table, shape: tuple[int, int, int] | None) -> None:
    """To the centimetre; never more rows than can be reached, however deep the table."""
    assert _shape(most_that_fit(TWELVE, 27, table)) == shape


def test_few_plates_have_no_more_rows() -> None:
    """One plate is one row; three rows are tried for three plates and more."""
    rows = [[p.set_up.rows for p in patterns_on(SetUp(plates=n), 27, Table(900, 900))] for n in (1, 2, 3, 40)]
    assert rows == [[1], [1, 2], [1, 2, 3], [1, 2, 3]]
    assert MOST_ROWS == 2


@pytest.mark.parametrize(
    ("plates", "rows", "far_to_near"),
    [
        (12, 2, [[12, 11, 10, 9, 8, 7], [1, 2, 3, 4, 5, 6]]),
        (7, 2, [[None, 7, 6, 5], [1, 2, 3, 4]]),
        (3, 1, [[1, 2, 3]]),
    ],
)
def test_plates_are_walked_there_and_back(plates: int, rows: int, far_to_near: list[list[int | None]]) -> None:
    """The number after the last of the near row lies straight behind it."""
    assert walked(replace(TWELVE, plates=plates, rows=rows)) == far_to_near
