"""One step as a chef writes it."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import Step
from bot.errors import UserError
from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.words.step_line import read_step

SECONDS = load_seconds()


def _refusal(text: str) -> UserError:
    with pytest.raises(UserError) as refused:
        read_step(text, SECONDS)
    return refused.value


@pytest.mark.parametrize(
    ("text", "step"),
    [
        ("2 triangle, lean", Step(2, "triangle", "lean", "fingers", "firm")),
        ("7 courgette, shingle, at 10-4", Step(7, "courgette", "shingle", "fingers", "soft", "10-4")),
        ("1 tea jus, sauce, at 7", Step(1, "tea jus", "sauce", "sauce spoon", "thick", "7")),
        ("1 rim, wipe", Step(1, "rim", "wipe", "cloth", "firm")),
        ("2 leaf", Step(2, "leaf", "leaf", "tweezers", "leaf")),
        ("2 leaf, at 9", Step(2, "leaf", "leaf", "tweezers", "leaf", "9")),
        ("1 disc, set, with both hands", Step(1, "disc", "set", "both hands", "firm")),
        ("1 disc, set, at centre, with both hands", Step(1, "disc", "set", "both hands", "firm", "centre")),
        ("3 bean, place, at 12, 4, 8", Step(3, "bean", "place", "fingers", "firm", "12, 4, 8")),
        ("1 puree, quenelle, at 9", Step(1, "puree", "quenelle", "quenelle spoon", "soft", "9")),
        ("1 puree, quenelle, one spoon", Step(1, "puree", "quenelle", "quenelle spoon", "soft")),
        ("1 puree, quenelle, two spoons, at 9", Step(1, "puree", "two-spoon quenelle", "two spoons", "soft", "9")),
        ("2x triangle , LEAN", Step(2, "triangle", "lean", "fingers", "firm")),
        ("2 × triangle, lean", Step(2, "triangle", "lean", "fingers", "firm")),
        ("٢ triangle، lean", Step(2, "triangle", "lean", "fingers", "firm")),
        ("２　triangle，lean", Step(2, "triangle", "lean", "fingers", "firm")),
    ],
)
def test_a_step_is_read(text: str, step: Step) -> None:
    """Count, component, technique, tool and place, with the technique's tool and class where they are omitted."""
    assert read_step(text, SECONDS) == step


def test_every_detail_is_read() -> None:
    """Class, life, labels and price stand after semicolons, in any order and case."""
    step = read_step("1 jus, sauce ; price 0,02 ; Class THIN; life 90s ; label wheat, milk ; label celery ;", SECONDS)
    assert (step.stand_in, step.life_s, step.price) == ("thin", 90, Decimal("0.02"))
    assert step.labels == ("wheat", "milk", "celery")


@pytest.mark.parametrize(("life", "life_s"), [("90s", 90), ("90 sec", 90), ("2 min", 120), ("2m", 120), ("1h", 3600)])
def test_a_life_in_any_unit(life: str, life_s: int) -> None:
    """How long a component keeps is told in seconds, minutes or hours."""
    assert read_step(f"1 jus, sauce; life {life}", SECONDS).life_s == life_s


@pytest.mark.parametrize(
    "text",
    [
        "",
        "triangle, lean",
        "2",
        "2triangle, lean",
        ", lean",
        "-2 triangle, lean",
        "2 disc, set, at",
        "2 disc, set, with",
        "2 disc, set, at 9, at 3",
        "2 disc, set, with tongs, with tweezers",
        "2 disc, set, at " + "9" * 300,
    ],
)
def test_what_is_no_step_is_said_back(text: str) -> None:
    """The answer quotes what was read."""
    refusal = _refusal(text)
    assert refusal.key == "unreadable-step"
    assert set(refusal.values) == {"line"}


def test_a_quote_is_short_and_bare() -> None:
    """Markup is stripped and forty characters are enough."""
    said = str(_refusal("<b>triangle</b> *lean* `code` " + "x" * 100).values["line"])
    assert said == "triangle lean 'code' " + "x" * 18 + "…"
    assert len(said) == 40


@pytest.mark.parametrize("pieces", ["0", "100", "9" * 180])
def test_pieces_from_one_to_ninety_nine(pieces: str) -> None:
    """No piece at all, or more than a plate takes, is refused with the limit."""
    refusal = _refusal(f"{pieces} disc, set")
    assert (refusal.key, refusal.values["most"]) == ("pieces-out-of-range", 99)


def test_an_unknown_technique_is_answered_with_the_nearest() -> None:
    """``leen`` is offered ``lean``, and nothing is guessed."""
    refusal = _refusal("2 triangle, leen")
    assert refusal.key == "unknown-technique"
    assert refusal.values["word"] == "leen"
    assert str(refusal.values["near"]).startswith("`lean`")


@pytest.mark.parametrize("text", ["2 zzzzzz", "1 disc, zzzzzz"])
def test_a_technique_like_none_is_answered_with_all(text: str) -> None:
    """Where no name is near, every technique is listed."""
    refusal = _refusal(text)
    assert refusal.key == "unknown-technique-no-hint"
    assert all(f"`{name}`" in str(refusal.values["near"]) for name in SECONDS.techniques)


def test_an_unknown_class_is_answered_with_the_six() -> None:
    """A class is one of six."""
    refusal = _refusal("1 jus, sauce ; class runny")
    assert refusal.key == "unknown-class"
    assert str(refusal.values["classes"]).count("`") == 12


@pytest.mark.parametrize(
    "detail",
    [
        *("life", "life 90", "life 0s", "life 25h", "life ٠s"),
        *("price", "price -1", "price 1e9", "price NaN", "price 1.23456"),
        *("label", "colour blue"),
    ],
)
def test_an_unreadable_detail_is_said_back(detail: str) -> None:
    """A life without unit, a price that is no price and an unknown word are each quoted."""
    refusal = _refusal(f"1 jus, sauce ; {detail}")
    assert (refusal.key, refusal.values) == ("unreadable-detail", {"detail": detail})


def test_the_course_can_be_written_as_it_is_told() -> None:
    """Every step of the course, written out in the chef's grammar, reads back as itself."""
    for drill in load_course():
        for step in drill.spec.steps:
            at = f", at {step.at}" if step.at else ""
            labels = f" ; label {', '.join(step.labels)}" if step.labels else ""
            line = f"{step.pieces} {step.component}, {step.technique}, with {step.tool}{at} ; class {step.stand_in}"
            read = read_step(line + labels, SECONDS)
            assert read.labels == tuple(part.strip() for label in step.labels for part in label.split(","))
            assert (read.pieces, read.component, read.technique) == (step.pieces, step.component, step.technique)
            assert (read.tool, read.stand_in, read.at) == (step.tool, step.stand_in, step.at)


WORDS = st.sampled_from(
    ["2", "0", "disc", "triangle", ",", ";", "lean", "with", "at", "class", "soft", "life", "9s", "price"]
)


@given(st.text() | st.lists(WORDS).map(" ".join))
def test_any_text_is_a_step_or_a_sentence(text: str) -> None:
    """Nothing but a UserError ever comes out, and what is read is a step that can be counted."""
    try:
        step = read_step(text, SECONDS)
    except UserError:
        return
    assert 1 <= step.pieces <= 99
    assert step.technique in SECONDS.techniques
    assert step.component
    assert step.tool
