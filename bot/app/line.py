"""The line to the homeserver: storage brought up to date, client signed in on the device that is kept for life."""

from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, replace

from bot.errors import NO_HOMESERVER, OperatorError
from bot.matrix.client import Account, Client
from bot.matrix.secrecy import InTheClear, Secrecy
from bot.services.ports.messages import SendRefused, TryLater
from bot.services.ports.records import Session
from bot.services.ports.world import Clock
from bot.settings import Secrets, Settings
from bot.storage.storage import SqlStorage

MakeClient = Callable[[str, Account], Client]
"""Makes the client for a homeserver's address and an account."""

MakeStorage = Callable[[str, Clock], SqlStorage]
"""Makes the storage for a database's URL."""


@dataclass(frozen=True)
class Line:
    """A storage brought up to date and a client signed in, with what seals and opens what goes between them."""

    settings: Settings
    storage: SqlStorage
    client: Client
    secrecy: Secrecy
    clock: Clock


@asynccontextmanager
async def open_line(
    settings: Settings, secrets: Secrets, clock: Clock, make_client: MakeClient, make_storage: MakeStorage
) -> AsyncIterator[Line]:
    """The line to the homeserver; an OperatorError says what stands in its way."""
    storage = make_storage(settings.storage.url, clock)
    try:
        await storage.migrate()
        client, device_id = await _signed_in(settings, secrets, storage, make_client)
        try:
            async with _secrecy(settings, secrets, client, device_id, clock) as secrecy:
                yield Line(settings, storage, client, secrecy, clock)
        finally:
            await client.close()
    finally:
        await storage.close()


@asynccontextmanager
async def _secrecy(
    settings: Settings, secrets: Secrets, client: Client, device_id: str, clock: Clock
) -> AsyncIterator[Secrecy]:
    """Encryption for this device, or none where the settings say so."""
    if not settings.encryption.enabled:
        yield InTheClear()
        return
    from bot.matrix.crypto.encryption import open_encryption  # noqa: PLC0415 - only if it is wanted

    key = secrets.pickle_key.get_secret_value() if secrets.pickle_key else None
    async with open_encryption(client, device_id, settings.encryption, key, clock) as encryption:
        yield encryption


async def _signed_in(
    settings: Settings, secrets: Secrets, storage: SqlStorage, make_client: MakeClient
) -> tuple[Client, str]:
    """The client on the session of an earlier start, or on a new one, and its device, which is kept for life."""
    user_id = settings.matrix.user
    async with storage.begin() as work:
        kept = await work.sessions.get(user_id)
    given = secrets.token.get_secret_value() if secrets.token else None
    account = Account(
        user_id=user_id,
        device_id=kept.device_id if kept else None,
        password=secrets.password.get_secret_value() if secrets.password else None,
        token=given or (kept.token if kept else None),
        device_name=settings.matrix.device_name,
    )
    client = make_client(settings.matrix.homeserver, account)
    try:
        device_id = await _sign_in(client, settings.matrix.homeserver)
        async with storage.begin() as work:
            session = kept or Session(user_id=user_id, device_id=device_id, token="")
            await work.sessions.save(replace(session, device_id=device_id, token=client.token))
            await work.outbox.release()
    except BaseException:
        await client.close()
        raise
    return client, device_id


async def _sign_in(client: Client, homeserver: str) -> str:
    try:
        return await client.sign_in()
    except (TryLater, SendRefused) as problem:
        raise OperatorError(f"{homeserver} cannot be used now: {problem}", NO_HOMESERVER) from problem
