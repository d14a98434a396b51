"""Raw events are read as the Matrix specification writes them.

Sources: the examples are those of the Matrix specification (github.com/matrix-org/matrix-spec: event schemas and the
client-server modules named beside each), unless marked as constructed.
"""

from datetime import UTC, datetime
from typing import Any

import pytest

from bot.matrix.events import arrives
from bot.services.ports.events import Edit, Membership, Message, Reaction, Redaction, RoomState
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR
from tests.matrix.examples import EDIT, REPLY, read
from tests.matrix.fakes import BOT, raw_event, raw_member, raw_message


def text_of(raw: dict[str, Any]) -> str | None:
    """The words of a message; None where nothing was said to the bot."""
    event = read(raw)
    assert event is None or isinstance(event, Message)
    return event.text if event else None


def test_a_text_keeps_its_words_sender_room_and_time() -> None:
    """Source: constructed from the m.room.message schema; times are Unix milliseconds."""
    assert read(raw_message("$1")) == Message(
        event_id="$1", room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, text="8:05 11/12"
    )


def test_a_servers_time_is_milliseconds_since_1970() -> None:
    """Source: T, the timestamp 1432735824653 of the specification's event examples; recomputed with date(1)."""
    event = read(raw_message("$1") | {"origin_server_ts": 1432735824653})
    assert isinstance(event, Message)
    assert event.sent_at == datetime(2015, 5, 27, 14, 10, 24, 653000, UTC)


@pytest.mark.parametrize("msgtype", ["m.notice", "m.emote", "m.audio", "m.location", "m.key.verification.request"])
def test_what_is_no_plain_text_says_nothing(msgtype: str) -> None:
    """Notices above all: two bots that answer each other's notices never stop."""
    assert read(raw_message("$1", msgtype=msgtype)) is None


@pytest.mark.parametrize("type_", ["m.room.message", "m.reaction", "m.room.redaction"])
def test_what_the_bot_said_itself_on_any_device_is_not_heard(type_: str) -> None:
    """The sender decides, for an event does not say which device it came from."""
    content = {"msgtype": "m.text", "body": "8:05 11/12", "redacts": "$2"}
    relation = {"m.relates_to": {"rel_type": "m.annotation", "event_id": "$2", "key": "x"}}
    assert read(raw_event("$1", type_, NOOR, content=content | relation)) is not None
    assert read(raw_event("$1", type_, BOT, content=content | relation)) is None


@pytest.mark.parametrize(
    ("content", "caption"),
    [
        ({"body": "8:05 11/12", "filename": "plate.jpg"}, "8:05 11/12"),
        ({"body": "plate.jpg", "filename": "plate.jpg"}, None),
        ({"body": "plate.jpg"}, None),
    ],
)
@pytest.mark.parametrize("msgtype", ["m.image", "m.video", "m.file"])
def test_a_pictures_caption_is_read_and_its_file_name_is_not(
    msgtype: str, content: dict[str, str], caption: str | None
) -> None:
    """Source: T, MSC2530, in the specification since v1.10: a caption is where filename is present and not the body."""
    assert text_of(raw_event("$1", content=content | {"msgtype": msgtype})) == caption


def test_a_bare_picture_is_heard_only_as_an_answer() -> None:
    """A picture without a caption is something said where it answers a message, since it may show a run."""
    content = {"msgtype": "m.image", "body": "plate.jpg"}
    answer = read(raw_event("$1", content=content | {"m.relates_to": {"m.in_reply_to": {"event_id": "$run"}}}))
    assert isinstance(answer, Message)
    assert (answer.picture, answer.text, answer.reply_to) == (True, "", "$run")
    assert read(raw_event("$1", content=content)) is None


@pytest.mark.parametrize(
    ("body", "said"),
    [
        (
            "> <@alice:example.org> This is the first line\n> This is the second line\n\nThis is the reply",
            "This is the reply",
        ),
        (
            "> * <@alice:example.org> feels like today is going to be a great day\n\nThis is the reply",
            "This is the reply",
        ),
        ("That sounds like a great idea!", "That sounds like a great idea!"),
        ("> 8 plates is too few\n\n3:02 8/8", "> 8 plates is too few\n\n3:02 8/8"),
        ("> <@alice:example.org> one\n\n3:02 8/8\n\n> 2:58 8/8", "3:02 8/8\n\n> 2:58 8/8"),
    ],
)
def test_the_quotation_before_a_reply_is_taken_off(body: str, said: str) -> None:
    """Source: T, "Fallbacks for rich replies" (specification before v1.13), first three; constructed, the rest."""
    event = read(raw_message("$1", body, **REPLY))
    assert isinstance(event, Message)
    assert (event.text, event.reply_to) == (said, "$another_event")


def test_a_quotation_in_what_is_no_reply_stays() -> None:
    """Somebody may write such a line themselves."""
    body = "> <@alice:example.org> one\n\ntwo"
    assert text_of(raw_message("$1", body)) == body


def test_a_thread_is_its_root_and_the_link_for_older_clients_is_no_reply() -> None:
    """Source: T, "Fallback for unthreaded clients" and "Replies within threads"."""
    relation = {"rel_type": "m.thread", "event_id": "$root", "m.in_reply_to": {"event_id": "$target"}}
    fallback = read(raw_message("$1", **{"m.relates_to": relation | {"is_falling_back": True}}))
    reply = read(raw_message("$2", **{"m.relates_to": relation}))
    assert isinstance(fallback, Message)
    assert isinstance(reply, Message)
    assert (fallback.thread, fallback.reply_to) == ("$root", None)
    assert (reply.thread, reply.reply_to) == ("$root", "$target")


