"""The vocabulary: unique words, each with its one line of help and its row in the README."""

import re
from pathlib import Path

import pytest

from bot.replies.phrases import english
from bot.services.said import Said
from bot.words import vocabulary
from bot.words.answers import NO, YES
from bot.words.registry import Vocabulary, Word
from bot.words.result_words import ENGLISH
from tests.chat import Chat

WORDS = vocabulary().words
README = Path(__file__).parents[2] / "README.md"


async def _nothing(said: Said, rest: str) -> None:
    """A word that does nothing."""


def test_no_word_is_declared_twice() -> None:
    """Every word has a name of its own, and two of one name are refused."""
    assert len({word.name for word in WORDS}) == len(WORDS)
    with pytest.raises(ValueError, match="twice"):
        Vocabulary([Word("spec", _nothing), Word("spec", _nothing)])


def test_no_word_has_two_meanings() -> None:
    """No word of the vocabulary is an answer, or a detail of a result line, as well."""
    names = {word.name for word in WORDS}
    assert names & (YES | NO | {"a", "b", "c", "again", "all"}) == set()
    assert names & ENGLISH.keys() == set()


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.name)
def test_help_is_one_line_that_shows_the_word(word: Word) -> None:
    """Each word has one line of help, in which it stands as it is typed."""
    told = english()(word.help_key)
    assert "\n" not in told
    assert f"`{word.name}" in told


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.name)
def test_readme_names_the_word(word: Word) -> None:
    """The README names every word as it is typed."""
    assert re.search(rf"`!?{word.name}(?: [^`]*)?`", README.read_text("utf-8"))


async def test_words_lists_what_one_may_say(chat: Chat) -> None:
    """`words` lists a cook's words by family, to a judge the judges' too, to the chef the chef's; six lines each."""
    await chat.say("ime", "!role @petra judge")
    cook, judge = (await chat.say("noor", "!words"))[0], (await chat.say("petra", "!words"))[0]
    chef = await chat.say("ime", "!words")
    for word in WORDS:
        assert (f"`{word.name}`" in cook) is not (word.chef or word.family == "judge"), word.name
        assert (f"`{word.name}`" in judge) is not word.chef
        assert f"`{word.name}`" in "\n".join(chef)
    heads = [line.split(":")[0] for line in judge.splitlines()]
    assert heads[:-1] == ["Send", "Look", "Practise", "Yourself", "Judge"]
    assert all(len(told.splitlines()) <= 6 for told in (cook, judge, *chef))


async def test_words_explains_one(chat: Chat) -> None:
    """`words trend` explains it, with the mark before it or without; an unknown one is said to be so."""
    explained = ["`trend` or `trend 6`: my first runs of a day, faster or luck, and the next one, privately."]
    assert await chat.say("noor", "!words trend") == explained
    assert await chat.say("noor", "!words !trend") == explained
    assert await chat.say("noor", "!words soup") == ["I do not know that word. `!words` lists the ones I know."]


async def test_near_words_are_offered(chat: Chat) -> None:
    """A word not known is answered with the nearest, or with where they are listed; nothing is guessed."""
    assert await chat.say("noor", "!trnd") == ["I do not know that word. Near it: `!trend`. `!words` lists them all."]
    assert await chat.say("noor", "!zzz") == ["I do not know that word. `!words` lists the ones I know."]


async def test_near_words_are_of_ones_own_language(chat: Chat) -> None:
    """Who speaks Portuguese is offered its words beside the English ones; others only where none is near."""
    await chat.whisper("noor", "lang pt")
    (told,) = await chat.whisper("noor", "tendenca")
    assert "`!trend`" in told
    assert "`!tendência`" in told
    assert await chat.say("lio", "!tendenca") == [
        "I do not know that word. Near it: `!trend`. `!words` lists them all."
    ]
    (told,) = await chat.say("lio", "!przebig")
    assert "`!przebieg`" in told


async def test_case_and_lines_do_not_matter(chat: Chat) -> None:
    """A word is known in any case of letters, with a line end after it, and with space after the mark."""
    (plain,) = await chat.say("noor", "!drills")
    for typed in ("!DRILLS", "! drills", "!Drills\n"):
        assert await chat.say("noor", typed) == [plain]


async def test_chefs_words_are_the_chefs(chat: Chat) -> None:
    """Every chef's word sent by a cook is refused kindly and does nothing."""
    for word in WORDS:
        if word.chef:
            (told,) = await chat.say("noor", f"!{word.name} 6")
            assert told in {"That word is the chef's.", "The chef sets drills. Send yours as an idea?"}
