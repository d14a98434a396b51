"""The chef's word about who: role."""

from bot.errors import UserError
from bot.services import roles
from bot.services.said import Said
from bot.words.registry import Word


async def _role(said: Said, rest: str) -> None:
    """``role`` lists, ``role @noor sous`` gives one."""
    name, _, role = rest.rpartition(" ")
    if not rest:
        await roles.list_roles(said)
    elif name:
        await roles.give_role(said, name.strip(), role.casefold())
    else:
        raise UserError("role-of-whom")


WORDS = (Word("role", _role, chef=True),)
