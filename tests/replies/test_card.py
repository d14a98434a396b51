"""The card of every drill of the course: complete, closing with the local rules, and to be copied into a draft."""

from dataclasses import replace

import pytest

from bot.domain.drill import Drill, Step
from bot.replies.card import draft_card, posted_card, step_lines
from bot.replies.phrases import english
from bot.words.drafting import read_draft
from tests.domain.kitchen import EVERY, FULL_TIDE, ROPE_COIL, SECONDS

SAY = english()
LOCAL_RULES = "Local food-safety, employment and safety rules, and your chef, come first."


def _written(step: Step) -> Step:
    """What the card shows of a step: its stand-in's class and labels stand elsewhere."""
    return replace(step, stand_in="firm", labels=())


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_steps_can_be_copied_into_a_draft(drill: Drill) -> None:
    """The steps as the card shows them are read back as the same steps."""
    shown = "\n".join(["Copy", "plates 8", *step_lines(SAY, drill.spec, SECONDS)])
    read = read_draft(shown, SECONDS).spec.steps
    assert [_written(step) for step in read] == [_written(step) for step in drill.spec.steps]


@pytest.mark.parametrize("drill", EVERY, ids=lambda drill: drill.label)
def test_posted_card_is_complete(drill: Drill) -> None:
    """Head, rule, work, targets, what to send, labels and cautions stand on the card, the local rules last."""
    lines = posted_card(SAY, drill, SECONDS).split("\n")
    assert lines[0].startswith(f"{drill.wording.name} (drill {drill.label}), {drill.set_up.plates} plates, ")
    assert lines[-1] == LOCAL_RULES
    plates = drill.set_up.plates
    beginnings = ("Good when: ", "Opening ", "Send the clock and the good plates, like `", "Read each label, ")
    assert [sum(line.startswith(beginning) for line in lines) for beginning in beginnings] == [1, 1, 1, 1]
    assert any(line.endswith(f"Standard {line.rsplit(' ', 1)[1]}") and " touches a plate, " in line for line in lines)
    assert any(f"{plates}/{plates}`" in line for line in lines)
    assert all(f"- {caution}" in lines for caution in drill.wording.cautions)


def test_a_drill_that_tires_the_hand_says_so() -> None:
    """Three runs a day are told where a technique strains the hand, and only there."""
    strain = "- Three runs a day."
    assert strain in posted_card(SAY, FULL_TIDE, SECONDS)
    assert strain not in posted_card(SAY, ROPE_COIL, SECONDS)


def test_draft_card_says_what_it_does_to_bests() -> None:
    """The same drill, another set-up of it, and a new one are told apart, the work against the parent with them."""
    fourteen = replace(ROPE_COIL, set_up=replace(ROPE_COIL.set_up, plates=9))
    same = draft_card(SAY, ROPE_COIL, SECONDS, known=ROPE_COIL, parent=ROPE_COIL).split("\n")
    other = draft_card(SAY, fourteen, SECONDS, known=ROPE_COIL, parent=ROPE_COIL).split("\n")
    new = draft_card(SAY, FULL_TIDE, SECONDS, known=None, parent=ROPE_COIL).split("\n")
    assert same[-2] == "This is drill 6."
    assert other[-3:-1] == [
        "This is drill 6 in another set-up; each set-up has bests and boards of its own.",
        "Against drill 6: +11.7 % work.",
    ]
    assert new[-3] == "A new drill, with bests and boards of its own."


def test_cautions_name_only_what_the_drill_uses() -> None:
    """Rope coil has neither beans nor puree and hears of neither; its oil, noodles and triangle are named."""
    card = posted_card(SAY, ROPE_COIL, SECONDS)
    assert "bean" not in card
    assert "puree" not in card
    for line in (
        "Read each label, “may contain” too: noodle (wheat), triangle, oil.",
        '- Slips on the floor: oil, water. One lane, one direction; "stop" stops the clock.',
        "- Cooked, chilled fast, 5 degrees or below, binned the same day: noodle.",
        "- Counted out and in: triangle.",
    ):
        assert line in card.split("\n")
