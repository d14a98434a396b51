"""One drawing of each kind, of the Tern & Lantern, in any language that is shipped."""

from collections.abc import Callable, Mapping
from datetime import date, timedelta

from bot.domain.drill import Drill
from bot.domain.expected import Expected
from bot.domain.first_runs import DayRun
from bot.domain.own_board import Together
from bot.domain.places import Board, Figure, Row
from bot.domain.run import Count
from bot.domain.table import Table, pattern_of, patterns_on
from bot.domain.trend import trend_of
from bot.replies.boards import board_line, house_line
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import Drawing, Sheet
from bot.replies.pictures.paper import paper
from bot.replies.pictures.plate_card import plate_card
from bot.replies.pictures.table_plan import table_plan
from bot.replies.pictures.trend import trend_picture
from bot.replies.pictures.week_close import week_close
from bot.replies.table import own_table_lines, table_lines
from bot.replies.trend import trend_lines
from tests.domain.kitchen import FULL_TIDE, ROPE_COIL, SECONDS, SLIPWAY

NAMES = {"@petra": "Petra", "@noor": "Noor", "@lio": "Lio"}
FASTER = ((221, 1), (219, 1), (214, 2), (216, 0), (None, 3), (210, 1), (205, 0), (204, 0), (199, 1), (196, 0), (192, 0))
BESTS = {
    (date(2026, 10, 26) + timedelta(days=2 * nth), net_s) for nth, net_s in ((0, 221), (2, 214), (5, 210), (10, 192))
}


def first_runs(nets_and_redos: tuple[tuple[float | None, int], ...] = FASTER) -> list[DayRun]:
    """A first run every second day, of eight plates."""
    return [
        DayRun(date(2026, 10, 26) + timedelta(days=2 * nth), net_s, Count(plates=8, accepted=8 - redo, redo=redo))
        for nth, (net_s, redo) in enumerate(nets_and_redos)
    ]


def trend(say: Phrases) -> Drawing:
    """A cook who grows faster, with a day without a time, as a trend."""
    found = trend_of(first_runs())
    return trend_picture(say, trend_lines(say, ROPE_COIL.wording.name, found, {"": 164.0}, "lean"), found, BESTS)


def early_trend(say: Phrases) -> Drawing:
    """Three first runs, which are too few to call."""
    found = trend_of(first_runs(FASTER[:3]))
    return trend_picture(say, trend_lines(say, ROPE_COIL.wording.name, found, {"": 164.0}, ""), found, set())


def close(say: Phrases) -> Drawing:
    """A week in which three of six cooks stood ahead of their own expected time."""
    own = Board(
        (
            _row(1, "@petra", 205, 224, 2.4),
            _row(2, "@noor", 182, 190, 1.6, close=True),
            _row(2, "@lio", 196, 201, 1.1, close=True),
            *(_row(4 + nth, f"@cook{nth}", 226, 210, -0.7) for nth in range(3)),
        ),
        shown=3,
    )
    clean = Board((Row(1, Figure("@noor", 0.9, 3, clean=24, attempted=24)),), shown=1)
    together = Together(6, 4, 74)
    lines = [board_line(say, "own", own, NAMES), board_line(say, "clean", clean, NAMES), house_line(say, together)]
    return week_close(say, ROPE_COIL, "2026-W48", own, NAMES, together, lines)


def no_board(say: Phrases) -> Drawing:
    """A week without a board."""
    together = Together(1, 1, 24)
    lines = [say("closed-no-board"), house_line(say, together)]
    return week_close(say, SLIPWAY, "2026-W48", Board(()), NAMES, together, lines)


def own_table(say: Phrases, drill: Drill = FULL_TIDE) -> Drawing:
    """The table that a drill takes."""
    pattern = pattern_of(drill.set_up, 27.0)
    return table_plan(say, own_table_lines(say, drill, pattern)[0], drill, [pattern])


def given_table(say: Phrases) -> Drawing:
    """Slipway on a table of 180 by 70, which takes it in two rows."""
    table = Table(180, 70)
    patterns = patterns_on(SLIPWAY.set_up, 27.0, table)
    head = table_lines(say, SLIPWAY, table, patterns, None)[0]
    return table_plan(say, head, SLIPWAY, [pattern for pattern in patterns if pattern.fits], table)


SCENES: Mapping[str, Callable[[Phrases], Drawing]] = {
    "plate-card": lambda say: plate_card(say, ROPE_COIL, SECONDS),
    "plate-card-long": lambda say: plate_card(say, FULL_TIDE, SECONDS),
    "table-own": own_table,
    "table-given": given_table,
    "trend": trend,
    "trend-early": early_trend,
    "week-close": close,
    "week-close-no-board": no_board,
    "paper": lambda say: paper(say, ROPE_COIL, SECONDS),
}

MIXED_LINES = {
    "ar": (
        "\u2068Rope coil\u2069 (\u20686\u2069)، \u20688\u2069 أطباق",
        "الوقت \u20682:44\u2069، جيد \u20687/8\u2069.",
        "1. \u20682 noodle, twirl, at 11 and 5\u2069 على الطبق الأول.",
        "جيد عندما: \u2068twirls upright with the end tucked, triangle standing, four beads apart\u2069.",
    ),
    "bn": ("Rope coil (6), 8টি প্লেট", "1. 2 noodle, twirl, ঘড়িতে 11 and 5", "স্ট্যান্ডার্ড 2:44, পরিষ্কার 7/8।"),
}


def mixed_lines(language: str) -> Drawing:
    """Lines in a script with Latin letters and clocks among them, bold and plain, from where its lines begin."""
    sheet = Sheet(language)
    for nth, line in enumerate(MIXED_LINES[language]):
        sheet.paragraph(line, 16, bold=nth % 2 == 0)
    return sheet.finished()


def _row(place: int, cook: str, actual_s: float, expected_s: float, score: float, *, close: bool = False) -> Row:
    figure = Figure(cook, score, 3, 0.03, actual_s=actual_s, expected=Expected(expected_s, 164.0, 1.2))
    return Row(place, figure, close=close)
