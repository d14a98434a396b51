"""Paces across drills in words: always a band, never a decimal alone."""

from collections.abc import Mapping
from math import ceil, floor

from bot.domain.fairness.cells import NEEDED_COOKS, NEEDED_LINKS, NEEDED_RUNS
from bot.domain.fairness.fit import Band
from bot.domain.fairness.grounds import Ground
from bot.domain.fairness.ranking import QuarterBoard
from bot.replies.boards import Figures
from bot.replies.phrases import Phrases


def quarter_head(say: Phrases, quarter: str, *, closed: bool) -> str:
    """Which quarter the board is of."""
    year, number = quarter.split("-Q")
    return say("quarter-closed" if closed else "quarter-open", quarter=number, year=year)


def quarter_lines(say: Phrases, ranked: QuarterBoard, names: Mapping[str, str]) -> list[str]:
    """The rows that everybody may see, and what is not compared."""
    rows = [
        say(
            "quarter-row",
            place=row.place,
            name=names.get(row.figure.user_id, say("a-cook")),
            pace=band_text(say, ranked.bands[row.figure.user_id]),
        )
        for row in ranked.board.public
    ]
    lines = [say("quarter-board", rows="; ".join(rows))] if rows else []
    if len({row.place for row in ranked.board.public}) < len(rows):
        lines.append(say("quarter-shared"))
    if ranked.board.too_close:
        lines.append(say("quarter-too-close"))
    if ranked.divided:
        lines.append(say("quarter-divided"))
    return lines or [say("quarter-few")]


def own_quarter_line(say: Phrases, ranked: QuarterBoard, user_id: str) -> str:
    """The asker's own pace with its place, or with why it has none."""
    pace = band_text(say, ranked.bands[user_id])
    row = ranked.board.row_of(user_id)
    if row:
        return say("quarter-yours", place=row.place, pace=pace, runs=row.figure.runs)
    reason = ranked.without.get(user_id, "ground")
    return say("quarter-no-place", pace=pace, why=say(f"quarter-why-{reason}"))


def ground_line(say: Phrases, ground: Ground) -> str:
    """That the computed standard stands, and what is missing."""
    return say("standard-stands", **needs(say, ground))


def needs(say: Phrases, ground: Ground) -> dict[str, str | int]:
    """What a number across drills needs, and what of it is missing, without a word on how many cooks ran."""
    missing = [
        *([say("missing-runs", runs=NEEDED_RUNS - ground.runs)] if ground.runs < NEEDED_RUNS else []),
        *([say("missing-cooks")] if ground.cooks < NEEDED_COOKS else []),
        *([say("missing-links")] if ground.linked < NEEDED_LINKS else []),
    ]
    told = ", ".join(missing) or say("missing-fit")
    return {"runs": NEEDED_RUNS, "cooks": NEEDED_COOKS, "linked": NEEDED_LINKS, "missing": told}


def band_text(say: Phrases, band: Band) -> str:
    """A pace across drills as a band, its ends rounded outwards."""
    low, high = floor(10 * band.low) / 10, ceil(10 * band.high) / 10
    return say("band", low=say.decimal(low, 1), high=say.decimal(high, 1))


def quarter_figures(ranked: QuarterBoard) -> Figures:
    """The numbers behind the rows shown, by their place in the list."""
    figures: Figures = {}
    for nth, row in enumerate(ranked.board.public, 1):
        figures |= _figures_of(f"quarter.{nth}", ranked.bands[row.figure.user_id])
    return figures


def own_figures(ranked: QuarterBoard, user_id: str) -> Figures:
    """The numbers behind the asker's own line."""
    row = ranked.board.row_of(user_id)
    return _figures_of("quarter.yours", ranked.bands[user_id]) | {"quarter.yours.place": row.place if row else None}


def _figures_of(name: str, band: Band) -> Figures:
    return {f"{name}.levelled_s": band.value, f"{name}.low_s": band.low, f"{name}.high_s": band.high}
