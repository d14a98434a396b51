"""Events as the Matrix specification writes them, read as the bot reads them in the kitchen."""

from bot.matrix.events import read_event
from tests.fakes import KITCHEN_ROOM
from tests.matrix.fakes import BOT

REPLY = {"m.relates_to": {"m.in_reply_to": {"event_id": "$another_event"}}}
"""Source: T, specification, "Rich replies"."""

EDIT = {
    "body": "* Hello! My name is bar",
    "msgtype": "m.text",
    "m.new_content": {"body": "Hello! My name is bar", "msgtype": "m.text", "m.mentions": {"user_ids": ["@b:c"]}},
    "m.relates_to": {"rel_type": "m.replace", "event_id": "$some_event_id"},
}
"""Source: T, specification, "Event replacements", first example, with a mention added."""


def read(raw: object) -> object:
    """As the bot reads it in the kitchen."""
    return read_event(raw, KITCHEN_ROOM, BOT)
