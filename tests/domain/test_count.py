"""What a line leaves out is filled in, and what cannot be is refused with one sentence or asked about."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.run import Count, Sent, read_count
from bot.errors import UserError


def _refusal(sent: Sent, plates: int = 8) -> UserError:
    with pytest.raises(UserError) as refused:
        read_count(sent, plates, "6")
    return refused.value


@pytest.mark.parametrize(
    ("sent", "count"),
    [
        (Sent(182, accepted=8, plates=8), Count(8, 8)),
        (Sent(182, accepted=7, plates=8), Count(8, 7, redo=1)),
        (Sent(182, accepted=7), Count(8, 7, redo=1)),
        (Sent(182, redo=1), Count(8, 7, redo=1)),
        (Sent(182, redo=0), Count(8, 8)),
        (Sent(182, redo=1, left=2), Count(8, 5, redo=1, left=2)),
        (Sent(182, all_good=True), Count(8, 8)),
        (Sent(182, all_good=True, left=2), Count(8, 6, left=2)),
        (Sent(130, accepted=6, plates=8, left=2), Count(8, 6, left=2)),
        (Sent(130, accepted=5, plates=8, left=2), Count(8, 5, redo=1, left=2)),
        (Sent(130, accepted=6, plates=6, left=2), Count(8, 6, left=2)),
        (Sent(130, accepted=5, plates=6, left=2), Count(8, 5, redo=1, left=2)),
        (Sent(130, accepted=6, plates=8, redo=1), Count(8, 6, redo=1, left=1)),
        (Sent(182, accepted=0, plates=8), Count(8, 0, redo=8)),
        (Sent(60, left=8), Count(8, 0, left=8)),
        (Sent(200, accepted=8, plates=8, rebuilt=1, fixed=2), Count(8, 8, rebuilt=1, fixed=2)),
    ],
)
def test_the_rest_follows(sent: Sent, count: Count) -> None:
    """Accepted, redo and left make up the plates, whichever of them were sent."""
    assert read_count(sent, 8, "6") == count


def test_nine_of_eight() -> None:
    """9/8 is refused with what to send if one was rebuilt, clock and all."""
    refusal = _refusal(Sent(200, accepted=9, plates=8))
    assert refusal.key == "too-many-plates"
    assert refusal.values == {"drill": "6", "plates": 8, "over": 1, "good": 8, "clock": "3:20"}


def test_far_too_many() -> None:
    """90/8 cannot be rebuilt plates, so nothing of the kind is offered."""
    assert _refusal(Sent(200, accepted=90, plates=8)).key == "far-too-many-plates"


@pytest.mark.parametrize("sent", [Sent(200, accepted=9), Sent(200, accepted=7, plates=9)])
def test_another_number_of_plates_is_refused(sent: Sent) -> None:
    """More good plates than the drill has, or a count of more than it has, are too many."""
    assert _refusal(sent).key == "too-many-plates"


def test_seven_of_seven_on_eight_asks_whether_one_was_left() -> None:
    """The question carries what was sent; answered yes, the same line with one left reads on."""
    sent = Sent(182, accepted=7, plates=7)
    refusal = _refusal(sent)
    assert refusal.key == "one-left"
    assert refusal.values == {"drill": "6", "plates": 8, "left": 1, "again": "7/8"}
    assert read_count(replace(sent, left=1), 8, "6") == Count(8, 7, left=1)


@pytest.mark.parametrize(("sent", "of"), [(Sent(182), 8), (Sent(182, left=2), 6), (Sent(182, rebuilt=1), 8)])
def test_a_clock_alone_is_asked_how_many(sent: Sent, of: int) -> None:
    """Without a count the question is how many of those built were good."""
    refusal = _refusal(sent)
    assert (refusal.key, refusal.values) == ("how-many-good", {"plates": of})


@pytest.mark.parametrize(
    "sent",
    [
        Sent(182, accepted=7, plates=8, redo=2),
        Sent(182, accepted=8, plates=8, left=1),
        Sent(182, accepted=5, plates=8, redo=1, left=1),
        Sent(182, redo=9),
        Sent(182, left=9),
        Sent(182, all_good=True, redo=1),
        Sent(182, accepted=7, plates=6),
        Sent(182, accepted=7, plates=7, left=3),
    ],
)
def test_a_count_that_does_not_add_up_is_refused(sent: Sent) -> None:
    """Good, redo and left that do not make the drill's plates are nobody's run."""
    assert _refusal(sent).key == "count-does-not-add-up"


def test_more_mended_than_good_is_refused() -> None:
    """Rebuilt and fixed plates are among the good ones."""
    refusal = _refusal(Sent(182, accepted=2, plates=8, rebuilt=2, fixed=1))
    assert (refusal.key, refusal.values) == ("more-mended-than-good", {"mended": 3, "good": 2})


MAYBE = st.none() | st.integers(0, 70)


@given(
    sent=st.builds(
        Sent,
        st.integers(1, 86400),
        accepted=MAYBE,
        plates=MAYBE,
        all_good=st.booleans(),
        redo=MAYBE,
        left=MAYBE,
        rebuilt=st.integers(0, 9),
        fixed=st.integers(0, 9),
    ),
    plates=st.integers(1, 60),
)
def test_whatever_is_sent_adds_up_or_is_refused(sent: Sent, plates: int) -> None:
    """A + R + L = P with no part below nothing, what was sent is kept, and the only way out is a UserError."""
    try:
        count = read_count(sent, plates, "6")
    except UserError:
        return
    assert count.accepted + count.redo + count.left == plates == count.plates
    assert min(count.accepted, count.redo, count.left) >= 0
    assert count.rebuilt + count.fixed <= count.accepted
    if not sent.all_good:
        assert sent.accepted in (None, count.accepted)
    assert sent.redo in (None, count.redo)
    assert sent.left in (None, count.left)
