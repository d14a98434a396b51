"""Forget me: asked for once more in the private room, then everything about the person is erased."""

from datetime import timedelta

from bot.replies.markup import to_html
from bot.services.ports.messages import Outgoing
from bot.services.said import Said

SURE_WITHIN = timedelta(hours=12)


async def ask_to_forget(said: Said) -> None:
    """Say what goes and what stays, and wait for the whole sentence; it is asked in private, wherever it was said."""
    await said.ask("forget", SURE_WITHIN)
    await said.tell(said.phrases("forget-sure"))


async def forget(said: Said) -> None:
    """Erase everything about the person in every kitchen, and say so in the room where they said it."""
    await said.work.persons.erase(said.user_id)
    text = said.phrases("forgotten")
    await said.speaker.say(Outgoing(to=said.room_id, style="text", text=text, html=to_html(text)))
