"""Words that show something to everyone: the card, the course, the boards and the words themselves."""

from bot.services import boards, showing
from bot.services.said import Said
from bot.words.registry import Word


async def _spec(said: Said, label: str) -> None:
    await showing.show_card(said, label)


async def _drills(said: Said, _: str) -> None:
    await showing.list_drills(said)


async def _board(said: Said, kind: str) -> None:
    await boards.show_board(said, kind.casefold())


WORDS = (Word("spec", _spec), Word("drills", _drills), Word("board", _board))
