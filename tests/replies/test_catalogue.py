"""The English catalogue and the code agree: every sentence that is asked for is there, every one there is asked for."""

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl
from fluent.syntax.visitor import Visitor

import bot
from bot.replies.phrases import catalogue, english
from bot.words import vocabulary

SOURCE = "\n".join(catalogue("en"))
MODULES = [ast.parse(path.read_text("utf-8")) for path in sorted(Path(bot.__path__[0]).rglob("*.py"))]
SAYS = {"phrases", "say", "UserError"}
"""What a sentence is asked of by key, or raised as."""


@dataclass(frozen=True)
class Asked:
    """One place in the code where a sentence is asked for: its possible keys and the names of the values given."""

    keys: tuple[str, ...]
    places: frozenset[str]
    open_ended: bool
    """Whether further values are given by ``**``."""
    is_error: bool


class _Places(Visitor):
    """Collects the places that a sentence fills."""

    def __init__(self) -> None:
        self.found: set[str] = set()

    def visit_VariableReference(self, node: ftl.VariableReference) -> None:  # noqa: N802 - named by the library
        """Keep the name."""
        self.found.add(node.id.name)


def _messages() -> dict[str, set[str]]:
    """The places that each sentence fills, by key."""
    found = {}
    for entry in FluentParser().parse(SOURCE).body:
        assert not isinstance(entry, ftl.Junk), entry.content
        if isinstance(entry, ftl.Message):
            places = _Places()
            places.visit(entry)
            found[entry.id.name] = places.found
    return found


def _strings(node: ast.AST) -> Iterator[str]:
    """The plain strings that an expression may come to."""
    match node:
        case ast.Constant(value=str(text)):
            yield text
        case ast.IfExp(body=body, orelse=orelse):
            yield from _strings(body)
            yield from _strings(orelse)


def _asked() -> Iterator[Asked]:
    for module in MODULES:
        for node in ast.walk(module):
            if isinstance(node, ast.Call) and node.args and _name(node.func) in SAYS:
                yield Asked(
                    keys=tuple(_strings(node.args[0])),
                    places=frozenset(keyword.arg for keyword in node.keywords if keyword.arg),
                    open_ended=any(keyword.arg is None for keyword in node.keywords),
                    is_error=_name(node.func) == "UserError",
                )


def _name(func: ast.expr) -> str:
    match func:
        case ast.Attribute(attr=name) | ast.Name(id=name):
            return name
    return ""


MESSAGES = _messages()
ASKED = list(_asked())


def test_every_error_is_a_sentence() -> None:
    """Every key that a UserError is raised with anywhere in the bot is in the catalogue."""
    raised = {key for asked in ASKED if asked.is_error for key in asked.keys}
    assert len(raised) > 50
    assert raised - MESSAGES.keys() == set()


def test_every_sentence_gets_what_it_fills_in() -> None:
    """Wherever a sentence is asked for, the values given are all that it fills in."""
    lacking = [
        (key, MESSAGES[key] - asked.places)
        for asked in ASKED
        for key in asked.keys
        if key in MESSAGES and not asked.open_ended and MESSAGES[key] - asked.places
    ]
    assert lacking == []


def _texts() -> Iterator[str]:
    """Every string of the code."""
    for module in MODULES:
        for node in ast.walk(module):
            yield from _strings(node)


def _beginnings() -> Iterator[str]:
    """How the keys begin that are put together."""
    for module in MODULES:
        for node in ast.walk(module):
            if isinstance(node, ast.JoinedStr):
                yield from (text for text in _strings(node.values[0]) if text.endswith("-"))


def test_every_sentence_is_used() -> None:
    """Every key of the catalogue stands in the code, whole or by its beginning."""
    texts, beginnings = set(_texts()), tuple(_beginnings())
    assert "help-" in beginnings
    assert {key for key in MESSAGES if key not in texts and not key.startswith(beginnings)} == set()


def test_help_is_of_words_that_there_are() -> None:
    """Every help sentence explains a word of the vocabulary, and every refusal to others one of the chef's."""
    words = {word.name: word.chef for word in vocabulary().words}
    assert {key.removeprefix("help-") for key in MESSAGES if key.startswith("help-")} == words.keys()
    refused = {key.removeprefix("chef-only-") for key in MESSAGES if key.startswith("chef-only-")}
    assert all(words[name] for name in refused)


def test_nothing_is_exclaimed() -> None:
    """No sentence has an exclamation mark but the one that stands before a word to type."""
    typed = re.compile(r"`![^`]*`|`!`")
    exclaimed = [line for line in SOURCE.splitlines() if "!" in typed.sub("", line) and not line.startswith("#")]
    assert exclaimed == []


def test_every_key_reads_once() -> None:
    """No key is given twice, so that no sentence hides another."""
    keys = [entry.id.name for entry in FluentParser().parse(SOURCE).body if isinstance(entry, ftl.Message)]
    assert len(keys) == len(set(keys))
    assert english().has("heard")
