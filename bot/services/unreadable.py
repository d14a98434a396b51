"""Messages whose key never came: who sent them is asked, once a key, to send them again."""

from datetime import timedelta

from bot.services.house import House
from bot.services.languages import room_phrases
from bot.services.ports.messages import Cause, EventRef
from bot.services.ports.world import Storage, Wake
from bot.services.speaker import Speaker

TOLD_AFTER = timedelta(seconds=60)
DROPPED_AFTER = timedelta(days=7)


class Unreadable:
    """Told by a ticker to look for messages that have waited too long for their key."""

    def __init__(self, storage: Storage, house: House, wake_sender: Wake) -> None:
        self._storage = storage
        self._house = house
        self._wake_sender = wake_sender

    async def tick(self) -> None:
        """Drop what has waited a week, and ask for what has waited a minute."""
        now = self._house.clock()
        async with self._storage.begin() as work:
            await work.sealed.lapse(now - DROPPED_AFTER)
            waited = await work.sealed.untold(now - TOLD_AFTER)
            for event in waited:
                speaker = Speaker(work, Cause(event_id=f"sealed:{event.session_id}"))
                text = (await room_phrases(self._house, work, event.room_id))("unreadable-message")
                await speaker.notice(event.room_id, text, reply_to=EventRef(event.event_id))
                await work.sealed.mark_told(event.session_id)
        if waited:
            self._wake_sender()
