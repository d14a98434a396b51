"""A crypto store that was lost or has forgotten its signing keys, on a real Synapse."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bot.errors import NO_DATABASE
from bot.homeserver import Homeserver
from tests.live.bot_process import BotProcess
from tests.live.conftest import MakePerson
from tests.live.encrypted import is_signed_by_owner
from tests.live.people import PASSWORD

pytestmark = pytest.mark.live


async def test_signing_keys_are_changed_with_the_password_and_a_lost_store_is_refused(
    server: Homeserver, person: MakePerson, tmp_path: Path
) -> None:
    """The homeserver asks for the password where keys change; without the store the bot ends with a code of its own."""
    chef, user_id = await person("Ime"), await server.register(f"store-{tmp_path.name.lower()[:30]}", PASSWORD)
    bot = BotProcess(tmp_path / "bot", user_id)
    bot.configure(server, chef.user_id)
    masters = set()
    for _ in range(2):
        async with bot.running():
            await bot.until("SELECT 1 FROM sync_token")
        told = await chef.ask("POST", "keys/query", {"device_keys": {user_id: []}})
        ((device, _keys),) = told["device_keys"][user_id].items()
        assert is_signed_by_owner(told, user_id, device)
        masters |= set(told["master_keys"][user_id]["keys"])
        with closing(sqlite3.connect(bot.directory / "crypto" / "store.db")) as store, store:
            store.execute("DELETE FROM pickled")
        with closing(sqlite3.connect(bot.database)) as database, database:
            database.execute("DELETE FROM sync_token")
    assert len(masters) == 2
    shutil.rmtree(bot.directory / "crypto")
    process = await bot.start()
    assert await process.wait() == NO_DATABASE
    assert "was lost" in bot.log()
    assert "Traceback" not in bot.log()
