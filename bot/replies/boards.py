"""Boards in words: one line a board, its first places in order."""

from collections.abc import Mapping, Sequence

from bot.domain.own_board import Together, percent_faster
from bot.domain.pace import clock_text
from bot.domain.places import FEWEST_COOKS, Board, Row
from bot.replies.dates import week_text
from bot.replies.phrases import Phrases

HOUSE = "house"

Figures = dict[str, float | int | str | None]


def standing_head(say: Phrases, drill: str, week: str, until: str) -> str:
    """What the boards are of: a live drill with the hour at which it closes, a closed one with its week."""
    return (
        say("board-open", drill=drill, until=until)
        if until
        else say("board-head", drill=drill, week=week_text(say, week))
    )


def board_line(say: Phrases, kind: str, board: Board, names: Mapping[str, str]) -> str:
    """One board: place, name and figures of each row for everybody; empty where there is nothing to show.

    Somebody who may not be named, or is no longer known, reads as a cook.
    """
    if board.public:
        rows = [_row(say, kind, row, names) for row in board.public]
        return say(f"board-{kind}", rows="; ".join(_noted(say, rows, board.public)))
    return say(f"board-{kind}", rows=say("too-close")) if board.too_close else ""


def own_lines(say: Phrases, kind: str, row: Row, *, whole: bool) -> list[str]:
    """The asker's own place on one board; on the headline board, where it is ``whole``, with what it stands on."""
    place = say("board-yours", kind=kind, place=row.place, figures=figures_text(say, kind, row))
    return [place, *([_stands_on(say, row)] if whole and row.figure.expected else [])]


def house_line(say: Phrases, together: Together) -> str:
    """What the house did; the share of cooks only where it tells on nobody."""
    if together.compared < FEWEST_COOKS or not together.met:
        return say("board-house-plates", plates=together.clean_plates)
    share = round(100 * together.met / together.compared)
    return say("board-house", percent=share, plates=together.clean_plates)


def no_board_line(say: Phrases, kind: str, *, light: bool, closed: bool) -> str:
    """Why there is no board, or none yet, without a word on how many ran."""
    if light:
        return say("light-no-board")
    if kind == "own":
        return say("own-not-yet")
    if closed:
        return say("closed-no-board")
    return say("board-not-yet", kind=kind) if kind else say("board-not-yet-any")


def figures_text(say: Phrases, kind: str, row: Row) -> str:
    """What a row shows: the time with its tries, the median, the clean plates of those built, or the percent."""
    figure = row.figure
    if kind == "own":
        percent = percent_faster(figure)
        if percent == 0:
            return say("board-as-expected")
        return say("board-slower", percent=-percent) if percent < 0 else say("board-faster", percent=percent)
    if kind == "clean":
        return say("board-share", clean=figure.clean, attempted=figure.attempted)
    time = clock_text(figure.value)
    return say("board-tries", time=time, tries=figure.runs) if kind == "fast" else time


def figures_of(kind: str, rows: Sequence[Row]) -> Figures:
    """The numbers behind a board, by kind and place in the list."""
    return {f"{kind}.{nth}.value": row.figure.value for nth, row in enumerate(rows, 1)}


def own_figures(kind: str, row: Row) -> Figures:
    """The numbers behind the asker's own place, with those that a score was made of."""
    figure, expected = row.figure, row.figure.expected
    figures: Figures = {f"{kind}.yours.value": figure.value, f"{kind}.yours.spread": figure.spread}
    if expected is None:
        return figures
    sum_ = {
        "actual_s": figure.actual_s,
        "expected_s": expected.net_s,
        "standard_s": expected.standard_s,
        "usual": expected.usual,
        "drill": expected.drill,
    }
    return figures | {f"{kind}.yours.{name}": value for name, value in sum_.items()}


def _row(say: Phrases, kind: str, row: Row, names: Mapping[str, str]) -> str:
    name = names.get(row.figure.user_id, say("a-cook"))
    return say("board-row", place=row.place, name=name, figures=figures_text(say, kind, row))


def _noted(say: Phrases, texts: Sequence[str], rows: Sequence[Row]) -> list[str]:
    """The rows' texts, the last of a place that is too close to call with that said."""
    following = [row.place for row in rows[1:]] + [0]
    return [
        say("too-close-row", row=text) if row.close and row.place != after else text
        for text, row, after in zip(texts, rows, following, strict=True)
    ]


def _stands_on(say: Phrases, row: Row) -> str:
    """What the expected time stands on, so that it can be worked out by hand."""
    expected = row.figure.expected
    if expected is None:
        return ""
    times = {"actual": clock_text(row.figure.actual_s), "expected": clock_text(expected.net_s)}
    if expected.held:
        return say("expected-held", **times)
    if expected.fitted:
        return say("expected-fitted", **times)
    if expected.runs:
        return say("expected-on-it", runs=expected.runs, **times)
    ratios = {"standard": clock_text(expected.standard_s), "usual": say.decimal(expected.usual, 3)}
    if expected.drill is None:
        return say("expected-new", **times, **ratios)
    return say("expected-new-drill", drill=say.decimal(expected.drill, 3), **times, **ratios)
