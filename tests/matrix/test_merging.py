"""Four or more answers waiting for one thread are one message; the examples are constructed."""

from dataclasses import replace
from typing import Any

from bot.matrix.merging import merge
from bot.services.ports.messages import EventRef, Waiting
from tests.fakes import KITCHEN_ROOM, LIO, NOOR, a_note

ROOT = EventRef("$root")


def waiting(number: int, text: str | None = None, **changes: Any) -> Waiting:
    """An answer waiting in the kitchen's lane."""
    note = a_note(text or f"line {number}", **({"thread": ROOT, "about": f"Cook {number}"} | changes))
    return Waiting(id=number, lane=KITCHEN_ROOM, txn_id=f"t{number}", note=note, attempts=0, first_try_at_s=None)


def test_four_answers_are_one_message_of_four_named_lines() -> None:
    """In order, without a reply to any one of them, and alerting whoever any of them alerts."""
    line = [
        waiting(n, reply_to=EventRef(f"$said{n}"), mentions=(NOOR, LIO) if n == 2 else (NOOR,)) for n in range(1, 5)
    ]
    note, absorbed = merge(line)
    assert note.text == "Cook 1: line 1\nCook 2: line 2\nCook 3: line 3\nCook 4: line 4"
    assert absorbed == (2, 3, 4)
    assert (note.thread, note.reply_to, note.html, note.mentions) == (ROOT, None, "", (NOOR, LIO))


def test_three_answers_go_one_by_one() -> None:
    """A conversation is not a list."""
    line = [waiting(n) for n in range(1, 4)]
    assert merge(line) == (line[0].note, ())


def test_no_more_than_twelve_lines_are_in_one_message() -> None:
    """Whoever has more lines takes more of the twelve."""
    assert merge([waiting(n) for n in range(1, 20)])[1] == tuple(range(2, 13))
    tall = [waiting(1, "a\nb\nc\nd\ne"), *(waiting(n) for n in range(2, 20))]
    assert merge(tall)[1] == tuple(range(2, 9))


def test_no_more_than_a_message_holds_is_in_one() -> None:
    """Names count too: 16,000 bytes are five lines of 3,000 named in ten; the sixth would be cut off."""
    assert merge([waiting(n, "x" * 3000) for n in range(1, 9)])[1] == (2, 3, 4, 5)
    assert merge([waiting(n, "é" * 1500) for n in range(1, 9)])[1] == (2, 3, 4, 5)
    assert merge([waiting(n, "x" * 3995, about="") for n in range(1, 9)])[1] == (2, 3, 4)
    assert merge([waiting(n, "x" * 3995) for n in range(1, 9)])[1] == ()


def test_rich_text_is_merged_with_names_and_plain_lines_escaped() -> None:
    """A name cannot dress itself as markup."""
    line = [waiting(n, about="<b>Noor</b>") for n in range(1, 5)]
    line[1] = replace(line[1], note=replace(line[1].note, text="`3:20`", html="<code>3:20</code>"))
    html = merge(line)[0].html.split("<br>")
    assert html[0] == "&lt;b&gt;Noor&lt;/b&gt;: line 1"
    assert html[1] == "&lt;b&gt;Noor&lt;/b&gt;: <code>3:20</code>"


def test_what_is_about_nobody_has_no_name_before_it() -> None:
    """The thread itself is then what it is about."""
    assert merge([waiting(n, about="") for n in range(1, 5)])[0].text == "line 1\nline 2\nline 3\nline 4"


def test_another_thread_style_or_target_ends_the_message() -> None:
    """Order in the lane is kept: what comes after does not overtake."""
    for changes in ({"thread": EventRef("$other")}, {"thread": None}, {"style": "text"}, {"target": EventRef("$x")}):
        line = [waiting(n) for n in range(1, 12)]
        line[5] = waiting(6, **changes)
        assert merge(line)[1] == (2, 3, 4, 5)


def test_what_was_tried_before_is_never_altered() -> None:
    """It may be in the room already, under its transaction id, as it was."""
    line = [waiting(n) for n in range(1, 8)]
    line[0] = replace(line[0], first_try_at_s=1.0)
    assert merge(line) == (line[0].note, ())
