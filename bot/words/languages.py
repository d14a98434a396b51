"""The word that says in which language to answer: `lang`."""

from bot.services import languages
from bot.services.said import Said
from bot.words.registry import Word


async def _lang(said: Said, rest: str) -> None:
    """``lang es``, ``lang off``; alone it says what is set and what there is."""
    match rest.casefold():
        case "":
            await languages.tell_languages(said)
        case "off":
            await languages.follow_room(said)
        case _:
            await languages.set_language(said, rest)


WORDS = (Word("lang", _lang, "privacy"),)
