"""A whole drill as a chef writes it."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.drill import SetUp
from bot.domain.identity import set_up_fingerprint
from bot.errors import UserError
from bot.library.course import load_course
from bot.library.seconds import load_seconds
from bot.words.drafting import DraftText, read_draft, read_number

SECONDS = load_seconds()

SLIPWAY = """draft Slipway
plates 8 rows 2
1. 7 courgette, shingle, at 10-4
2. 1 tea jus, sauce, at 7
3. 1 rim, wipe
accept strip 2 mm, no drip"""


def _read(text: str) -> DraftText:
    return read_draft(text, SECONDS)


def _refusal(text: str) -> UserError:
    with pytest.raises(UserError) as refused:
        _read(text)
    return refused.value


def test_slipway_as_it_is_written() -> None:
    """Name, steps, layout and rule are read; what is not said is the trade's default."""
    draft = _read(SLIPWAY)
    assert draft.wording.name == "Slipway"
    assert [(s.pieces, s.component, s.technique) for s in draft.spec.steps] == [
        (7, "courgette", "shingle"),
        (1, "tea jus", "sauce"),
        (1, "rim", "wipe"),
    ]
    assert draft.set_up == SetUp(plates=8, rows=2)
    assert draft.spec.accept == "strip 2 mm, no drip"
    assert (draft.spec.plate, draft.spec.mise) == ("flat 27 cm china", "portioned")


def test_the_other_lines_are_read() -> None:
    """Plate, mise, start, stop and working order each have a line."""
    rules = "plate deep bowl\nmise whole\nstart bell\nstop hands up\nworking waves of 4"
    draft = _read(f"Low\nplates 12\nrows 2\n{rules}\n1. 1 disc, set")
    spec = draft.spec
    assert (spec.plate, spec.mise, spec.start, spec.stop) == ("deep bowl", "whole", "bell", "hands up")
    assert draft.set_up == SetUp(plates=12, rows=2, working="waves", wave=4)


@pytest.mark.parametrize(
    ("line", "working", "wave"),
    [
        ("working plate", "plate", 0),
        ("working plate by plate", "plate", 0),
        ("working component by component", "component", 0),
        ("Working Waves 3", "waves", 3),
    ],
)
def test_working_orders(line: str, working: str, wave: int) -> None:
    """Component by component, plate by plate and waves are each understood."""
    set_up = _read(f"{SLIPWAY}\n{line}").set_up
    assert (set_up.working, set_up.wave) == (working, wave)


@pytest.mark.parametrize(
    "opening", ["Slipway", "draft Slipway", "!draft  Slipway", "DRAFT Slipway", "\n\ndraft Slipway"]
)
def test_the_name_with_and_without_the_word(opening: str) -> None:
    """The first line is the name, whether the word stands before it or not."""
    assert _read(SLIPWAY.replace("draft Slipway", opening)).wording.name == "Slipway"


def test_the_lines_may_stand_in_any_order() -> None:
    """Another order of lines is the same drill in the same set-up."""
    _, *lines = SLIPWAY.splitlines()
    steps, rules = lines[1:4], [lines[0], lines[4]]
    prints = {
        set_up_fingerprint(draft.spec, draft.set_up)
        for order in itertools.permutations([*rules, "\n".join(steps)])
        for draft in [_read("\n".join(["Slipway", *order]))]
    }
    assert len(prints) == 1


