"""Being counted in: by one's own word, with what is kept and why said first."""

from datetime import timedelta

from tests.chat import Chat

HELD = (
    "Held, not kept yet. I keep your clock, your good plates and who watched, to show you your own pace and the week's "
    "board; never for pay, rota, promotion or discipline. The chat itself keeps what you write. `yes` counts you in; "
    "unanswered it is erased in 48 hours."
)
HEARD = "Heard. 3:02, 8 of 8. 3.25 s a touch, 1.66 levelled."


async def test_first_submission_is_held_and_answered_once(live: Chat) -> None:
    """The first line of somebody not counted in is held with what is kept and why; a second adds no second answer."""
    assert await live.say("bastian", "3:02 8/8") == [HELD]
    assert await live.say("bastian", "3:12 8/8") == []
    assert await live.say("bastian", "!why") == ["There is no run of yours to explain yet."]
    counted, first, second = await live.say("bastian", "yes")
    assert (counted, first) == ("Counted in, Bastian.", HEARD)
    assert second.startswith("Heard. 3:12")


async def test_join_answers_too(live: Chat) -> None:
    """Saying the word keeps what was held, like yes."""
    await live.say("bastian", "3:02 8/8")
    assert await live.say("bastian", "!join") == ["Counted in, Bastian.", HEARD]


async def test_no_erases_what_was_held(live: Chat) -> None:
    """No is taken for no."""
    await live.say("bastian", "3:02 8/8")
    assert await live.say("bastian", "no") == ["Not kept."]
    assert await live.say("bastian", "yes") == []


async def test_held_is_of_when_it_was_sent(live: Chat) -> None:
    """What was held counts as sent then, not when yes was said: its time of day and its place."""
    await live.say("bastian", "3:02 8/8")
    sent = live.now
    await live.say("bastian", "yes", at=sent + timedelta(hours=30))
    (off,) = await live.say("bastian", "!scrap")
    assert off == f"Your {sent:%H:%M} run is off. `undo` puts it back."


async def test_held_is_erased_after_two_days(live: Chat) -> None:
    """After 48 hours a yes finds nothing, and the next line is held anew with its answer."""
    await live.say("bastian", "3:02 8/8")
    await live.away(live.now + timedelta(hours=48))
    assert await live.say("bastian", "yes") == []
    assert await live.say("bastian", "3:02 8/8") == [HELD]


async def test_edit_of_what_is_held(live: Chat) -> None:
    """A held line that is edited is held as edited, once."""
    await live.say("bastian", "3:12 8/8")
    assert await live.edit("bastian", live.last, "3:12 8/8") == []
    await live.say("bastian", "3:32 8/8")
    assert await live.edit("bastian", live.last, "3:02 8/8") == []
    told = await live.say("bastian", "yes")
    assert [text[:12] for text in told] == ["Counted in, ", "Heard. 3:12,", "Heard. 3:02,"]


async def test_deletion_of_what_is_held(live: Chat) -> None:
    """A held line that is deleted is gone; with it goes the question when nothing else is held."""
    await live.say("bastian", "3:02 8/8")
    await live.delete("bastian", live.last)
    assert await live.say("bastian", "yes") == []


async def test_what_cannot_be_read_is_not_held(live: Chat) -> None:
    """A doubtful first line is asked about like any other, and nothing is said to be held."""
    assert await live.say("bastian", "3.20 8/8") == ["Is that 3 min 20 s or 3.2 minutes? Send `3:20` or `3:12`."]
    assert await live.say("bastian", "yes") == []


async def test_leaving(live: Chat) -> None:
    """Who leaves is counted out: nothing new is kept, and they are asked again before anything is."""
    assert await live.say("noor", "!leave") == [
        "Counted out, Noor. I keep nothing new of yours. `!join` counts you in again."
    ]
    assert await live.say("noor", "3:02 8/8") == [HELD]


async def test_joining_is_not_being_in_the_room(live: Chat) -> None:
    """Somebody new in the room is not counted in, and nothing is said to them."""
    await live.stage.come("!kitchen:tern.example", "@sunniva:tern.example", "Sunniva")
    assert await live.say("sunniva", "3:02 8/8") == [HELD]


async def test_settling_in(live: Chat) -> None:
    """The first three runs of somebody who joins after the first closed board are kept on no board."""
    await live.say("ime", "!close")
    await live.say("ime", "!post now 5")
    await live.say("bastian", "!join")
    for nth, line in enumerate(("4:00 8/8", "3:50 8/8", "3:40 8/8"), 1):
        (told,) = await live.say("bastian", line)
        assert told.endswith(f"Settling in, run {nth} of 3: kept, on no board yet.")
    (told,) = await live.say("bastian", "3:30 8/8")
    assert "Settling in" not in told


async def test_settling_in_is_kept_by_an_edit(live: Chat) -> None:
    """A settling-in run edited later, when those three are over, is still one of them and on no board."""
    await live.say("ime", "!close")
    await live.say("ime", "!post now 5")
    await live.say("bastian", "!join")
    first = await live.run("bastian", "4:00 8/8", watched=False)
    for line in ("3:50 8/8", "3:40 8/8", "3:30 8/8"):
        await live.run("bastian", line, watched=False)
    await live.edit("bastian", first, "2:40 8/8")
    await live.react("noor", first)
    for cook in ("noor", "lio", "kwabena"):
        await live.run(cook, "4:20 8/8")
    (board,) = await live.say("noor", "!board fast")
    assert "Bastian" not in board
