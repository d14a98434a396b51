"""The bot's session is kept for each account, and renewed without changing anybody else's."""

from dataclasses import replace

from bot.services.ports.records import Session
from bot.storage.storage import SqlStorage


async def test_a_session_is_kept_and_renewed(storage: SqlStorage) -> None:
    """The device stays when the token changes; another account has its own."""
    session = Session(user_id="@platepace:tern.example", device_id="GALLEY", token="first")
    async with storage.begin() as work:
        assert await work.sessions.get(session.user_id) is None
        await work.sessions.save(session)
        await work.sessions.save(replace(session, user_id="@other:tern.example", device_id="QUAY"))
        renewed = replace(session, token="second")
        await work.sessions.save(renewed)
        assert await work.sessions.get(session.user_id) == renewed
        other = await work.sessions.get("@other:tern.example")
    assert other is not None
    assert other.device_id == "QUAY"