def test_who_is_mentioned_is_what_the_sender_stated() -> None:
    """Source: T, "User and room mentions": m.mentions decides, not the words."""
    event = read(raw_message("$1", "for @lio", **{"m.mentions": {"user_ids": ["@lio:tern.example"]}}))
    assert isinstance(event, Message)
    assert event.mentions == ("@lio:tern.example",)


def test_an_edit_brings_its_new_content_and_not_the_starred_body() -> None:
    """Source: T, "Event replacements", first example, with mentions added."""
    assert read(raw_event("$1", content=EDIT)) == Edit(
        event_id="$1",
        room_id=KITCHEN_ROOM,
        sender=NOOR,
        sent_at=MONDAY,
        target="$some_event_id",
        text="Hello! My name is bar",
        mentions=("@b:c",),
    )


def test_an_edit_without_new_content_is_none() -> None:
    """Source: T, "Validity of replacement events": there must be an m.new_content."""
    assert read(raw_event("$1", content={key: EDIT[key] for key in EDIT if key != "m.new_content"})) is None


def test_an_edit_of_a_caption_is_read_and_one_into_a_notice_is_not() -> None:
    """Source: T, "Event replacements": the new msgtype may differ from the old."""
    caption = {"msgtype": "m.image", "body": "3:02 8/8", "filename": "plate.jpg"}
    edit = read(raw_event("$1", content=EDIT | {"m.new_content": caption}))
    assert isinstance(edit, Edit)
    assert edit.text == "3:02 8/8"
    assert read(raw_event("$1", content=EDIT | {"m.new_content": {"msgtype": "m.notice", "body": "x"}})) is None


def test_a_reaction_has_its_target_and_its_key_as_sent() -> None:
    """Source: T, event-schemas/examples/m.reaction.yaml."""
    relation = {"rel_type": "m.annotation", "event_id": "$some_event_id", "key": "👍"}
    assert read(raw_event("$1", "m.reaction", content={"m.relates_to": relation})) == Reaction(
        event_id="$1", room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, target="$some_event_id", key="👍"
    )


@pytest.mark.parametrize(
    "fields",
    [
        {"content": {"redacts": "$fukweghifu23:localhost", "reason": "Spamming"}},
        {"content": {"reason": "Spamming"}, "redacts": "$fukweghifu23:localhost"},
        {"content": {"redacts": "$another"}, "redacts": "$fukweghifu23:localhost"},
    ],
)
def test_a_redaction_is_read_in_the_form_of_every_room_version(fields: dict[str, Any]) -> None:
    """Source: T, event-schemas/examples/m.room.redaction.yaml (version 11); versions 1 to 10 constructed.

    Where both stand and differ, the outer one is what the server acted on.
    """
    assert read(raw_event("$1", "m.room.redaction", **fields)) == Redaction(
        event_id="$1", room_id=KITCHEN_ROOM, sender=NOOR, sent_at=MONDAY, target="$fukweghifu23:localhost"
    )


def test_a_deleted_message_says_nothing() -> None:
    """Source: T, "Redactions": the content is gone, the reason stands beside it."""
    assert read(raw_event("$1", unsigned={"redacted_because": raw_event("$2", "m.room.redaction")})) is None


def test_a_membership_says_who_is_now_what_under_which_name() -> None:
    """Source: T, event-schemas/examples/m.room.member.yaml."""
    content = {
        "membership": "join",
        "avatar_url": "mxc://example.org/SEsfnsuifSDFSSEF",
        "displayname": "Alice Margatroid",
        "reason": "Looking for support",
    }
    alice = "@alice:example.org"
    assert read(raw_event("$1", "m.room.member", alice, content=content, state_key=alice)) == Membership(
        event_id="$1",
        room_id=KITCHEN_ROOM,
        sender=alice,
        sent_at=MONDAY,
        person=alice,
        state="join",
        name="Alice Margatroid",
    )


def test_the_bots_own_membership_is_heard_and_known_as_direct_from_its_invitation() -> None:
    """Source: T, m.room.member schema: is_direct stands in the invitation, which the join takes the place of."""
    event = read(raw_member("$1", unsigned={"prev_content": {"membership": "invite", "is_direct": True}}))
    assert isinstance(event, Membership)
    assert (event.person, event.state, event.direct) == (BOT, "join", True)


@pytest.mark.parametrize("type_", ["m.room.create", "m.room.power_levels", "m.room.name"])
def test_the_state_that_decides_authority_is_kept_raw_whoever_set_it(type_: str) -> None:
    """The bot's own too: of a room that it made, it is the creator."""
    content = {"users": {NOOR: 50}, "anything": [1, None]}
    for sender in (NOOR, BOT):
        event = read(raw_event("$1", type_, sender, content=content, state_key=""))
        assert isinstance(event, RoomState)
        assert (event.type, event.content, event.sender) == (type_, content, sender)
    assert read(raw_event("$1", type_, content=content, state_key="other")) is None
    assert read(raw_event("$1", type_, content=content)) is None


def test_only_coming_in_counts_as_arriving() -> None:
    """A new display name is the same event type, with the same membership, as a join."""
    assert arrives(raw_member("$1"), BOT)
    assert arrives(raw_member("$1", before="invite"), BOT)
    assert not arrives(raw_member("$1", before="join"), BOT)
    assert not arrives(raw_member("$1", membership="leave", before="join"), BOT)
    assert not arrives(raw_member("$1", NOOR), BOT)
    assert not arrives("text", BOT)
