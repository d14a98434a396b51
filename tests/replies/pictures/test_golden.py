"""Each picture looks as it did when it was looked at."""

import re

import pytest

from bot.replies.pictures.drawing import Drawing
from tests.replies.pictures.golden import FOLDER, GOLDEN, apart, drawn, kept, path_of, picture_of

MOST_APART = 0.08
"""Grey levels a pixel on average: that few colours are kept makes under half of it."""


@pytest.mark.parametrize(("scene", "language"), GOLDEN)
def test_it_looks_as_it_was_looked_at(scene: str, language: str) -> None:
    """Rendered now, it lies no further from the kept picture than few colours bring it."""
    assert apart(picture_of(drawn(scene, language)), kept(scene, language)) < MOST_APART


def test_another_picture_would_be_noticed() -> None:
    """One other digit in a card's figures is noticed, and so is a picture of another size."""
    card = drawn("plate-card", "en")
    other = Drawing(card.svg.replace(">2:44<", ">2:45<"), card.width, card.height)
    assert apart(picture_of(other), kept("plate-card", "en")) > MOST_APART
    assert apart(picture_of(drawn("trend", "en")), kept("plate-card", "en")) == 255.0


def test_the_guide_shows_every_picture() -> None:
    """The page for contributors shows each golden picture, and the folder holds no other."""
    shown = re.findall(r"\(golden/([^)]+)\)", (FOLDER.parent / "README.md").read_text("utf-8"))
    kept_here = sorted(path_of(*golden).name for golden in GOLDEN)
    assert sorted(shown) == kept_here == sorted(path.name for path in FOLDER.iterdir())
