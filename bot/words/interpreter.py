"""What an event means: a submission, an answer, a word, a correction, a raised hand, people coming and going, or talk.

This is the one place where it is decided whether the bot was spoken to. Ordinary talk falls through to silence.
"""

from bot.errors import UserError
from bot.services import corrections, rooms, verdicts, witnesses
from bot.services.flood import Flood
from bot.services.house import House
from bot.services.people import names_in
from bot.services.places import place_of
from bot.services.ports.events import Edit, Membership, Message, Reaction, Received, Redaction, RoomState
from bot.services.ports.messages import Cause
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.submit import take_lines
from bot.services.upgrades import brought_over
from bot.words import drafts
from bot.words.answers import answer_open_question, left_over
from bot.words.judging import read_verdict
from bot.words.reading import lines_in, lone_clock_in
from bot.words.registry import Vocabulary


class Interpreter:
    """Handles one inbox event within its unit of work: everything it causes is stored with it."""

    def __init__(self, house: House, vocabulary: Vocabulary) -> None:
        self._house = house
        self._vocabulary = vocabulary
        self._flood = Flood()

    async def __call__(self, received: Received, work: UnitOfWork) -> None:
        """Do what the event asks for, if anything."""
        event, house = received.event, self._house
        speaker = Speaker(work, Cause(event_id=event.event_id))
        match event:
            case RoomState():
                await rooms.note_state(house, work, speaker, event)
            case Membership():
                await rooms.note_membership(house, work, speaker, event)
            case Reaction():
                await witnesses.raise_hand(house, work, speaker, await brought_over(work, event))
            case Redaction():
                await corrections.take_back(house, work, speaker, await brought_over(work, event))
            case Message() | Edit():
                await self._hear(received.seq, event, work, speaker)

    async def _hear(self, seq: int, event: Message | Edit, work: UnitOfWork, speaker: Speaker) -> None:
        said = await place_of(self._house, work, speaker, event, seq)
        if said is None:
            return
        try:
            await (self._reread(said) if isinstance(event, Edit) else self.understand(said))
        except UserError as problem:
            if await self._flood.lets_through(said):
                await said.answer(said.phrases.reply_to(problem))

    async def understand(self, said: Said) -> None:
        """A submission, else the answer that is waited for, else a lone clock to ask about, else a word, else talk."""
        if said.picture and said.reply_to:
            await verdicts.keep_photo(said)
        if (verdict := read_verdict(said.text)) and await verdicts.take_verdict(said, verdict):
            return
        names = await names_in(said)
        lines = lines_in(said.text, names)
        if lines:
            await take_lines(said, lines)
        elif await answer_open_question(said):
            return
        elif (said.thread or said.private) and (asked := lone_clock_in(said.text, names)):
            await take_lines(said, [asked])
        elif said.private and (problem := left_over(said)):
            raise problem
        elif (word := self._word_in(said)) and await self._flood.lets_through(said):
            await self._vocabulary.say(said, word)

    async def _reread(self, said: Said) -> None:
        """New words for an earlier message: a draft is parsed again, results are worked out again."""
        draft = await said.work.drills.draft_of_event(said.event_id)
        if draft:
            await drafts.reread(said, draft)
            return
        if await verdicts.reread(said, read_verdict(said.text)):
            return
        lines = lines_in(said.text, await names_in(said))
        await corrections.reread(said, lines)

    def _word_in(self, said: Said) -> str:
        """The line without the mark that it is for the bot; empty for talk. In private every line is for the bot."""
        text = said.text.strip()
        if text.startswith("!"):
            return text[1:].strip()
        return text if said.private else ""
