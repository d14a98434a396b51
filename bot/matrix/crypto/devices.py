"""Who has which devices: asked for once, and again when the homeserver says that something has changed."""

import asyncio
import logging
from collections.abc import Collection, Iterable
from datetime import datetime, timedelta
from typing import Any

from bot.matrix.crypto.machine import Machine
from bot.matrix.crypto.server import KeyServer, Patience
from bot.matrix.crypto.signatures import is_signed
from bot.matrix.crypto.wire import DeviceKeys, Queried, SigningKey
from bot.matrix.wire import DeviceLists, parsed
from bot.services.ports.world import Clock

log = logging.getLogger(__name__)

Device = tuple[str, str]
"""A person and one device of theirs."""

_UNREACHED_REST = timedelta(minutes=1)


class Devices:
    """The devices of people, up to date; with ``signed_only`` those that their owner has signed."""

    def __init__(self, machine: Machine, server: KeyServer, clock: Clock, *, signed_only: bool) -> None:
        self._machine = machine
        self._server = server
        self._clock = clock
        self._signed_only = signed_only
        self._signed: set[Device] = set()
        self._current: set[str] = set()
        self._rest_until: dict[str, datetime] = {}
        self._turn = asyncio.Lock()
        self._patience = Patience()

    def changed(self, lists: DeviceLists) -> None:
        """Take note of whose devices have changed, or are no longer told of."""
        self._current.difference_update(lists.changed, lists.left)

    async def of(self, users: Collection[str]) -> set[Device]:
        """The devices of these people that may read; the bot's own is not among them."""
        async with self._turn:
            await self._bring_up_to_date(users)
        return {
            (user, device.id)
            for user in users
            for device in self._machine.device_store.active_user_devices(user)
            if device.id != self._machine.device_id and (not self._signed_only or (user, device.id) in self._signed)
        }

    async def _bring_up_to_date(self, users: Iterable[str]) -> None:
        now = self._clock()
        asked = {u for u in users if u not in self._current and self._rest_until.get(u, now) <= now}
        if not asked:
            return
        # Marked before the answer, so that a change that is told of meanwhile is not lost.
        self._current |= asked
        told = None
        try:
            told = await self._patience.ask(self._server.query(asked))
        finally:
            answered = asked & told.device_keys.keys() if told else set()
            self._current -= asked - answered
        self._rest_until |= dict.fromkeys(asked - answered, now + _UNREACHED_REST)
        if told:
            self._learn(told, answered)

    def _learn(self, told: Queried, users: set[str]) -> None:
        sound = {user: _sound(user, told.device_keys[user]) for user in users}
        with self._machine.store.database.atomic():
            self._machine.learn_devices(sound)
        self._signed = {device for device in self._signed if device[0] not in users} | {
            (user, device_id)
            for user, devices in sound.items()
            for device_id, keys in devices.items()
            if _is_signed_by_owner(told, user, keys)
        }


def _sound(user: str, devices: dict[str, Any]) -> dict[str, Any]:
    """The devices whose keys are well formed and stand under their own name, as they came."""
    return {
        device_id: raw
        for device_id, raw in devices.items()
        if (keys := parsed(DeviceKeys, raw)) and (keys.user_id, keys.device_id) == (user, device_id)
    }


def _is_signed_by_owner(told: Queried, user: str, device: dict[str, Any]) -> bool:
    """Whether the device hangs on its owner's master key, as far as the homeserver can be believed about that key."""
    master = parsed(SigningKey, told.master_keys.get(user))
    signing = parsed(SigningKey, told.self_signing_keys.get(user))
    if master is None or signing is None or {master.user_id, signing.user_id} != {user}:
        return False
    signed = is_signed(told.self_signing_keys[user], user, master.public, master.public)
    return signed and is_signed(device, user, signing.public, signing.public)
