"""The chat vocabulary: every word that the bot understands, declared once."""

from bot.words import (
    at_the_pass,
    coaching,
    correcting,
    drafts,
    judging,
    languages,
    logistics,
    looking,
    privacy,
    results,
    roles,
    running,
    scheduling,
)
from bot.words.helping import help_words
from bot.words.registry import Vocabulary


def vocabulary() -> Vocabulary:
    """All words, a line a family."""
    return help_words(
        (
            *results.WORDS,
            *looking.WORDS,
            *coaching.WORDS,
            *drafts.WORDS,
            *scheduling.WORDS,
            *roles.WORDS,
            *correcting.WORDS,
            *judging.WORDS,
            *running.WORDS,
            *at_the_pass.WORDS,
            *logistics.WORDS,
            *privacy.WORDS,
            *languages.WORDS,
        )
    )
