"""Words that show something to everyone: the card, a page to print, the course, the boards; being on boards or off."""

from bot.errors import UserError
from bot.services import boards, quarter, show_boards, showing, sites
from bot.services.said import Said
from bot.words.registry import Word


async def _spec(said: Said, label: str) -> None:
    await showing.show_card(said, label)


async def _paper(said: Said, label: str) -> None:
    await showing.print_card(said, label)


async def _drills(said: Said, _: str) -> None:
    await showing.list_drills(said)


async def _board(said: Said, kind: str) -> None:
    match kind.casefold():
        case "quarter":
            await quarter.show_quarter(said)
        case "group":
            await sites.show_group(said)
        case of_posting:
            await show_boards.show_board(said, of_posting)


async def _boards(said: Said, rest: str) -> None:
    match rest.casefold():
        case "off":
            await boards.go_off_boards(said)
        case "on":
            await boards.go_on_boards(said)
        case _:
            raise UserError("boards-on-or-off")


WORDS = (
    Word("spec", _spec),
    Word("paper", _paper),
    Word("drills", _drills),
    Word("board", _board),
    Word("boards", _boards, "privacy", private=True),
)
