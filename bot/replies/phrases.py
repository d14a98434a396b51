"""The catalogue of sentences in one language, by key (Project Fluent: plural rules from Unicode CLDR)."""

import re
from collections.abc import Iterable
from decimal import Decimal
from functools import cache
from importlib.resources import files

from babel import Locale
from babel.numbers import get_decimal_symbol
from fluent.runtime import FluentBundle, FluentResource

from bot.errors import UserError
from bot.replies.direction import isolated
from bot.replies.markup import harmless

_SENTENCE = re.compile(r"^([A-Za-z][\w-]*) *=.*(?:\n(?![A-Za-z#-]).*)*", re.MULTILINE)
"""A message of a Fluent file, up to the next message, term or comment, each of which begins its line."""

DIGITS = "latn"
"""Western digits in every language. CLDR gives Bengali its own by default, and Arabic in some countries; but kitchen
clocks and scales show Western ones (common practice, no source), examples to type have them, and the numbers of one
sentence should not stand in two scripts. What is typed may be in any script."""


def catalogue(language: str) -> list[str]:
    """The source texts of a language's catalogue, a file for each family of sentences, by file name."""
    folder = files("bot.replies.languages").joinpath(language)
    sources = sorted((file for file in folder.iterdir() if file.name.endswith(".ftl")), key=lambda file: file.name)
    return [source.read_text(encoding="utf-8") for source in sources]


def is_right_to_left(language: str) -> bool:
    """Whether the language is written from right to left, so that what is filled in has to be isolated."""
    return Locale.parse(language).text_direction == "rtl"


def decimal_sign(language: str) -> str:
    """What stands between the whole and the parts of a number."""
    return str(get_decimal_symbol(language, numbering_system=DIGITS))


class Phrases:
    """Gives the sentence for a key with its places filled.

    A sentence is parsed when it is first asked for: the whole catalogue would take a tenth of a second and 5 MiB.
    """

    def __init__(self, language: str, sources: Iterable[str] | None = None) -> None:
        self.language = language
        self._point = decimal_sign(language)
        self._from_right = is_right_to_left(language)
        self._bundle = FluentBundle([language], use_isolating=self._from_right)
        self._unread = {
            found[1]: found[0] for source in sources or catalogue(language) for found in _SENTENCE.finditer(source)
        }

    def __call__(self, key: str, **values: str | int | float) -> str:
        """The sentence; a KeyError for a key that there is not, a ValueError for a place left unfilled.

        One that is not translated yet is said in English, which a cook can ask about; silence is no answer.
        """
        pattern = self._bundle.get_message(key).value if self.has(key) else None
        if pattern is None:
            if self.language == "en":
                raise KeyError(key)
            return english()(key, **values)
        said, faults = self._bundle.format_pattern(pattern, values)
        if faults:
            raise ValueError(f"{key}: {faults}")
        return isolated(str(said)) if self._from_right else str(said)

    def decimal(self, number: float | Decimal, places: int, *, signed: bool = False) -> str:
        """The number with so many figures behind the point, which is the language's own."""
        return self.number(f"{number:{'+' if signed else ''}.{places}f}")

    def number(self, figures: str) -> str:
        """A number in plain figures, such as ``3.25``, as the language writes it."""
        return figures.replace(".", self._point)

    def has(self, key: str) -> bool:
        """Whether the catalogue has this key."""
        if key in self._unread:
            self._bundle.add_resource(FluentResource(self._unread.pop(key)))
        return bool(self._bundle.has_message(key))

    def reply_to(self, error: UserError) -> str:
        """The sentence that an error is; what was typed comes back harmless in it."""
        values = {name: harmless(value) if isinstance(value, str) else value for name, value in error.values.items()}
        return self(error.key, **values)


@cache
def phrases_in(language: str) -> Phrases:
    """The catalogue of a language, read when it is first spoken and kept; no other is."""
    return Phrases(language)


def english() -> Phrases:
    """The English catalogue."""
    return phrases_in("en")
