"""A right-to-left page: what stands in an Arabic reply is seen in the order in which it is read.

The order on the page is worked out from the HTML as it is sent. In what that gives, the leftmost character comes first.
"""

from bot.replies.markup import to_html
from bot.replies.phrases import Phrases, english
from tests.right_to_left import MARKS, page

ARABIC = Phrases(
    "ar",
    [
        "heard = سُمعت. { $clock }، { $accepted }/{ $plates }. { $pace } ث لكل لمسة.\n",
        "send = أرسل `3:02 8/8` أو `{ $clock } { $accepted }/{ $plates }`.\n",
        "list = الأولى إلى الأخيرة: { $runs }.\n",
        "words = الكلمات: { $words }.\n",
        "told = { $line } نعم\n",
    ],
)
"""A few sentences as an Arabic catalogue may have them: the order of numbers is looked at here, not the wording."""


def test_figures_keep_their_order() -> None:
    """A clock, a fraction and a pace are read from the left, and what comes first stands on the right."""
    (seen,) = page(ARABIC("heard", clock="3:02", accepted=7, plates=8, pace="3.25"))
    assert seen.index("3.25") < seen.index("7/8") < seen.index("3:02")


def test_what_is_typed_stands_as_it_is_typed() -> None:
    """The clock comes before the count, in a fixed example as in a filled one, with nothing to copy but itself."""
    told = ARABIC("send", clock="3:20", accepted=7, plates=8)
    (seen,) = page(told)
    assert "3:02 8/8" in seen
    assert "3:20 7/8" in seen
    assert "<code>3:20 7/8</code>" in to_html(told)


def test_without_isolates_it_would_turn_around() -> None:
    """The same line without them shows the count first: the test can see what it looks for."""
    told = MARKS.sub("", ARABIC("send", clock="3:20", accepted=7, plates=8))
    assert "8/8 3:02" in page(told)[0]


def test_a_list_begins_on_the_right() -> None:
    """The first of some clocks stands rightmost, each clock in its own order."""
    (seen,) = page(ARABIC("list", runs="3:41, 3:26, 3:12"))
    assert seen.index("3:12") < seen.index("3:26") < seen.index("3:41")


def test_a_sentence_within_a_sentence() -> None:
    """A line that stands in another keeps its order too, and is isolated once."""
    line = ARABIC("send", clock="3:20", accepted=7, plates=8)
    told = ARABIC("told", line=line)
    assert "3:20 7/8" in page(told)[0]
    assert told.count("\u2066`") == line.count("\u2066`") == 2
    assert "\u2066\u2066" not in told


def test_words_in_english_letters() -> None:
    """Words to type stay whole, each in its own isolate."""
    assert "!post 6 mon 15:00" in page(ARABIC("words", words="`!post 6 mon 15:00` `!skip 1`"))[0]


def test_latin_languages_have_no_marks() -> None:
    """English sentences hold no character unseen."""
    assert not MARKS.search(english()("rebuilt-hint", clock="3:20", plates=8, redo=1))
