"""What is malformed becomes nothing, never an error, and loses nothing beside it; examples are constructed."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.services.ports.events import Membership, Message
from tests.fakes import NOOR
from tests.matrix.examples import EDIT, REPLY, read
from tests.matrix.fakes import raw_event, raw_member, raw_message


@pytest.mark.parametrize(
    "raw",
    [
        None,
        "text",
        [],
        {},
        {key: value for key, value in raw_message("$1").items() if key != "content"},
        raw_message("$1") | {"content": "x"},
        raw_message("$1") | {"sender": 5},
        raw_message("$1") | {"event_id": ["$1"]},
        raw_message("$1") | {"event_id": "$" + "x" * 300},
        raw_message("$1") | {"origin_server_ts": "now"},
        raw_message("$1") | {"origin_server_ts": -1},
        raw_message("$1") | {"origin_server_ts": 10**18},
        raw_message("$1", **{"m.relates_to": "$root"}),
        raw_message("$1", **{"m.relates_to": {"rel_type": 5}}),
        raw_message("$1", **{"m.relates_to": {"m.in_reply_to": "$root"}}),
        raw_event("$1", content={"msgtype": "m.text", "body": 805}),
        raw_event("$1", content={"msgtype": "m.text"}),
        raw_event("$1", content={"body": "8:05 11/12"}),
        raw_message("$1", "x" * 60_000),
        raw_message("$1", "8:05\x0011/12"),
        raw_message("$1", "8:05 \ud800"),
        raw_message("$1", other="\x00"),
        raw_event("$1", content=EDIT | {"m.new_content": "x"}),
        raw_event("$1", content=EDIT | {"m.relates_to": {"rel_type": "m.replace"}}),
        raw_event("$1", "m.reaction", content={"m.relates_to": {"rel_type": "m.annotation", "event_id": "$2"}}),
        raw_event("$1", "m.reaction", content={}),
        raw_event("$1", "m.room.redaction"),
        raw_event("$1", "m.room.redaction", redacts=5),
        raw_event("$1", "m.room.member", content={"membership": "join"}),
        raw_event("$1", "m.room.member", content={"membership": "lurk"}, state_key=NOOR),
        raw_event("$1", "m.room.topic", content={"topic": "x"}, state_key=""),
    ],
)
def test_what_is_malformed_or_not_ours_is_nothing(raw: object) -> None:
    """Each for itself: no content, a relation that is text, 60 kB, numbers for text, NUL, half a surrogate."""
    assert read(raw) is None


@pytest.mark.parametrize("mentions", ["@lio:tern.example", {"user_ids": [5]}, {"user_ids": "x"}, [], None])
def test_malformed_mentions_mention_nobody_and_lose_no_result(mentions: object) -> None:
    """A client's slip in a side matter costs nobody a run."""
    event = read(raw_message("$1", **{"m.mentions": mentions}))
    assert isinstance(event, Message)
    assert event.mentions == ()


@pytest.mark.parametrize("name", [None, 5, ["x"], "x" * 5000])
def test_a_malformed_name_loses_no_membership(name: object) -> None:
    """Who is in the room matters more than what they are called."""
    event = read(raw_event("$1", "m.room.member", state_key=NOOR, content={"membership": "join", "displayname": name}))
    assert isinstance(event, Membership)
    assert len(event.name) <= 255


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text() | st.sampled_from(["m.text", "m.thread", "$1"]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=9), inner, max_size=4),
    max_leaves=12,
)
REAL = [
    raw_message("$1", **REPLY),
    raw_event("$1", content=EDIT),
    raw_event("$1", "m.reaction", content={"m.relates_to": {"rel_type": "m.annotation", "event_id": "$2", "key": "x"}}),
    raw_event("$1", "m.room.redaction", redacts="$2"),
    raw_member("$1", before="invite"),
    raw_event("$1", "m.room.power_levels", content={"users": {NOOR: 50}}, state_key=""),
]


@given(raw=st.sampled_from(REAL), data=st.data())
@settings(max_examples=500, deadline=None)
def test_a_real_event_with_any_part_replaced_is_read_or_refused_and_can_be_stored(
    raw: dict[str, Any], data: st.DataObject
) -> None:
    """Never an exception, and nothing that a database refuses to write."""
    changed = json.loads(json.dumps(raw))
    for _ in range(data.draw(st.integers(1, 3))):
        place = changed if data.draw(st.booleans()) else changed.get("content")
        if isinstance(place, dict) and place:
            place[data.draw(st.sampled_from(sorted(place)))] = data.draw(JSON)
    event = read(changed)
    assert "\\x00" not in repr(event)
    repr(event).encode()


@given(raw=JSON)
@settings(max_examples=300, deadline=None)
def test_anything_that_is_no_event_is_refused_quietly(raw: object) -> None:
    """Whatever JSON can hold."""
    assert read(raw) is None
