"""One person who floods: told once, then not answered until it eases; no result is lost by it."""

from datetime import timedelta

from bot.services.flood import AT_ONCE
from tests.chat import Chat

TOLD = "Those are more lines than I can answer at once. Results that I can read are kept. Wait two minutes, then go on."


async def test_more_than_a_kitchen_says_is_answered_once(live: Chat) -> None:
    """Sixty words at one moment are answered, the next gets the sentence, the others silence; results still count."""
    at = live.now
    for _ in range(AT_ONCE):
        assert len(await live.say("noor", "!drills", at=at)) == 1
    assert await live.say("noor", "!drills", at=at) == [TOLD]
    assert await live.say("noor", "!drilz", at=at) == []
    assert (await live.say("noor", "3:02 8/8", at=at))[0].startswith("Heard. 3:02")
    assert len(await live.say("lio", "!drills", at=at)) == 1
    assert len(await live.say("noor", "!drills", at=at + timedelta(minutes=2))) == 1


async def test_a_backlog_of_results_is_no_flood(live: Chat) -> None:
    """A hundred results of one person at one moment are each acknowledged (acceptance 12 has forty)."""
    at = live.now
    for nth in range(100):
        assert (await live.say("noor", f"{170 + nth}s 8/8", at=at))[0].startswith("Heard.")
