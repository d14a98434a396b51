"""The room's language and a person's own: each sentence is in that of the place where it is read."""

from datetime import timedelta

from bot.rehearsal import IN_MEMORY, rehearsal
from bot.replies.language_names import own_name
from bot.replies.phrases import Phrases, phrases_in
from tests.chat import KITCHEN, LONDON, MORNING, Chat, user
from tests.services.photos import shown_run

POLISH, BENGALI, ENGLISH = phrases_in("pl"), phrases_in("bn"), phrases_in("en")
CLOCK: dict[str, str | int] = {"drill": "Rope coil", "clock": "3:02", "seconds": 182, "accepted": 8, "attempted": 8}
"""What `why` begins with after 3:02 8/8."""


async def test_a_chef_sets_the_rooms_language(live: Chat) -> None:
    """`!lang pl` by the chef in the room is for the room, whatever each set for themselves."""
    await live.whisper("noor", "lang bn")
    assert await live.say("ime", "!lang pl") == [POLISH("room-language-set", language="polski")]
    (in_room,) = await live.say("noor", "3:02 8/8", thread=True)
    assert in_room.startswith(_heard(POLISH))
    (in_private,) = await live.whisper("noor", "why")
    assert in_private.splitlines()[0] == BENGALI("why-clock", **CLOCK)


async def test_a_private_answer_is_in_ones_own_language(live: Chat) -> None:
    """A cook sets their own, from the room or in private; a private word said in the room answers in it as well."""
    assert await live.say("noor", "!lang polski") == [POLISH("own-language-set", language="polski")]
    assert live.heard[0].room_id != KITCHEN
    (heard,) = await live.say("noor", "3:02 8/8", thread=True)
    assert heard.startswith(_heard(ENGLISH))
    (why,) = await live.say("noor", "!why")
    assert why.splitlines()[0] == POLISH("why-clock", **CLOCK)
    assert await live.say("noor", "!boards perhaps") == [POLISH("boards-on-or-off")]
    assert await live.say("noor", "!target soon") == [ENGLISH("chef-only")]


async def test_a_chefs_own_language_is_set_in_private(live: Chat) -> None:
    """What a chef says in private is for themselves; `lang off` takes the room's again."""
    assert await live.whisper("ime", "lang Polish") == [POLISH("own-language-set", language="polski")]
    assert await live.say("noor", "!leave") == [ENGLISH("left", name="Noor")]
    assert await live.whisper("ime", "lang off") == [ENGLISH("own-language-off", language="English")]


async def test_what_nobody_asked_for_is_in_the_right_language(judges: Chat) -> None:
    """A best is told to the room in the room's language, and a judge in the judge's own how many runs wait."""
    await judges.say("ime", "!lang bn")
    await judges.whisper("bastian", "lang pl")
    run = await judges.run("noor", "3:02 8/8", watched=False)
    await judges.react("bastian", run)
    (mark,) = [one.note.text for one in judges.heard if one.note.style == "notice"]
    assert mark == BENGALI("first-mark", name="Noor", drill="Rope coil", time="3:02", by=0)
    await shown_run(judges, "kwabena")
    await judges.wait(judges.now.replace(hour=9, minute=1) + timedelta(days=1))
    assert judges.told("bastian") == [POLISH("judge-waiting", runs=1)]
    assert judges.told("petra") == [BENGALI("judge-waiting", runs=1)]


async def test_lang_alone_says_what_is_set(live: Chat) -> None:
    """`lang` names the room's, one's own and all there are, each as it calls itself (names: CLDR 47, from memory)."""
    (told,) = await live.say("noor", "!lang")
    assert "`en` English" in told
    assert "`pl` polski" in told
    assert "`bn` বাংলা" in told
    await live.whisper("noor", "lang pl")
    (told,) = await live.whisper("noor", "lang")
    assert "polski" in told.splitlines()[0]
    assert [own_name(code) for code in ("es", "fr", "pt", "ar")] == ["español", "français", "português", "العربية"]


async def test_an_unknown_language_is_named_kindly(live: Chat) -> None:
    """One sentence with those known, and nothing is set."""
    (told,) = await live.whisper("noor", "lang xx")
    assert told.startswith("I do not speak that language yet. I speak")
    assert "`pl` polski" in told
    (told,) = await live.whisper("noor", "lang")
    assert told.splitlines()[0] == "This room: English. What I tell you in private: the same."


async def test_one_language_over_all_kitchens(live: Chat) -> None:
    """Who is of two kitchens, or comes into another later, is spoken to in their own language of all."""
    other, later = "!upperlock:tern.example", "!stew:tern.example"
    await live.stage.open_kitchen(other, "Upper Lock", user("ime"))
    await live.stage.come(other, user("noor"), "Noor")
    await live.say("noor", "!lang pl")
    await live.stage.open_kitchen(later, "The Stew", user("ime"))
    await live.stage.come(later, user("noor"), "Noor")
    assert await live.say("noor", "!boards off", room=later) == [POLISH("boards-are-off")]
    (joined,) = await live.say("noor", "!join", room=other)
    assert joined == ENGLISH("joined", name="Noor")
    (why,) = await live.say("noor", "!boards off", room=other)
    assert why == POLISH("boards-are-off")


async def test_it_is_in_the_records_and_forgotten(live: Chat) -> None:
    """`records` tells it, and after `forget me` the room's language is spoken again."""
    await live.whisper("noor", "lang pl")
    await live.whisper("noor", "rest 15:00-17:00")
    await live.whisper("noor", "records text")
    assert '"language": "pl"' in live.heard[-1].note.text
    await live.whisper("noor", "forget me")
    await live.whisper("noor", "yes, forget me")
    (rest,) = await live.whisper("noor", "rest")
    assert rest.startswith(ENGLISH("rest-none"))


async def test_a_new_room_speaks_the_houses_language() -> None:
    """Where the settings say Polish, the first message is Polish, and so is what follows."""
    async with rehearsal(MORNING, zone=LONDON, url=IN_MEMORY, language="pl") as stage:
        (first, *_) = await stage.open_kitchen(KITCHEN, "Tern & Lantern", user("ime"))
        assert first.note.text == POLISH("first-message", zone=LONDON)
        await stage.come(KITCHEN, user("noor"), "Noor")
        assert await Chat(stage).say("noor", "!join") == [POLISH("joined", name="Noor")]


def _heard(say: Phrases) -> str:
    """The answer to 3:02 8/8 as far as the pace."""
    whole = say("heard", clock="3:02", accepted=8, plates=8, rebuilt=0, pace="PACE", levelled="1.66")
    return whole.split("PACE")[0]
