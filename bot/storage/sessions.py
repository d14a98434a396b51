"""How the bot is signed in, kept for life."""

from sqlalchemy import select

from bot.services.ports.records import Session
from bot.storage.repository import Repository, values_of
from bot.storage.tables import sessions


class SqlSessions(Repository):
    """How the bot is signed in."""

    async def get(self, user_id: str) -> Session | None:
        """The session of an earlier start."""
        row = await self._one(select(sessions).where(sessions.c.user_id == user_id))
        return Session(**row) if row else None

    async def save(self, session: Session) -> None:
        """Keep the session, new or renewed."""
        await self._put(sessions, **values_of(sessions, session))
