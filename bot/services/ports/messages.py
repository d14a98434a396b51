"""What goes to a room, in the bot's own terms: services write it, the outbox keeps it, the messenger sends it."""

from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal, NewType

from bot.services.ports.attachments import Attachment

EventRef = NewType("EventRef", str)
"""An event: its id (``$...``), or ``outbox:<row id>`` for a message of ours that has no event id yet."""

Figure = float | int | str | None
"""One number behind a reply, in seconds where its name ends in ``_s``."""

Style = Literal["text", "notice", "reaction", "pin", "join", "leave", "leave_if_empty"]
"""``text`` alerts people (drill posts, private answers); ``notice`` does not; ``pin`` pins ``target``.

The last three say nothing: the bot comes into the room or goes out of it, if need be only where nobody else is left.
"""


@dataclass(frozen=True, kw_only=True)
class Outgoing:
    """One message, reaction or pin, or a coming or going of the bot itself.

    ``to`` is a room id, or a person's id for the private room of two that the bot opens with them. ``thread`` is the
    root that the message hangs under, ``reply_to`` the message it answers, ``target`` what a reaction or pin is put
    on and ``replaces`` what a pin takes the place of. ``key`` is a reaction's emoji, or the server through which a room
    is joined. ``about`` is the name of whom an answer is for: it is shown only
    when several answers are sent as one message. Nobody is alerted unless named in ``mentions``. What nobody waits
    for may be kept until ``not_before``; it holds nothing else up. An ``attachment`` is sent with the text, which says
    the same as it; ``uploaded`` is what the message says of it once the homeserver has it.
    """

    to: str
    style: Style
    text: str = ""
    html: str = ""
    thread: EventRef | None = None
    reply_to: EventRef | None = None
    target: EventRef | None = None
    replaces: EventRef | None = None
    key: str = ""
    about: str = ""
    mentions: tuple[str, ...] = ()
    not_before: datetime | None = None
    attachment: Attachment | None = None
    uploaded: dict[str, object] | None = None
    figures: dict[str, Figure] = field(default_factory=dict)


@dataclass(frozen=True, kw_only=True)
class Cause:
    """Why something is said; with the part number it makes the saying unique.

    Either the event that is answered (``event_id``; ``revision`` counts deliberate second answers to it; an id of our
    own such as ``close:17`` where no event caused it), or a schedule's slot.
    """

    event_id: str | None = None
    revision: int = 0
    schedule_id: int | None = None
    slot: str | None = None


@dataclass(frozen=True, kw_only=True)
class Waiting:
    """An outbox row at the head of its lane, ready to send: the transaction id never changes once stored."""

    id: int
    lane: str
    txn_id: str
    note: Outgoing
    attempts: int
    first_try_at_s: float | None
    """POSIX time of the first attempt; None before it."""


class SendRefused(Exception):  # noqa: N818 - it is an answer of the server, not an error of ours
    """The server will never take this message (403, 404, 413); the row is dead."""


class TryLater(Exception):  # noqa: N818 - as above
    """The message may go later; ``after_s`` is the server's wish, None where it named none."""

    def __init__(self, problem: str, after_s: float | None = None) -> None:
        super().__init__(problem)
        self.after_s = after_s
