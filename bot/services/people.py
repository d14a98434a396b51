"""Being counted in: by one's own word, with what is kept and why said first; names and mentions found."""

from dataclasses import replace
from datetime import timedelta

from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.services.ports.records import Kitchen, Member, Question
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said

HELD_FOR = timedelta(hours=48)


async def is_counted_in(said: Said) -> bool:
    """Whether the person has said that their results may be kept."""
    member = await said.work.kitchens.member(said.kitchen.room_id, said.user_id)
    return member is not None and member.consent == "in"


async def hold_until_joined(said: Said) -> None:
    """Hold a first submission and answer once with what is kept and why; unanswered in 48 h it is erased."""
    asked = [q for q in await said.work.questions.open(said.user_id, said.now) if q.kind == "join"]
    held = {"event_id": said.event_id, "text": said.text, "sent_at": said.sent_at.isoformat(), "thread": said.thread}
    if asked:
        waiting = list(asked[0].payload["held"])  # type: ignore[call-overload]  # a list by construction below
        await said.work.questions.close(asked[0].id)
        await said.work.questions.ask(replace(asked[0], id=0, payload={"held": [*waiting, held]}))
        return
    await said.work.questions.ask(
        Question(
            user_id=said.user_id,
            room_id=said.kitchen.room_id,
            kind="join",
            asked_at=said.now,
            lapses_at=said.now + HELD_FOR,
            payload={"held": [held]},
        )
    )
    await said.answer(said.phrases("join-first"))
