"""The only way to say something: every message becomes an outbox row of the same transaction, counted by part."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime
from types import MappingProxyType

from bot.replies.markup import to_html
from bot.services.ports.attachments import Attachment
from bot.services.ports.messages import Cause, EventRef, Figure, Outgoing
from bot.services.ports.world import UnitOfWork

NOTED = "\N{MEMO}"

Figures = Mapping[str, Figure]
NONE: Figures = MappingProxyType({})


class Speaker:
    """Says the parts of one answer, in order; the same cause said again says nothing new."""

    def __init__(self, work: UnitOfWork, cause: Cause) -> None:
        self._work = work
        self._cause = cause
        self._part = 0

    async def say(self, note: Outgoing) -> EventRef:
        """Put the next part in the outbox."""
        ref = await self._work.outbox.add(note, self._cause, self._part)
        self._part += 1
        return ref

    async def post(self, room_id: str, text: str, attachment: Attachment | None = None) -> EventRef:
        """Say it in the room's main timeline so that people are alerted."""
        return await self.say(Outgoing(to=room_id, style="text", text=text, html=to_html(text), attachment=attachment))

    async def notice(
        self,
        room_id: str,
        text: str,
        *,
        thread: EventRef | None = None,
        reply_to: EventRef | None = None,
        about: str = "",
        figures: Figures = NONE,
        attachment: Attachment | None = None,
    ) -> EventRef:
        """Say it quietly in the room, in a thread where one is given."""
        return await self.say(
            Outgoing(
                to=room_id,
                style="notice",
                text=text,
                html=to_html(text),
                thread=thread,
                reply_to=reply_to,
                about=about,
                figures=dict(figures),
                attachment=attachment,
            )
        )

    async def tell(
        self,
        user_id: str,
        text: str,
        figures: Figures = NONE,
        *,
        not_before: datetime | None = None,
        attachment: Attachment | None = None,
    ) -> EventRef:
        """Say it in the private room of two with this person; not before then, if they did not ask."""
        note = Outgoing(to=user_id, style="text", text=text, html=to_html(text), figures=dict(figures))
        return await self.say(replace(note, not_before=not_before, attachment=attachment))

    async def noted(self, room_id: str, event_id: str) -> EventRef:
        """Put the memo pad on a message."""
        return await self.say(Outgoing(to=room_id, style="reaction", target=EventRef(event_id), key=NOTED))

    async def pin(self, room_id: str, target: EventRef, replaces: EventRef | None) -> EventRef:
        """Pin a message in the place of an earlier one."""
        return await self.say(Outgoing(to=room_id, style="pin", target=target, replaces=replaces))
