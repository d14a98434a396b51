"""Sealed events on their way to the inbox: opened where the key is there, kept until it comes where it is not."""

from collections.abc import Sequence

from bot.matrix.events import read_event
from bot.matrix.secrecy import Secrecy
from bot.services.ports.events import Incoming, Redaction, Sealed
from bot.services.ports.world import UnitOfWork


class Envelopes:
    """Opens sealed events of the account ``own_id``; ``keys_came`` says that those kept are worth another try."""

    def __init__(self, secrecy: Secrecy, own_id: str) -> None:
        self._secrecy = secrecy
        self._own_id = own_id
        self.keys_came = True

    async def open(self, work: UnitOfWork, events: Sequence[Incoming | Sealed]) -> list[Incoming]:
        """What of these can be read, and before it what had waited for its key; the rest is kept."""
        deleted = {event.target for event in events if isinstance(event, Redaction)}
        waited = (
            [event for event in await work.sealed.waiting() if event.event_id not in deleted] if self.keys_came else []
        )
        readable: list[Incoming] = []
        opened: list[str] = []
        missing: list[Sealed] = []
        for event in [*waited, *events]:
            if not isinstance(event, Sealed):
                readable.append(event)
            elif (raw := self._secrecy.unseal(event)) is None:
                missing.append(event)
            else:
                opened.append(event.event_id)
                readable += self._read(raw, event)
        await work.sealed.drop([*opened, *deleted])
        await work.sealed.keep([event for event in missing if event.event_id not in deleted])
        for event in missing:
            self._secrecy.miss(event)
        return readable

    def _read(self, raw: object, sealed: Sealed) -> list[Incoming]:
        event = read_event(raw, sealed.room_id, self._own_id)
        return [event] if event and not isinstance(event, Sealed) else []
