"""The kitchen's own roles: the chef gives them in the chat, on top of what the room's power levels say.

A chef by role directs as one by power level does; the first runs of a commis or trainee are for settling in.
"""

from dataclasses import replace
from typing import get_args

from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.services.people import mate_named
from bot.services.ports.records import Member, Role
from bot.services.said import Said

ROLES: tuple[Role, ...] = get_args(Role)


async def give_role(said: Said, typed: str, role: str) -> None:
    """Give a person one of the roles; a cook is what everybody is without one."""
    given = next((known for known in ROLES if known == role), None)
    if given is None:
        raise UserError("which-role", roles=", ".join(f"`{known}`" for known in ROLES))
    member = await mate_named(said, typed)
    await said.work.kitchens.save_member(replace(member, role=given))
    await said.answer(said.phrases("role-given", name=plain_name(member.name), role=said.phrases(f"role-{given}")))


async def list_roles(said: Said) -> None:
    """Answer with everybody here whose role is another than cook, a line a role."""
    here = [m for m in await said.work.kitchens.members(said.kitchen.room_id) if m.state == "join"]
    lines = [_line(said, role, [m for m in here if m.role == role]) for role in ROLES if role != "cook"]
    await said.answer("\n".join(line for line in lines if line) or said.phrases("no-roles"))


def _line(said: Said, role: Role, members: list[Member]) -> str:
    names = ", ".join(plain_name(member.name) for member in members)
    return said.phrases("role-line", role=said.phrases(f"role-{role}"), names=names) if members else ""
