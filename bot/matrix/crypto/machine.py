"""nio's Olm machine with its defects mended: nothing that comes from outside raises out of it.

What is mended here is listed, with the defect, in ``tests/matrix/test_nio_crypto_contract.py``.
"""

import logging
from collections.abc import Mapping
from typing import Any

from nio import ForwardedRoomKeyEvent, KeysClaimResponse, KeysQueryResponse, MegolmEvent, RoomKeyEvent
from nio.crypto import InboundGroupSession, Olm
from nio.events.to_device import ToDeviceEvent

from bot.matrix.crypto.signatures import is_signed, sign

log = logging.getLogger(__name__)

_READABLE = frozenset({"m.room.message", "m.reaction"})
_ALGORITHM = "signed_curve25519"


class Machine(Olm):  # type: ignore[misc]  # nio ships no types
    """Sessions with devices and rooms, synchronous: whoever calls it makes the requests."""

    def hear(self, raw: object) -> bool:
        """Take in one to-device message; whether it brought a room key. Garbage is noted and forgotten."""
        try:
            event = ToDeviceEvent.parse_event(raw)
            return isinstance(self.handle_to_device_event(event), RoomKeyEvent | ForwardedRoomKeyEvent)
        except Exception as problem:  # nio lets vodozemac's errors through, and more where the message is malformed
            log.warning("a to-device message cannot be read: %s", type(problem).__name__)
            self._start_anew_with_sender(raw)
            return False

    def _start_anew_with_sender(self, raw: object) -> None:
        """Have a new session made with the device that sent this, which may have lost the old one."""
        if isinstance(raw, Mapping) and isinstance(raw.get("content"), Mapping):
            sender, key = raw.get("sender"), raw["content"].get("sender_key")
            if isinstance(sender, str) and isinstance(key, str):
                self._mark_device_for_unwedging(sender, key)

    def unseal(self, raw: Mapping[str, Any], room_id: str) -> dict[str, Any] | None:
        """What an encrypted event says, in its own envelope; None where there is no key, {} where it is no message.

        The session is found by its id: which device made it the event says only for older clients' sake.
        """
        content = raw["content"]
        maker = self._maker(room_id, content["session_id"])
        if maker is not None and self._belongs_to_another(maker, raw["sender"]):
            log.warning("%s is not from whom it says", raw["event_id"])
            return {}
        stated = {"sender_key": maker or "", "device_id": content.get("device_id") or ""}
        event = MegolmEvent.from_dict({**raw, "room_id": room_id, "content": {**content, **stated}})
        try:
            said = self.decrypt_megolm_event(event, room_id).source
        except Exception as problem:  # as above
            log.info("%s cannot be read: %s", raw["event_id"], type(problem).__name__)
            return None
        return {**raw, "type": said["type"], "content": said["content"]} if said.get("type") in _READABLE else {}

    def ask_for_key(self, raw: Mapping[str, Any], room_id: str) -> None:
        """Have the key of an event asked for from the device that sent it, once a session."""
        content = raw["content"]
        waiting = {getattr(message, "session_id", None) for message in self.outgoing_to_device_messages}
        if content["session_id"] in waiting or content["session_id"] in self.outgoing_key_requests:
            return
        stated = {"sender_key": content.get("sender_key") or "", "device_id": content.get("device_id") or "*"}
        event = MegolmEvent.from_dict({**raw, "room_id": room_id, "content": {**content, **stated}})
        self.outgoing_to_device_messages.append(
            event.as_key_request(raw["sender"], self.device_id, device_id=stated["device_id"])
        )

    def _maker(self, room_id: str, session_id: str) -> str | None:
        made = self.inbound_group_store[room_id].items()
        return next((key for key, sessions in made if session_id in sessions), None)

    def _belongs_to_another(self, key: str, user_id: str) -> bool:
        return any(device.curve25519 == key and device.user_id != user_id for device in self.device_store)

    def create_group_session(
        self, sender_key: str, sender_fp_key: str, room_id: str, session_id: str, session_key: str
    ) -> None:
        """Keep a room key, unless what is kept of it already reaches further back."""
        known = self.inbound_group_store.get(room_id, sender_key, session_id)
        if known is not None:
            again = InboundGroupSession(session_key, sender_fp_key, sender_key, room_id)
            if again.first_known_index >= known.first_known_index:
                return
        super().create_group_session(sender_key, sender_fp_key, room_id, session_id, session_key)

    def _should_accept_forward(self, sender: str, sender_key: str, event: Any) -> bool:
        """Whether the key was asked for and comes from the very device that made it."""
        asked = self.outgoing_key_requests.get(event.session_id)
        return (
            asked is not None
            and (asked.room_id, asked.algorithm) == (event.room_id, event.algorithm)
            and event.source["content"].get("sender_key") == sender_key
        )

    def verify_json(self, json: Mapping[str, Any], user_key: str, user_id: str, device_id: str) -> bool:
        """Whether the device has signed this; a malformed key or signature is no signature."""
        return is_signed(json, user_id, device_id, user_key)

    def learn_devices(self, device_keys: Mapping[str, Mapping[str, Any]]) -> None:
        """Take in the devices of these people, all that they have now."""
        self._handle_key_query(KeysQueryResponse(device_keys, {}))

    def begin_sessions(self, one_time_keys: Mapping[str, Mapping[str, Any]]) -> None:
        """Begin a session with each device of which a one-time key was claimed."""
        for user, devices in one_time_keys.items():
            for device, key in devices.items():
                try:
                    self._handle_key_claiming(KeysClaimResponse({user: {device: key}}, {}))
                except Exception as problem:  # a malformed key must not keep the others from theirs
                    log.warning("no session with %s of %s: %s", device, user, type(problem).__name__)

    def keys_to_publish(self, left: int, *, fallback: bool) -> dict[str, Any]:
        """What is to be uploaded where so many one-time keys are left at the server, saved before it is.

        nio saves them afterwards, and a kill between the two would leave the server with keys that nobody holds.
        """
        self.uploaded_key_count = min(left, self.account.max_one_time_keys - 1)
        keys: dict[str, Any] = self.share_keys()
        if fallback:
            keys["fallback_keys"] = self._fallback_keys()
        self.save_account()
        return keys

    def _fallback_keys(self) -> dict[str, Any]:
        account = self.account._account
        if not account.fallback_key:
            account.generate_fallback_key()
        return {
            f"{_ALGORITHM}:{key_id}": sign(
                account, self.user_id, self.device_id, {"key": key.to_base64(), "fallback": True}
            )
            for key_id, key in account.fallback_key.items()
        }

    def keys_are_published(self) -> None:
        """Note that the server has them."""
        self.account.shared = True
        self.mark_keys_as_published()
        self.save_account()
