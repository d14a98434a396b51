"""Which verdict on a run stands, and how two judges agree."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.judging import By, Check, Judged, Verdict, check_judges, check_pair, may_judge, settle
from tests.fakes import MONDAY

HOUR = timedelta(hours=1)


def _said(judge: str, good: int, by: By = "witness", at: datetime = MONDAY + HOUR) -> Verdict:
    return Verdict(judge, by, good, at)


def _settle(*verdicts: Verdict, sent: int = 12) -> Judged:
    return settle("noor", sent, MONDAY, verdicts, partner="lio")


def test_unjudged_stays_self() -> None:
    """Without a verdict the run stands as it was sent."""
    assert _settle() == Judged(12, "self")


def test_nobody_judges_their_own_run() -> None:
    """Neither the runner nor the pair partner is heard, whatever they call themselves."""
    assert _settle(_said("noor", 11), _said("lio", 10, "photo")) == Judged(12, "self")
    assert may_judge("bastian", "noor", "lio")
    assert not may_judge("lio", "noor", "lio")


def test_one_judge_decides() -> None:
    """A witness who agrees or is stricter decides; what the runner did not claim is not added."""
    assert _settle(_said("bastian", 12)) == Judged(12, "witness")
    assert _settle(_said("bastian", 11)) == Judged(11, "witness")
    assert _settle(_said("bastian", 12), sent=10) == Judged(10, "witness")


@pytest.mark.parametrize(("first", "second"), [(12, 10), (10, 12)])
def test_of_two_the_stricter_stands(first: int, second: int) -> None:
    """A later, stricter verdict wins, a later milder one does not; either way the split waits for a third judge."""
    assert _settle(_said("bastian", first), _said("ime", second, "photo", MONDAY + 2 * HOUR)) == Judged(
        10, "photo", split=True
    )


@pytest.mark.parametrize(("third", "good"), [(12, 12), (10, 10), (11, 11), (9, 10)])
def test_a_third_settles(third: int, good: int) -> None:
    """Whom the third judge joins is right; where all three differ, the middle one is."""
    verdicts = _said("bastian", 12), _said("ime", 10, "photo"), _said("kwabena", third)
    assert _settle(*verdicts) == Judged(good, "photo")


def test_a_judge_may_think_again() -> None:
    """Of one judge the last verdict counts, in whatever order they come in."""
    again = _said("bastian", 12, at=MONDAY + 3 * HOUR)
    assert _settle(again, _said("bastian", 9)) == Judged(12, "witness")


def test_judging_closes_after_48_hours() -> None:
    """A verdict at 48 hours counts, one a second later does not."""
    end = MONDAY + timedelta(hours=48)
    assert _settle(_said("bastian", 11, at=end)) == Judged(11, "witness")
    assert _settle(_said("bastian", 11, at=end + timedelta(seconds=1))) == Judged(12, "self")


@given(st.permutations([_said("bastian", 12), _said("ime", 11, "photo"), _said("kwabena", 9), _said("noor", 3)]))
def test_order_does_not_matter(verdicts: list[Verdict]) -> None:
    """The same verdicts of different judges settle a run alike in any order."""
    assert _settle(*verdicts) == Judged(11, "photo")


def test_everyone_accepts_everything() -> None:
    """Twelve photos, all accepted by both: full agreement, and kappa undefined rather than nought or one."""
    assert check_pair([True] * 12, [True] * 12) == Check(12, 12, None)


def test_every_pair_of_judges() -> None:
    """Of three judges each two are compared; one photo of twelve seen otherwise is 11 of 12.

    Kappa by hand: chance (11 x 10 + 1 x 2) / 144 = 7/9, so (11/12 - 7/9) / (1 - 7/9) = 5/8.
    """
    strict, mild = [True] * 10 + [False] * 2, [True] * 11 + [False]
    checks = check_judges({"bastian": strict, "ime": mild, "noor": mild})
    assert list(checks) == [("bastian", "ime"), ("bastian", "noor"), ("ime", "noor")]
    assert [(check.photos, check.agreed) for check in checks.values()] == [(12, 11), (12, 11), (12, 12)]
    assert [check.kappa for check in checks.values()] == pytest.approx([5 / 8, 5 / 8, 1.0], abs=1e-12)


def test_judges_who_saw_different_photos() -> None:
    """Two lists of different length are a mistake and no agreement."""
    with pytest.raises(ValueError, match="argument 2"):
        check_pair([True], [True, False])
