"""The headline: every cook against their own, so that a beginner may head it; and what the house did, nobody named."""

from dataclasses import replace
from math import log

import pytest

from bot.domain.boards import Entry, Week
from bot.domain.expected import Expected
from bot.domain.own_board import own_scores, percent_faster, rank_own, together

NOISE = 0.04


def sent(cook: str, *nets_s: float | None, witnessed: bool = True, good: int = 8) -> list[Entry]:
    """A cook's counted runs of eight plates."""
    return [Entry(cook, net_s, good, 8, witnessed=witnessed) for net_s in nets_s]


def week_of(*runs: list[Entry], **expected_s: float) -> Week:
    """A week of cooks with 4 % noise, each expected to take so many seconds by own runs on the set-up."""
    entries = [entry for theirs in runs for entry in theirs]
    expected = {cook: Expected(net_s, 160.0, 1.0, runs=5) for cook, net_s in expected_s.items()}
    return Week(entries, {entry.user_id: NOISE for entry in entries}, expected)


@pytest.mark.parametrize(
    ("nets_s", "score"),
    [
        ([180.0], log(190 / 180) / 0.04),
        ([178, 180, 196], log(190 / 180) / (0.04 * 1.2533 / 3**0.5)),
        ([190, 190, 190], 0.0),
        ([120.0], 3.0),
        ([360.0], -3.0),
    ],
)
def test_the_score_is_in_standard_errors_of_the_weeks_middle(nets_s: list[float], score: float) -> None:
    """(expected - actual) / spread in logs: own noise for one run, x 1.2533 / sqrt(n) for more; at most three.

    1.2533 is sqrt(pi / 2), the large-sample standard error of a median over that of a mean (any text; recomputed).
    """
    (figure,) = own_scores(week_of(sent("noor", *nets_s), noor=190))
    assert figure.value == pytest.approx(score, rel=1e-4)


def test_the_middle_is_of_watched_runs_among_the_first_five() -> None:
    """A sixth run and one that nobody watched are not looked at; one with no time is slower than any."""
    (six,) = own_scores(week_of(sent("noor", 190, 190, 190, 190, 190, 100), noor=190))
    assert (six.value, six.runs) == (0.0, 5)
    (unwatched,) = own_scores(week_of([*sent("noor", 100, witnessed=False), *sent("noor", 190)], noor=190))
    assert (unwatched.value, unwatched.runs) == (0.0, 1)
    (no_time,) = own_scores(week_of(sent("noor", 170, 190, None), noor=190))
    assert no_time.value == 0.0
    assert own_scores(week_of(sent("noor", 170, None, None), noor=190)) == []


def test_a_beginner_may_head_it() -> None:
    """Petra's 5:00 where 5:40 was expected of her stands above the three who are faster, and is all that is shown."""
    week = week_of(
        *(sent("noor", 182), sent("kwabena", 193), sent("lio", 200), sent("petra", 300)),
        **{"noor": 180, "kwabena": 190, "lio": 198, "petra": 340},
    )
    board = rank_own(week)
    assert board.rows[0].figure.user_id == "petra"
    assert percent_faster(board.rows[0].figure) == 12
    assert [row.figure.user_id for row in board.public] == ["petra"]


def test_scores_too_near_share_a_place() -> None:
    """Two scores are told apart from 1.28 x sqrt(2) = 1.81 on, each having a standard error of one."""
    far, near = 190 * 2.718281828 ** (-0.04 * 1.82), 190 * 2.718281828 ** (-0.04 * 1.80)
    assert [row.place for row in rank_own(week_of(sent("a", far), sent("b", 190), a=190, b=190)).rows] == [1, 2]
    assert [row.place for row in rank_own(week_of(sent("a", near), sent("b", 190), a=190, b=190)).rows] == [1, 1]


def test_nobody_is_shown_as_slower_than_expected() -> None:
    """A week in which all were slower shows nobody, and is not called too close."""
    slow = dict.fromkeys("abcd", 190.0)
    week = week_of(sent("a", 191), sent("b", 206), sent("c", 240), sent("d", 300), **slow)
    board = rank_own(week)
    assert [row.place for row in board.rows] != [1, 1, 1, 1]
    assert (board.public, board.too_close) == ((), False)


def test_who_has_nothing_to_compare_with_has_no_place() -> None:
    """A cook in the first week is on no headline board, and the house's share leaves them out."""
    week = week_of(sent("noor", 180), sent("petra", 300), noor=190)
    assert [row.figure.user_id for row in rank_own(week).rows] == ["noor"]
    assert together(week).compared == 1


def test_the_house_counts_everybody() -> None:
    """Who met their own expected time, those off boards too, and all plates right first time, watched or not."""
    rebuilt = [Entry("lio", 260, 8, 8, rebuilt=2, witnessed=True)]
    unwatched = sent("petra", 300, witnessed=False, good=7)
    week = replace(week_of(sent("noor", 190), rebuilt, unwatched, noor=190, lio=200), off=frozenset(["noor"]))
    house = together(week)
    assert (house.compared, house.met, house.clean_plates) == (2, 1, 8 + 6 + 7)
