"""Every language says what English says, with the same places and its own plurals; no word means two things."""

import re
from collections.abc import Iterable, Mapping

import pytest
from babel import Locale
from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl
from fluent.syntax.visitor import Visitor

from bot.domain.redo_reasons import CAUSES
from bot.replies.accepted_words import Family, Lists, folded, languages, lists_of, merged
from bot.replies.phrases import catalogue, is_right_to_left
from bot.words import vocabulary
from bot.words.answers import NO, YES
from bot.words.result_words import ENGLISH

CATEGORIES = {"zero", "one", "two", "few", "many", "other"}
MOST_COUNTED = 1100
"""Past a hundred and a thousand: the plural rules of CLDR look at the last two digits, and at millions in a few."""
NAMES = {word.name for word in vocabulary().words}
ANSWERS = YES | NO | {"again", "a", "b", "c"}


class _Parts(Visitor):
    """What a sentence is made of: the places it fills, those it selects on by number, and its words to type."""

    def __init__(self) -> None:
        self.places: set[str] = set()
        self.choices: dict[str, list[set[str]]] = {}
        self.typed: set[str] = set()

    def visit_VariableReference(self, node: ftl.VariableReference) -> None:  # noqa: N802 - named by the library
        """Keep the place."""
        self.places.add(node.id.name)

    def visit_SelectExpression(self, node: ftl.SelectExpression) -> None:  # noqa: N802 - named by the library
        """Keep what is chosen between, by place; the default only under its own name."""
        keys = {v.key.name if isinstance(v.key, ftl.Identifier) else v.key.value for v in node.variants}
        place = node.selector.id.name if isinstance(node.selector, ftl.VariableReference) else ""
        self.choices.setdefault(place, []).append(keys)
        self.generic_visit(node)

    def visit_TextElement(self, node: ftl.TextElement) -> None:  # noqa: N802 - named by the library
        """Keep the whole words between back-ticks that nothing is filled into."""
        self.typed.update(re.findall(r"`([^`\s]+[^`]*)`", node.value))


def sentences(language: str) -> dict[str, _Parts]:
    """The parts of each sentence, by key; a key given twice or a line that is no Fluent fails."""
    found: dict[str, _Parts] = {}
    for entry in FluentParser().parse("\n".join(catalogue(language))).body:
        assert not isinstance(entry, ftl.Junk), entry.content
        if isinstance(entry, ftl.Message):
            assert entry.id.name not in found, entry.id.name
            found[entry.id.name] = _Parts()
            found[entry.id.name].visit(entry)
    return found


ENGLISH_SENTENCES = sentences("en")


def is_of_number(choices: Iterable[set[str]]) -> bool:
    """Whether it sets one apart from more, by number or by plural category; a case of none alone is no plural."""
    return any(key == "1" or (key in CATEGORIES and key != "other") for keys in choices for key in keys)


def uncovered(language: str, keys: set[str]) -> list[int]:
    """The counts that neither have a variant of their own nor one of their plural category (CLDR, through Babel)."""
    rule = Locale.parse(language).plural_form
    return [n for n in range(MOST_COUNTED) if str(n) not in keys and rule(n) not in keys]


@pytest.mark.parametrize("language", languages())
def test_every_language_says_everything(language: str) -> None:
    """No catalogue misses a message or has one too many."""
    assert sentences(language).keys() ^ ENGLISH_SENTENCES.keys() == set()


@pytest.mark.parametrize("language", languages())
def test_the_same_places_are_filled(language: str) -> None:
    """Each sentence fills the places of the English one and no other."""
    own = sentences(language)
    assert {key for key in own.keys() & ENGLISH_SENTENCES if own[key].places != ENGLISH_SENTENCES[key].places} == set()


@pytest.mark.parametrize("language", languages())
def test_what_is_typed_stays_as_typed(language: str) -> None:
    """Each word to type that stands whole in an English sentence stands in the translation as well."""
    own = sentences(language)
    lost = {k: e.typed - own[k].typed for k, e in ENGLISH_SENTENCES.items() if k in own and e.typed - own[k].typed}
    assert lost == {}


