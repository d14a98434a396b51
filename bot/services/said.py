"""Something that a person said in a kitchen, with everything that is needed to answer it."""

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Self

from bot.replies.markup import plain_name
from bot.replies.phrases import Phrases, phrases_in
from bot.services.authority import is_chef
from bot.services.house import House
from bot.services.ports.attachments import Attachment
from bot.services.ports.drill_records import LiveDrill
from bot.services.ports.messages import EventRef
from bot.services.ports.records import Kitchen, Member
from bot.services.ports.run_records import Held, Question, QuestionKind
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import NONE, Figures, Speaker


@dataclass(frozen=True, kw_only=True)
class Said:
    """One message as the services see it.

    ``room_id`` is where it was said, which is not the kitchen's room where ``private`` is true. ``arrived`` is its
    place in stream order, ``member`` what is known of the person in this kitchen. A ``picture``'s text is its caption.
    ``aside`` says that the answer goes to the private room, wherever it was said.
    """

    house: House
    work: UnitOfWork
    speaker: Speaker
    kitchen: Kitchen
    user_id: str
    member: Member
    private: bool
    room_id: str
    event_id: str
    sent_at: datetime
    arrived: int
    text: str
    thread: str | None = None
    reply_to: str | None = None
    mentions: tuple[str, ...] = ()
    picture: bool = False
    aside: bool = False

    @property
    def name(self) -> str:
        """The person's name, safe to print."""
        return plain_name(self.member.name or self.user_id)

    @property
    def phrases(self) -> Phrases:
        """The sentences in the language to answer in: the person's own in private, the kitchen's in its room."""
        return self.own_phrases if self.private or self.aside else phrases_in(self.kitchen.language)

    @property
    def own_phrases(self) -> Phrases:
        """The sentences in the person's own language, for private answers; the kitchen's where none was said."""
        return phrases_in(self.member.language or self.kitchen.language)

    def answered_aside(self) -> Self:
        """The same, to be answered in the private room."""
        return replace(self, aside=True)

    @property
    def now(self) -> datetime:
        """The time at which it is processed."""
        return self.house.clock()

    async def is_chef(self) -> bool:
        """Whether the person directs this kitchen, which its own room decides and never a private one."""
        return await is_chef(self.house, self.work, self.kitchen.room_id, self.user_id)

    async def answer(
        self,
        text: str,
        live: LiveDrill | None = None,
        figures: Figures = NONE,
        attachment: Attachment | None = None,
    ) -> None:
        """Answer where it was said; in the room, in the thread of ``live`` or the thread it was said in."""
        if self.private:
            await self.tell(text, figures, attachment)
            return
        thread = live.root if live else (EventRef(self.thread) if self.thread else None)
        await self.speaker.notice(
            self.room_id,
            text,
            thread=thread,
            reply_to=EventRef(self.event_id),
            about=self.name,
            figures=figures,
            attachment=attachment,
        )

    async def tell(self, text: str, figures: Figures = NONE, attachment: Attachment | None = None) -> None:
        """Answer in the private room of two."""
        await self.speaker.tell(self.user_id, text, figures, attachment=attachment)

    async def ask(
        self,
        kind: QuestionKind,
        within: timedelta,
        *,
        about: str = "",
        held: tuple[Held, ...] = (),
        whom: str | None = None,
    ) -> None:
        """Keep that an answer is waited for so long: from the person, unless it says from ``whom``."""
        await self.work.questions.ask(
            Question(
                user_id=whom or self.user_id,
                room_id=self.kitchen.room_id,
                kind=kind,
                asked_at=self.now,
                lapses_at=self.now + within,
                held=held,
                about=about,
            )
        )

    async def asked(self, kind: QuestionKind) -> list[Question]:
        """What of this kind is open with the person, the newest first."""
        return [open_ for open_ in await self.work.questions.open(self.user_id, self.now) if open_.kind == kind]

    async def noted(self) -> None:
        """Acknowledge with the memo pad."""
        await self.speaker.noted(self.room_id, self.event_id)
