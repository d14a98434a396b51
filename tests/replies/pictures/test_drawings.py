"""The drawings: what they say, that nothing runs off them, and that everybody can read them."""

import math
from dataclasses import replace
from xml.etree import ElementTree as ET

import pytest
from PIL import Image, ImageChops

from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.plate_layout import laid_out_plate
from bot.domain.run import time_gate
from bot.domain.standard_time import standard_s, touches
from bot.domain.table import Table, patterns_on
from bot.replies.accepted_words import languages
from bot.replies.card import step_lines
from bot.replies.phrases import Phrases, english
from bot.replies.pictures.drawing import CHINA, INK, MARGIN_PX, MARK, PAPER, PHONE_PX, SOFT, Drawing
from bot.replies.pictures.paper import A4_PT, paper
from bot.replies.pictures.plate import BADGE_PX, WELL, badges
from bot.replies.pictures.plate_card import RADIUS_PX, plate_card
from bot.replies.pictures.table_plan import table_plan
from tests.domain.kitchen import EVERY, ROPE_COIL, SECONDS
from tests.replies.pictures.golden import picture_of
from tests.replies.pictures.scenes import SCENES

SAY = english()
PHONE_HIGH_PX = 700
drills = pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)


def said(drawing: Drawing) -> str:
    """All words of a drawing in their order, without spaces."""
    texts = (node.text or "" for node in ET.fromstring(drawing.svg).iter() if node.tag.endswith("text"))  # noqa: S314
    return "".join("".join(texts).split())


def bare(line: str) -> str:
    """A line without its spaces."""
    return "".join(line.split())


@drills
def test_the_card_says_what_a_cook_has_to_know(drill: Drill) -> None:
    """Steps with counts and tools, the accept rule, touches, standard time, the gate, and last the local rules."""
    words = said(plate_card(SAY, drill, SECONDS))
    for line in step_lines(SAY, drill.spec, SECONDS, every_tool=True):
        assert bare(line) in words
    assert bare(drill.spec.accept) in words
    standard = clock_text(standard_s(drill.spec, drill.set_up, SECONDS))
    assert bare(f"{standard}{SAY('picture-standard')}{touches(drill.spec)}touches") in words
    assert bare(f"{time_gate(drill.set_up.plates)} of {drill.set_up.plates}") in words
    assert words.endswith(bare(SAY("caution-local-rules")))


@drills
def test_the_numbers_of_the_steps_are_clear_of_each_other(drill: Drill) -> None:
    """Each step that puts something on the plate is numbered, in the well, and no number covers another."""
    numbered = badges(laid_out_plate(drill.spec), RADIUS_PX)
    assert {nth for nth, _ in numbered} == {laid.nth for laid in laid_out_plate(drill.spec)}
    points = [at for _, at in numbered]
    assert all(math.hypot(*at) + BADGE_PX <= RADIUS_PX * WELL for at in points)
    assert all(math.dist(a, b) >= 2 * BADGE_PX for nth, a in enumerate(points) for b in points[:nth])


@drills
def test_a_card_is_little_more_than_a_phone_shows_at_once(drill: Drill) -> None:
    """Every card of the course is as wide as a phone and, the two longest apart, no higher than it shows."""
    card = plate_card(SAY, drill, SECONDS)
    assert card.width == PHONE_PX
    assert card.height <= PHONE_HIGH_PX * (1.05 if drill.number == 11 else 1)


@pytest.mark.parametrize("scene", SCENES)
@pytest.mark.parametrize("language", languages())
def test_nothing_runs_into_the_margin(scene: str, language: str) -> None:
    """In every language the outer half of the margin stays paper on all four sides."""
    picture = picture_of(SCENES[scene](Phrases(language)))
    wide, high, edge = picture.width, picture.height, MARGIN_PX // 2
    ground = Image.new("RGB", picture.size, picture.getpixel((0, 0)))
    inked = ImageChops.difference(picture, ground).getbbox()
    assert inked is not None
    left, top, right, below = inked
    assert min(left, top) >= edge
    assert (right, below) <= (wide - edge, high)
    assert below <= high - edge


def test_a_deep_table_stays_on_the_screen() -> None:
    """Two patterns on a table of 300 by 300 cm are no higher together than a phone shows."""
    table = Table(300, 300)
    patterns = patterns_on(ROPE_COIL.set_up, 27.0, table)[:2]
    assert table_plan(SAY, "", ROPE_COIL, patterns, table).height <= PHONE_HIGH_PX


def test_a_page_is_one_page() -> None:
    """Each drill of the course fills one A4 page (ISO 216: 210 by 297 mm, 595 by 842 points) and not more."""
    for drill in EVERY:
        drawing = paper(SAY, drill, SECONDS)
        assert (drawing.width, drawing.height) == A4_PT == (round(210 / 25.4 * 72), round(297 / 25.4 * 72))
        assert said(drawing).endswith(bare(SAY("caution-local-rules")))


def _luminance(colour: str) -> float:
    """Relative luminance (WCAG 2.2, definition of relative luminance)."""
    parts = [int(colour[nth : nth + 2], 16) / 255 for nth in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return sum(share * part for share, part in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


@pytest.mark.parametrize("ink", [INK, SOFT, MARK])
@pytest.mark.parametrize("ground", [PAPER, CHINA])
def test_words_stand_out_from_their_ground(ink: str, ground: str) -> None:
    """At least 4.5 to 1, for all eyes and in grey (WCAG 2.2, success criterion 1.4.3, text)."""
    assert (_luminance(ground) + 0.05) / (_luminance(ink) + 0.05) >= 4.5


def test_a_name_is_no_markup() -> None:
    """A drill's name with signs of markup is drawn as it is written."""
    drill = replace(ROPE_COIL, wording=replace(ROPE_COIL.wording, name="<b>Rope & coil</b>"))
    assert "<b>Rope&coil</b>" in said(plate_card(SAY, drill, SECONDS))
