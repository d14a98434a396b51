"""Every allergen that has to be declared by law can be written on a step and stands on its card.

Lists: Regulation (EU) 1169/2011, annex II (fourteen), and the FASTER Act, Pub. L. 117-11 (nine). Read in a text, in
short names.
"""

import pytest

from bot.domain.cautions import labels_of
from bot.domain.drill import Spec
from bot.library.seconds import load_seconds
from bot.words.step_line import read_step

EU_14 = [
    "gluten cereals", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk", "nuts", "celery", "mustard",
    "sesame", "sulphites", "lupin", "molluscs",
]  # fmt: skip
US_9 = ["milk", "eggs", "fish", "crustacean shellfish", "tree nuts", "peanuts", "wheat", "soybeans", "sesame"]
SECONDS = load_seconds()


@pytest.mark.parametrize("allergen", sorted({*EU_14, *US_9}))
def test_one_allergen_by_its_label(allergen: str) -> None:
    """``label`` takes the name as the law has it, as it is."""
    step = read_step(f"1 jus, sauce ; label {allergen}", SECONDS)
    assert labels_of(Spec((step,))) == [("jus", (allergen,))]


@pytest.mark.parametrize("allergens", [EU_14, US_9])
def test_a_whole_list_on_one_component(allergens: list[str]) -> None:
    """Several labels may stand in one list, and none is lost."""
    step = read_step(f"1 jus, sauce ; label {', '.join(allergens)}", SECONDS)
    assert labels_of(Spec((step,))) == [("jus", tuple(allergens))]
