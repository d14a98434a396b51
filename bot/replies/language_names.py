"""The languages that there are sentences in, by the names that they have for themselves (CLDR, by Babel)."""

from babel import Locale

from bot.errors import UserError
from bot.replies.accepted_words import folded, languages


def own_name(language: str) -> str:
    """What a language calls itself, such as ``español``."""
    return str(Locale.parse(language).get_display_name(language))


def names_known() -> str:
    """Every language as it is typed and as it calls itself, in one line."""
    return ", ".join(f"`{code}` {own_name(code)}" for code in languages())


def language_meant(typed: str) -> str:
    """The language of this code or name, its own or the English one; a UserError names those known."""
    wanted = folded(typed)
    for code in languages():
        if wanted in (code, folded(own_name(code)), folded(str(Locale.parse(code).english_name))):
            return code
    raise UserError("which-language", known=names_known())
