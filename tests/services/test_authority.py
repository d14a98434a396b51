"""Who is chef: read from the raw create and power levels of the kitchen's own room.

Expected levels: Matrix specification, client-server API, m.room.power_levels, and room version 12 (read from memory).
"""

from typing import Final

import pytest

from tests.chat import KITCHEN, Chat, user

LEVELS: Final = "m.room.power_levels"
CREATE: Final = "m.room.create"


async def _may_set_drills(chat: Chat, who: str) -> bool:
    """Whether a chef's word of theirs is taken."""
    (told,) = await chat.say(who, "!post 6 mon 15:00")
    return told.startswith("Set.")


@pytest.mark.parametrize(
    ("levels", "chefs"),
    [
        ({"users": {user("bastian"): 50}}, {"bastian"}),
        ({"users": {user("bastian"): 49}}, set()),
        ({"users": {user("bastian"): "50", user("noor"): "many"}}, {"bastian"}),
        ({"users_default": 50, "users": {user("noor"): 0}}, {"ime", "bastian"}),
        ({"users": {user("bastian"): None}, "users_default": 50}, {"ime", "bastian", "noor"}),
        ({"users": "all"}, set()),
        ({}, set()),
    ],
)
async def test_levels_as_they_stand(chat: Chat, levels: dict[str, object], chefs: set[str]) -> None:
    """A person's own level counts before the default; a level that cannot be read is none; 50 makes a chef."""
    await chat.stage.set_state(KITCHEN, user("ime"), LEVELS, levels)
    assert {who for who in ("ime", "bastian", "noor") if await _may_set_drills(chat, who)} == chefs


async def test_a_demotion_is_seen(chat: Chat) -> None:
    """Whoever is no longer named in the levels is no longer chef."""
    both: dict[str, object] = {"users": {user("ime"): 100, user("bastian"): 100}}
    await chat.stage.set_state(KITCHEN, user("ime"), LEVELS, both)
    assert await _may_set_drills(chat, "bastian")
    await chat.stage.set_state(KITCHEN, user("ime"), LEVELS, {"users": {user("ime"): 100}})
    assert not await _may_set_drills(chat, "bastian")
    assert await _may_set_drills(chat, "ime")


async def test_creators_of_version_twelve_stand_above_all(chat: Chat) -> None:
    """In room version 12 the creators, the additional ones too, need no level; before it they do."""
    create: dict[str, object] = {"room_version": "12", "additional_creators": [user("bastian")]}
    await chat.stage.set_state(KITCHEN, user("ime"), LEVELS, {"users": {}})
    assert not await _may_set_drills(chat, "ime")
    await chat.stage.set_state(KITCHEN, user("ime"), CREATE, create)
    assert await _may_set_drills(chat, "ime")
    assert await _may_set_drills(chat, "bastian")
    assert not await _may_set_drills(chat, "noor")
