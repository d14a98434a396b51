"""Boards in words: one line a board, its first places in order."""

from collections.abc import Mapping, Sequence

from bot.domain.boards import Row
from bot.domain.pace import clock_text
from bot.replies.dates import week_text
from bot.replies.phrases import Phrases

BOARD_KINDS = ("fast", "steady", "clean")


def standing_head(say: Phrases, drill: str, week: str, until: str) -> str:
    """What the boards are of: a live drill with the hour at which it closes, a closed one with its week."""
    return (
        say("board-open", drill=drill, until=until)
        if until
        else say("board-head", drill=drill, week=week_text(say, week))
    )


def board_line(say: Phrases, kind: str, rows: Sequence[Row], names: Mapping[str, str]) -> str:
    """One board: place, name and figures of each row; a person no longer known reads as a cook."""
    told = (
        say(
            "board-row",
            place=row.place,
            name=names.get(row.figure.user_id, say("a-cook")),
            figures=figures_text(say, kind, row),
        )
        for row in rows
    )
    return say(f"board-{kind}", rows="; ".join(told))


def own_line(say: Phrases, kind: str, row: Row) -> str:
    """The asker's own place on one board."""
    return say("board-yours", kind=kind, place=row.place, figures=figures_text(say, kind, row))


def no_board_line(say: Phrases, kind: str, *, closed: bool) -> str:
    """Why there is no board, or none yet, without a word on how many ran."""
    if closed:
        return say("closed-no-board")
    return say("board-not-yet", kind=kind) if kind else say("board-not-yet-any")


def figures_text(say: Phrases, kind: str, row: Row) -> str:
    """What a row shows: the time with its tries, the median, or the clean plates of those built."""
    figure = row.figure
    if kind == "clean":
        return say("board-share", clean=figure.clean, attempted=figure.attempted)
    time = clock_text(figure.value)
    return say("board-tries", time=time, tries=figure.tries) if kind == "fast" else time


def figures_of(kind: str, rows: Sequence[Row]) -> dict[str, float | int | str | None]:
    """The numbers behind a board, by kind and place in the list."""
    return {f"{kind}.{nth}.value": row.figure.value for nth, row in enumerate(rows, 1)}
