"""The week's close: who was ahead of their own expected time and by how much, and what the house did together."""

from collections.abc import Mapping, Sequence

from bot.domain.drill import Drill
from bot.domain.own_board import Together, percent_faster
from bot.domain.places import Board, Row
from bot.replies.boards import figures_text
from bot.replies.dates import week_text
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import BAND, CHINA, INK, MARK, SOFT, Drawing, Sheet, new_sheet
from bot.replies.pictures.lettering import broken, width_px
from bot.replies.pictures.plate import Plate

OWN = "own"
PLATE_PX, HOUSE_PX, SMALL_PX, WORDS_PX = 44.0, 34.0, 12, 14
BAR_PX, LEAST_FULL_PERCENT = 9.0, 10


def week_close(
    say: Phrases,
    drill: Drill,
    week: str,
    own: Board,
    names: Mapping[str, str],
    together: Together,
    lines: Sequence[str],
) -> Drawing:
    """The close of a drill's week; ``lines`` are what the text says of it, the headline board first, the house last.

    Where the headline board has nobody to show, its line says why.
    """
    sheet = new_sheet(say)
    _head(sheet, say, drill, week)
    others = list(lines[:-1])
    if own.public:
        others = others[1:]
        sheet.paragraph(say("picture-own"), WORDS_PX, bold=True)
        _rows(sheet, say, own.public, names)
    sheet.gap(4)
    for line in others:
        sheet.paragraph(line, WORDS_PX - 1)
        sheet.gap(3)
    _house(sheet, say, together, lines[-1])
    return sheet.finished()


def _head(sheet: Sheet, say: Phrases, drill: Drill, week: str) -> None:
    """What is closed, beside its plate."""
    top, room = sheet.below, sheet.room - 2 * PLATE_PX - 12
    Plate(sheet, (sheet.across(sheet.width - sheet.margin - PLATE_PX), top + PLATE_PX), PLATE_PX, drill.spec).bare()
    sheet.gap(8)
    sheet.paragraph(say("closed", drill=drill.wording.name), 17, bold=True, room=room)
    sheet.paragraph(week_text(say, week), SMALL_PX, ink=SOFT, room=room)
    sheet.below = max(sheet.below, top + 2 * PLATE_PX) + 10


def _rows(sheet: Sheet, say: Phrases, rows: Sequence[Row], names: Mapping[str, str]) -> None:
    """Each place with a bar from the cook's own expected time, as long as they were faster."""
    full = max(LEAST_FULL_PERCENT, *(percent_faster(row.figure) for row in rows))
    for row, after in zip(rows, [*rows[1:], None], strict=True):
        sheet.gap(22)
        _row(sheet, f"{row.place} {names.get(row.figure.user_id, say('a-cook'))}", figures_text(say, OWN, row))
        _bar(sheet, percent_faster(row.figure) / full)
        sheet.gap(BAR_PX + 8)
        if row.close and (after is None or after.place != row.place):
            sheet.paragraph(say("too-close"), SMALL_PX, ink=SOFT)
    sheet.paragraph(say("picture-expected"), SMALL_PX, ink=SOFT)


def _row(sheet: Sheet, name: str, told: str) -> None:
    """Place and name where a line begins, cut where there is no room, and at its other end what is told of them."""
    begin, end = ("end", "start") if sheet.right_to_left else ("start", "end")
    room = sheet.room - width_px(told, WORDS_PX) - 12
    shown = broken(name, WORDS_PX, room, bold=True)[0]
    sheet.words((sheet.across(sheet.margin), sheet.below), shown, WORDS_PX, bold=True, anchor=begin)
    sheet.words((sheet.across(sheet.width - sheet.margin), sheet.below), told, WORDS_PX, anchor=end)


def _bar(sheet: Sheet, share: float) -> None:
    begin, long = sheet.across(sheet.margin), sheet.room * share
    left = min(begin, sheet.across(sheet.margin + long))
    sheet.rectangle((left, sheet.below + 6), (long, BAR_PX), fill=BAND, stroke=MARK, corner=2)
    sheet.line([(begin, sheet.below + 3), (begin, sheet.below + 9 + BAR_PX)], broad=2.4)


def _house(sheet: Sheet, say: Phrases, together: Together, line: str) -> None:
    """The clean plates on a plate, beside what the house did."""
    sheet.gap(8)
    top = sheet.below
    middle = sheet.across(sheet.margin + HOUSE_PX), top + HOUSE_PX
    sheet.circle(middle, HOUSE_PX, fill=CHINA, stroke=SOFT, broad=1.4)
    sheet.circle(middle, HOUSE_PX * 0.8, stroke=SOFT, broad=0.6)
    sheet.words((middle[0], middle[1] + 7), str(together.clean_plates), 19, bold=True, ink=INK)
    sheet.gap(8)
    sheet.paragraph(line, WORDS_PX, left=2 * HOUSE_PX + 14)
    sheet.below = max(sheet.below, top + 2 * HOUSE_PX)
