"""From drill to pickup, as a demanding chef would ask. Times of Full tide: fixtures of the project's own model."""

from tests.chat import Chat

NOT_IN_20 = (
    "Not in 20:00. Five hands take 22:27; shingling is the narrowest step. Two on shingling, six hands: 15:18. "
    "Or 4 slices, five hands: 18:03. Plating only: add your own heat, carry and check."
)


async def test_120_plates_of_full_tide_in_20_minutes(chat: Chat) -> None:
    """Not in 20:00; five hands 22:27, a sixth gains nothing unless shingling is split (15:18); no cook is named."""
    await chat.say("ime", "!post now 11B")
    await chat.say("noor", "!join")
    await chat.say("noor", "8:40 12/12")
    (told,) = await chat.say("ime", "!pickup 120 in 20")
    answer, its_sum = told.split("\n")
    assert answer == NOT_IN_20
    assert its_sum == "One plate 37.7 s, then 119 x 11.0 s: 22:27. 20:00 is a plate every 10.0 s."
    (six,) = await chat.say("ime", "!pickup 120 in 20 with 6")
    assert six.startswith("In 20:00: six hands, 15:18.")
    assert "2, 3: courgette shingle, plates in turn" in six
    assert not any(name in told + six for name in ("Noor", "Ime", "noor", "ime"))


async def test_the_same_of_a_drill_that_is_named(chat: Chat) -> None:
    """With no drill posted the one named is meant, in either set-up, in the private room too."""
    assert (await chat.say("noor", "!pickup 11 120 in 20"))[0].split("\n")[0] == NOT_IN_20
    assert (await chat.whisper("noor", "pickup 11A 120 in 20"))[0].split("\n")[0] == NOT_IN_20


async def test_the_fewest_hands_with_their_tasks(chat: Chat) -> None:
    """Where it can be done: the fewest hands, what each does, and the sum."""
    assert await chat.say("noor", "!pickup 11 120 in 30") == [
        "In 30:00: four hands, 27:24. Plating only: add your own heat, carry and check.\n"
        "Hands 1: gel line + coffee crumb; 2: courgette shingle; 3: bean puree quenelle + triangle lean; "
        "4: oil bead + leaf pair.\n"
        "One plate 37.7 s, then 119 x 13.5 s: 27:24. 30:00 is a plate every 15.0 s."
    ]
