"""Ten thousand events, made up and mutated, go the whole way in: nothing fails, nothing echoes markup, talk is talk.

Half a batch's words are hypothesis's, half are of the kinds that have broken bots: markup, direction overrides, room
pings, numbers without end. A third of the events are broken on the way, in a field or in single bytes.
"""

import json
import random
import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.matrix.events import read_event
from bot.replies.phrases import english
from bot.services.ports.events import Incoming, Sealed
from bot.words import vocabulary
from tests.acceptance.test_any_chat import UNSHRUNK, faults
from tests.chat import KITCHEN, Chat, kitchen, user
from tests.matrix.fakes import BOT, raw_event, raw_member, raw_message

BATCHES = 20
EVENTS_A_BATCH = 500
WORDS = sorted({word.name for word in vocabulary().words} - {"records"})
"""``records`` hands out what is kept as it is kept."""
WHO = ("ime", "bastian", "noor", "lio", "stranger")
HOSTILE = (
    *("<b>x</b>", "<script>x</script>", "<img src=x onerror=x>", "[x](https://x.example)", "&lt;", "{ $name }", "%s"),
    *(
        "\u202e3:02\u202c",
        "\u2067x",
        "x\u200by",
        "@room",
        "';--",
        "\t\n\n",
        "9" * 400,
        "∞",
        "🍓" * 30,
        "NaN",
        "x" * 30_000,
    ),
    *("0:00", "-1:00 9/8", "99:99 8/8", "٣:٠٢ ٨/٨", "3:02 8/8", "3:02", "8/8", "6", "mon", "15:00", "redo 1", "left 9"),
    *("@noor:tern.example", "noor", "Ime", "yes", "no", "again", "> <@a:b.example> x\n\n3:02 8/8"),
)
TALK = ("who has the shallots", "van is here at nine", "<b>service</b> in ten minutes", "\u202esee you", "good night")
NAMES = ("<b>Noor</b>", "\u202eLio", "@room", "Petra\nHeard. 1:00", "", "n" * 250, "[x](https://x.example)", "board")
MARKUP = re.compile(r"<(?:b|script|img|font|a(?! href=\"https://matrix\.to/#/))\b", re.IGNORECASE)
"""Tags that no sentence of the bot has."""
OVERRIDES = re.compile("[\u202a-\u202e]")
ANY_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=9),
    lambda part: st.lists(part, max_size=3) | st.dictionaries(st.text(max_size=5), part, max_size=3),
    max_leaves=4,
)
ANY_TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=40)


@dataclass(frozen=True)
class Fuzz:
    """Makes events by chance from these texts and values."""

    chance: random.Random
    texts: Sequence[str]
    values: Sequence[Any]

    def event(self, number: int) -> Incoming | None:
        """One event as the bot reads it, if it reads one."""
        raw: Any = self._raw(number)
        event = read_event(self._broken(raw) if self.chance.random() < 1 / 3 else raw, KITCHEN, BOT)
        return None if isinstance(event, Sealed) else event

    def _raw(self, number: int) -> dict[str, Any]:
        event_id, sender, text = f"$fuzz{number}", user(self.chance.choice(WHO)), self._text()
        target = f"$fuzz{max(0, number - self.chance.randrange(1, 40))}"
        annotation = {"rel_type": "m.annotation", "event_id": target, "key": self.chance.choice("✋🙋x<")}
        fresh = {"msgtype": self.chance.choice(("m.text", "m.image")), "body": text}
        edit = {"m.new_content": fresh, "m.relates_to": {"rel_type": "m.replace", "event_id": target}}
        reply = {"m.relates_to": {"m.in_reply_to": {"event_id": target}}}
        name = {"membership": "join", "displayname": self.chance.choice(NAMES)}
        kinds = [
            raw_event(event_id, "m.reaction", sender, content={"m.relates_to": annotation}),
            raw_event(event_id, "m.room.redaction", sender, redacts=target),
            raw_event(event_id, "m.room.redaction", sender, content={"redacts": target}),
            raw_message(event_id, f"* {text}", sender, **edit),
            raw_member(event_id, sender, sender=sender) | {"content": name},
            raw_message(event_id, f"> <@a:b.example> x\n\n{text}", sender, **reply),
        ]
        return self.chance.choice([*kinds, *[raw_message(event_id, text, sender)] * len(kinds)])

    def _text(self) -> str:
        parts = [
            self.chance.choice(self.chance.choice((HOSTILE, self.texts))) for _ in range(self.chance.randrange(1, 4))
        ]
        if self.chance.random() < 0.6:
            parts.insert(0, "!" + self.chance.choice(WORDS))
        return " ".join(parts)

    def _broken(self, raw: dict[str, Any]) -> Any:
        if self.chance.random() < 0.5:
            place = raw if self.chance.random() < 0.3 else raw["content"]
            place[self.chance.choice(sorted(place) or ["body"])] = self.chance.choice(self.values)
            return raw
        wire = bytearray(json.dumps(raw).encode())
        for _ in range(self.chance.randrange(1, 4)):
            wire[self.chance.randrange(len(wire))] = self.chance.randrange(256)
        try:
            return json.loads(wire.decode("utf-8", "replace"))
        except ValueError:
            return None


@settings(max_examples=BATCHES, deadline=None, phases=UNSHRUNK)
@given(
    st.randoms(use_true_random=False),
    st.lists(ANY_TEXT, min_size=20, max_size=20),
    st.lists(ANY_JSON, min_size=20, max_size=20),
)
async def test_whatever_comes_in_is_dealt_with_quietly(
    chance: random.Random, texts: list[str], values: list[Any]
) -> None:
    """No event fails, and no reply holds markup, a direction override or the sentence for a fault of the bot's own."""
    with faults() as told:
        async with kitchen() as chat:
            await chat.say("ime", "!post now 6")
            await chat.say("noor", "!join")
            repeatable = random.Random(chance.random())  # noqa: S311 - no secret
            await _take(chat, Fuzz(repeatable, texts, values))
    assert told == []


async def _take(chat: Chat, fuzz: Fuzz) -> None:
    for number in range(EVENTS_A_BATCH):
        event = fuzz.event(number)
        for said in await chat.stage.take_now(event) if event else ():
            told = f"{event}\n-> {said.note.text}"
            assert not OVERRIDES.search(said.note.text), told
            assert not MARKUP.search(said.note.html), told
            assert said.note.text != english()("my-fault"), told
            assert not said.note.mentions, told


async def test_talk_is_never_answered() -> None:
    """Talk with markup and overrides in it, by everybody, all evening: silence."""
    async with kitchen() as chat:
        await chat.say("ime", "!post now 6")
        for nth in range(100):
            at = chat.now + timedelta(minutes=1)
            assert await chat.say(WHO[nth % len(WHO)], TALK[nth % len(TALK)], at=at, thread=nth % 2 == 0) == []
