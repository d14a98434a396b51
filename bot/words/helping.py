"""The word that tells of the others, made from their declarations."""

from collections.abc import Sequence

from bot.errors import UserError
from bot.services.said import Said
from bot.words.registry import Vocabulary, Word


def help_words(words: Sequence[Word]) -> Vocabulary:
    """The vocabulary of these words and of ``words``, which lists them and explains each."""

    async def tell(said: Said, name: str) -> None:
        if name:
            await said.answer(_one(all_words, said, name))
        else:
            await said.answer(await _list(all_words, said))

    all_words = Vocabulary((*words, Word("words", tell)))
    return all_words


def _one(all_words: Vocabulary, said: Said, name: str) -> str:
    word = all_words.find(name.removeprefix("!"))
    if word is None:
        raise UserError("unknown-word-no-hint")
    return said.phrases(word.help_key)


async def _list(all_words: Vocabulary, said: Said) -> str:
    mine = [f"`{word.name}`" for word in all_words.words if not word.chef]
    lines = [said.phrases("words-cook", words=" ".join(mine))]
    if await said.is_chef():
        chefs = [f"`{word.name}`" for word in all_words.words if word.chef]
        lines.append(said.phrases("words-chef", words=" ".join(chefs)))
    return "\n".join([*lines, said.phrases("words-how")])
