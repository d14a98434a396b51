"""Who is chef in a kitchen: read from the raw power levels and create event of the kitchen's own room.

Matrix specification, room versions 1 to 12: a power level given to a person counts before ``users_default``; with no
power levels event the creator has 100; in version 12 the creators stand above every level.
"""

from bot.services.house import House
from bot.services.ports.world import UnitOfWork

CHEF_LEVEL = 50
_CREATOR_LEVEL = 100
_STATE_LEVEL = 50
_ABOVE_EVERY_LEVEL = 2**53
_CREATORS_RULE = 12

Content = dict[str, object]


async def is_chef(house: House, work: UnitOfWork, room_id: str, user_id: str) -> bool:
    """Whether this person directs this kitchen: named by the operator, of level 50 or more in its room, or by role."""
    if user_id in house.chefs:
        return True
    member = await work.kitchens.member(room_id, user_id)
    if member and member.role == "chef":
        return True
    return await _power_in(work, room_id, user_id) >= CHEF_LEVEL


async def may_replace(work: UnitOfWork, room_id: str, user_id: str) -> bool:
    """Whether this person may declare the room replaced by another."""
    levels = await _levels(work, room_id) or {}
    events = levels.get("events")
    stated = events.get("m.room.tombstone") if isinstance(events, dict) else None
    needed = levels.get("state_default", _STATE_LEVEL) if stated is None else stated
    return await _power_in(work, room_id, user_id) >= _needed(needed)


async def may_invite(work: UnitOfWork, room_id: str, user_id: str) -> bool:
    """Whether this person may invite others to the room."""
    levels = await _levels(work, room_id) or {}
    return await _power_in(work, room_id, user_id) >= _needed(levels.get("invite", 0))


async def _power_in(work: UnitOfWork, room_id: str, user_id: str) -> int:
    return power_of(user_id, await work.kitchens.state(room_id, "m.room.create"), await _levels(work, room_id))


async def _levels(work: UnitOfWork, room_id: str) -> Content | None:
    levels = await work.kitchens.state(room_id, "m.room.power_levels")
    return levels[0] if levels else None


def power_of(user_id: str, create: tuple[Content, str] | None, levels: Content | None) -> int:
    """The person's power level; ``create`` is the content and sender of the room's create event."""
    creators = _creators(create)
    if create and _version(create[0]) >= _CREATORS_RULE and user_id in creators:
        return _ABOVE_EVERY_LEVEL
    if levels is None:
        return _CREATOR_LEVEL if user_id in creators[:1] else 0
    users = levels.get("users")
    own = users.get(user_id) if isinstance(users, dict) else None
    return _level(levels.get("users_default", 0) if own is None else own)


def _creators(create: tuple[Content, str] | None) -> list[str]:
    if create is None:
        return []
    others = create[0].get("additional_creators")
    return [create[1], *(str(one) for one in others)] if isinstance(others, list) else [create[1]]


def _version(content: Content) -> int:
    version = str(content.get("room_version", "1"))
    return int(version) if version.isdecimal() else 1


def _needed(value: object) -> int:
    """The level that something takes; one that cannot be read is nobody's."""
    try:
        return int(value) if isinstance(value, int | str) else _ABOVE_EVERY_LEVEL + 1
    except ValueError:
        return _ABOVE_EVERY_LEVEL + 1


def _level(value: object) -> int:
    """A level as a whole number; older rooms may hold it as a string."""
    try:
        return int(value) if isinstance(value, int | str) else 0
    except ValueError:
        return 0
