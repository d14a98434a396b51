"""The chef's list of drills: a new name and a drill off the list change no number, best or board."""

import pytest

from tests.chat import COOKS, Chat, kitchen, rope_coil


async def test_another_name(live: Chat) -> None:
    """All of the drill, or one set-up; the open week says it from now on, and its best stays."""
    await live.run("noor", "3:02 8/8")
    assert await live.say("ime", "!rename 6 Rope  coil, wide") == [
        "Drill 6 is called Rope coil, wide from now on. Its number, bests and boards stay."
    ]
    assert (await live.say("noor", "!spec"))[0].startswith("Rope coil, wide (drill 6)")
    await live.say("noor", "!best")
    (best,) = live.told("noor")
    assert best.startswith("Rope coil, wide: 3:02")
    assert (await live.say("noor", "!board"))[0].startswith("Rope coil, wide, this week")


async def test_one_set_up_alone() -> None:
    """The label of a set-up names just it."""
    async with kitchen() as chat:
        for line in ("!draft 6", "!plates 6", "!publish", "!rename 6B Rope coil, six"):
            await chat.say("ime", line)
        names = {text.partition(" (")[0] for label in ("6A", "6B") for text in await chat.say("ime", f"!spec {label}")}
        assert names == {"Rope coil", "Rope coil, six"}


async def test_off_the_list_and_back() -> None:
    """Neither listed nor posted, but never lost: its card and its bests are still told."""
    async with rope_coil() as chat:
        await chat.run("noor", "3:02 8/8")
        assert await chat.say("ime", "!retire 6") == ["Drill 6 is open now. `!close 6` closes its week first."]
        await chat.say("ime", "!close 6")
        await chat.say("ime", "!post 6 tue 15:00")
        assert (await chat.say("ime", "!retire 6"))[0].startswith("Drill 6 is posted every week.")
        await chat.say("ime", "!post off")
        (told,) = await chat.say("ime", "!retire 6")
        assert told.startswith("Drill 6, Rope coil, is off the list.")
        assert "Rope coil" not in (await chat.say("noor", "!drills"))[0]
        for line in ("!post now 6", "!post 6 mon 15:00"):
            assert (await chat.say("ime", line))[0].startswith("Drill 6 is off the list.")
        assert (await chat.say("noor", "!spec 6"))[0].startswith("Rope coil (drill 6)")
        await chat.say("noor", "!best 6")
        assert "3:02" in chat.told("noor")[0]
        assert await chat.say("ime", "!retire 6 back") == ["Drill 6, Rope coil, is on the list again."]
        assert "Rope coil" in (await chat.say("noor", "!drills"))[0]


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("!rename 6", "Write it like `!rename 6 Rope coil`, with a name of at most 60 characters."),
        ("!rename Rope coil", "Write it like `!rename 6 Rope coil`, with a name of at most 60 characters."),
        ("!rename 99 Coil", "There is no drill 99 here. `!drills` lists them."),
        ("!retire", "Write it like `!retire 6`, or `!retire 6 back`."),
        ("!retire 6 please", "Write it like `!retire 6`, or `!retire 6 back`."),
        ("!retire 99", "There is no drill 99 here. `!drills` lists them."),
        ("!retire 7 back", "No drill 7 is off the list."),
    ],
)
async def test_what_to_send_instead(live: Chat, typed: str, told: str) -> None:
    """A word without its label, and a label that names nothing, are told how to write it."""
    assert await live.say("ime", typed) == [told]


@pytest.mark.parametrize("typed", ["!rename 6 Coil", "!retire 6"])
async def test_for_the_chef_alone(live: Chat, typed: str) -> None:
    """A cook's word changes nothing."""
    assert await live.say(COOKS[0], typed) == ["That word is the chef's."]