def test_the_course_is_recognised_when_it_is_written_out() -> None:
    """A chef who types a drill of the course with its own stand-ins gets the same work."""
    slipway = next(drill for drill in load_course() if drill.label == "5")
    steps = "1) 7 Zucchini, SHINGLE, at 10 to 4\nstep 2 1 jus, sauce, at 7\nStep 3. 1 rim, wipe"
    typed = f"Pier\n{steps}\naccept {slipway.spec.accept}\nplates 8, rows 2"
    draft = _read(typed)
    assert set_up_fingerprint(draft.spec, draft.set_up) == set_up_fingerprint(slipway.spec, slipway.set_up)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("", "draft-name"),
        ("draft", "draft-name"),
        ("draft\n", "draft-name"),
        ("1. 7 courgette, shingle\nplates 8", "draft-name"),
        ("x" * 61 + "\nplates 8\n1. 1 disc, set", "draft-name"),
        ("Slip\nplates 8", "no-steps"),
        ("Slip\n1. 1 disc, set", "no-plates"),
        ("Slip\nplates 8\n2. 1 disc, set", "steps-out-of-order"),
        ("Slip\nplates 8\n1. 1 disc, set\n1. 1 disc, set", "steps-out-of-order"),
        ("Slip\nplates 8\n" + "\n".join(f"{n}. 1 disc, set" for n in range(1, 22)), "too-many-steps"),
        ("Slip\nplates 8\n1 disc, set", "unreadable-line"),
        ("Slip\nplates eight\n1. 1 disc, set", "unreadable-line"),
        ("Slip\nplates 8\nplates 9\n1. 1 disc, set", "unreadable-line"),
        ("Slip\nplates 8\naccept a\naccept b\n1. 1 disc, set", "unreadable-line"),
        ("Slip\nplates 8\nworking plate\nworking component\n1. 1 disc, set", "unreadable-line"),
        ("Slip\nplates 8\naccept " + "x" * 300 + "\n1. 1 disc, set", "unreadable-line"),
        ("Slip\nplates 8\n1. 1 disc, leen", "unknown-technique"),
        ("Slip\nplates 8\n1. 0 disc, set", "pieces-out-of-range"),
        ("Slip\nplates 8\n1. disc, set", "unreadable-step"),
        ("Slip\nplates 0\n1. 1 disc, set", "plates-out-of-range"),
        ("Slip\nplates 61\n1. 1 disc, set", "plates-out-of-range"),
        ("Slip\nplates 200\n1. 1 disc, set", "plates-out-of-range"),
        ("Slip\nplates " + "9" * 150 + "\n1. 1 disc, set", "plates-out-of-range"),
        ("Slip\nplates 8 rows 3\n1. 1 disc, set", "rows-out-of-reach"),
        ("Slip\nplates 8 rows 0\n1. 1 disc, set", "rows-out-of-reach"),
        ("Slip\nplates 1 rows 2\n1. 1 disc, set", "more-rows-than-plates"),
        ("Slip\nplates 8\nworking waves 8\n1. 1 disc, set", "waves-do-not-fit"),
        ("Slip\nplates 8\nworking waves 1\n1. 1 disc, set", "waves-do-not-fit"),
    ],
)
def test_each_mistake_has_its_sentence(text: str, key: str) -> None:
    """Every slip is answered by the one sentence that says what to send instead."""
    assert _refusal(text).key == key


@pytest.mark.parametrize("plates", [1, 60])
def test_the_smallest_and_the_largest_drill(plates: int) -> None:
    """One plate is a drill, and sixty are."""
    assert _read(f"Slip\nplates {plates}\n1. 1 rim, wipe").set_up.plates == plates


def test_a_name_cannot_turn_the_line_around() -> None:
    """Direction overrides, zero-width characters and code marks are dropped from what is kept."""
    draft = _read("Slip\u202e\u200bway `x`\nplates 8\n1. 1 dis\u2066c, set")
    assert draft.wording.name == "Slipway 'x'"
    assert draft.spec.steps[0].component == "disc"


@pytest.mark.parametrize(("text", "number"), [("14", 14), (" ١٤ ", 14), ("１４", 14), ("9" * 5000, 10**6)])
def test_one_number(text: str, number: int) -> None:
    """The number after ``plates`` or ``rows`` in any script; a monstrous one is just too large."""
    assert read_number(text) == number


@pytest.mark.parametrize("text", ["", "-1", "8.5", "eight", "1e3", "²x"])
def test_no_number(text: str) -> None:
    """Anything else is said back."""
    with pytest.raises(UserError) as refused:
        read_number(text)
    assert refused.value.key == "not-a-number"


LINES = st.sampled_from(
    [*SLIPWAY.splitlines(), "plates 0", "rows 2", "working waves 2", "working", "4. 2 leaf", "accept", "1."]
)


@given(st.text() | st.lists(LINES | st.text()).map("\n".join))
def test_any_text_is_a_draft_or_a_sentence(text: str) -> None:
    """Nothing but a UserError ever comes out, and a draft can be laid out and worked."""
    try:
        draft = _read(text)
    except UserError:
        return
    assert draft.spec.steps
    assert 1 <= draft.set_up.plates <= 60
    assert draft.wording.name


@given(st.permutations(SLIPWAY.splitlines()[1:]))
def test_steps_out_of_order_are_never_read(lines: list[str]) -> None:
    """Shuffled lines read exactly when the steps among them still follow their numbers."""
    steps = [line for line in lines if line[0].isdigit()]
    text = "\n".join(["Slipway", *lines])
    if steps == sorted(steps):
        assert len(_read(text).spec.steps) == 3
    else:
        assert _refusal(text).key == "steps-out-of-order"
