"""Pictures of runs, as cooks post them and judges see them."""

from datetime import timedelta

from bot.services.ports.events import Message
from tests.chat import KITCHEN, Chat, user


async def picture(chat: Chat, who: str, reply: str | None = None, text: str = "") -> str:
    """Somebody posts a picture in the drill's thread, as a reply or with a caption; its event."""
    chat.last = chat.stage.new_id()
    moment = chat.now + timedelta(minutes=1)
    event = Message(
        event_id=chat.last,
        room_id=KITCHEN,
        sender=user(who),
        sent_at=moment,
        text=text,
        thread=chat.stage.newest_drill(KITCHEN),
        reply_to=reply,
        picture=True,
    )
    chat.heard = await chat.stage.take(event)
    return chat.last


async def shown_run(chat: Chat, who: str = "noor", line: str = "3:20 8/8") -> str:
    """A run in the thread with its picture sent as a reply; the run's event."""
    run = await chat.run(who, line, watched=False)
    await picture(chat, who, run)
    return run
