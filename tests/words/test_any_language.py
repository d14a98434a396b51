"""The words of every language's list are taken from everyone, in any room, whatever language it speaks."""

import pytest

from bot.replies.accepted_words import languages, lists_of
from tests.chat import Chat

LISTED = [language for language in languages() if lists_of(language)]


@pytest.mark.parametrize("language", LISTED)
async def test_a_word_an_answer_and_a_reason_of_any_language(live: Chat, language: str) -> None:
    """In an English room each word of a cook, a reason for a redo and a yes mean what the English ones mean."""
    lists = lists_of(language)
    for english in ("drills", "spec", "words", "table"):
        for word in lists["words"][english]:
            assert await live.say("noor", f"!{word}") == await live.say("noor", f"!{english}"), word
    for nth, (english, reasons) in enumerate(lists["line"].items()):
        if english in ("fell", "rim", "flat"):
            plain = await live.say("noor", f"3:2{nth % 10} 7/8 {english}", thread=True)
            assert plain[0].startswith("Net"), plain
            assert await live.say("lio", f"3:2{nth % 10} 7/8 {reasons[0]}", thread=True) == plain
    for answer in lists["answers"]["yes"]:
        await live.whisper("petra", "0:48 8/8")
        (heard,) = await live.whisper("petra", answer)
        assert heard.startswith("Heard. 0:48"), answer
        await live.whisper("petra", "scrap")
