"""Where units of work come from: one at a time, each stored whole or not at all."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import timedelta

from sqlalchemy.ext.asyncio import AsyncConnection

from bot.services.ports.drill_repository import Drills
from bot.services.ports.fitting import Fits
from bot.services.ports.pipeline import Inbox, Outbox, SealedEvents, Sessions
from bot.services.ports.repositories import Kitchens, Moves, Persons, Schedules
from bot.services.ports.run_repository import Questions, Runs
from bot.services.ports.world import Clock, UnitOfWork
from bot.storage.drills import SqlDrills
from bot.storage.engine import open_engine
from bot.storage.fits import SqlFits
from bot.storage.inbox import SqlInbox
from bot.storage.kitchens import SqlKitchens
from bot.storage.moves import SqlMoves
from bot.storage.outbox import SqlOutbox
from bot.storage.persons import SqlPersons
from bot.storage.questions import SqlQuestions
from bot.storage.runs import SqlRuns
from bot.storage.schedules import SqlSchedules
from bot.storage.schema import bring_up_to_date, revision_of
from bot.storage.sealed import SqlSealedEvents
from bot.storage.sessions import SqlSessions


class SqlStorage:
    """The database at a URL. ``lease`` is how long a message being sent is left to its sender."""

    def __init__(self, url: str, clock: Clock, *, lease: timedelta = timedelta(seconds=60)) -> None:
        self._engine = open_engine(url)
        self._clock = clock
        self._lease = lease
        # The database would keep writers apart by itself, but only this keeps them in the order in which they came.
        self._turn = asyncio.Lock()

    async def migrate(self) -> None:
        """Bring the tables to the shape that this code knows; an OperatorError where that cannot be."""
        await bring_up_to_date(self._engine)

    async def revision(self) -> str | None:
        """The revision that the database is at; None where there is none yet. Nothing is made or changed."""
        return await revision_of(self._engine)

    @asynccontextmanager
    async def begin(self) -> AsyncIterator[UnitOfWork]:
        """A transaction that commits on a clean exit and rolls back on an exception."""
        async with self._turn, self._engine.begin() as connection:
            yield SqlUnitOfWork(connection, self._clock, self._lease)

    async def close(self) -> None:
        """Let the database go."""
        await self._engine.dispose()


class SqlUnitOfWork:
    """The repositories of one transaction."""

    def __init__(self, connection: AsyncConnection, clock: Clock, lease: timedelta) -> None:
        self.sessions: Sessions = SqlSessions(connection)
        self.inbox: Inbox = SqlInbox(connection, clock)
        self.sealed: SealedEvents = SqlSealedEvents(connection, clock)
        self.outbox: Outbox = SqlOutbox(connection, lease)
        self.kitchens: Kitchens = SqlKitchens(connection)
        self.drills: Drills = SqlDrills(connection)
        self.schedules: Schedules = SqlSchedules(connection)
        self.runs: Runs = SqlRuns(connection)
        self.questions: Questions = SqlQuestions(connection)
        self.fits: Fits = SqlFits(connection)
        self.persons: Persons = SqlPersons(connection)
        self.moves: Moves = SqlMoves(connection)
