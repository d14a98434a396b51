"""The plate card as a picture: every step on the plate, none hidden, and the words of the card beneath."""

import math
import struct
from xml.etree import ElementTree as ET

import pytest

from bot.domain.drill import Drill
from bot.replies.card import posted_card
from bot.replies.phrases import english
from bot.replies.pictures.drawing import WIDTH_PX, png
from bot.replies.pictures.plate_card import MARK_PX, PLATE_PX, WELL_PX, marks, plate_card
from tests.domain.kitchen import EVERY, ROPE_COIL, SECONDS

SAY = english()


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_every_step_is_in_the_well_and_none_hides_another(drill: Drill) -> None:
    """Each step has its number on the plate, clear of the hours on the rim and of every other number."""
    drawn = marks(drill.spec)
    assert {nth for nth, _ in drawn} == set(range(1, len(drill.spec.steps) + 1))
    points = [(PLATE_PX * spot.x, PLATE_PX * spot.y) for _, spot in drawn]
    assert all(math.hypot(*point) + MARK_PX <= WELL_PX for point in points)
    apart = [math.dist(one, other) for nth, one in enumerate(points) for other in points[:nth]]
    assert all(distance >= 2 * MARK_PX for distance in apart)


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_the_picture_says_what_the_text_says(drill: Drill) -> None:
    """All words of the posted card stand on the picture, in their order, beneath the plate."""
    drawn = ET.fromstring(plate_card(SAY, drill, SECONDS))  # noqa: S314 -- our own SVG
    words = [text.text or "" for text in drawn if text.get("x") == "16"]
    assert "".join("".join(words).split()) == "".join(posted_card(SAY, drill, SECONDS).replace("`", "").split())


def test_a_picture_is_twice_a_phone_wide() -> None:
    """The PNG's own header (PNG specification, IHDR) says two pixels for each of a narrow phone's 390."""
    drawn = png(plate_card(SAY, ROPE_COIL, SECONDS))
    assert drawn[:8] == b"\x89PNG\r\n\x1a\n"
    assert struct.unpack(">I", drawn[16:20]) == (2 * WIDTH_PX,)
