"""Open questions; an answered or lapsed one leaves no trace."""

from dataclasses import replace
from datetime import datetime

from sqlalchemy import bindparam, delete, select

from bot.services.ports.run_records import Question
from bot.storage.repository import Repository
from bot.storage.tables import questions

_OPEN = (
    select(questions)
    .where(questions.c.user_id == bindparam("user_id"), questions.c.lapses_at > bindparam("now"))
    .order_by(questions.c.id.desc())
)


class SqlQuestions(Repository):
    """Open questions."""

    async def ask(self, question: Question) -> Question:
        """Store."""
        return await self._save(questions, question)

    async def open(self, user_id: str, now: datetime) -> list[Question]:
        """What is open with this person and has not lapsed, the newest first."""
        return [Question(**row) for row in await self._all(_OPEN, user_id=user_id, now=now)]

    async def close(self, question_id: int) -> None:
        """Erase, answered or not."""
        await self._do(delete(questions).where(questions.c.id == question_id))

    async def close_about(self, event_id: str) -> None:
        """Erase what was asked about this message, which has been deleted; lines held of others wait on."""
        for row in await self._all(select(questions)):
            question = Question(**row)
            others = tuple(line for line in question.held if line.event_id != event_id)
            if question.about == event_id or (question.held and not others):
                await self.close(question.id)
            elif others != question.held:
                await self._save(questions, replace(question, held=others))

    async def lapse(self, now: datetime) -> list[Question]:
        """Erase what has lapsed; what was erased, the oldest first."""
        erased = await self._all(delete(questions).where(questions.c.lapses_at <= now).returning(questions))
        return sorted((Question(**row) for row in erased), key=lambda lapsed: lapsed.id)
