"""The drill on paper, for a station with no phones: an A4 page with the plate, a table to fill in and the cautions."""

from bot.domain.drill import Drill
from bot.domain.techniques import Seconds
from bot.replies.card import head_line, safety_lines, step_lines
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import CHINA, SOFT, Drawing, Sheet
from bot.replies.pictures.plate import Plate
from bot.replies.pictures.plate_card import drill_figures, how_lines

A4_PT = (595, 842)
MARGIN_PT, RADIUS_PT = 36.0, 112.0
WORDS_PT, SMALL_PT, CAUTION_PT = 11, 9.5, 8.4
LEAST_RUNS, MOST_RUNS, ROW_PT = 6, 16, 23.0
COLUMNS = ("date", "name", "clock", "good", "reason", "watched")
SHARES = (0.14, 0.22, 0.12, 0.14, 0.20, 0.18)


def paper(say: Phrases, drill: Drill, seconds: Seconds) -> Drawing:
    """The page in points: the card, as many empty rows as there is room for, every caution, the local rules last."""
    sheet = Sheet(say.language, width=A4_PT[0], margin=MARGIN_PT, below=MARGIN_PT, ground=CHINA)
    sheet.paragraph(head_line(say, drill), 18, bold=True)
    sheet.gap(8)
    _card(sheet, say, drill, seconds)
    cautions = safety_lines(say, drill, seconds)
    room = A4_PT[1] - MARGIN_PT - sheet.below - _height(say, cautions)
    _runs(sheet, say, max(LEAST_RUNS, min(MOST_RUNS, int(room / ROW_PT) - 1)))
    _cautions(sheet, cautions)
    return sheet.finished(max(A4_PT[1], sheet.below))


def _card(sheet: Sheet, say: Phrases, drill: Drill, seconds: Seconds) -> None:
    """The plate, and beside it the figures, the steps and how to work."""
    top, left = sheet.below, 2 * RADIUS_PT + 24
    middle = sheet.across(sheet.margin + RADIUS_PT), top + RADIUS_PT
    Plate(sheet, middle, RADIUS_PT, drill.spec).draw()
    sheet.words((middle[0], top + 2 * RADIUS_PT + 12), say("picture-guest"), SMALL_PT, ink=SOFT)
    for figure, label in drill_figures(say, drill, seconds):
        sheet.paragraph(f"{figure} {label}", WORDS_PT, bold=True, left=left)
    sheet.gap(6)
    for line in step_lines(say, drill.spec, seconds, every_tool=True):
        sheet.paragraph(line, WORDS_PT, left=left)
    sheet.gap(6)
    for line in how_lines(say, drill, seconds):
        sheet.paragraph(line, SMALL_PT, left=left)
    sheet.below = max(sheet.below, top + 2 * RADIUS_PT + 16) + 10


def _runs(sheet: Sheet, say: Phrases, rows: int) -> None:
    """A table of so many empty rows under its headings."""
    edges = [sheet.margin + sheet.room * sum(SHARES[:nth]) for nth in range(len(SHARES) + 1)]
    top = sheet.below + ROW_PT * 0.8
    for edge, column in zip(edges, COLUMNS, strict=False):
        anchor = "end" if sheet.right_to_left else "start"
        sheet.words((sheet.across(edge + 3), top - 5), say(f"paper-{column}"), SMALL_PT, bold=True, anchor=anchor)
    for row in range(rows + 1):
        y = top + row * ROW_PT
        sheet.line([(sheet.margin, y), (sheet.width - sheet.margin, y)], stroke=SOFT, broad=0.7)
    for edge in edges:
        x = sheet.across(edge)
        sheet.line([(x, top), (x, top + rows * ROW_PT)], stroke=SOFT, broad=0.7)
    sheet.below = top + rows * ROW_PT + 8


def _cautions(sheet: Sheet, lines: list[str]) -> None:
    for line in lines[:-1]:
        sheet.paragraph(line, CAUTION_PT)
    sheet.gap(2)
    sheet.paragraph(lines[-1], CAUTION_PT + 1.4, bold=True)


def _height(say: Phrases, lines: list[str]) -> float:
    """How much of the page the cautions take."""
    tried = Sheet(say.language, width=A4_PT[0], margin=MARGIN_PT, below=0)
    _cautions(tried, lines)
    return tried.below + ROW_PT
