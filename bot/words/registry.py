"""Every word of the chat, declared once: matching, help and authority come from the declaration."""

import re
from collections.abc import Awaitable, Callable, Iterable
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Literal

from bot.errors import UserError
from bot.replies.accepted_words import accepted, folded, lists_of
from bot.services.said import Said

_WHITE_SPACE = re.compile(r"\s+")

Family = Literal["cook", "look", "practise", "privacy", "judge"]
"""What a word is for: sending results, looking, practising, oneself, judging. What is the chef's alone is apart."""

Does = Callable[[Said, str], Awaitable[None]]
"""What a word does, given what was said and the rest of the line after the word."""


@dataclass(frozen=True)
class Word:
    """A word, what it does and who may use it; its one-line help is the sentence ``help-<name>``.

    What goes wrong with a ``private`` word is told in private too, as its answer would have been.
    """

    name: str
    does: Does
    family: Family = "look"
    chef: bool = False
    private: bool = False

    @property
    def help_key(self) -> str:
        """The key of its help in the catalogues."""
        return f"help-{self.name}"


class Vocabulary:
    """All words, by name; two words of one name are refused."""

    def __init__(self, words: Iterable[Word]) -> None:
        self.words = tuple(words)
        self._by_name = {word.name: word for word in self.words}
        if len(self._by_name) != len(self.words):
            raise ValueError("a word is declared twice")

    def find(self, name: str) -> Word | None:
        """The word of this name, or the one that it stands for in another language."""
        plain = folded(name)
        return self._by_name.get(accepted("words").get(plain, plain))

    def near(self, name: str, language: str) -> list[str]:
        """The nearest known words, at most three: English ones and those of this language, else of any."""
        own = [folded(word) for words in lists_of(language).get("words", {}).values() for word in words]
        for known in (own, accepted("words")):
            near = get_close_matches(folded(name), (*self._by_name, *known), n=3, cutoff=0.6)
            if near:
                return near
        return []

    async def say(self, said: Said, line: str) -> None:
        """Do what the line's first word says; a UserError where it is unknown or for the chef alone."""
        name, _, rest = _WHITE_SPACE.sub(" ", line.strip(), count=1).partition(" ")
        word = self.find(name)
        if word is None:
            near = self.near(name, said.own_phrases.language)
            raise UserError("unknown-word" if near else "unknown-word-no-hint", near=", ".join(f"`!{n}`" for n in near))
        if word.chef and not await said.is_chef():
            raise UserError(f"chef-only-{word.name}" if said.phrases.has(f"chef-only-{word.name}") else "chef-only")
        if not word.private:
            await word.does(said, rest.strip())
            return
        aside = said.answered_aside()
        try:
            await word.does(aside, rest.strip())
        except UserError as problem:
            await said.tell(aside.phrases.reply_to(problem))
