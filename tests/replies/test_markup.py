"""Text to HTML with nothing let through, and names made harmless."""

import html
import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.replies.markup import plain_name, to_html

TAGS = re.compile(r"<[^>]*>")
OURS = {"<code>", "</code>", "<br>"}


@given(st.text(max_size=200) | st.text(st.sampled_from("`<>&\n ab!/\"'"), max_size=60))
def test_only_our_tags_come_out(text: str) -> None:
    """Whatever is said, the HTML holds no tag but ours and says the same as the text."""
    told = to_html(text)
    if not told:
        assert "`" not in text
        return
    assert set(TAGS.findall(told)) <= OURS
    plain = html.unescape(told.replace("<br>", "\n").replace("<code>", "`").replace("</code>", "`"))
    assert plain == text


def test_code_is_marked() -> None:
    """What stands in back-ticks is code, lines stay lines, and plain text needs no HTML."""
    assert to_html("Send `3:20` or\n`3:12`.") == "Send <code>3:20</code> or<br><code>3:12</code>."
    assert to_html("Heard <all> & well.") == ""


@given(st.text(max_size=120))
def test_any_name_is_harmless(name: str) -> None:
    """A name is one short run without controls, direction marks, line ends or back-ticks, and never empty."""
    safe = plain_name(name)
    assert 1 <= len(safe) <= 40
    assert "`" not in safe
    assert {unicodedata.category(c) for c in safe}.isdisjoint({"Cc", "Cf", "Cs", "Zl", "Zp"})
    assert plain_name(safe) == safe


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("Noor", "Noor"),
        ("  Noor \n of the\tPass ", "Noor of the Pass"),
        ("\u202eroo\u200bN\u2066", "rooN"),
        ("`!post now`", "'!post now'"),
        ("نور", "نور"),
        ("", "somebody"),
        ("\u200b\u200e", "somebody"),
    ],
)
def test_names(name: str, told: str) -> None:
    """Names of every script stay as they are; only what hides or turns is taken out."""
    assert plain_name(name) == told
