"""What the sync loop and the messenger ask of encryption, and the bot without any."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Protocol

from bot.matrix.wire import News
from bot.services.ports.events import Sealed


@dataclass(frozen=True)
class Locked:
    """Bytes that only ``opener``, which goes into the encrypted message, makes readable."""

    content: bytes
    opener: Mapping[str, object]


class Secrecy(Protocol):
    """Opens what comes in encrypted and seals what goes out."""

    @property
    def is_signed(self) -> bool:
        """Whether the bot's device is signed by its owner, and the chain of keys holds."""

    def receive(self, news: News) -> bool:
        """Take in what a sync says of keys and devices; whether it brought the key of a room."""

    def look_at(self, room_id: str, events: Sequence[object]) -> None:
        """Take note of what these events say of the room."""

    def unseal(self, event: Sealed) -> object | None:
        """The event as it was before it was encrypted; None where the key is missing."""

    def miss(self, event: Sealed) -> None:
        """Have the missing key asked for."""

    async def tend(self) -> None:
        """Make the requests that have fallen due; one that fails is made again the next time."""

    async def seal(
        self, room_id: str, event_type: str, content: Mapping[str, object]
    ) -> tuple[str, Mapping[str, object]]:
        """Type and content as they are to be sent to this room."""

    async def lock_up(self, room_id: str, content: bytes) -> Locked | None:
        """A file's bytes as they are uploaded for this room; None where they go as they are."""

    async def suits(self, user_id: str) -> bool:
        """Whether a room of two with this person is to be encrypted."""


class InTheClear:
    """No encryption: sealed events are nobody's business, and everything goes out as it is."""

    is_signed = False

    def receive(self, news: News) -> bool:
        """Keys mean nothing here."""
        return False

    def look_at(self, room_id: str, events: Sequence[object]) -> None:
        """Every room is alike."""

    def unseal(self, event: Sealed) -> object | None:
        """Nothing, at once, so that no key is waited for."""
        return {}

    def miss(self, event: Sealed) -> None:
        """There is nobody to ask."""

    async def tend(self) -> None:
        """There is nothing to tend."""

    async def seal(
        self, room_id: str, event_type: str, content: Mapping[str, object]
    ) -> tuple[str, Mapping[str, object]]:
        """As they are."""
        return event_type, content

    async def lock_up(self, room_id: str, content: bytes) -> Locked | None:
        """Never."""
        return None

    async def suits(self, user_id: str) -> bool:
        """Never."""
        return False
