"""Who is what in the kitchen: given by the chef's word, listed, and what a role changes."""

import pytest

from tests.chat import Chat


async def test_given_and_listed(chat: Chat) -> None:
    """A role is given by name or id and listed; a cook has none to list."""
    assert await chat.say("ime", "!role") == ["Everybody here is cook. `!role @noor sous` gives another role."]
    assert await chat.say("ime", "!role @bastian sous") == ["Bastian is sous here now."]
    assert await chat.say("ime", "!role Petra Commis") == ["Petra is commis here now."]
    assert await chat.say("ime", "!role") == ["sous: Bastian.\ncommis: Petra."]
    assert await chat.say("ime", "!role petra cook") == ["Petra is cook here now."]
    assert await chat.say("ime", "!role") == ["sous: Bastian."]


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("!role @bastian", "Write it like `!role @noor sous`."),
        ("!role @bastian boss", "A role is one of `chef`, `sous`, `cook`, `commis`, `trainee`, `judge`."),
    ],
)
async def test_what_to_send_instead(chat: Chat, typed: str, told: str) -> None:
    """Half a role, and one that is none, are told how to write it."""
    assert await chat.say("ime", typed) == [told]


async def test_a_chef_by_role(chat: Chat) -> None:
    """Who is given the role directs the kitchen until it is taken back; nobody gives it to themselves."""
    (refused,) = await chat.say("bastian", "!role @bastian chef")
    assert refused == "That word is the chef's."
    await chat.say("ime", "!role @bastian chef")
    assert (await chat.say("bastian", "!post 6 mon 15:00"))[0].startswith("Set.")
    await chat.say("ime", "!role @bastian cook")
    assert not (await chat.say("bastian", "!post 6 tue 15:00"))[0].startswith("Set.")


async def test_a_commis_settles_in_from_the_first_week(live: Chat) -> None:
    """A commis has three settling-in runs, also before the kitchen's first closed board; then they count."""
    await live.say("ime", "!role @petra commis")
    told = [(await live.say("petra", f"3:{seconds} 8/8", thread=True))[0] for seconds in (31, 22, 14, 11)]
    assert ["ettling" in line for line in told] == [True, True, True, False]