@pytest.mark.parametrize("language", languages())
def test_choices_other_than_plurals_are_the_same(language: str) -> None:
    """Where English chooses by a name (``[near]``, ``[far]``), the translation knows the same names."""
    for key, parts in sentences(language).items():
        for place, choices in parts.choices.items():
            english = ENGLISH_SENTENCES[key].choices.get(place, [])
            if english and not is_of_number(english):
                assert set.union(*choices) == set.union(*english), (key, place)


@pytest.mark.parametrize("language", languages())
def test_plurals_are_those_of_the_language(language: str) -> None:
    """Every choice by number has a variant for each count, by its number or by its plural category."""
    lacking = [
        (key, place, uncovered(language, keys)[:3])
        for key, parts in sentences(language).items()
        for place, choices in parts.choices.items()
        for keys in choices
        if is_of_number([keys]) and uncovered(language, keys)
    ]
    assert lacking == []


def test_lacking_plurals_are_found() -> None:
    """Polish 5 is neither one nor few, Arabic 3 is few: a catalogue without them would not pass (CLDR 48, read)."""
    assert uncovered("pl", {"one", "few", "other"})[0] == 0
    assert 5 in uncovered("pl", {"one", "few", "other"})
    assert 3 in uncovered("ar", {"zero", "one", "two", "many", "other"})


def all_meanings(lists: list[Lists]) -> dict[str, str]:
    """Every word of every family and language with what it means; a ValueError where one means two things."""
    meanings: dict[str, str] = {}
    english: dict[Family, Mapping[str, str]] = {
        "words": {word: word for word in NAMES},
        "answers": {word: word for word in ANSWERS},
        "line": ENGLISH,
    }
    for family, words in english.items():
        for word, meaning in [*words.items(), *merged(lists, family).items()]:
            known = meanings.setdefault(word, f"{family}: {meaning}")
            if known != f"{family}: {meaning}":
                raise ValueError(f"{word} is {known} and {family}: {meaning}")
    return meanings


def test_no_word_has_two_meanings() -> None:
    """Over the lists of all languages no word is two words, answers or details, and each is one run of letters."""
    lists = [lists_of(language) for language in languages()]
    known = {"words": NAMES, "answers": {"yes", "no", "again"}, "line": set(ENGLISH.values())}
    for family, english in known.items():
        assert {name for each in lists for name in each.get(family, {})} <= english
    assert all(
        " " not in word for each in lists for f in ("words", "line") for ws in each.get(f, {}).values() for word in ws
    )
    assert len(all_meanings(lists)) > len(NAMES) + len(ENGLISH)


def test_two_meanings_are_refused() -> None:
    """A word that one language gives to the board and another to a flat dot, in another case of letters, is refused."""
    one: Lists = {"words": {"board": ["Plano"]}}
    with pytest.raises(ValueError, match="plano"):
        all_meanings([one, {"line": {"flat": ["plano"]}}])
    with pytest.raises(ValueError, match="plano"):
        all_meanings([one, {"words": {"table": ["plano"]}}])


def test_every_language_has_words() -> None:
    """Each language but English gives a word for every reason, answer and word of a cook."""
    cooks = {word.name for word in vocabulary().words if not word.chef}
    wanted = {"line": set(CAUSES), "answers": {"yes", "no", "again"}, "words": cooks}
    lists = {language: lists_of(language) for language in languages() if language != "en"}
    lacking = {(code, f): wanted[f] - lists[code].get(f, {}).keys() for code in lists for f in wanted}
    assert {where: words for where, words in lacking.items() if words} == {}


def test_words_are_compared_as_they_sound() -> None:
    """An accent typed as a sign of its own and capital letters make no other word (Unicode, annex 15: NFKC)."""
    assert folded(" SI\u0301  gracias") == "sí gracias"


def test_right_to_left_is_isolated() -> None:
    """Arabic and Hebrew are written from right to left, so what is filled in is isolated; the others stay plain."""
    assert [code for code in ("ar", "he", "bn", "en", "es", "fr", "pl", "pt") if is_right_to_left(code)] == ["ar", "he"]
