"""Words about oneself: what is held about me, forget me, and sore."""

from bot.errors import UserError
from bot.services import forgetting, records
from bot.services.said import Said
from bot.words.registry import Word


async def _records(said: Said, rest: str) -> None:
    """``records`` as a file of JSON, ``records csv`` as a table, ``records text`` in messages."""
    match rest.casefold():
        case "" | "json" | "csv" as kind:
            await records.tell_records(said, as_table=kind == "csv")
        case "text":
            await records.spell_records(said)
        case _:
            raise UserError("which-records")


async def _forget(said: Said, rest: str) -> None:
    """``forget me`` asks; nobody else can be named."""
    if rest.casefold().rstrip(".") != "me":
        raise UserError("forget-whom")
    await forgetting.ask_to_forget(said)


async def _sore(said: Said, _: str) -> None:
    """Answered in private, where nothing of it is kept; in the room only where to say it."""
    if said.private:
        await said.tell(said.phrases("sore"))
    else:
        await said.speaker.notice(said.room_id, said.phrases("sore-in-private"))


WORDS = (
    Word("records", _records, "privacy", private=True),
    Word("forget", _forget, "privacy", private=True),
    Word("sore", _sore, "privacy"),
)
