"""People with encrypting clients: nio's whole client, which the bot uses only the insides of.

One who is ``wary`` gives keys to a device only if its owner has signed it, and listens to no other: nio knows nothing
of that, so it is checked here, on the homeserver's raw answer, with vodozemac alone.
"""

import asyncio
import json
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, TypeAlias

import vodozemac
from nio import (
    AsyncClient,
    AsyncClientConfig,
    Event,
    LocalProtocolError,
    MegolmEvent,
    RoomEncryptedImage,
    RoomMessageFormatted,
)
from nio.store import SqliteStore

from bot.homeserver import Homeserver
from tests.live.people import PASSWORD, Person

ENCRYPTION = {"type": "m.room.encryption", "state_key": "", "content": {"algorithm": "m.megolm.v1.aes-sha2"}}
_PATIENCE_S = 40

Heard: TypeAlias = RoomMessageFormatted | RoomEncryptedImage
"""What somebody reads: words, or a picture with words under it."""


@dataclass
class EncryptedPerson:
    """Somebody on an encrypting device; ``plain`` is the same person on the same device for what is not encrypted."""

    plain: Person
    nio: AsyncClient
    wary: bool = False
    heard: list[Event] = field(default_factory=list)

    @property
    def user_id(self) -> str:
        """Who they are."""
        return self.plain.user_id

    async def open_room(self, *invited: str, **order: Any) -> str:
        """Make an encrypted room."""
        return await self.plain.open_room(initial_state=[ENCRYPTION], invite=list(invited), **order)

    async def say(self, room_id: str, text: str, **content: Any) -> str:
        """Say something encrypted; its event id."""
        async with asyncio.timeout(_PATIENCE_S):
            # nio tells nobody when it has learnt of a room, so it is asked.
            while room_id not in self.nio.rooms or not self.nio.rooms[room_id].encrypted:  # noqa: ASYNC110 - as said
                await asyncio.sleep(0.05)
            await self._look_at_devices(room_id)
            message = {"msgtype": "m.text", "body": text} | content
            answer = await self.nio.room_send(room_id, "m.room.message", message, ignore_unverified_devices=True)
        return str(answer.event_id)

    async def edit(self, room_id: str, event_id: str, text: str) -> str:
        """Say something anew."""
        relation = {"rel_type": "m.replace", "event_id": event_id}
        fresh = {"msgtype": "m.text", "body": text}
        return await self.say(room_id, f"* {text}", **{"m.new_content": fresh, "m.relates_to": relation})

    async def until_heard(self, room_id: str, words: str, sender: str) -> Heard:
        """The first message of this sender that says this and came encrypted."""
        deadline = time.monotonic() + _PATIENCE_S
        while time.monotonic() < deadline:
            for event in self.heard_from(room_id, sender):
                if words in event.body:
                    return event
            await asyncio.sleep(0.05)
        raise AssertionError(f"{words!r} is not among {self.heard}")

    def heard_from(self, room_id: str, sender: str) -> list[Heard]:
        """The encrypted messages of a sender that could be read, in order."""
        return [
            event
            for event in self.heard
            if isinstance(event, Heard)
            and (event.sender, event.decrypted) == (sender, True)
            and self.nio.rooms.get(room_id) is not None
            and event.source.get("heard_in") == room_id
        ]

    async def _look_at_devices(self, room_id: str) -> None:
        """Withhold keys from devices that their owner has not signed."""
        if not self.wary:
            return
        members = [*self.nio.rooms[room_id].users]
        while self.nio.should_query_keys:  # noqa: ASYNC110 - the sync sees to it and tells nobody
            await asyncio.sleep(0.05)
        told = await self.plain.ask("POST", "keys/query", {"device_keys": {user: [] for user in members}})
        for user in members:
            for device in self.nio.device_store.active_user_devices(user):
                if user != self.user_id and not is_signed_by_owner(told, user, device.id):
                    self.nio.blacklist_device(device)


def is_signed_by_owner(told: dict[str, Any], user: str, device_id: str) -> bool:
    """Whether a device hangs on its owner's master key. Source: T, specification, section Cross-signing."""
    try:
        master, signing = told["master_keys"][user], told["self_signing_keys"][user]
        ((master_id, master_key),) = master["keys"].items()
        ((signing_id, signing_key),) = signing["keys"].items()
        assert "master" in master["usage"]
        assert "self_signing" in signing["usage"]
        _verify(signing, signing["signatures"][user][master_id], master_key)
        device = told["device_keys"][user][device_id]
        _verify(device, device["signatures"][user][signing_id], signing_key)
    except (KeyError, ValueError):
        return False
    return True


def _verify(signed: dict[str, Any], signature: str, key: str) -> None:
    bare = {name: value for name, value in signed.items() if name not in {"signatures", "unsigned"}}
    canonical = json.dumps(bare, ensure_ascii=False, separators=(",", ":"), sort_keys=True).encode()
    public = vodozemac.Ed25519PublicKey.from_base64(key)
    public.verify_signature(canonical, vodozemac.Ed25519Signature.from_base64(signature))


async def _sync(client: AsyncClient) -> None:
    """Go on for ever; nio ends its loop where it asked for keys a moment before and has nothing more to ask for."""
    while True:
        with suppress(LocalProtocolError):
            await client.sync_forever(timeout=2000, full_state=True)


@asynccontextmanager
async def encrypting(
    server: Homeserver, person: Person, directory: Path, *, wary: bool = False
) -> AsyncIterator[EncryptedPerson]:
    """The person on a new encrypting device, in sync until the block ends."""
    await asyncio.to_thread(directory.mkdir, parents=True, exist_ok=True)
    config = AsyncClientConfig(encryption_enabled=True, store=SqliteStore, store_sync_tokens=False)
    client = AsyncClient(server.url, person.user_id, store_path=str(directory), config=config)
    await client.login(PASSWORD, device_name="encrypting")
    await client.keys_upload()
    somebody = EncryptedPerson(person, client, wary=wary)

    def hear(room: Any, event: Event) -> None:
        event.source["heard_in"] = room.room_id
        somebody.heard.append(event)

    client.add_event_callback(hear, (RoomMessageFormatted, RoomEncryptedImage, MegolmEvent))
    task = asyncio.create_task(_sync(client))
    try:
        yield somebody
    finally:
        task.cancel()
        with suppress(asyncio.CancelledError):
            await task
        await client.close()
        client.store.database.close()
