"""The plate card: the plate from above with its clock, each step where the spec puts it, over the words of the card."""

import math

from bot.domain.drill import Drill, Spec
from bot.domain.plate_clock import HOURS, Spot, hour_spot, spots
from bot.domain.techniques import Seconds
from bot.replies.card import posted_card
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import CHINA, INK, SOFT, WIDTH_PX, Sheet

PLATE_PX, WELL_PX, MARK_PX = 150.0, 118.0, 11.0
ARC_POINTS = 25
_APART = 2.1 * MARK_PX / PLATE_PX


def plate_card(say: Phrases, drill: Drill, seconds: Seconds) -> str:
    """The card as a picture; its words are those of the posted card, so that the text says the same."""
    head, *lines = posted_card(say, drill, seconds).replace("`", "").split("\n")
    sheet = Sheet()
    sheet.paragraph(head, 18, bold=True)
    _draw_plate(sheet, drill.spec)
    for line in lines:
        sheet.paragraph(line)
    return sheet.svg()


def marks(spec: Spec) -> list[tuple[int, Spot]]:
    """Each step's number at its spots, none over another: where one is taken the next free spot beside it is used."""
    placed: list[tuple[int, Spot]] = []
    for nth, step in enumerate(spec.steps, 1):
        wanted = spots(step.at, step.pieces) or (Spot(0.0, 0.0),)
        for spot in dict.fromkeys(wanted):
            placed.append((nth, _free(spot, [there for _, there in placed])))
    return placed


def _free(spot: Spot, taken: list[Spot]) -> Spot:
    """The spot itself, or the nearest free one of the well around it, looked for ring by ring."""
    for ring in range(HOURS):
        for hour in range(HOURS if ring else 1):
            aside = hour_spot(hour, ring * _APART)
            tried = Spot(spot.x + aside.x, spot.y + aside.y)
            within = math.hypot(tried.x, tried.y) * PLATE_PX + MARK_PX <= WELL_PX
            if within and all(math.dist((tried.x, tried.y), (there.x, there.y)) >= _APART - 1e-9 for there in taken):
                return tried
    return spot


def _draw_plate(sheet: Sheet, spec: Spec) -> None:
    x, y = WIDTH_PX / 2, sheet.below_px + PLATE_PX + 6
    sheet.circle(x, y, PLATE_PX, fill=CHINA)
    sheet.circle(x, y, WELL_PX, stroke=SOFT)
    for hour in range(1, HOURS + 1):
        at = hour_spot(hour, (PLATE_PX + WELL_PX) / 2 / PLATE_PX)
        sheet.words_at(x + PLATE_PX * at.x, y - PLATE_PX * at.y, str(hour), 14, ink=SOFT)
    for step in spec.steps:
        if step.pieces == 1 and " to " in step.at:
            arc = spots(step.at, ARC_POINTS) or ()
            sheet.stroke([(x + PLATE_PX * spot.x, y - PLATE_PX * spot.y) for spot in arc])
    for nth, spot in marks(spec):
        sheet.circle(x + PLATE_PX * spot.x, y - PLATE_PX * spot.y, MARK_PX, fill=INK)
        sheet.words_at(x + PLATE_PX * spot.x, y - PLATE_PX * spot.y, str(nth), 14, ink=CHINA)
    sheet.below_px = y + PLATE_PX + 8
