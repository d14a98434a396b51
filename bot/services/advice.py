"""Advice that nobody asked for: in private, and at most one piece of it a kitchen day."""

from bot.domain.kitchen_day import kitchen_day
from bot.services.ports.messages import Cause
from bot.services.said import Said
from bot.services.speaker import NONE, Figures, Speaker


async def advise(said: Said, user_id: str, text: str, figures: Figures = NONE) -> None:
    """Tell the person, unless they have had advice this kitchen day."""
    today = kitchen_day(said.now, said.kitchen.zone, said.kitchen.day_turn)
    await Speaker(said.work, Cause(event_id=f"advice:{user_id}:{today}")).tell(user_id, text, figures)
