"""The table plan: the plates to scale and numbered in walking order, with the measures and how far a cook reaches."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.domain.drill import Drill, SetUp, plate_cm
from bot.domain.table import COMFORTABLE_REACH_CM, LONGEST_REACH_CM, Pattern, Table, walked
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import CHINA, INK, MARK, SOFT, Drawing, Point, Sheet, new_sheet
from bot.replies.pictures.lettering import left_to_right
from bot.replies.pictures.plate import USUAL_PLATE_CM
from bot.replies.table import cm_text

SMALL_PX = 12
MEASURE_PX, BETWEEN_PX, MOST_DEEP_PX = 34.0, 14.0, 220.0
TABLE_TOP = "#f3ead7"


def table_plan(
    say: Phrases, head: str, drill: Drill, patterns: Sequence[Pattern], table: Table | None = None
) -> Drawing:
    """Each pattern on the table, or on one that is just as large as it needs, all to the same scale."""
    sheet = new_sheet(say)
    sheet.paragraph(head, 15, bold=True)
    tops = [_top(pattern, table) for pattern in patterns]
    scale = min(
        (sheet.room - MEASURE_PX) / max(top.length_cm for top in tops), MOST_DEEP_PX / max(top.depth_cm for top in tops)
    )
    wide_cm = plate_cm(drill.spec) or USUAL_PLATE_CM
    for pattern, top in zip(patterns, tops, strict=True):
        set_up = pattern.set_up
        sheet.gap(BETWEEN_PX)
        sheet.paragraph(say("table-rows", rows=set_up.rows, columns=set_up.columns), 14, bold=True)
        sheet.gap(20)
        _Plan(say, sheet, set_up, top, scale, wide_cm, sheet.below).draw()
    sheet.gap(6)
    sheet.paragraph(say("picture-walk"), SMALL_PX, ink=SOFT)
    sheet.paragraph(say("picture-reach", often=COMFORTABLE_REACH_CM, seldom=LONGEST_REACH_CM), SMALL_PX, ink=SOFT)
    return sheet.finished()


def _top(pattern: Pattern, table: Table | None) -> Table:
    return table or Table(pattern.length_cm, pattern.depth_cm)


@dataclass(frozen=True)
class _Plan:
    """A set-up on one table top, from ``upper`` downwards; the cook stands below it."""

    say: Phrases
    sheet: Sheet
    set_up: SetUp
    top: Table
    scale: float
    wide_cm: float
    upper: float

    def draw(self) -> None:
        """The measures, the top with its plates, and the reach from where the cook stands."""
        long, deep = self.top.length_cm * self.scale, self.top.depth_cm * self.scale
        self._measures(long, deep)
        self.sheet.rectangle((self.sheet.margin, self.upper), (long, deep), fill=TABLE_TOP, stroke=SOFT)
        self._reach(long, deep)
        self._plates(deep)
        self.sheet.below = self.upper + deep + 4
        self._cook(long)

    def _measures(self, long: float, deep: float) -> None:
        """The length above the top and the depth beside it."""
        y, x = self.upper - 7, self.sheet.margin + long + 8
        self._span((self.sheet.margin, y), (self.sheet.margin + long, y))
        self._span((x, self.upper), (x, self.upper + deep))
        length = left_to_right(f"{cm_text(self.say, self.top.length_cm)} cm")
        depth = cm_text(self.say, self.top.depth_cm)
        self.sheet.words((self.sheet.margin + long / 2, y - 4), length, SMALL_PX, ink=SOFT)
        self.sheet.words((x + 4, self.upper + deep), depth, SMALL_PX, ink=SOFT, anchor="start")

    def _span(self, start: Point, end: Point) -> None:
        tick = (3, 0) if start[0] == end[0] else (0, 3)
        self.sheet.line([start, end], stroke=SOFT, broad=1)
        for x, y in (start, end):
            self.sheet.line([(x - tick[0], y - tick[1]), (x + tick[0], y + tick[1])], stroke=SOFT, broad=1)

    def _reach(self, long: float, deep: float) -> None:
        """How far a cook reaches from the near edge, where the table is deeper."""
        for reach_cm in (COMFORTABLE_REACH_CM, LONGEST_REACH_CM):
            if reach_cm < self.top.depth_cm:
                y = self.upper + deep - reach_cm * self.scale
                self.sheet.line([(self.sheet.margin, y), (self.sheet.margin + long, y)], stroke=MARK, dashes="5 4")
                self.sheet.words(
                    (self.sheet.margin + long + 12, y + 4), str(reach_cm), SMALL_PX, ink=MARK, anchor="start"
                )

    def _plates(self, deep: float) -> None:
        """The plates with their numbers, the near row at the near edge."""
        radius = self.wide_cm * self.scale / 2
        size = min(13.0, radius * 1.05)
        for row, numbers in enumerate(reversed(walked(self.set_up))):
            for column, number in enumerate(numbers):
                if number is not None:
                    x, y = self._spot(column, row, deep)
                    self.sheet.circle((x, y), radius, fill=CHINA, stroke=INK)
                    self.sheet.words((x, y + size * 0.36), str(number), size, bold=True)

    def _spot(self, column: int, row: int, deep: float) -> Point:
        set_up = self.set_up
        along = set_up.edge_cm + self.wide_cm / 2 + column * (self.wide_cm + set_up.gap_cm)
        away = set_up.edge_cm + self.wide_cm / 2 + row * (self.wide_cm + set_up.gap_cm)
        return self.sheet.margin + along * self.scale, self.upper + deep - away * self.scale

    def _cook(self, long: float) -> None:
        """Where the cook stands."""
        middle = self.sheet.margin + long / 2
        self.sheet.path("M-9 7C-9 -1 9 -1 9 7", stroke=SOFT, turn=f"translate({middle:.1f} {self.sheet.below + 7:.1f})")
        self.sheet.circle((middle, self.sheet.below + 4), 4, fill=CHINA, stroke=SOFT)
        self.sheet.gap(18)
