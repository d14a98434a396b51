"""``platepace check``: looks at all that a start needs, while the bot runs or not, and changes nothing; a line each."""

from collections.abc import AsyncGenerator, AsyncIterator, Callable
from contextlib import aclosing
from dataclasses import dataclass
from datetime import UTC, datetime

from bot.errors import BAD_SETTINGS, NO_DATABASE, NO_HOMESERVER, NOT_SIGNED_IN, OperatorError
from bot.matrix.client import Account, Client
from bot.services.ports.messages import SendRefused, TryLater
from bot.services.ports.records import Session
from bot.settings import Secrets, Settings
from bot.storage.schema import HEAD
from bot.storage.storage import SqlStorage

Write = Callable[[str], None]
"""Takes one line of what is printed."""


@dataclass(frozen=True)
class Finding:
    """What was looked at and, where it is wrong, what to do, with the exit code that it would end a start with."""

    what: str
    problem: str = ""
    exit_code: int = 0

    @property
    def line(self) -> str:
        """The finding as printed."""
        return f"wrong  {self.what}: {self.problem}" if self.problem else f"ok     {self.what}"


async def check(settings: Settings, secrets: Secrets, write: Write) -> int:
    """Print every finding; the exit code of the first that is wrong, 0 where none is."""
    code = 0
    async with aclosing(_findings(settings, secrets)) as findings:
        async for finding in findings:
            write(finding.line)
            code = code or finding.exit_code
    return code


async def _findings(settings: Settings, secrets: Secrets) -> AsyncGenerator[Finding, None]:
    yield Finding("settings and secrets")
    session, found = await _database(settings)
    yield found
    yield _crypto_store(settings, session)
    client = Client(settings.matrix.homeserver, _account(settings, secrets, session))
    try:
        async for finding in _at_the_homeserver(settings, client, session):
            yield finding
    except (TryLater, SendRefused) as problem:
        yield Finding(settings.matrix.homeserver, f"cannot be used now: {problem}", NO_HOMESERVER)
    except OperatorError as problem:
        yield Finding(settings.matrix.user, str(problem), problem.exit_code)
    finally:
        await client.close()


async def _database(settings: Settings) -> tuple[Session | None, Finding]:
    storage = SqlStorage(settings.storage.url, lambda: datetime.now(UTC))
    try:
        revision = await storage.revision()
        if revision is None:
            return None, Finding("database: none yet, the first start makes it")
        if revision != HEAD:
            told = f"is at revision {revision}, this Platepace at {HEAD}; a start brings an older one up to date"
            return None, Finding("database", told, NO_DATABASE)
        async with storage.begin() as work:
            return await work.sessions.get(settings.matrix.user), Finding(f"database, at revision {revision}")
    except OperatorError as fault:
        return None, Finding("database", str(fault), fault.exit_code)
    finally:
        await storage.close()


def _crypto_store(settings: Settings, session: Session | None) -> Finding:
    if not settings.encryption.enabled:
        return Finding("encryption: off by the settings")
    store, key = settings.encryption.store, settings.encryption.key_file
    if session and not store.exists():
        told = f"{store} is gone, but device {session.device_id} is known: put it back, or see the README"
        return Finding("crypto store", told, NO_DATABASE)
    if store.exists() and not key.exists():
        return Finding("crypto store", f"its key {key} is not there; PLATEPACE_PICKLE_KEY has to give it", BAD_SETTINGS)
    return Finding("crypto store" if store.exists() else "crypto store: none yet, the first start makes it")


def _account(settings: Settings, secrets: Secrets, session: Session | None) -> Account:
    token = secrets.token.get_secret_value() if secrets.token else None
    return Account(
        user_id=settings.matrix.user,
        device_id=session.device_id if session else None,
        token=token or (session.token if session else None),
    )


async def _at_the_homeserver(settings: Settings, client: Client, session: Session | None) -> AsyncIterator[Finding]:
    await client.answers()
    if not await client.resume():
        yield Finding(settings.matrix.homeserver)
        if session:
            told = "the token is not good any more; a start signs in again where a password is known"
            yield Finding(settings.matrix.user, told, NOT_SIGNED_IN)
        else:
            yield Finding(f"{settings.matrix.user}: not signed in yet, the first start does it")
        return
    yield Finding(f"{settings.matrix.homeserver}, signed in as {settings.matrix.user}")
    if settings.encryption.enabled and session:
        yield await _chain(client, settings.matrix.user, session.device_id)
    room = settings.admin.room
    if room is None:
        yield Finding("admin room: none, faults are told in the log alone")
    elif room in await client.joined_rooms():
        yield Finding("admin room")
    else:
        yield Finding("admin room", f"the bot is not in {room}: invite it there", BAD_SETTINGS)


async def _chain(client: Client, user_id: str, device_id: str) -> Finding:
    from bot.matrix.crypto.signing import published_chain  # noqa: PLC0415 - only if encryption is wanted

    chain = published_chain(await client.keys.query([user_id]), user_id, device_id)
    if chain.holds:
        return Finding(f"device {device_id} is signed by its owner, the chain of keys holds")
    return Finding("chain of keys", f"{chain.problem}; a start mends it, or says why not", NOT_SIGNED_IN)
