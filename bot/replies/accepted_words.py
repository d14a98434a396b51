"""The words that each language adds to the English ones: ``words.toml`` beside its sentences, taken from everyone."""

import tomllib
import unicodedata
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.resources import files
from typing import Literal

Family = Literal["words", "answers", "line"]
"""The words that begin a line for the bot, the answers to its questions, and the words of a line of a result."""

Lists = Mapping[str, Mapping[str, list[str]]]
"""A ``words.toml``: by family and English word, the words that mean the same."""


def folded(word: str) -> str:
    """The word as it is compared: in any case of letters, its accents composed or not, single spaces."""
    return " ".join(unicodedata.normalize("NFKC", word.casefold()).split())


def languages() -> list[str]:
    """The codes of the languages that there are sentences in."""
    folders = files("bot.replies.languages").iterdir()
    return sorted(folder.name for folder in folders if folder.is_dir() and not folder.name.startswith("_"))


def lists_of(language: str) -> Lists:
    """What a language adds; English adds nothing, its words are the names themselves."""
    file = files("bot.replies.languages").joinpath(language, "words.toml")
    return tomllib.loads(file.read_text("utf-8")) if file.is_file() else {}


def merged(lists: Iterable[Lists], family: Family) -> dict[str, str]:
    """The English word that each word of a family stands for; a ValueError where one stands for two."""
    meanings: dict[str, str] = {}
    for each in lists:
        for english, words in each.get(family, {}).items():
            for word in map(folded, words):
                if meanings.setdefault(word, english) != english:
                    raise ValueError(f"{word} means {meanings[word]} and {english}")
    return meanings


@cache
def accepted(family: Family) -> Mapping[str, str]:
    """The words of every language that stand for an English one."""
    return merged(map(lists_of, languages()), family)
