"""A run timed by the chat: the server's times of two messages, good to no more than a network is."""

from datetime import datetime, timedelta

from bot.domain.run import Sent
from bot.errors import UserError
from bot.services.lines import Line
from bot.services.said import Said
from bot.services.submit import take_lines

RUNS_FOR = timedelta(hours=2)


async def start_clock(said: Said) -> None:
    """Note when this message was sent; an earlier start is forgotten."""
    for earlier in await said.asked("clock"):
        await said.work.questions.close(earlier.id)
    await said.ask("clock", RUNS_FOR, about=said.sent_at.isoformat())
    await said.noted()


async def stop_clock(said: Said) -> None:
    """Take the whole seconds since the start as the clock of a run, and ask how many were good."""
    started = await said.asked("clock")
    if not started:
        raise UserError("clock-not-started")
    await said.work.questions.close(started[0].id)
    clock_s = round((said.sent_at - datetime.fromisoformat(started[0].about)).total_seconds())
    if clock_s < 1:
        raise UserError("clock-not-started")
    await take_lines(said, [Line(0, Sent(clock_s=clock_s, chat_timed=True))])
