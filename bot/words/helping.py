"""The word that tells of the others, made from their declarations."""

from collections.abc import Sequence

from bot.errors import UserError
from bot.services.said import Said
from bot.services.verdicts import is_judge
from bot.words.registry import Family, Vocabulary, Word

COOKS: Sequence[Family] = ("cook", "look", "practise", "privacy")
"""What everybody is told of."""

JUDGES: Family = "judge"


def help_words(words: Sequence[Word]) -> Vocabulary:
    """The vocabulary of these words and of ``words``, which lists them and explains each."""

    async def tell(said: Said, name: str) -> None:
        if name:
            await said.answer(_one(all_words, said, name))
        else:
            await _tell_all(all_words, said)

    all_words = Vocabulary((*words, Word("words", tell)))
    return all_words


def _one(all_words: Vocabulary, said: Said, name: str) -> str:
    word = all_words.find(name.removeprefix("!"))
    if word is None:
        raise UserError("unknown-word-no-hint")
    return said.phrases(word.help_key)


async def _tell_all(all_words: Vocabulary, said: Said) -> None:
    """The words that this person may say, a line a family; the chef's in a message of their own."""
    families = [*COOKS, JUDGES] if await is_judge(said) else COOKS
    lines = [_line(all_words, said, family) for family in families]
    await said.answer("\n".join([*lines, said.phrases("words-how")]))
    if await said.is_chef():
        chefs = [f"`{word.name}`" for word in all_words.words if word.chef]
        await said.answer(said.phrases("words-chef", words=" ".join(chefs)))


def _line(all_words: Vocabulary, said: Said, family: Family) -> str:
    mine = [f"`{word.name}`" for word in all_words.words if word.family == family and not word.chef]
    return said.phrases(f"words-{family}", words=" ".join(mine))
