"""A right-to-left page, laid out by Unicode's own algorithm (annex 9, by `unicode-bidi` through `python-bidi`)."""

import html
import re

from bidi import get_display

from bot.replies.markup import to_html

MARKS = re.compile("[\u2066-\u2069]")
"""The isolates."""


def page(reply: str) -> list[str]:
    """The lines of a reply as a client shows its HTML, in a paragraph from right to left, from the left edge on."""
    body = to_html(reply) or html.escape(reply, quote=False).replace("\n", "<br>")
    lines = [html.unescape(re.sub(r"<[^>]*>", "", line)) for line in body.split("<br>")]
    return [MARKS.sub("", str(get_display(line, base_dir="R"))) for line in lines]
