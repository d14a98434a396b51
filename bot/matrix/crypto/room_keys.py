"""The keys under which the bot speaks in rooms: handed to every device in the room before a message needs them.

A key goes on to devices that come, from where it then stands, and is given up when one goes. It lives in memory alone:
a new start makes a new one.
"""

import asyncio
import logging
from collections import defaultdict
from collections.abc import Collection, Mapping
from datetime import datetime, timedelta
from typing import Any

from bot.matrix.crypto.devices import Device, Devices
from bot.matrix.crypto.machine import Machine
from bot.matrix.crypto.server import KeyServer, Patience
from bot.matrix.crypto.wire import KeyRequest, RoomRules
from bot.matrix.faults import Refused
from bot.services.ports.world import Clock

log = logging.getLogger(__name__)

_UNREACHED_REST = timedelta(minutes=10)


class RoomKeys:
    """Encrypts for rooms, one message of a room at a time."""

    def __init__(self, machine: Machine, server: KeyServer, devices: Devices, clock: Clock) -> None:
        self._machine = machine
        self._server = server
        self._devices = devices
        self._clock = clock
        self._turns: defaultdict[str, asyncio.Lock] = defaultdict(asyncio.Lock)
        self._rest_until: dict[Device, datetime] = {}
        self._patience = Patience()

    async def encrypt(
        self, room_id: str, rules: RoomRules, members: Collection[str], event_type: str, content: Mapping[str, object]
    ) -> dict[str, Any]:
        """The content of the encrypted event; every device of the members that can be reached can read it."""
        async with self._turns[room_id]:
            wanted = await self._devices.of(members)
            session = self._session(room_id, rules, wanted)
            await self._hand_on(room_id, session, wanted)
            sealed: dict[str, Any] = self._machine.group_encrypt(
                room_id, {"type": event_type, "content": dict(content)}
            )
            return sealed

    def _session(self, room_id: str, rules: RoomRules, wanted: set[Device]) -> Any:
        """The room's key, a new one where it has served long enough or somebody who has it may not read on."""
        sessions = self._machine.outbound_group_sessions
        session = sessions.get(room_id)
        if session is None or session.expired or session.users_shared_with - wanted:
            self._machine.create_outbound_group_session(room_id)
            session = sessions[room_id]
            session.max_messages = rules.rotation_period_msgs
            session.max_age = timedelta(milliseconds=rules.rotation_period_ms)
        return session

    async def _hand_on(self, room_id: str, session: Any, wanted: set[Device]) -> None:
        """Give the key to who has not got it. What fails is tried again, not taken for done."""
        now = self._clock()
        missing = {d for d in wanted - session.users_shared_with if self._rest_until.get(d, now) <= now}
        if missing:
            await self._begin_sessions(missing)
            await self._send_key(room_id, session, missing)
        for device in missing - session.users_shared_with:
            log.warning("device %s of %s cannot be given the key of %s now", device[1], device[0], room_id)
            self._rest_until[device] = now + _UNREACHED_REST
        session.shared = True

    async def _begin_sessions(self, missing: set[Device]) -> None:
        lacking = self._machine.get_missing_sessions(sorted({user for user, _ in missing}))
        claimable = {user: [id_ for id_ in ids if (user, id_) in missing] for user, ids in lacking.items()}
        claimable = {user: ids for user, ids in claimable.items() if ids}
        if claimable:
            claimed = await self._patience.ask(self._server.claim(claimable))
            with self._machine.store.database.atomic():
                self._machine.begin_sessions(claimed.one_time_keys if claimed else {})

    async def _send_key(self, room_id: str, session: Any, missing: set[Device]) -> None:
        users = sorted({user for user, _ in missing})
        held = self._machine.device_store.active_user_devices
        session.users_ignored = {(user, device.id) for user in users for device in held(user)} - missing
        session.shared = False  # or nio would make a new one
        with self._machine.store.database.atomic():
            share = self._machine.share_group_session_parallel
            parcels = list(share(room_id, users, ignore_unverified_devices=True))
        for devices, parcel in parcels:
            try:
                await self._server.to_devices("m.room.encrypted", parcel["messages"])
            except Refused as problem:
                log.warning("the key of %s was not handed on: %s", room_id, problem)
            else:
                session.users_shared_with |= devices

    def hear_request(self, sender: str, asked: KeyRequest) -> None:
        """Somebody's device has missed the key of a room: it is given it again before the next message there."""
        session = self._machine.outbound_group_sessions.get(asked.body.room_id)
        if asked.action == "request" and session is not None and session.id == asked.body.session_id:
            session.users_shared_with.discard((sender, asked.requesting_device_id))
