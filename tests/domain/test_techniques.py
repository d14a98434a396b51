"""Techniques are found by whatever a chef calls them, and nothing is guessed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.domain.techniques import find_technique, near_techniques
from bot.library.seconds import load_seconds

SECONDS = load_seconds()


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("lean", "lean"),
        ("LEAN", "lean"),
        ("leaf, tweezers", "leaf"),
        ("leaves", "leaf"),
        ("quenelle", "quenelle"),
        ("one spoon quenelle", "quenelle"),
        ("quenelle one spoon", "quenelle"),
        ("quenelle two spoons", "two-spoon quenelle"),
        ("Two-Spoon Quenelle", "two-spoon quenelle"),
        ("quenelle, 2 spoons", "two-spoon quenelle"),
        ("ring fill", "ring fill"),
        ("fill", "ring fill"),
        ("press", "press"),
        ("lift", "lift"),
        ("line, bottle", "line"),
        ("dots", "dot"),
        ("sauce spoon", "sauce"),
        ("dust", "crumb"),
        ("grate", "crumb"),
    ],
)
def test_spellings_are_understood(words: str, name: str) -> None:
    """Names, other spellings, case, punctuation, word order and plurals all find their technique."""
    found = find_technique(SECONDS, words)
    assert found is not None
    assert found.name == name


@pytest.mark.parametrize("words", ["", " ", ",", "sous-vide", "leen", "quenelle three spoons", "leaf leaf"])
def test_what_is_no_technique_is_none(words: str) -> None:
    """A word that is nearly one is still none: it is offered, not taken."""
    assert find_technique(SECONDS, words) is None


def test_no_spelling_means_two_techniques() -> None:
    """Every name and other spelling finds the technique that lists it."""
    for technique in SECONDS.techniques.values():
        for words in (technique.name, *technique.others):
            assert find_technique(SECONDS, words) is technique


@pytest.mark.parametrize(
    ("words", "first"), [("leen", "lean"), ("shingel", "shingle"), ("quenele", "quenelle"), ("swype", "pull")]
)
def test_the_nearest_name_is_offered_first(words: str, first: str) -> None:
    """A slip of the thumb is answered with the technique that was meant, by its name."""
    assert near_techniques(SECONDS, words)[0] == first


def test_nothing_is_offered_for_something_else_entirely() -> None:
    """Words unlike every technique get no hint."""
    assert near_techniques(SECONDS, "xxxxxxxx") == []


@given(st.text(), st.integers(1, 5))
def test_offers_are_known_names_each_once(words: str, most: int) -> None:
    """Whatever is typed, the offers are distinct names of techniques, no more than asked for."""
    near = near_techniques(SECONDS, words, most)
    assert len(near) == len(set(near)) <= most
    assert set(near) <= set(SECONDS.techniques)
