"""The chef's word about somebody's run: correct."""

from bot.errors import UserError
from bot.services.correcting import correct
from bot.services.people import mate_named
from bot.services.ports.run_records import Run
from bot.services.said import Said
from bot.words.registry import Word
from bot.words.result_line import read_line


async def _correct(said: Said, rest: str) -> None:
    """``correct 3:20 7/8`` as a reply to the run's message, ``correct @noor 3:20 7/8`` for Noor's last run."""
    named, line = "", rest
    reading = read_line(rest)
    if reading is None:
        named, _, line = rest.partition(" ")
        reading = read_line(line)
    if reading is None or not reading.whole:
        raise UserError("correct-how")
    await correct(said, await _run_meant(said, named), reading.taken())


async def _run_meant(said: Said, named: str) -> Run:
    if named:
        mate = await mate_named(said, named)
        last = await said.work.runs.last(said.kitchen.room_id, mate.user_id)
        runs = [last] if last else []
    else:
        runs = [run for run in await said.work.runs.of_event(said.reply_to or "") if run.status == "kept"]
    if len(runs) != 1 or runs[0].room_id != said.kitchen.room_id:
        raise UserError("correct-which")
    return runs[0]


WORDS = (Word("correct", _correct, chef=True),)
