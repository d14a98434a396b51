"""What the homeserver says of keys, as far as the bot reads it; what is signed is kept as it came."""

from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

_HOUR_MS = 3_600_000


class _Wire(BaseModel):
    model_config = ConfigDict(strict=True, frozen=True)


class DeviceKeys(_Wire):
    """One device's own keys."""

    user_id: str
    device_id: str
    algorithms: list[str]
    keys: dict[str, str]
    signatures: dict[str, dict[str, str]]


class SigningKey(_Wire):
    """A person's master, self-signing or user-signing key."""

    user_id: str
    usage: list[str]
    keys: Annotated[dict[str, str], Field(min_length=1, max_length=1)]

    @property
    def public(self) -> str:
        """The key itself."""
        return next(iter(self.keys.values()))


class Queried(_Wire):
    """Everybody's keys that were asked for; ``failures`` are servers that could not be reached."""

    device_keys: dict[str, dict[str, Any]] = {}
    master_keys: dict[str, Any] = {}
    self_signing_keys: dict[str, Any] = {}
    user_signing_keys: dict[str, Any] = {}
    failures: dict[str, object] = {}


class Claimed(_Wire):
    """One-time keys by person and device."""

    one_time_keys: dict[str, dict[str, Any]] = {}


class Members(_Wire):
    """The membership events of a room."""

    chunk: list[object] = []


class RoomRules(_Wire):
    """The content of ``m.room.encryption``: after how long, and how many messages, a new room key is due."""

    algorithm: str = "m.megolm.v1.aes-sha2"
    rotation_period_ms: Annotated[int, Field(ge=_HOUR_MS)] = 168 * _HOUR_MS
    rotation_period_msgs: Annotated[int, Field(ge=1, le=10_000)] = 100


class KeyRequestBody(_Wire):
    """Which room key is asked for."""

    room_id: str
    session_id: str


class KeyRequest(_Wire):
    """The content of ``m.room_key_request``: somebody's device has missed a room key."""

    action: str
    requesting_device_id: str
    body: KeyRequestBody
