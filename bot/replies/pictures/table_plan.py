"""The table plan: the plates to scale and numbered in walking order, with the measures and how far a cook reaches."""

from collections.abc import Sequence

from bot.domain.drill import Drill, plate_cm
from bot.domain.table import COMFORTABLE_REACH_CM, LONGEST_REACH_CM, Pattern, Table, walked
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import CHINA, INK, MARK, SOFT, Drawing, Point, Sheet, new_sheet
from bot.replies.pictures.lettering import left_to_right
from bot.replies.pictures.plate import USUAL_PLATE_CM
from bot.replies.table import cm_text

SMALL_PX = 12
MEASURE_PX, BETWEEN_PX = 34.0, 14.0
TABLE_TOP = "#f3ead7"


def table_plan(
    say: Phrases, head: str, drill: Drill, patterns: Sequence[Pattern], table: Table | None = None
) -> Drawing:
    """Each pattern on the table, or on one that is just as large as it needs, all to the same scale."""
    sheet = new_sheet(say)
    sheet.paragraph(head, 15, bold=True)
    longest = max(_top(pattern, table).length_cm for pattern in patterns)
    scale = (sheet.room - MEASURE_PX) / longest
    for pattern in patterns:
        sheet.gap(BETWEEN_PX)
        _Plan(sheet, say, pattern, _top(pattern, table), scale, plate_cm(drill.spec) or USUAL_PLATE_CM).draw()
    sheet.gap(6)
    sheet.paragraph(say("picture-walk"), SMALL_PX, ink=SOFT)
    sheet.paragraph(say("picture-reach", often=COMFORTABLE_REACH_CM, seldom=LONGEST_REACH_CM), SMALL_PX, ink=SOFT)
    return sheet.finished()


def _top(pattern: Pattern, table: Table | None) -> Table:
    return table or Table(pattern.length_cm, pattern.depth_cm)


class _Plan:
    """One pattern on one table top; the cook stands below it."""

    def __init__(self, sheet: Sheet, say: Phrases, pattern: Pattern, top: Table, scale: float, wide_cm: float) -> None:
        self._sheet = sheet
        self._say = say
        self._pattern = pattern
        self._top = top
        self._scale = scale
        self._wide = wide_cm

    def draw(self) -> None:
        """The measures, the top with its plates, and the reach from where the cook stands."""
        sheet, set_up = self._sheet, self._pattern.set_up
        sheet.paragraph(self._say("table-rows", rows=set_up.rows, columns=set_up.columns), 14, bold=True)
        sheet.gap(20)
        self._left, self._upper = sheet.margin, sheet.below
        long, deep = self._top.length_cm * self._scale, self._top.depth_cm * self._scale
        self._measures(long, deep)
        sheet.rectangle((self._left, self._upper), (long, deep), fill=TABLE_TOP, stroke=SOFT)
        self._reach(long, deep)
        self._plates(deep)
        sheet.below = self._upper + deep + 4
        self._cook(long)

    def _measures(self, long: float, deep: float) -> None:
        """The length above the top and the depth beside it."""
        y, x = self._upper - 7, self._left + long + 8
        self._span((self._left, y), (self._left + long, y))
        self._span((x, self._upper), (x, self._upper + deep))
        length = left_to_right(f"{cm_text(self._top.length_cm)} cm")
        depth = cm_text(self._top.depth_cm)
        self._sheet.words((self._left + long / 2, y - 4), length, SMALL_PX, ink=SOFT)
        self._sheet.words((x + 4, self._upper + deep), depth, SMALL_PX, ink=SOFT, anchor="start")

    def _span(self, start: Point, end: Point) -> None:
        tick = (3, 0) if start[0] == end[0] else (0, 3)
        self._sheet.line([start, end], stroke=SOFT, broad=1)
        for x, y in (start, end):
            self._sheet.line([(x - tick[0], y - tick[1]), (x + tick[0], y + tick[1])], stroke=SOFT, broad=1)

    def _reach(self, long: float, deep: float) -> None:
        """How far a cook reaches from the near edge, where the table is deeper."""
        for reach_cm in (COMFORTABLE_REACH_CM, LONGEST_REACH_CM):
            if reach_cm < self._top.depth_cm:
                y = self._upper + deep - reach_cm * self._scale
                self._sheet.line([(self._left, y), (self._left + long, y)], stroke=MARK, dashes="5 4")
                self._sheet.words((self._left + long + 12, y + 4), str(reach_cm), SMALL_PX, ink=MARK, anchor="start")

    def _plates(self, deep: float) -> None:
        """The plates with their numbers, the near row at the near edge."""
        radius = self._wide * self._scale / 2
        size = min(13.0, radius * 1.05)
        for row, numbers in enumerate(reversed(walked(self._pattern.set_up))):
            for column, number in enumerate(numbers):
                if number is not None:
                    x, y = self._spot(column, row, deep)
                    self._sheet.circle((x, y), radius, fill=CHINA, stroke=INK)
                    self._sheet.words((x, y + size * 0.36), str(number), size, bold=True)

    def _spot(self, column: int, row: int, deep: float) -> Point:
        set_up = self._pattern.set_up
        along = set_up.edge_cm + self._wide / 2 + column * (self._wide + set_up.gap_cm)
        away = set_up.edge_cm + self._wide / 2 + row * (self._wide + set_up.gap_cm)
        return self._left + along * self._scale, self._upper + deep - away * self._scale

    def _cook(self, long: float) -> None:
        """Where the cook stands."""
        middle = self._left + long / 2
        self._sheet.path(
            "M-9 7C-9 -1 9 -1 9 7", stroke=SOFT, turn=f"translate({middle:.1f} {self._sheet.below + 7:.1f})"
        )
        self._sheet.circle((middle, self._sheet.below + 4), 4, fill=CHINA, stroke=SOFT)
        self._sheet.gap(18)
