"""Encryption as the sync loop and the messenger use it: everything below joined, and opened on a store."""

import logging
from collections import defaultdict
from collections.abc import AsyncIterator, Mapping, Sequence
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Protocol

from nio import ToDeviceResponse
from nio.crypto.attachments import encrypt_attachment

from bot.errors import NO_HOMESERVER, OperatorError
from bot.matrix.compose import TXN
from bot.matrix.crypto.devices import Devices
from bot.matrix.crypto.machine import Machine
from bot.matrix.crypto.own_keys import OwnKeys, open_machine
from bot.matrix.crypto.room_keys import RoomKeys
from bot.matrix.crypto.rooms import EncryptedRooms, RoomServer
from bot.matrix.crypto.server import KeyServer
from bot.matrix.crypto.signing import Chain, Signing
from bot.matrix.crypto.store import CryptoStore, open_store
from bot.matrix.crypto.wire import KeyRequest
from bot.matrix.secrecy import Locked
from bot.matrix.wire import News, parsed
from bot.services.ports.events import Sealed
from bot.services.ports.messages import SendRefused, TryLater
from bot.services.ports.world import Clock

log = logging.getLogger(__name__)

_BESIDE = ("m.relates_to", TXN)
"""What stands beside the sealed content for the server, and for finding the message again, to read."""


class Choices(Protocol):
    """How the operator wants it."""

    @property
    def store(self) -> Path:
        """The directory of the crypto store."""

    @property
    def key_file(self) -> Path:
        """Where the key that its secrets are pickled with is kept."""

    @property
    def withhold_from_unsigned(self) -> bool:
        """Whether devices that their owner has not signed get no keys."""

    @property
    def private_rooms(self) -> bool:
        """Whether rooms of two are encrypted."""


class Account(RoomServer, Protocol):
    """The bot's account, signed in."""

    @property
    def user_id(self) -> str:
        """Who the bot is."""

    @property
    def keys(self) -> KeyServer:
        """The requests about keys."""


class Encryption:
    """The bot's encryption at work; ``chain`` says whether its device is signed."""

    def __init__(self, machine: Machine, store: CryptoStore, account: Account, choices: Choices, clock: Clock) -> None:
        self._machine = machine
        self._server = account.keys
        self._own_keys = OwnKeys(machine, self._server)
        self._signing = Signing(machine, self._server, store)
        self._devices = Devices(machine, self._server, clock, signed_only=choices.withhold_from_unsigned)
        self._rooms = EncryptedRooms(store, account, self._server)
        self._room_keys = RoomKeys(machine, self._server, self._devices, clock)
        self._private_rooms = choices.private_rooms
        self.chain = Chain(holds=False, problem="not looked at yet")

    @property
    def is_signed(self) -> bool:
        """Whether the device is signed by its owner, and the chain of keys holds."""
        return self.chain.holds

    async def begin(self) -> None:
        """Publish the device's keys where they are not, and see that the device is signed."""
        await self._own_keys.top_up()
        self.chain = await self._signing.hold()

    def receive(self, news: News) -> bool:
        """Take in what a sync says of keys and devices; whether it brought the key of a room."""
        self._own_keys.count(news)
        self._devices.changed(news.device_lists)
        if not news.to_device.events:
            return False
        with self._machine.store.database.atomic():
            came = [self._hear(raw) for raw in news.to_device.events]
            self._machine.save_account()  # nio saves it before a one-time key is taken out of it, not after
        return any(came)

    def _hear(self, raw: object) -> bool:
        kind = raw.get("type") if isinstance(raw, Mapping) else None
        if isinstance(raw, Mapping) and kind == "m.room_key_request":
            asked = parsed(KeyRequest, raw.get("content"))
            if asked:
                self._room_keys.hear_request(str(raw.get("sender")), asked)
        return kind == "m.room.encrypted" and self._machine.hear(raw)

    def look_at(self, room_id: str, events: Sequence[object]) -> None:
        """Take note of what these events say of the room."""
        self._rooms.look_at(room_id, events)

    def unseal(self, event: Sealed) -> object | None:
        """The event as it was before it was encrypted; None where the key is missing."""
        return self._machine.unseal(event.raw, event.room_id)

    def miss(self, event: Sealed) -> None:
        """Have the missing key asked for."""
        self._machine.ask_for_key(event.raw, event.room_id)

    async def tend(self) -> None:
        """Make the requests that have fallen due; one that fails is made again the next time."""
        try:
            if self._own_keys.may_be_gone and await self._own_keys.look_again():
                await self.begin()
            await self._own_keys.top_up()
            await self._mend_sessions()
            await self._send_waiting()
        except (SendRefused, TryLater) as problem:
            log.warning("keys: %s", problem)

    async def _mend_sessions(self) -> None:
        """Begin anew with devices whose session broke."""
        broken, self._machine.wedged_devices = self._machine.wedged_devices, []
        if broken:
            wanted: defaultdict[str, list[str]] = defaultdict(list)
            for device in broken:
                wanted[device.user_id].append(device.id)
            claimed = await self._server.claim(wanted)
            self._machine.wedged_devices = broken
            self._machine.begin_sessions(claimed.one_time_keys)
            self._machine.wedged_devices = []

    async def _send_waiting(self) -> None:
        """Send what the machine has for devices: requests for keys, and first words in new sessions."""
        for message in list(self._machine.outgoing_to_device_messages):
            try:
                await self._server.to_devices(message.type, message.as_dict()["messages"])
            except SendRefused as problem:
                log.warning("keys: a %s was refused: %s", message.type, problem)
            self._machine.handle_response(ToDeviceResponse(message))

    async def seal(
        self, room_id: str, event_type: str, content: Mapping[str, object]
    ) -> tuple[str, Mapping[str, object]]:
        """Type and content as they are to be sent; reactions stay open, for servers and clients count them so."""
        rules = await self._rooms.rules(room_id) if event_type != "m.reaction" else None
        if rules is None:
            return event_type, content
        members = await self._rooms.members(room_id)
        sealed = await self._room_keys.encrypt(room_id, rules, members, event_type, content)
        return "m.room.encrypted", sealed | {key: content[key] for key in _BESIDE if key in content}

    async def lock_up(self, room_id: str, content: bytes) -> Locked | None:
        """A file's bytes as they are uploaded for this room, encrypted as the specification says; None in the clear."""
        if await self._rooms.rules(room_id) is None:
            return None
        return Locked(*encrypt_attachment(content))

    async def suits(self, user_id: str) -> bool:
        """Whether a room of two with this person is to be encrypted: not where no device of theirs could read it."""
        return self._private_rooms and bool(await self._devices.of([user_id]))


@asynccontextmanager
async def open_encryption(
    account: Account, device_id: str, choices: Choices, given_key: str | None, clock: Clock
) -> AsyncIterator[Encryption]:
    """Encryption on the store of this device, its keys published and signed; an OperatorError if that cannot be.

    A key given, as from the environment, goes before the one in the file.
    """
    with open_store(choices.store, choices.key_file, given_key, account.user_id, device_id) as store:
        try:
            machine = await open_machine(store, account.keys)
            encryption = Encryption(machine, store, account, choices, clock)
            await encryption.begin()
        except (TryLater, SendRefused) as problem:
            raise OperatorError(f"the homeserver cannot be asked for keys now: {problem}", NO_HOMESERVER) from problem
        yield encryption
