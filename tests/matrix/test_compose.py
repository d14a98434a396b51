"""What goes on the wire is as the Matrix specification has it (modules "Threading", "Rich replies", "Mentions")."""

from typing import Any

from bot.matrix.compose import MOST_BYTES, compose_message, compose_reaction
from bot.services.ports.messages import EventRef
from tests.fakes import NOOR, a_note


def test_a_notice_alerts_nobody_and_says_so() -> None:
    """Source: T, "User and room mentions": an empty m.mentions alerts nobody; none at all leaves it to old rules."""
    assert compose_message(a_note("Heard."), "t1") == {
        "msgtype": "m.notice",
        "body": "Heard.",
        "m.mentions": {},
        "platepace.txn": "t1",
    }


def test_a_text_names_whom_it_alerts_and_never_the_room() -> None:
    """The word in the text means nothing by itself."""
    content = compose_message(a_note("@room", style="text", mentions=(NOOR,)), "t1")
    assert content["msgtype"] == "m.text"
    assert content["m.mentions"] == {"user_ids": [NOOR]}


def test_rich_text_stands_beside_the_plain_one() -> None:
    """Source: T, "m.room.message msgtypes": format and formatted_body go together."""
    content = compose_message(a_note("Send `3:20`.", html="Send <code>3:20</code>."), "t1")
    assert (content["format"], content["formatted_body"]) == ("org.matrix.custom.html", "Send <code>3:20</code>.")


def test_in_a_thread_the_reply_is_there_for_older_clients_only() -> None:
    """Source: T, "Fallback for unthreaded clients"."""
    note = a_note(thread=EventRef("$root"), reply_to=EventRef("$target"))
    assert compose_message(note, "t1")["m.relates_to"] == {
        "rel_type": "m.thread",
        "event_id": "$root",
        "m.in_reply_to": {"event_id": "$target"},
        "is_falling_back": True,
    }
    alone: Any = compose_message(a_note(thread=EventRef("$root")), "t1")
    assert alone["m.relates_to"]["m.in_reply_to"] == {"event_id": "$root"}


def test_outside_a_thread_a_reply_is_a_reply() -> None:
    """Source: T, "Rich replies"."""
    content = compose_message(a_note(reply_to=EventRef("$another_event")), "t1")
    assert content["m.relates_to"] == {"m.in_reply_to": {"event_id": "$another_event"}}


def test_a_reaction_is_an_annotation() -> None:
    """Source: T, event-schemas/examples/m.reaction.yaml."""
    note = a_note("", style="reaction", target=EventRef("$some_event_id"), key="👍")
    assert compose_reaction(note, "t1")["m.relates_to"] == {
        "rel_type": "m.annotation",
        "event_id": "$some_event_id",
        "key": "👍",
    }


def test_a_text_beyond_measure_ends_at_a_line_with_an_ellipsis() -> None:
    """The last resort: 16 kB are kept, whole lines, no half character, and no rich text that would say more."""
    line = "é" * 99
    content = compose_message(a_note("\n".join([line] * 200), html="<b>all</b>"), "t1")
    body = str(content["body"])
    assert len(body.encode()) <= MOST_BYTES
    assert set(body.split("\n")) == {line, "…"}
    assert "formatted_body" not in content


def test_one_endless_line_is_cut_where_it_fits() -> None:
    """There is no line end to cut at."""
    body = str(compose_message(a_note("é" * 20_000), "t1")["body"])
    assert len(body.encode()) <= MOST_BYTES
    assert body.endswith("é\n…")
