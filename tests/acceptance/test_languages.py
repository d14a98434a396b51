"""A week through `rehearse` in every language: the same replies, numbers and silences.

Acceptance 10, 11, 13 to 16, 20, 22 and 23 are told in their own tests in English; here it is that language changes
nothing of them but the words, and that what is seen on a right-to-left page is in the order in which it is read.
"""

import json
import re
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest

from bot.rehearse import rehearse
from bot.replies.accepted_words import languages
from bot.replies.markup import to_html
from bot.replies.phrases import is_right_to_left
from tests.right_to_left import MARKS, page

ALLOWED = frozenset(
    {
        *(
            "del",
            "h1",
            "h2",
            "h3",
            "h4",
            "h5",
            "h6",
            "blockquote",
            "p",
            "a",
            "ul",
            "ol",
            "sup",
            "sub",
            "li",
            "b",
            "i",
            "u",
        ),
        *(
            "strong",
            "em",
            "s",
            "code",
            "hr",
            "br",
            "div",
            "table",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "caption",
            "pre",
        ),
        *("span", "img", "details", "summary"),
    }
)
"""Matrix specification v1.11, client-server API, m.room.message msgtypes: the HTML tags that clients are to allow (from
memory)."""

OTHERS = [language for language in languages() if language != "en"]
FIGURE = re.compile(r"\d+(?::\d\d)+|\d+/\d+")
"""A clock or a fraction."""

TALK = ("table 12?", "86 the trout", "why", "next", "hold on")
WEEK = [
    ("23T09:01", "ime", "!zone Europe/London"),
    ("23T09:02", "ime", "!dayturn 07:00"),
    ("23T09:03", "ime", "!post now 6"),
    ("23T09:04", "noor", "!join"),
    ("23T09:05", "lio", "!join"),
    ("23T09:06", "noor", "!words"),
    ("23T15:00", "noor", "3:02 8/8"),
    ("23T15:01", "lio", "3:20 ٧/٨ fell"),
    ("23T15:02", "lio", "3.20 8/8"),
    ("23T15:03", "lio", "3:20 9/8"),
    ("23T15:04", "lio", "!best"),
    *((f"23T15:{minute:02}", "noor", said) for minute, said in enumerate(TALK, 10)),
    ("23T15:30", "lio", "3:10 5/8"),
    ("24T15:00", "noor", "at 13:30 3:01 8/8"),
    ("25T15:00", "noor", "2:59 8/8"),
    ("26T15:00", "noor", "2:58 7/8"),
    ("27T15:00", "noor", "2:57 8/8"),
    ("27T15:01", "noor", "!trend"),
    ("27T15:02", "noor", "!why"),
    ("27T15:03", "petra", "!target brisk"),
    ("27T15:04", "noor", "!board"),
    ("27T15:05", "ime", "!order"),
    ("27T15:06", "ime", "!table 170x70"),
    ("30T05:10", "noor", "at 02:10 3:31 8/8"),
    ("30T10:00", "ime", "!words"),
]
PRIVATELY = [
    ("30T10:01", "petra", "post now 6"),
    ("30T10:02", "noor", "forget me"),
    ("30T10:03", "noor", "yes, forget me"),
    ("30T10:04", "noor", "records"),
]


def _script(language: str) -> Iterator[dict[str, str]]:
    yield {"time": "2026-11-23T09:00+00:00", "sender": "ime", "text": f"!lang {language}"}
    for moment, sender, text in WEEK:
        yield {"time": f"2026-11-{moment}+00:00", "sender": sender, "text": text}
    yield {"time": "2026-11-30T10:00+00:00", "sender": "ime", "text": "!drills"}
    for moment, sender, text in PRIVATELY:
        yield {"time": f"2026-11-{moment}+00:00", "sender": sender, "text": text, "room": "private"}


def told_in(language: str, directory: Path) -> list[dict[str, Any]]:
    """What the bot says to the week when its room speaks this language."""
    script = directory / f"{language}.jsonl"
    script.write_text("\n".join(map(json.dumps, _script(language))), "utf-8")
    told: list[str] = []
    rehearse(script, as_json=True, write=told.append)
    return [json.loads(line) for line in told]


class _Tags(HTMLParser):
    """Collects the tags and the text of a formatted body."""

    def __init__(self, body: str) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.text = ""
        self.feed(body)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Keep the tag, which has no attributes."""
        assert attrs == []
        self.tags.add(tag)
        self.text += "\n" if tag == "br" else ""

    def handle_data(self, data: str) -> None:
        """Keep the text."""
        self.text += data


@pytest.mark.parametrize("language", languages())
def test_rich_replies_are_within_the_specification(language: str, tmp_path: Path) -> None:
    """Every formatted body has allowed tags alone, and says what the plain body says."""
    rich = [(told["text"], body) for told in told_in(language, tmp_path) if (body := to_html(told["text"]))]
    assert len(rich) >= 10
    for text, body in rich:
        read = _Tags(body)
        assert read.tags <= ALLOWED
        assert read.text == text.replace("`", "")


@pytest.mark.parametrize("language", OTHERS)
def test_language_changes_nothing_but_words(language: str, tmp_path: Path) -> None:
    """The same replies in the same places with the same numbers behind them, and talk is silence."""
    of = ("time", "room", "thread", "style", "attachment", "figures")
    english, other = (
        [{name: told[name] for name in of} for told in told_in(code, tmp_path)] for code in ("en", language)
    )
    assert other == english
    assert not any("T15:1" in told["time"] for told in other)


@pytest.mark.parametrize("language", languages())
def test_clocks_and_fractions_are_read_in_order(language: str, tmp_path: Path) -> None:
    """On a right-to-left page every clock, fraction and thing to type stands as it is typed."""
    if not is_right_to_left(language):
        assert not any(MARKS.search(told["text"]) for told in told_in(language, tmp_path))
        return
    for told in told_in(language, tmp_path):
        plain = MARKS.sub("", told["text"]).split("\n")
        for line, seen in zip(plain, page(told["text"]), strict=True):
            wanted = [*FIGURE.findall(line), *re.findall(r"`([^`]+)`", line)]
            assert [figure for figure in wanted if figure not in seen] == [], line
